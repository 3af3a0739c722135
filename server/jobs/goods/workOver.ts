import { sameArea, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { type Board, isWork, type Standing } from '../list/board.ts';
import { TAKEN } from '../list/endings/index.ts';
import { headOf, numbersClash } from '../list/match.ts';
import type { Position } from './position.ts';

/** Work that wanted goods and is over since they were asked for. */
export interface WorkOver {
  /** The item's. */
  number: number;
  /** It names the goods itself: they were there, or are wanted no more. Else they may have been. */
  names: boolean;
}

/** Bought for a job and not for one piece of work: some of it is always left to do. */
const FASTENERS = new Set('screw nail bolt anchor fastener staple washer nut lag stud plug'.split(' ').map(stem));

/** The finished work that speaks for goods' being no more to buy, of which nothing was bought; null where none does. */
export function workOverSince(p: Position, { live, closed }: Board): WorkOver | null {
  const head = headOf(p.item);
  if (isWork(head) || p.bought.add(p.have).add(p.ordered).compare(0) > 0 || live.get(head)?.size) return null;
  const said = p.history.at(-1)!.at;
  let found: WorkOver | null = null;
  for (const item of closed.get(head) ?? []) {
    const over = item.history.findLast(({ what }) => what === 'done' || what === TAKEN || what === 'dropped');
    if (over === undefined || over.at <= said || item.history[0]!.at > said) continue;
    if (!isSameKind(p, item, over.words ?? '')) continue;
    if (item.head === head || wordsOf(over.words ?? '').has(head)) return { number: item.number, names: true };
    if (!FASTENERS.has(head)) found = { number: item.number, names: false };
  }
  return found;
}

/** Neither in another room nor of another size. */
const isSameKind = ({ size, rooms }: Position, { area, task }: Standing, words: string): boolean =>
  (!rooms.size || [...rooms].some((room) => sameArea(room, area))) &&
  !(size && numbersClash(wordsOf(`${task} ${words}`), wordsOf(size)));
