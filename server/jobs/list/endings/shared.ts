import { type Board, isWork, type Standing } from '../board.ts';
import { numbersClash } from '../match.ts';
import type { HeardClause } from './heard.ts';
import type { Rooms } from './rooms.ts';

/** What an item and a clause have in common. */
export interface Shared {
  /** Words for things in the clause that the item goes by. */
  own: number;
  /** How many open items go by the rarest of them. */
  rarest: number;
  before: number;
  named: number;
  /** Where the word stands that says what the item is. */
  head: 'own' | 'named' | 'before' | 'no';
  /** How much they share, the rarer the word the more. */
  weight: number;
  /** How much of what the item is called is said. */
  part: 'all' | 'most' | 'some' | 'few' | 'none';
  /** Words for things in the clause that are not the item's. */
  strange: number;
}

/** How an item stands among all that one clause may be about, by what they share with it. */
export type Rank = 'sole' | 'first' | 'tie' | 'near' | 'later';

/** An item that shares this part of the most that any shares is near to it. */
const NEAR = 0.6;

export function rankOf(weight: number, all: readonly number[]): Rank {
  const most = Math.max(...all);
  if (weight < most) return weight >= NEAR * most ? 'near' : 'later';
  if (all.length === 1) return 'sole';
  return all.filter((other) => other === most).length > 1 ? 'tie' : 'first';
}

export const goesBy = (item: Standing, word: string) =>
  item.words.has(word) || item.told.has(word) || item.head === word;

/** A room is no thing: what is done in the laundry is not all that is to do there. */
const isThing = (item: Standing, word: string, rooms: Rooms) => !rooms.words.has(word) || isHead(item, word, rooms);

const isHead = (item: Standing, word: string, rooms: Rooms) =>
  item.head === word && item.thing !== item.area && !rooms.ofSeveral.has(word);

const namesHead = (words: ReadonlySet<string>, item: Standing, rooms: Rooms) =>
  words.has(item.head) && isHead(item, item.head, rooms);

/** How many words for things they share. */
function sharedThings(item: Standing, things: readonly string[], rooms: Rooms): number {
  let n = 0;
  for (const word of things) if (goesBy(item, word) && isThing(item, word, rooms)) n++;
  return n;
}

/** How many open items go by a word. */
const openWith = (board: Board, word: string) => board.live.get(word)?.size ?? 0;

/** What they share; null where the clause cannot be about the item. */
export function sharedOf(heard: HeardClause, item: Standing, board: Board): Shared | null {
  const { clause, named, thingsNamed, said, rooms } = heard;
  if (numbersClash(clause.words, item.words)) return null;
  let own = 0;
  let strange = 0;
  let rarest = Number.POSITIVE_INFINITY;
  for (const word of clause.things)
    if (!goesBy(item, word)) strange++;
    else if (isThing(item, word, rooms)) {
      own++;
      rarest = Math.min(rarest, openWith(board, word));
    }
  const head = namesHead(clause.words, item, rooms)
    ? 'own'
    : namesHead(named, item, rooms)
      ? 'named'
      : namesHead(clause.before, item, rooms)
        ? 'before'
        : 'no';
  const inNamed = sharedThings(item, thingsNamed, rooms);
  if (!own && !inNamed && head === 'no') return null;
  return {
    own,
    rarest,
    before: sharedThings(item, clause.thingsBefore, rooms),
    named: inNamed,
    head,
    weight: weightOf(item, heard, board),
    part: partOf(item, said),
    strange,
  };
}

/** What the word counts that says what the item is, beside the rarity of all of them. */
const HEAD = 1;
/** A word that the item was only spoken of with counts less than one of its name. */
const TOLD = 0.6;
/** So many open items with a word are many. */
const MANY = 12;

function weightOf(item: Standing, { said, things }: HeardClause, board: Board): number {
  let sum = said.has(item.head) ? HEAD : 0;
  for (const word of things)
    if (goesBy(item, word))
      sum += (item.words.has(word) ? 1 : TOLD) * Math.log(1 + MANY / Math.max(1, openWith(board, word)));
  return sum;
}

function partOf(item: Standing, said: ReadonlySet<string>): Shared['part'] {
  let own = 0;
  let shared = 0;
  for (const word of item.words) {
    if (isWork(word)) continue;
    own++;
    if (said.has(word)) shared++;
  }
  const part = own ? shared / own : 0;
  return part === 1 ? 'all' : part >= 0.6 ? 'most' : part >= 0.3 ? 'some' : part > 0 ? 'few' : 'none';
}
