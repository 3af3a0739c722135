import { isWork, type Standing } from '../board.ts';
import { numbersClash } from '../match.ts';
import type { Rooms } from './rooms.ts';
import type { Telling } from './telling.ts';

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

/** Words for things that they share. A room is no thing: what is done in the laundry is not all that is to do there. */
function sharedThings(
  item: Standing,
  words: ReadonlySet<string>,
  rooms: Rooms,
  each: (word: string) => void = () => {},
): number {
  let n = 0;
  for (const word of words) {
    if (isWork(word) || !goesBy(item, word) || (rooms.words.has(word) && !isHead(item, word, rooms))) continue;
    n++;
    each(word);
  }
  return n;
}

const isHead = (item: Standing, word: string, rooms: Rooms) =>
  item.head === word && item.thing !== item.area && !rooms.ofSeveral.has(word);

/** What they share; null where the clause cannot be about the item. `openWith` says how many open items go by a word. */
export function sharedOf(
  { clause, named, said, rooms }: Pick<Telling, 'clause' | 'named' | 'said' | 'rooms'>,
  item: Standing,
  openWith: (word: string) => number,
): Shared | null {
  if (numbersClash(clause.words, item.words)) return null;
  let rarest = Number.POSITIVE_INFINITY;
  const own = sharedThings(item, clause.words, rooms, (word) => {
    rarest = Math.min(rarest, openWith(word));
  });
  const names = (words: ReadonlySet<string>) => words.has(item.head) && isHead(item, item.head, rooms);
  const head = names(clause.words) ? 'own' : names(named) ? 'named' : names(clause.before) ? 'before' : 'no';
  const inNamed = sharedThings(item, named, rooms);
  if (!own && !inNamed && head === 'no') return null;
  return {
    own,
    rarest,
    before: sharedThings(item, clause.before, rooms),
    named: inNamed,
    head,
    weight: weightOf(item, said, openWith),
    part: partOf(item, said),
    strange: [...clause.words].filter((word) => !isWork(word) && !goesBy(item, word)).length,
  };
}

/** What the word counts that says what the item is, beside the rarity of all of them. */
const HEAD = 1;
/** A word that the item was only spoken of with counts less than one of its name. */
const TOLD = 0.6;
/** So many open items with a word are many. */
const MANY = 12;

function weightOf(item: Standing, said: ReadonlySet<string>, openWith: (word: string) => number): number {
  let sum = said.has(item.head) ? HEAD : 0;
  for (const word of said)
    if (!isWork(word) && goesBy(item, word))
      sum += (item.words.has(word) ? 1 : TOLD) * Math.log(1 + MANY / Math.max(1, openWith(word)));
  return sum;
}

function partOf(item: Standing, said: ReadonlySet<string>): Shared['part'] {
  const own = [...item.words].filter((word) => !isWork(word));
  const part = own.length ? own.filter((word) => said.has(word)).length / own.length : 0;
  return part === 1 ? 'all' : part >= 0.6 ? 'most' : part >= 0.3 ? 'some' : part > 0 ? 'few' : 'none';
}
