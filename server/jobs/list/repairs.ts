/** Which item a plan is about: the flaw that it repairs, or what was told just before it. */
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { FollowUp } from '../../../parser/types.ts';
import { isLive } from '../live.ts';
import { PUTS, verbOf } from '../said/verbs.ts';
import { type Board, type Standing, sharing } from './board.ts';
import type { Telling } from './items.ts';

/** "The warranty card has to go in, you send that": what was told just before, in words too weak for work, is given out. */
export function assigned({ met }: Telling, { quote, task }: FollowUp, words: ReadonlySet<string>): Standing | null {
  const last = met.at(-1);
  if (!last || !isLive(last) || last.problem) return null;
  // "Council wants to see the pier, I'll book him for the twentieth".
  if (words.size === 1 && ARRANGES.test(task) && /\b(?:him|her|them|it|that)\b/.test(quote.toLowerCase())) return last;
  if (!WEAK.test(last.task) || !words.has(last.head)) return null;
  return /\b(?:that|it|them|those)$/.test(quote.toLowerCase()) ? last : null;
}
const ARRANGES = /^(?:book|call|schedule|text|email|ring|phone|arrange|line)\b/;
const WEAK = /^(?:go|be|have|get|need|want|happen|do|come)\b/;

/** "That gets a gfci", "it has to be copper": no work that an item could go by. */
export const NO_NAME =
  /^(?:has|have|had|gotta|got|get|gets|be|is|want|wants|need|needs|go|goes|should|must|to|close)\b|^[a-z]+$/;

/** Right behind a flaw, of that thing: "that gets a gfci", "has to be cut out". */
const POINTS =
  /^(?:so |and |but |which )*(?:(?:that|it|those|they|these|both)(?:'s|'ll)?|needs?|wants?|has to|have to|gotta|gets?|before (?:we|i|you|anybody|anyone))\b/;

