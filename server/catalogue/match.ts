import { keyWords, likeness } from '../../parser/trade/likeness.ts';
import type { OrderLine } from '../jobs/types.ts';
import type { CatalogueRow } from './rows.ts';

/** Goods as an order names them. */
export type Goods = Pick<OrderLine, 'item' | 'size'> & { specs?: readonly string[] };

/** Less alike than this is another thing. */
const LEAST = 0.6;

/** A catalogue made ready for looking up. */
export interface Catalogue {
  rows: readonly CatalogueRow[];
  words: readonly ReadonlySet<string>[];
}

export const catalogueOf = (rows: readonly CatalogueRow[]): Catalogue => ({
  rows,
  words: rows.map((row) => keyWords(row.item)),
});

export interface Match {
  row: CatalogueRow;
  /** 0 to 1. */
  score: number;
}

/** Rows that are the goods, most alike first; of equals the cheaper, then the earlier line. */
export function matchesOf({ rows, words }: Catalogue, goods: Goods): Match[] {
  const wanted = keyWords(goods.item);
  const asked = new Set([...wanted, ...(goods.specs ?? []).flatMap((spec) => [...keyWords(spec)])]);
  return rows
    .map((row, k): Match => ({ row, score: scoreOf(wanted, asked, words[k]!, goods.size, row) }))
    .filter(({ score }) => score >= LEAST)
    .sort(
      (a, b) =>
        b.score - a.score ||
        (a.row.price && b.row.price ? a.row.price.compare(b.row.price) : 0) ||
        a.row.line - b.row.line,
    );
}

/**
 * How surely a row is the goods: shared words of the smaller name, tempered by what either says more. Two sizes that
 * differ are two kinds of goods, and a size that only one of them names leaves some doubt.
 */
function scoreOf(
  wanted: ReadonlySet<string>,
  asked: ReadonlySet<string>,
  named: ReadonlySet<string>,
  size: string | null,
  row: CatalogueRow,
): number {
  const inName = size !== null && sizeKey(row.item).includes(sizeKey(size));
  if (size && row.size && sizeKey(size) !== sizeKey(row.size)) return 0;
  const shared = [...asked].filter((word) => named.has(word)).length;
  const both = (2 * shared) / (asked.size + named.size);
  const sized = size === null && row.size === null ? 1 : (size && row.size) || inName ? 1.05 : 0.9;
  return Math.min(1, Math.round((0.7 * likeness(wanted, named) + 0.3 * Math.min(1, both)) * sized * 100) / 100);
}

/** `12" x 24"`, `12 × 24 in` and `12x24` are one size. */
const sizeKey = (size: string): string =>
  size
    .toLowerCase()
    .replace(/["”″']|\b(?:in|inch|inches)\b\.?|\s+/g, '')
    .replace(/×|by/g, 'x');
