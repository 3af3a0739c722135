import { type Chunk, isGoods, isModal, isSubjectPronoun } from '../chunks.ts';
import { isPerson, type Talk } from '../talk.ts';
import type { Asked } from './goesOn.ts';
import type { Placed } from './naming.ts';

/** Goods asked for with no count: "need caulk", "grab some tape and screws". How many is for the buyer to say. */

const ASKS = /^(?:need|buy|order|grab|get|up|bring|want)$/;
/** What may stand before the asking where a person asks: "I'm gonna", "please", "also still". */
const BEFORE =
  /^(?:also|still|please|just|now|then|and|so|but|to|gonna|gotta|have|going|might|probably|really|we're|i'm|we'll|i'll|us|'ll|will|need)$/;
const SOME = /^(?:some|more|the|me|us|any|a|few|new)$/;
/** "Need grout for the hearth, 30 square feet of pavers": how much is told, and reckoned. */
const EXTENT = /^(?:area|length|volume)$/;
/** What may follow: another of the list, what it is for, where it is from. */
const BEHIND = /^(?:and|for|from|too|also|please|tomorrow|today|as|\+|&|,)$/;

/**
 * True where a clause asks for goods that nobody counts: right behind its asking, or behind others that it asks for.
 *
 * @param last what was told of the lot before
 */
export function asksUncounted(talk: Talk, { lot, at }: Placed, last: Asked | null): boolean {
  const { chunks, negative } = talk.frames[at]!;
  if (negative || lot.amount || lot.sizes.length || !lot.own.some(isGoods) || !endsThere(chunks[lot.until]))
    return false;
  if (talk.reading.quantities.some((q) => q.start > chunks[lot.from]!.start && EXTENT.test(q.unitKind ?? '')))
    return false;
  let k = lot.from - 1;
  while (k >= 0 && SOME.test(chunks[k]!.word)) k--;
  const before = chunks[k];
  if (!before) return false;
  if (/^(?:and|\+|&|,)$/.test(before.word)) return last?.status === 'need' && last.at === at && last.until >= k;
  if (before.word === 'up' && chunks[--k]?.word !== 'pick') return false;
  // "Get the drywall hung" is work.
  if (before.word === 'get' && chunks.slice(lot.until).some((c) => c.verb && !isGoods(c))) return false;
  return ASKS.test(before.word) && isAsker(chunks.slice(0, k));
}

const endsThere = (next: Chunk | undefined) =>
  !next || next.kind === 'time' || next.kind === 'mark' || BEHIND.test(next.word);

/** Nobody, or a person: "the wall needs paint" is work. */
const isAsker = (said: readonly Chunk[]) =>
  said.every((c) => BEFORE.test(c.word) || isSubjectPronoun(c) || isModal(c) || isPerson([c]));
