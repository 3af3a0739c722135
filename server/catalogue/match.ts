import { wordsOf } from '../../parser/trade/likeness.ts';
import type { OrderLine } from '../jobs/types.ts';
import type { CatalogueRow } from './rows.ts';

/** Goods as an order names them. */
export type Goods = Pick<OrderLine, 'item' | 'size'> & { specs?: readonly string[] };

/** Less alike than this is another thing. */
const LEAST = 0.6;

/** Rows of one name, with what they are looked up by. */
interface Shelf {
  words: ReadonlySet<string>;
  /** The name as `sizeKey` spells it, in which a size may stand. */
  name: string;
  rows: { row: CatalogueRow; size: string | null }[];
}

/** A catalogue made ready for looking up: names under each of their words, and what was looked up before. */
export interface Catalogue {
  rows: readonly CatalogueRow[];
  byWord: ReadonlyMap<string, readonly Shelf[]>;
  found: Map<string, readonly Match[]>;
}

export function catalogueOf(rows: readonly CatalogueRow[]): Catalogue {
  const byName = new Map<string, Shelf>();
  const byWord = new Map<string, Shelf[]>();
  for (const row of rows) {
    const shelf = byName.get(row.item) ?? shelve(row.item, byName, byWord);
    shelf.rows.push({ row, size: row.size && sizeKey(row.size) });
  }
  return { rows, byWord, found: new Map() };
}

function shelve(item: string, byName: Map<string, Shelf>, byWord: Map<string, Shelf[]>): Shelf {
  // Word by word, since lists repeat their words and each is then put to its stem once.
  const words = new Set(item.split(/\s+/).flatMap((word) => [...wordsOf(word)]));
  const shelf: Shelf = { words, name: sizeKey(item), rows: [] };
  byName.set(item, shelf);
  for (const word of words) {
    const shelves = byWord.get(word);
    if (shelves) shelves.push(shelf);
    else byWord.set(word, [shelf]);
  }
  return shelf;
}

export interface Match {
  row: CatalogueRow;
  /** 0 to 1. */
  score: number;
}

/** An order asks for the same goods again with every note; a list is looked up once for each. */
const MOST_KEPT = 2000;

/** Rows that are the goods, most alike first; of equals the cheaper, then the earlier line. */
export function matchesOf(catalogue: Catalogue, goods: Goods): readonly Match[] {
  const key = [goods.item, goods.size ?? '', ...(goods.specs ?? [])].join('|');
  const before = catalogue.found.get(key);
  if (before) return before;
  const matches = lookUp(catalogue, goods);
  if (catalogue.found.size >= MOST_KEPT) catalogue.found.clear();
  catalogue.found.set(key, matches);
  return matches;
}

function lookUp({ byWord }: Catalogue, goods: Goods): Match[] {
  const wanted = wordsOf(goods.item);
  const asked = new Set([...wanted, ...(goods.specs ?? []).flatMap((spec) => [...wordsOf(spec)])]);
  const size = goods.size === null ? null : sizeKey(goods.size);
  const shared = new Map<Shelf, number>();
  for (const word of wanted)
    for (const shelf of byWord.get(word) ?? []) shared.set(shelf, (shared.get(shelf) ?? 0) + 1);
  const matches: Match[] = [];
  for (const [shelf, common] of shared) {
    const alike = common / Math.min(wanted.size, shelf.words.size);
    // Nothing that either says more could bring it up to the least.
    if (0.7 * alike + 0.3 < LEAST) continue;
    const named = 0.7 * alike + 0.3 * bothSay(asked, shelf.words);
    for (const { row, size: own } of shelf.rows) {
      const score = Math.min(1, Math.round(named * sizedBy(size, own, shelf.name) * 100) / 100);
      if (score >= LEAST) matches.push({ row, score });
    }
  }
  return matches.sort(
    (a, b) =>
      b.score - a.score ||
      (a.row.price && b.row.price ? a.row.price.compare(b.row.price) : 0) ||
      a.row.line - b.row.line,
  );
}

/** How far two names say the same, 0 to 1: what either says more tempers it. */
function bothSay(asked: ReadonlySet<string>, words: ReadonlySet<string>): number {
  let shared = 0;
  for (const word of asked) if (words.has(word)) shared++;
  return Math.min(1, (2 * shared) / (asked.size + words.size));
}

/** Two sizes that differ are two kinds of goods, and a size that only one of them names leaves some doubt. */
function sizedBy(size: string | null, own: string | null, name: string): number {
  if (size && own) return size === own ? 1.05 : 0;
  if (size === null && own === null) return 1;
  return size && name.includes(size) ? 1.05 : 0.9;
}

/** `12" x 24"`, `12 × 24 in` and `12x24` are one size. */
const sizeKey = (size: string): string =>
  size
    .toLowerCase()
    .replace(/["”″']|\b(?:in|inch|inches)\b\.?|\s+/g, '')
    .replace(/×|by/g, 'x');
