import { keyWords, likeness } from '../../parser/trade/likeness.ts';
import type { OrderLine } from '../jobs/types.ts';
import type { CatalogueRow } from './rows.ts';

/** Goods as an order names them. */
export type Goods = Pick<OrderLine, 'item' | 'size'> & { specs?: readonly string[] };

/** Less alike than this is another thing. */
const LEAST = 0.6;

/** A row with what it is looked up by. */
interface Shelved {
  row: CatalogueRow;
  words: ReadonlySet<string>;
  size: string | null;
  name: string;
}

/** A catalogue made ready for looking up: rows under each of their words. */
export interface Catalogue {
  rows: readonly CatalogueRow[];
  byWord: ReadonlyMap<string, readonly Shelved[]>;
}

export function catalogueOf(rows: readonly CatalogueRow[]): Catalogue {
  const byWord = new Map<string, Shelved[]>();
  for (const row of rows) {
    const words = keyWords(row.item);
    const shelved = { row, words, size: row.size && sizeKey(row.size), name: sizeKey(row.item) };
    for (const word of words) {
      const shelf = byWord.get(word) ?? [];
      shelf.push(shelved);
      byWord.set(word, shelf);
    }
  }
  return { rows, byWord };
}

export interface Match {
  row: CatalogueRow;
  /** 0 to 1. */
  score: number;
}

/** Rows that are the goods, most alike first; of equals the cheaper, then the earlier line. */
export function matchesOf({ byWord }: Catalogue, goods: Goods): Match[] {
  const wanted = keyWords(goods.item);
  const asked = new Set([...wanted, ...(goods.specs ?? []).flatMap((spec) => [...keyWords(spec)])]);
  const size = goods.size === null ? null : sizeKey(goods.size);
  const near = new Set([...wanted].flatMap((word) => byWord.get(word) ?? []));
  return [...near]
    .map((shelved): Match => ({ row: shelved.row, score: scoreOf(wanted, asked, size, shelved) }))
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
  size: string | null,
  { words, size: own, name }: Shelved,
): number {
  if (size && own && size !== own) return 0;
  const alike = likeness(wanted, words);
  // Nothing that either says more could bring it up to the least.
  if (0.7 * alike + 0.3 < LEAST) return 0;
  let shared = 0;
  for (const word of asked) if (words.has(word)) shared++;
  const both = Math.min(1, (2 * shared) / (asked.size + words.size));
  const sized = size === null && own === null ? 1 : (size && own) || (size && name.includes(size)) ? 1.05 : 0.9;
  return Math.min(1, Math.round((0.7 * alike + 0.3 * both) * sized * 100) / 100);
}

/** `12" x 24"`, `12 × 24 in` and `12x24` are one size. */
const sizeKey = (size: string): string =>
  size
    .toLowerCase()
    .replace(/["”″']|\b(?:in|inch|inches)\b\.?|\s+/g, '')
    .replace(/×|by/g, 'x');
