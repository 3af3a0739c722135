/** Work that is told as done in part stays on the list, with what is left of it. */
import { wordsOf } from '../../../parser/trade/likeness.ts';
import { event } from '../event.ts';
import { isLive } from '../live.ts';
import type { Part } from '../said/partly.ts';
import type { Entry } from '../types.ts';
import { type Board, type Standing, sharing } from './board.ts';
import { stillToDo } from './counted.ts';
import { setState, type Telling, tell } from './items.ts';

/** What the history of an item calls it. */
const IN_PART = 'done in part';

/** How work on an item that stands was done in part; null where it is over, or where what is left is an item of its own. */
export function partOfWork({ board, entry, part }: Telling, item: Standing, quote: string): Part | null {
  const count = stillToDo(item, entry.id, quote);
  if (part) return part.left !== null && isItself(board, part.left, item) ? null : part;
  return count === null ? null : { left: `${count} left`, plain: true };
}

/** "Just the trim to go", where the trim stands on the list by itself. */
function isItself(board: Board, left: string, item: Standing): boolean {
  const words = wordsOf(left);
  return [...sharing(board, words, 'live')].some(
    (other) => other !== item && other.head !== item.head && words.has(other.head),
  );
}

/** Whether a note has told of an item as done in part already. */
export const isToldInPart = ({ history }: Standing, entry: Entry): boolean =>
  history.some((told) => told.entry === entry.id && told.what === IN_PART);

/** Keeps an item open that was worked on, or brings it back, and takes down what is left. */
export function leaveOpen(board: Board, item: Standing, entry: Entry, quote: string, left: string | null): void {
  if (!isLive(item)) setState(board, item, entry, 'open', quote);
  item.history.push(event(entry, IN_PART, quote));
  item.unsure = false;
  item.left = left ?? item.left;
  tell(board, item, quote);
}
