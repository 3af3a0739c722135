import type { MaterialStatus } from '../../types.ts';
import { isGoods } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import { TELLS_WHICH } from './apposed.ts';
import type { Lot } from './lot.ts';
import type { Placed } from './naming.ts';

/** A clause that says what has to be there. */
const REQUIRES = /\b(?:have to|has to|needs?|must|should|short|supposed to|wants?|down to)\b/;

/**
 * Goods that a clause only lists, after others that were asked for: "26 hangers" and "3mm spacers" behind "need 14 of the
 * 2x8s"; or that follow from what has to be: "they have to be hardwired, so two smokes".
 *
 * @param before what was told of the lot before, and where; null for the first
 */
export function goesOn(
  talk: Talk,
  { lot, at }: Placed,
  before: { at: number; status: MaterialStatus } | null,
): 'need' | null {
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
  // A size alone, or the "and a panel" that ends a list, asks for goods only within the sentence that does.
  const listed = lot.sizes.length > 0 ? frame.joinedBy === 'comma' : lot.article === 1 && frame.openers.includes('and');
  if (!lot.amount) return sameBreath && listed ? 'need' : null;
  return sameBreath || talk.frames[before.at]!.predicate !== 'past' ? 'need' : null;
}

/** Nothing but the lot, and what goes with it: "10 lags with washers". */
function isWhole(talk: Talk, at: number, { until }: Lot): boolean {
  const rest = talk.frames[at]!.chunks.slice(until);
  return rest.length === 0 || (rest[0]!.word === 'with' && rest.slice(1).every((c) => isGoods(c)));
}