/** "Has to be raked out", "that just needs screwing down", "goes back on Tuesday": work without a thing of its own. */
const ELIDED =
  /^(?:(?:so|and|but|which|then|also|still) )*(?:(?:that|it|those|they|these|both|this)(?:'s|'ll|'re)? )?(?:(?:just|still|also|all|only) )*(?:needs?|wants?|has (?:got )?to|have to|gotta|got to|gets|goes back|is to|are to)\b/;
/** "Swap it", "cap it and box it", "I'll fix that", "scrape that and repaint it", "swap". */
const IT =
  /^(?:(?:so|and|but|then|also|still|just|we|i|i'll|we'll|i'm gonna|we're gonna|gonna|gotta|let's|to|have to|has to) )*[a-z]+(?: (?:and|\+) [a-z]+)?(?: (?:back|up|out|off|down|in))? (?:it|that|em|'em|them|those)\b(?! (?:one|thing|[a-z]+ing)\b)|^(?:swap|replace|fix|repair|change|reset|rehang|reglue|patch)$/;

/** The flaw told last in the same note, where the words of a plan name no thing of their own. */
function meantByIt({ met, lead, board }: Telling, { quote, task, area }: FollowUp): Standing | undefined {
  const last = met.at(-1);
  if (!last || !isLive(last) || !last.problem || !sameArea(last.area, area)) return undefined;
  if (!/^[\s,:+-]*(?:(?:and|so|plus|also|but|then)[\s,]*)*$/.test(lead) || LOOKS.test(task)) return undefined;
  const said = lowered(quote);
  if (!ELIDED.test(said) && !IT.test(said)) return undefined;
  // What stands on the list under a name of its own is no part of this.
  const words = [...wordsOf(task)];
  return board.items.slice(-40).some((i) => i !== last && isLive(i) && words.includes(i.head)) ? undefined : last;
}

const MOVES =
  /\b(?:mov(?:es?|ed|ing)|push(?:es|ed)|slid(?:es?)?|slip(?:s|ped)?|starts?|waits?|has to wait|gonna be|will be|set for|(?:i|we) do|not (?:till|until)|earliest|goes (?:in|on|up|down)|promised)\b/;
const DAYS =
  /\b(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?s?\b|\b(?:today|tonight|tomorrow|tmrw|morning|afternoon|noon|next|week|too|then|till|until|earliest|whole|once|be|do|all|the|so)\b/g;

/** "Grout moves to Monday", "rail I do Tuesday": a day for work that stands, and nothing else. */
export function moved({ board }: Telling, fact: FollowUp): Standing | null {
  if (fact.task === 'come') return comesAnotherDay(board, fact);
  const said = lowered(fact.quote);
  const only =
    /^(?:the |that )?[a-z]+(?: [a-z]+)? (?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?$/.test(said);
  if (!(fact.due ?? fact.notBefore) || !(only || MOVES.test(said))) return null;
  const words = [...wordsOf(said.replace(new RegExp(MOVES.source, 'g'), ' ').replace(DAYS, ' '))];
  if (!words.length) return null;
  const fits = [...sharing(board, new Set(words), 'live')].filter(
    (item) =>
      sameArea(item.area, fact.area) &&
      (words.includes(item.head) || words.includes(verbOf(item.task))) &&
      words.filter((word) => item.words.has(word) || item.told.has(word)).length * 2 > words.length,
  );
  return fits.length === 1 ? fits[0]! : null;
}

/** "Gil can't Thursday, he's Tuesday now": the one thing that he was to come for. */
function comesAnotherDay(board: Board, { who, due, notBefore }: FollowUp): Standing | null {
  if (!who || !(due ?? notBefore)) return null;
  const his = [...sharing(board, wordsOf(who), 'live')].filter(
    (item) => (item.due ?? item.readyOn) !== null && lowered(item.who ?? '') === lowered(who),
  );
  return his.length === 1 ? his[0]! : null;
}

/** The flaw that was told just before, where the words only point at it and ask for a repair, or for a state that it must reach. */
function pointedAt({ met, lead }: Telling, fact: FollowUp): Standing | undefined {
  const { task, quote } = fact;
  const last = met.at(-1);
  if (!last || !isLive(last) || !last.problem) return undefined;
  // What has a day, a wait or a doer of its own is work of its own.
  if (fact.due || fact.notBefore || fact.waitingFor || fact.who) return undefined;
  if (!POINTS.test(quote.toLowerCase()) || !/^[\s,]*(?:(?:and|so|plus|also|but)[\s,]*)*$/.test(lead)) return undefined;
  const before = /^before\b/i.test(quote);
  return before || REPAIRS.test(task) || (NO_NAME.test(task) && !/^(?:go|goes|get|gets)\b/.test(task))
    ? last
    : undefined;
}

/** The flaw that a repair is for: of the same note or among the latest, its thing named in the repair. */
export function flawOf(telling: Telling, fact: FollowUp): Standing | undefined {
  const { board, met } = telling;
  const { words, verb } = telling.called;
  const pointed = pointedAt(telling, fact) ?? meantByIt(telling, fact);
  if (pointed) return pointed;
  if (LOOKS.test(fact.task) || !REPAIRS.test(fact.task)) {
    // Other work, even a look at it, is for the flaw where the same note tells both.
    return met.findLast((item) => isLive(item) && item.problem && item.thing && words.has(item.head));
  }
  return [...board.items.slice(-12), ...met].findLast(
    (item) =>
      isLive(item) &&
      item.problem &&
      item.thing &&
      sameArea(item.area, fact.area) &&
      (words.has(item.head) || item.told.has(verb)) &&
      shareOf(wordsOf(item.thing), words) >= 0.5,
  );
}

const shareOf = (of: ReadonlySet<string>, words: ReadonlySet<string>) => {
  let shared = 0;
  for (const word of of) if (words.has(word)) shared++;
  return of.size ? shared / of.size : 0;
};

const LOOKS = /^(?:check|look|see|find|ask|call|measure|test|watch|inspect|photograph|send)\b/;
const REPAIRS =
  /^(?:replace|swap|change|repair|fix|re\w+|tighten|patch|seal|caulk|clean|clear|sister|cut|put|install|adjust|secure|fasten|new|scrape|sand|shim|plane|glue|straighten|level|plumb|unclog|snake|rehang)\b/;

/** Follow-ups with different work in mind are not one: "paint the casing" is not "caulk the casing". */
export function sameWork(item: Standing, mine: string): boolean {
  const theirs = verbOf(item.task);
  if (mine === theirs || item.task.includes(':')) return true;
  return PUTS.has(mine) && PUTS.has(theirs);
}
