import type { Quantity } from '../../types.ts';
import type { Chunk } from '../chunks.ts';

/**
 * A place in a clause that may tell of goods, before anyone asks whether it does: a count or a measure, a thing with an
 * article before it, a trade word alone, or a word that points ("one of those").
 */
export interface Lot {
  kind: 'count' | 'article' | 'bare' | 'pointer';
  /** Words said with it that name it, or only tell which ("the poly crystal ones"). */
  own: Chunk[];
  /** Its own words are a name; else what it means stands elsewhere. */
  named: boolean;
  sizes: Quantity[];
  amount: Quantity | null;
  upper: Quantity | null;
  /** How many are said without a figure: one in "a new ring", two in "both hinges", else 0. */
  article: 0 | 1 | 2;
  /** What it comes by where no figure says so: the bag in "a 5 kg bag". */
  pack?: string;
  /** Cable by its code, `12/2`. */
  code?: string;
  more: boolean;
  /** "Two of them", "fourteen of em": what is counted was told before. */
  pointing: boolean;
  from: number;
  until: number;
}

export const isCount = (q: Quantity) => q.unit === null || q.unit === 'each' || q.unit === 'pair' || q.unit === 'dozen';
export const isPack = (q: Quantity) => q.unitKind === 'pack' || (q.unitKind === 'count' && !isCount(q));
export const isBulk = (q: Quantity) =>
  q.unitKind === 'volume' ||
  q.unitKind === 'weight' ||
  (q.unitKind === 'area' && q.unitFrom === 'said') ||
  (q.unitKind === 'length' && /^(?:ft|m|yd|cu yd)$/.test(q.unit ?? ''));

/** What a lot is counted by: the kind of its unit, a pack, else how it is said. */
export const unitOf = (lot: Lot): string => (lot.upper ?? lot.amount)?.unitKind ?? (lot.pack ? 'pack' : lot.kind);

export const lotOf = (kind: Lot['kind'], from: number, until: number, rest: Partial<Omit<Lot, 'kind'>>): Lot => ({
  kind,
  own: [],
  named: false,
  sizes: [],
  amount: null,
  upper: null,
  article: 0,
  more: false,
  pointing: false,
  ...rest,
  from,
  until,
});
