import type { Quantity } from '../../types.ts';
import { type Chunk, isDeterminer, isGoods, isNounTerm, isPreposition } from '../chunks.ts';
import { isSize, joinsPair, nounPhraseFrom } from '../talk.ts';

/** A figure that tells which goods: a length, a gauge, volts, one of a pair. */
const sized = (c: Chunk) =>
  isSize(c) ||
  c.quantity?.group?.kind === 'pair' ||
  (c.quantity?.unitKind === 'voltage' && c.quantity.unitFrom === 'said');

/** Splits a noun phrase into the item's name and its sizes, before or after it ("slip joint washer inch and a half"). */
export function nameAndSizes(
  chunks: readonly Chunk[],
  at: number,
): { item: Chunk[]; sizes: Quantity[]; until: number } {
  let end = nounPhraseFrom(chunks, at);
  // "box of screws, two inch", "washers for the sink": a preposition ends the name; "roll of tape" was counted.
  if (chunks[end]?.word === 'of' && end > at && isGoods(chunks[end + 1])) end = nounPhraseFrom(chunks, end + 1);
  // "Low-expansion foam": a hyphen joins.
  while (isHyphen(chunks, end) && end > at) end = nounPhraseFrom(chunks, end + 1);
  const inner = chunks.slice(at, end).filter((c, k) => c.kind !== 'mark' && !joinsPair(chunks, at + k));
  const marks = end - at - inner.length;
  // "A gallon of primer, no wait, two gallons": the figure that now holds is its count.
  const restated = inner.findIndex(
    (c, k) => k > 0 && c.quantity?.takenBackFrom !== undefined && c.quantity.unitKind !== 'length',
  );
  const cut =
    restated > 0
      ? restated
      : inner.findIndex((c, k) => k > 0 && (isDeterminer(c) || (c.quantity !== undefined && isNextCount(inner, k))));
  const own = cut > 0 ? inner.slice(0, cut) : inner;
  const lastNoun = own.findLastIndex((c) => isGoods(c) || isNounTerm(c));
  const until = at + own.length + (cut > 0 ? 0 : marks);
  const trimmed = own.filter((c, k) => !(c.quantity && !sized(c)) || k < lastNoun);
  const countAfter = own.findIndex((c, k) => k > lastNoun && lastNoun >= 0 && c.quantity && !sized(c));
  return {
    item: trimmed.filter((c) => c.kind !== 'quantity'),
    sizes: trimmed.flatMap((c) => (c.quantity && sized(c) ? [c.quantity] : [])),
    until: countAfter >= 0 ? at + countAfter : until,
  };
}

const isHyphen = (chunks: readonly Chunk[], k: number) =>
  chunks[k]?.word === '-' && chunks[k - 1]?.end === chunks[k]!.start && chunks[k + 1]?.start === chunks[k]!.end;

/** "Two flappers three washers", "acrylic two tubes", "screws six pounds": a count inside begins the next lot. */
function isNextCount(chunks: readonly Chunk[], k: number): boolean {
  const { unitKind, unitFrom, group, quote } = chunks[k]!.quantity!;
  if (/^(x|qty|\()/i.test(quote)) return false;
  const last = !isNounTerm(chunks[k + 1]) && chunks[k + 1]?.kind !== 'word';
  const packed =
    unitKind === 'pack' || (last && unitFrom === 'said' && /^(?:weight|volume|area)$/.test(unitKind ?? ''));
  return packed || (!sized(chunks[k]!) && group?.kind !== 'pair' && chunks.slice(0, k).some(isGoods));
}

/** The item's words without the small ones that carry no name. */
export const nameOf = (item: readonly Chunk[]) => item.filter((c) => !(c.kind === 'word' && isPreposition(c)));
