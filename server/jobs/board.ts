import { keyWords, sameArea } from '../../parser/trade/likeness.ts';
import type { Item } from './types.ts';

/** An item while the history is being folded: with the words that it is known by. */
export interface Standing extends Item {
  words: Set<string>;
  thingWords: Set<string>;
}

/** The punch list while it is being folded; items are found by their words, so that a long history stays quick. */
export interface Board {
  items: Standing[];
  byKey: Map<string, Standing>;
  byNumber: Map<number, Standing>;
  /** Items open or waiting, by each of their words. */
  live: Map<string, Set<Standing>>;
  /** Items closed, by each of their words, latest last. */
  closed: Map<string, Set<Standing>>;
  nextNumber: number;
}

export const newBoard = (): Board => ({
  items: [],
  byKey: new Map(),
  byNumber: new Map(),
  live: new Map(),
  closed: new Map(),
  nextNumber: 1,
});

/** Surely the same at and above `JOIN`. A wrong join loses work and a wrong split only repeats it, so the bar is high. */
const JOIN = 0.6;

/** Closed work is spoken of again while it is fresh: so many of the latest with a word are looked at. */
const FRESH = 40;

export const isLive = (item: Pick<Item, 'state'>) => item.state === 'open' || item.state === 'waiting';

/** Files an item under its words; again after it took on more words or another state. */
export function enter(board: Board, item: Standing): void {
  board.byNumber.set(item.number, item);
  const shelf = isLive(item) ? board.live : board.closed;
  for (const word of [...item.words, ...item.thingWords]) {
    const filed = shelf.get(word) ?? new Set();
    shelf.set(word, filed.add(item));
    const oldest = filed.values().next().value;
    if (shelf === board.closed && filed.size > FRESH && oldest) filed.delete(oldest);
  }
}

/** Takes an item from under its words, before its words or its state change. */
export function leave(board: Board, item: Standing): void {
  for (const shelf of [board.live, board.closed])
    for (const word of [...item.words, ...item.thingWords]) shelf.get(word)?.delete(item);
}

/** The best-matching item for some words in an area, newest first among equals; null under the bar. */
export function findItem(
  board: Board,
  words: ReadonlySet<string>,
  area: string | null,
  live: boolean,
  bar = JOIN,
): Standing | null {
  const shared = new Map<Standing, number>();
  for (const word of words)
    for (const shelf of live ? [board.live] : [board.live, board.closed])
      for (const item of shelf.get(word) ?? []) if (item.words.has(word)) shared.set(item, (shared.get(item) ?? 0) + 1);
  let best: Standing | null = null;
  let score = bar;
  for (const [item, count] of shared) {
    const scored = count / Math.min(words.size, item.words.size) + (item.area && area ? 0.05 : 0);
    if (scored < score || !sameArea(item.area, area)) continue;
    if (scored > score || item.number > (best?.number ?? 0)) {
      best = item;
      score = scored;
    }
  }
  return best;
}

/** Goes by other words from now on. */
export function reword(board: Board, item: Standing, task: string): void {
  leave(board, item);
  item.words = keyWords(task);
  enter(board, item);
}
