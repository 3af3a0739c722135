import { lowered } from '../../../parser/trade/words.ts';
import type { Span } from '../../../parser/types.ts';
import { leftOfMany } from './ofMany.ts';

/**
 * How people say that work is done in part, or only until it is done properly: they count what is left, name what is
 * left out, say how far they got, or go straight on to the trouble with it. Common practice in how people talk, no source.
 */
export interface Part {
  /** What is left, as said ("one to go", "the doorway left"); null where only the work's not being over is told. */
  left: string | null;
  /** Told of the work itself, so that it stands open even where nothing on the list was known of it. */
  plain: boolean;
}

const COUNT =
  '(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d+|(?:a |another )?couple|a few|some|another|half|most|the rest|rest|the others?|the last(?: (?:one|two|few|\\d+))?)';
const TO_COME =
  '(?:(?:still |yet |left )?to (?:go|do|be done|come|finish|hang|fit|fix|put|lay|set|cut|wire|paint|patch|swap|mount|fasten|nail|screw)|(?:still |yet )?outstanding|not (?:done|started) yet|undone)(?! (?:down|into|to|back|off|over|and get)\\b)\\b(?: (?:up|on|in|down))?';
/** "One to do", "two more still to hang", "just the grout to go", "rail + skirt to go", "rest to do". */
const TO_GO = new RegExp(
  `\\b(?:${COUNT}(?: more| of (?:them|em|those|it|the [a-z]+))?(?: (?!day|week|hour|minute|to\\b|and\\b)[a-z]+){0,2}|(?:just|only|still) (?:the |that |those )?[a-z]+(?: (?:and|&|\\+) (?:the )?[a-z]+| [a-z]+){0,3}) ${TO_COME}`,
);
const TO_GO_FIRST = new RegExp(`^ (?:so |and |just |only )*${TO_GO.source}`);
/** "The rest of it thursday", "rest when the truck comes". */
const REST =
  /\b(?:the )?rest(?: of (?:it|them|em|those|the [a-z]+))?(?:'s|'ll| is| are| will| gets?| goes?)?(?: (?:be|on|for|in|up))? (?:mon|tues|wed|thu|fri|sat|sun|tomorrow|tmrw|next|later|left|when|once|waits?|waiting|still|another)[a-z]*/;
/** Right behind: "so just the wide ones left", "one left", "that leaves two". */
const LEFT_BEHIND = new RegExp(
  `^[ ,]*(?:(?:so|and|with|now|then|it's|its|that's|there's|that) )*((?:(?:just|only) (?:the |that |those |them |one |two |three )?[a-z]+(?: [a-z]+){0,3}|${COUNT}(?: more)?) (?:left|remaining)(?! over| hand| side| in the | on the (?:truck|van))|leaves (?:just |only )?(?:the |that |those )?${COUNT}[a-z ]{0,20})`,
);
/** Small words do not end what is left out: "bar the doorway and the last glass". */
const LEFT_OUT =
  "((?:the|that|this|those|them|one|two|three|a|an|my|her|his|last|\\d+|for the|where)\\b[a-z0-9' -]{0,40}?)(?= that | which | who | because | cause | until | so | and (?:the [a-z]+ (?:was|is)|i|we|he|she) |[a-z]+'s |[^a-z0-9' -]|$)";
