import { lowered } from '../trade/words.ts';
import type { Command } from '../types.ts';
import { cutAt } from './clauses.ts';
import type { Talk } from './talk.ts';
import { type QuestionRule, THING_ASKED } from './thingAsked.ts';

/** A question to the list, wherever it stands in a note. */
export interface Asked {
  question: QuestionRule['question'];
  /** The room, the shop or the work that it is about; null for all of the job. */
  about: string | null;
  start: number;
  end: number;
}

const WE = '(?:i|we|you|ya)';
const MORE = '(?: (?:still|all|else|also|left|now|really|actually|even))*';
const BUY =
  '(?:buy(?:ing)?|get(?:ting)?|pick(?:ing)? up|grab(?:bing)?|fetch(?:ing)?|order(?:ing)?|collect(?:ing)?|bring(?:ing)? back)';
const DO = '(?:do|finish|get done|get to|take care of|work on)';
const LIST = '(?:(?:the|my|our|that) )';
/** Where, for when or what for. */
const ABOUT =
  "(?: (?:please|again|yet|still|now|then|first|here|there|today|tonight|(?:tomorrow|tmrw|mon|monday|tue|tues|tuesday|wed|weds|wednesday|thu|thurs|thursday|fri|friday)(?: (?:morning|afternoon|evening|night))?|first thing|next week|this (?:morning|afternoon|evening|week)|on (?:the|my|our) way(?: [a-z]+)?|(?:before|when|while|until|till|after|since|if) [a-z0-9' ]+?))*(?: (?:(?:from|at|for|in|on|by|under|around) |(?=(?:upstairs|downstairs|outside|outdoors)\\b))([a-z0-9'][a-z0-9' /-]*?))?(?: (?:please|again|yet|now|today|tonight|(?:tomorrow|tmrw)(?: (?:morning|afternoon|evening))?|this (?:morning|afternoon|evening|week)|(?:before|when|while|until|till|after|since|if) [a-z0-9' ]+?))*";

/** Questions as they end a sentence, lower case. Common practice in how people talk, no source. */
const RULES: readonly QuestionRule[] = [
  // "What do I need from the store", "what all are we picking up", "what should I get".
  {
    question: 'order',
    inverted: true,
    pattern: new RegExp(
      `what(?:'s)?(?: all| else| stuff| goods| materials?| parts)? ?(?:do|am|are|should|must|can|'m|'re) ?${WE}${MORE}(?: (?:need|have|got|gotta|want|supposed|meant|going|gonna)${MORE})?(?: to)?(?: go)?(?: (?:and|for))? ${BUY}${MORE}${ABOUT}`,
    ),
  },
  {
    question: 'order',
    inverted: true,
    pattern: new RegExp(
      `what(?: all| else| stuff| goods| materials?| parts)? (?:do|did) ${WE}${MORE} (?:need|want)${MORE}${ABOUT}`,
    ),
  },
  { question: 'order', pattern: new RegExp(`what${MORE} ${WE}${MORE} (?:need|have to ${BUY}|need to ${BUY})${ABOUT}`) },
  // "What am I still short of".
  {
    question: 'order',
    inverted: true,
    pattern: new RegExp(
      `what(?: all| else| materials?)? ?(?:am|are|'m|'re) ?${WE}${MORE} (?:short(?: of| on)?|missing|out of|low on|waiting to ${BUY})${ABOUT}`,
    ),
  },
  // "What's left to buy", "whats on the list to buy", "what is on the order".
  {
    question: 'order',
    pattern: new RegExp(
      `what(?:'s|s| is| are|'re)${MORE} (?:to ${BUY}|needed|on ${LIST}(?:order|shopping list|buy(?:ing)? list|store list|materials? list|list to ${BUY}|list (?:for|from|at) (?:the )?(?:store|shop|yard)))${ABOUT}`,
    ),
  },
  // "Anything to pick up", "is there anything else I need from the store".
  {
    question: 'order',
    pattern: new RegExp(
      `(?:is there |are there |(?:have|has) ${WE} got |got )?any(?:thing| goods| materials?)${MORE} (?:to ${BUY}|on ${LIST}(?:order|shopping list)|${WE}${MORE} (?:need|have)(?: to ${BUY})?|needed)${ABOUT}`,
    ),
  },
  {
    question: 'order',
    inverted: true,
    pattern: new RegExp(
      `(?:do|am|are|should) ${WE}${MORE} (?:need|have|want|supposed)?${MORE}(?: ?to)? ?(?:${BUY})? ?any(?:thing| goods| materials?)${MORE} (?:from|at) ((?:the |my )?[a-z][a-z ]*?)`,
    ),
  },
  {
    question: 'order',
    inverted: true,
    pattern: new RegExp(`(?:do|should) ${WE}${MORE} (?:need to |have to |want to )?${BUY} anything${MORE}${ABOUT}`),
  },
  { question: 'order', pattern: /(?:read|show|give|send|tell) me (?:back )?(?:the |my )?(?:order|shopping list)/ },
  // "What's left in the laundry", "whats still open", "what's on the list for today".
  {
    question: 'left',
    pattern: new RegExp(
      `what(?:'s|s| is| all is| all's| else is| else's)${MORE} (?:left|open|to do|to be done|outstanding|remaining|not done|unfinished|on (?:the|my|our|today's)(?: punch)? list)${MORE}(?: (?:to (?:${DO}|be done)|open|undone))?${ABOUT}`,
    ),
  },
  { question: 'left', pattern: new RegExp(`what(?:'s|s| is)? left(?: to do)?${ABOUT}`) },
  // "What do I still have to do", "what have we got left in the hall", "what else is there to do".
  {
    question: 'left',
    inverted: true,
    pattern: new RegExp(
      `what(?: all| else)? (?:do|must|should) ${WE}${MORE}(?: (?:need|have|got|gotta|want)${MORE})?(?: to)? ${DO}${MORE}${ABOUT}`,
    ),
  },
  {
    question: 'left',
    inverted: true,
    pattern: new RegExp(
      `what(?: all| else)? (?:have|do) ${WE}${MORE} (?:got|have)? ?(?:left|still to do|to do|open)(?: to ${DO})?${ABOUT}`,
    ),
  },
  {
    question: 'left',
    inverted: true,
    pattern: new RegExp(`what else is (?:there|left)(?: (?:left|to ${DO}))*${ABOUT}`),
  },
  {
    question: 'left',
    pattern: new RegExp(`(?:is there )?anything${MORE} (?:left|to do|open)(?: to ${DO})?${ABOUT}`),
  },
  { question: 'list', pattern: /(?:read|show|give|send) me (?:back )?(?:the |my )?(?:whole )?(?:punch )?list/ },
  {
    question: 'waiting',
    pattern: new RegExp(`what(?:'s| is| are we)? (?:still )?waiting(?: on| for)?${ABOUT}`),
  },
  {
    question: 'ready',
    pattern: new RegExp(`what(?:'s| is| can i| can we) (?:ready|work on|do next|next)${ABOUT}`),
  },
  {
    question: 'measurements',
    pattern:
      /(?:what(?:'s| was| are| were)|read me|show me) (?:the |my )?measurements?(?: (?:for|of|in|on) (?:the )?([a-z0-9' -]+?))?/,
  },
];

