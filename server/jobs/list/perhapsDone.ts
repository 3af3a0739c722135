/** Items that a note tells of as finished, as likely as not: they stay on the list, with the words, until somebody says which. */

import { event } from '../event.ts';
import { isLive } from '../live.ts';
import type { Entry, Item } from '../types.ts';
import type { Standing } from './board.ts';

/** What the history of an item calls it. */
const PERHAPS_DONE = 'perhaps done';

/** Takes down the words that may have finished an item, unless it is set for a later day. */
export function wonderIfDone(item: Standing, entry: Entry, key: string, quote: string): void {
  const last = item.history.at(-1)!;
  if (item.readyOn !== null && item.readyOn > entry.at.slice(0, 10)) return;
  if (last.entry === entry.id && last.what === PERHAPS_DONE) return;
  item.history.push(event(entry, PERHAPS_DONE, quote));
  item.met.push(key);
}

/** The words that may have finished an item of which nobody has spoken since; null where there are none. */
export function perhapsDoneBy(item: Pick<Item, 'state' | 'history'>): string | null {
  const last = item.history.at(-1);
  return isLive(item) && last?.what === PERHAPS_DONE ? last.words : null;
}