/** "All up bar the doorway", "everything except the stove", "done but for the top", "shingled all but the valley". */
const EXCEPT = new RegExp(
  `\\b(?:except(?: for)?|apart from|other than|barring|save for|(?:all|everything|everywhere|[a-z]+ed|done|up|on|in|off|down|hung|laid|cut|finished) (?:bar|but for|minus)|(?:all|everything|everywhere) but) ${LEFT_OUT}`,
);
const PARTICIPLE = '(?:[a-z]+ed|done|up|in|on|through|there|hung|laid|cut|built|dug|set|put)';
/** What is told of a flaw: a drain half blocked is not half done. */
const HARMED = '(?:block|clog|plugg|rott|bur|fill|stuck|dropp|crack|ripp|collaps|melt|rust|clos|shut|open|empt)';
/** "Half sealed", "nearly done", "half of them", "got about half the siding on". */
const HALF = new RegExp(
  `\\b(?:half|halfway|partly|part|nearly|almost|mostly) (?!${HARMED})(?:way )?${PARTICIPLE}\\b|(?<!\\ba )\\b(?:about |only |just )?half (?:of )?(?:the (?!time|day|week|night|morning|afternoon|job|house|crew)|them\\b|em\\b|those |it\\b)`,
);
const SIDES = '(?:left|right|north|south|east|west|front|back|rear|top|bottom|near|far|inside|outside|one|first)';
/** "On the left side only", "only the front", "just the one side". */
const ONE_SIDE = new RegExp(
  `\\b(?:the )?${SIDES}(?:[ -]hand)?(?: (?:side|half|wall|end|run|row|face|leaf|slope|bay|corner|door|one|elevation))? only\\b|\\b(?:only|just) (?:got |did |done |on )*(?:the |that |one )(?:one )?(?:${SIDES})(?:[ -]hand)? (?:side|half|wall|end|run|row|face|leaf|slope|bay|one|elevation)\\b`,
);
/** "Ran short two feet at the top", "ran out before the last wall". */
const RAN_OUT = /\b(?:ran|run|came up) (?:out|short|shy)\b(?! to\b| the\b)[^,.;!?\n]{0,40}/;
/** "That's as far as I got", "before the light went", "so far". */
const SO_FAR =
  /\b(?:so far(?! (?:so )?good)|(?:that's|which is) as far as|before (?:the (?:light|rain|dark)|it got dark|dark\b|we lost|i lost)|that's all (?:the|i|we|they|he) [a-z ]{0,25}\bhad)\b/;
/** "The other wall's waiting on its stick", "lower one waits", "the second's not in yet". */
const OTHER_WAITS =
  /\b(?:the )?(?:other|others|last|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|remaining)(?: (?!and\b|is\b|to\b)[a-z]+){0,2}(?:'s|s'| is| are|'re)? (?:still )?(?:waiting|waits?|to do|to go|undone|not (?:in|on|up|done|down|started|hung|here)|isn't (?:in|on|up|done)|has to wait|(?:got|has) to wait)\b[^,.;!?\n]{0,30}/;
/** "Seven are in and the eighth there's a hole": one of them is told apart, and not as done. */
const BUT_ONE =
  /^,? (?:and|but) (?:the )?((?:second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|other one|last one)(?:'s| is| has| there's| won't| needs| wants| i )(?! (?:in|on|up|done|fine|good)\b)[^,.;!?\n]{0,30})/;
/** "A latch on it but nothing on the back yet", "but no cement yet". */
const NOT_YET = /\bbut ((?:nothing|no|not|none)\b [^,.;!?\n]{2,30}? yet)\b/;
/** "For now", "in the meantime", "till the new one comes". */
const FOR_NOW =
  /\b(?:for now|in the meantime|for the mean ?time|for the time be(?:ing|in|in')|as a stop ?gap|temporar(?:y|ily)|(?:till|til|until) (?:the (?:new|right|real|proper)|the rest|i (?:get|can get)|we (?:get|can get)|it comes|they come))\b/;
/** It goes on with the trouble: "but it's left hand", "but still nothing", "she still shakes till ...". */
const TROUBLE =
  /^[ ,.]*(?:but (?:it's (?:the |for )|it's not|is (?:of )?the wrong|it|she|he|they|no\b|not\b|only\b|still\b|you can still)|(?:and |but )?(?:(?:it|she|he|they|that)(?:'s|'re)? )?still (?:nothing|no|not|dead|dark|won't|doesn't|don't|can't|isn't|[a-z]+(?:s|ing)\b))/;
const NO_TROUBLE =
  /^[ ,.]*but (?:it|she|he|they|that)(?:'s|'ll| is| does| will)? (?:all |now |really )*(?:closes?|works?|holds?|fits?|runs?|shuts?|locks?|latch(?:es)?|opens?|drains?|do|fine|good|ok|okay|took|was|were|did|had)\b/;
/** "Just wants two lags", "only needs its latch". */
const WANTS = /^[ ,.]*(?:(?:it|she|he|that|they|and|so) )*((?:just|only) (?:needs?|wants?) [^,.;!?\n]{2,30})/;

/** Whether words tell only what is left of work: "four to go, rest friday". */
export const tellsRest = (words: string): boolean => TO_GO.test(lowered(words)) || REST.test(lowered(words));

/** So many characters behind the words are looked at, and so near stands a count of what is left. */
const BEHIND = 100;
const WINDOW = 45;

/** What the words and those right behind them say of how much was done; null where they say nothing of the kind. */
export function partIn(text: string, { start, end }: Span): Part | null {
  const words = lowered(text.slice(start, end));
  const behind = lowered(text.slice(end, end + BEHIND));
  const tail = behind.split(/[.;!?\n]/)[0]!;
  // "Six on. One to do.": a sentence of its own, right behind.
  const next = behind.slice(tail.length + 1).split(/[.;!?\n]/)[0]!;
  const near = `${words}${tail.slice(0, WINDOW)}`;
  const said = `${words}${tail}`;
  const left =
    leftOfMany(words, behind) ??
    match(TO_GO, near) ??
    (next.length < WINDOW ? match(TO_GO_FIRST, next) : null) ??
    match(REST, near) ??
    (GOODS.test(words) ? null : caught(LEFT_BEHIND, tail)) ??
    after(EXCEPT, said.split(/ so /)[0]!) ??
    match(HALF, near) ??
    match(ONE_SIDE, near) ??
    (ALL.test(words) ? null : match(RAN_OUT, said)) ??
    match(OTHER_WAITS, said) ??
    caught(BUT_ONE, tail) ??
    caught(NOT_YET, said);
  if (left !== null) return { left, plain: true };
  const wants = WANTS.exec(tail)?.[1];
  if (wants) return { left: wants, plain: false };
  const over = FOR_NOW.test(near) || SO_FAR.test(near) || (TROUBLE.test(tail) && !NO_TROUBLE.test(tail));
  return over ? { left: null, plain: false } : null;
}

const ALL = /\b(?:all|both|every|whole|finished|done)\b/;
/** Told of goods: "two tubes in, four left" are tubes. */
const GOODS = /\b(?:tubes?|bags?|box(?:es)?|gallons?|gal|sheets?|packs?|rolls?|quarts?|litres?|liters?|tins?|cans?)\b/;

const match = (pattern: RegExp, said: string): string | null => pattern.exec(said)?.[0]?.trim() ?? null;
const caught = (pattern: RegExp, said: string): string | null => pattern.exec(said)?.[1]?.trim() ?? null;
/** What is left out is what is left. */
const after = (pattern: RegExp, said: string): string | null => {
  const out = caught(pattern, said);
  return out ? `${out} left` : null;
};