/** Before a question that asks as a clause inside another one would: nothing, or words that only lead over to it. */
const LEADS = /(?:^|,|\b(?:so|ok|okay|and|hey|right|also|now|alright|well|anyway|then|um|uh|me|question|remind me)) *$/;
const ENDED = [...RULES, ...THING_ASKED].map((rule) => ({
  ...rule,
  pattern: new RegExp(`(?:^|[ ,])(${rule.pattern.source}) *$`),
}));

/** A shop of whatever name, or a day: the order is one for all of them. */
const ANY_SHOP =
  /^(?:(?:the|a|my|our|this|that|next|all|whole|it|us|me) )*(?:stores?|shops?|hardware store|big box|supplier'?s?|supply house|merchants?|depot|counter|town|lists?|job|jobs|site|run|trip|way|road|now|sure|today|tonight|tmrw|tomorrow|(?:mon|tues?|wed(?:nes)?|thur?s?|fri|sat(?:ur)?|sun)(?:day)?|week|weekend|month|morning|afternoon|evening|day|end of (?:the )?(?:day|week))(?: (?:run|morning|afternoon|evening|night|am|pm|job|trip))?$/;

/** Questions of a note; each ends its sentence, or stands before another: "what's left, and what do I need to buy". */
export const questionsIn = (text: string): Asked[] =>
  [...lowered(text).matchAll(/(?:[^.!?;\n]|[.](?=\d))+/g)].flatMap(({ 0: sentence, index }) =>
    endingIn(sentence, index),
  );

function endingIn(sentence: string, index: number): Asked[] {
  for (const { question, pattern, inverted } of ENDED) {
    const match = pattern.exec(sentence);
    if (!match) continue;
    const at = match.index + match[0].indexOf(match[1]!);
    const lead = sentence.slice(0, at);
    if (!inverted && !LEADS.test(lead)) continue;
    const about = match[2]?.replace(/^(?:the|my|our) /, '').trim() ?? null;
    const start = index + at;
    const before = /^(.*?),? and *$/.exec(lead)?.[1];
    return [
      ...(before ? endingIn(before, index) : []),
      {
        question,
        about: about && question !== 'told' && ANY_SHOP.test(about) ? null : about,
        start,
        end: start + match[1]!.length,
      },
    ];
  }
  return [];
}

/** Questions to the list, as facts of their own. */
export const readQuestions = ({ text, frames }: Talk): Command[] =>
  questionsIn(text).map(({ question, about, start, end }) => ({
    kind: 'command',
    verb: 'ask',
    question,
    about,
    number: null,
    to: null,
    start,
    end,
    quote: text.slice(start, end),
    area: frames.find((frame) => frame.start < end && start < frame.end)?.area ?? null,
    confidence: 0.8,
    rule: 'command/ask',
  }));

/** The talk without its questions: what is only asked is no work to do and nothing to buy. */
export const withoutQuestions = (talk: Talk, asked: readonly Command[]): Talk =>
  asked.length
    ? cutAt(
        { ...talk, chunks: talk.chunks.filter((c) => !asked.some((q) => q.start <= c.start && c.end <= q.end)) },
        new Set(asked.map(({ end }) => talk.chunks.find((c) => c.start >= end)?.start ?? end)),
      )
    : talk;
