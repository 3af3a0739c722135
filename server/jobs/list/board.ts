import { keyWords } from '../../../parser/trade/likeness.ts';
import { isLive } from '../live.ts';
import type { Item, ItemState } from '../types.ts';

/** An item while the history is being folded: with the words that it is known by. */
export interface Standing extends Item {
  state: ItemState;
  /** How the list shows it, in the words in which it was told; null where its task says it as well. */
  wording: string | null;
  /** Nothing but one doubted telling speaks for it. */
  unsure: boolean;
  /** Of its task, its flaw and its thing. Replaced as a whole, never changed: copies of the item share it. */
  words: ReadonlySet<string>;
  /** Said of it besides: where it is, what it wants. Replaced as a whole as well. */
  told: ReadonlySet<string>;
  /** The word that says what it is about: of its thing, or of its task where no thing was named. */
  head: string;
  /** What is left of work done in part, as said. */
  left: string | null;
  /** So many of them are done, where they were counted. */
  made: number;
  /** Keys of the facts that met here, and ids of entries by hand, oldest first: what a split or an undo takes off again. */
  met: string[];
}

/** The punch list while it is being folded; items are found by their words, so that a long history stays quick. */
export interface Board {
  items: Standing[];
  byKey: Map<string, Standing>;
  /** By place: an item under each number that was given, or what it was joined into. */
  byNumber: Standing[];
  /** Items open or waiting, by each word that names a thing. */
  live: Shelf;
  /** Items closed, by the same words, latest last. */
  closed: Shelf;
  nextNumber: number;
  /** The item that a note joined last: "those are two different things". */
  joined: Standing | null;
}

type Shelf = Map<string, Set<Standing>>;

export const newBoard = (): Board => ({
  items: [],
  byKey: new Map(),
  byNumber: [],
  live: new Map(),
  closed: new Map(),
  nextNumber: 1,
  joined: null,
});

/** Closed work is spoken of again while it is fresh: so many of the latest with a word are looked at. */
const FRESH = 40;
/** Where more items than this share a word, the word tells nothing. */
const MOST = 400;

/** Words of work, not of things: too many items share them to be looked for by them. */
const WORK = keyWords(
  'replace repair check clean finish test call paint sand prime install tighten reseal adjust remove cut pull hang lay run fasten secure seal caulk patch touch look see take make do need apply need open missing loose broken bad',
);

export const isWork = (word: string) => WORK.has(word);

/** The words that an item is filed under: those that name a thing, and its head. */
function eachFiled({ words, told, head }: Standing, take: (word: string) => void): void {
  for (const word of words) if (!WORK.has(word)) take(word);
  for (const word of told) if (!words.has(word) && !WORK.has(word)) take(word);
  if (WORK.has(head) || !(words.has(head) || told.has(head))) take(head);
}

/** Files an item under its words; again after it took on more words or another state. */
export function enter(board: Board, item: Standing): void {
  const shelf = isLive(item) ? board.live : board.closed;
  eachFiled(item, (word) => {
    let filed = shelf.get(word);
    if (!filed) {
      filed = new Set();
      shelf.set(word, filed);
    }
    filed.add(item);
    if (shelf === board.closed && filed.size > FRESH) filed.delete(filed.values().next().value!);
  });
}

/** Takes an item from under its words, before its words or its state change. */
export function leave(board: Board, item: Standing): void {
  const shelf = isLive(item) ? board.live : board.closed;
  eachFiled(item, (word) => shelf.get(word)?.delete(item));
}

/** Puts a new item on the board under the next number. */
export function add(board: Board, item: Standing): void {
  board.items.push(item);
  board.byKey.set(item.key, item);
  board.byNumber[item.number] = item;
  enter(board, item);
}

/** The item under a key or number, whatever it was joined into. */
export const underNumber = (board: Board, number: number): Standing | null => board.byNumber[number] ?? null;

/** Every item that shares a word that names a thing, in the order in which they were filed. */
export function sharing(board: Board, words: ReadonlySet<string>, where: 'live' | 'closed'): Set<Standing> {
  const shelf = board[where];
  const things = [...words].filter((word) => !WORK.has(word));
  const out = new Set<Standing>();
  for (const word of words) {
    const filed = shelf.get(word);
    if (!filed || filed.size > MOST) continue;
    // A word of work finds what it is the name of: "the caulk's done".
    for (const item of filed) if (!things.length || !WORK.has(word) || item.head === word) out.add(item);
  }
  return out;
}

/** Goes by other words from now on. */
export function reword(board: Board, item: Standing, words: ReadonlySet<string>): void {
  leave(board, item);
  item.words = words;
  enter(board, item);
}

/** The same board again, so that folding on leaves the first one as it was; and which item of it stands for one of the first. */
export function copyBoard(board: Board): { copy: Board; twinOf: (item: Standing) => Standing } {
  /** By their number, which no two items share. */
  const twins: Standing[] = [];
  // What was joined into another is off the list, and words told behind may have filed it again.
  const twinOf = (item: Standing): Standing => {
    twins[item.number] ??= { ...item, met: [...item.met], history: [...item.history] };
    return twins[item.number]!;
  };
  const shelf = (from: Shelf): Shelf => mapped(from, (filed) => new Set([...filed].map(twinOf)));
  const copy = {
    items: board.items.map(twinOf),
    byKey: mapped(board.byKey, twinOf),
    byNumber: board.byNumber.map(twinOf),
    live: shelf(board.live),
    closed: shelf(board.closed),
    nextNumber: board.nextNumber,
    joined: board.joined && twinOf(board.joined),
  };
  return { copy, twinOf };
}

function mapped<K, V, T>(from: ReadonlyMap<K, V>, twinOf: (value: V) => T): Map<K, T> {
  const out = new Map<K, T>();
  for (const [key, value] of from) out.set(key, twinOf(value));
  return out;
}
