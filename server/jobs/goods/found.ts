/** Which goods of a job are meant by a name, a size and a unit. */
import { likeness, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Material } from '../../../parser/types.ts';
import { headOf } from '../list/match.ts';
import { openNeed } from './left.ts';
import { type Goods, newPosition, type Position } from './position.ts';

type Named = Pick<Material, 'item' | 'size' | 'specs' | 'unit' | 'status'> & Partial<Pick<Material, 'quote'>>;

/** Pieces are counted; a bag, a gallon or a foot is another measure of the same goods. */
const PIECES = new Set(['each', 'piece', 'length', 'stick', 'board', 'pair', 'set', 'kit']);
/** Whether amounts in both units may be added up: one unit, pieces by whatever name, or none said. */
export const sameUnit = (a: string | null, b: string | null) =>
  a === null || b === null || a === b || (PIECES.has(a) && PIECES.has(b));

/** The goods that are meant, by words and size; null where none stand. Two sizes said are two kinds of goods. */
export function findGoods(goods: Goods, fact: Named): Position | null {
  const words = wordsOf(fact.item);
  const known = bestOf(goods, words, fact);
  // "Used one tube", said after shingles: what comes by the tube is meant.
  const byName = fact.quote?.toLowerCase().includes(fact.item.toLowerCase());
  if (
    fact.status !== 'need' &&
    !byName &&
    known &&
    fact.unit &&
    !PIECES.has(fact.unit) &&
    !sameUnit(known.unit, fact.unit)
  ) {
    const pack = stem(fact.unit);
    const packed =
      goods.all.findLast((p) => p.words.has(pack) && openNeed(p)) ??
      goods.all.findLast((p) => p.unit === fact.unit && !p.dropped);
    if (packed) return packed;
  }
  return known;
}

/**
 * The goods that share a word and are worth most; of two alike the one filed last.
 *
 * @param least what they are worth at least
 * @param worth null where they cannot be meant
 */
export function likeliest(
  goods: Goods,
  words: ReadonlySet<string>,
  least: number,
  worth: (p: Position) => number | null,
): Position | null {
  const named = new Set<Position>();
  for (const word of words) for (const p of goods.byWord.get(word) ?? []) named.add(p);
  let best: Position | null = null;
  let most = least;
  for (const p of named) {
    const own = worth(p);
    if (own === null || own < most) continue;
    best = p;
    most = own;
  }
  return best;
}

const bestOf = (goods: Goods, words: ReadonlySet<string>, fact: Named): Position | null =>
  likeliest(goods, words, 0.75, (p) => {
    if (p.size && fact.size && sizeKey(p.size) !== sizeKey(fact.size)) return null;
    const same = likeness(words, p.words);
    if (same < 0.75) return null;
    return (
      same +
      (p.size && fact.size ? 0.1 : 0) +
      (p.words.size === words.size ? 0.05 : 0) +
      (words.has(headOf(p.item)) ? 0.03 : 0) +
      (fact.status !== 'need' && openNeed(p) ? 0.04 : 0)
    );
  });

/** The goods that are meant, which take on what was not known of them; new ones, under a key, where none stand. */
export function positionOf(goods: Goods, fact: Named, key: string): Position {
  const best = findGoods(goods, fact);
  if (best) {
    best.size ??= fact.size;
    best.unit ??= fact.unit;
    for (const spec of fact.specs) if (fact.status === 'need' && !best.specs.includes(spec)) best.specs.push(spec);
    if (best.unit === 'each' && fact.unit && fact.unit !== 'each' && best.need === null) best.unit = fact.unit;
    return best;
  }
  return newPosition(goods, fact, key);
}

/** A size as it is compared: `1/2"`, `1/2 in` and `1/2` are one. */
export const sizeKey = (size: string) =>
  size
    .toLowerCase()
    .replace(/["”″]|\bin\b\.?|\s+/g, '')
    .replace(/×/g, 'x');
