import type { MaterialStatus } from '../../types.ts';
import { isGoods, isNominal } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import { TELLS_WHICH } from './apposed.ts';
import type { Lot } from './lot.ts';
import type { Placed } from './naming.ts';

/** A clause that says what has to be there. */
const REQUIRES = /\b(?:have to|has to|needs?|must|should|short|supposed to|wants?|down to)\b/;

/** What was told of a lot: in which clause, where it ends there. */
export interface Asked {
  at: number;
  status: MaterialStatus;
  until: number;
}

/**
 * Goods that a clause only lists, after others that were asked for: "26 hangers" and "3mm spacers" behind "need 14 of the
 * 2x8s"; or that follow from what has to be: "they have to be hardwired, so two smokes".
 *
 * @param before what was told of the lot before, and where; null for the first
 */
export function goesOn(talk: Talk, { lot, at }: Placed, before: Asked | null): 'need' | null {
  const frame = talk.frames[at]!;
  const last = talk.frames[at - 1];
  // "Make the casing seven footers, twelve of them".
  if (lot.pointing && lot.amount && lot.from === 0 && frame.joinedBy === 'comma' && before?.at === at - 1)
    return before.status === 'need' && frame.predicate === 'none' ? 'need' : null;
  const plain =
    lot.from === 0 && !TELLS_WHICH.test(lot.own.at(-1)?.word ?? '') && lot.own.some(isGoods) && !frame.negative;
  if (!plain || !last) return null;
  if (lot.amount && frame.openers.includes('so') && frame.verbAt < lot.until)
    return REQUIRES.test(last.chunks.map((c) => c.word).join(' ')) ? 'need' : null;
  if (frame.predicate !== 'none' || before?.status !== 'need' || !isWhole(talk, at, lot)) return null;
  if (before.at !== at && before.at !== at - 1) return null;
  // "Two bolts to a toilet, three toilets": what goods are counted by.
  if (last.chunks.some((c) => c.term && lot.own.some((own) => own.term === c.term))) return null;
  const sameBreath = last.sentence === frame.sentence;
  // Goods alone go on with a list only within the sentence that asks for them: "two hinges, tape, and a panel".
  // "A post base, 4x4": its size.
  if (!lot.amount && lot.own.every((c) => c.term && isNominal(c.term.name))) return null;
  const listed = frame.joinedBy === 'comma' || frame.openers.includes('and');
  if (!lot.amount) return sameBreath && listed && !/^(?:the|that)$/.test(frame.chunks[0]!.word) ? 'need' : null;
  return sameBreath || talk.frames[before.at]!.predicate !== 'past' ? 'need' : null;
}

/** Nothing but the lot, and what goes with it: "10 lags with washers"; or the next of the list, "screws and a box of nails". */
function isWhole(talk: Talk, at: number, { until, amount }: Lot): boolean {
  const rest = talk.frames[at]!.chunks.slice(until);
  if (!amount && rest[0]?.word === 'and') return true;
  return rest.length === 0 || (rest[0]!.word === 'with' && rest.slice(1).every((c) => isGoods(c)));
}
