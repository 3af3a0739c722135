/** An item of the list: opened, brought into a state, told more of; and asked about where it may be another. */
import { shownOf } from '../../../parser/shown.ts';
import { wordsOf } from '../../../parser/trade/likeness.ts';
import { event } from '../event.ts';
import type { Question } from '../ledger.ts';
import { isLive } from '../live.ts';
import type { Part } from '../said/partly.ts';
import type { Entry, ItemState } from '../types.ts';
import { add, type Board, enter, leave, type Standing } from './board.ts';
import type { Called } from './called.ts';
import type { Link, Linker } from './linking/index.ts';
import { perhapsDoneBy } from './perhapsDone.ts';
import type { Setting } from './setting.ts';

/** A fact on its way to an item: what a hand has taken apart, how it is told, and who says what it is told of. */
export interface Telling extends Setting {
  /** True where a hand said that this fact is an item of its own. */
  apart: boolean;
  /** A flaw or a plan that its own words, with those right behind it, leave to somebody else; or no work at all. */
  theirs: boolean;
  /** How it is told as done in part; null where it is not. */
  part: Part | null;
  /** What the fact is called. */
  called: Called;
  /** What the same note told as taken out, verb first; null where nothing was. */
  removed: string | null;
  /** Where a match that is close and not sure is asked about. */
  questions: Question[];
  /** Says what each fact is told of. */
  link: Linker;
}

type Opening = Pick<Standing, 'task' | 'area'> & Partial<Standing>;

/** A question about an item, which stands while the item is open. */
export function ask({ entry, questions }: Telling, question: string, item: Standing): void {
  questions.push({ noteId: entry.source?.noteId ?? entry.id, ask: question, item, whileOpen: true });
}

/**
 * Puts a new item on the list under the next number; waiting where it is said what it waits for, and until a later day.
 *
 * @param quote the words that opened it
 */
export function open({ board, entry, key, lead, called }: Telling, from: Opening, quote: string): Standing {
  const day = entry.at.slice(0, 10);
  const { words, head, said, namesIt } = called.filing;
  const item: Standing = {
    problem: null,
    thing: null,
    who: null,
    due: null,
    readyOn: null,
    waitingFor: null,
    doubtful: false,
    unsure: false,
    left: null,
    made: 0,
    wording: null,
    ...from,
    key,
    number: board.nextNumber++,
    state: from.readyOn && from.readyOn > day && from.waitingFor ? 'waiting' : 'open',
    openedOn: day,
    closedOn: null,
    history: [event(entry, 'opened', quote)],
    words,
    head,
    // The words name the thing themselves; where they only point at it, the ones before them name it.
    told: namesIt ? said : new Set([...said, ...wordsOf(lead)]),
    met: [key],
  };
  add(board, item);
  return item;
}

/** Brings an item into a state; `what` is what its history calls it, where that is not the state's own name. */
export function setState(
  board: Board,
  item: Standing,
  entry: Entry,
  state: ItemState,
  quote: string | null,
  what: string = isLive(item) || state !== 'open' ? state : 'reopened',
): void {
  if ((item.unsure || perhapsDoneBy(item) !== null) && item.state === state)
    item.history.push(event(entry, 'kept', quote));
  item.unsure = false;
  if (item.state === state) return;
  item.history.push(event(entry, what, quote));
  leave(board, item);
  item.state = state;
  if (!isLive(item)) Object.assign(item, { left: null, made: 0 });
  // Work signed off was finished on the day it was done.
  item.closedOn = isLive(item) ? null : (item.closedOn ?? entry.at.slice(0, 10));
  enter(board, item);
}

/** Takes what a fact says into an item that stands. */
export function join({ board, entry, key }: Telling, item: Standing, what: string, quote: string): void {
  item.history.push(event(entry, what, quote));
  item.met.push(key);
  if (item.history[0]!.entry !== entry.id) item.unsure = false;
  tell(board, item, quote);
  board.joined = item;
}

/** Takes on more words that it is spoken of with. */
export function tell(board: Board, item: Standing, text: string): void {
  const words = wordsOf(text);
  if (words === item.told || [...words].every((word) => item.told.has(word))) return;
  leave(board, item);
  item.told = new Set([...item.told, ...words]);
  enter(board, item);
}

/** `no. 4 (hang door, kitchen)`. */
export const nameOf = (item: Standing) => `no. ${item.number} (${shownOf(item)}${item.area ? `, ${item.area}` : ''})`;

/** A new item beside one that it may be: opened, and asked about. */
export function wonder(telling: Telling, perhaps: Standing | null, item: Standing): Standing {
  if (perhaps && !telling.apart)
    ask(
      telling,
      `Is no. ${item.number} the same as ${nameOf(perhaps)}? Say "${item.number} is the same as ${perhaps.number}".`,
      item,
    );
  return item;
}

/** What a hand has taken apart is an item of its own. */
export const ALONE: Link = { item: null, kept: true, perhaps: null };
