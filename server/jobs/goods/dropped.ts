/** Goods that are wanted no more. */
import { likeness } from '../../../parser/trade/likeness.ts';
import { event } from '../event.ts';
import type { Entry } from '../types.ts';
import type { Goods, Position } from './position.ts';

/** Drops all goods that go by some words. True where there were any. */
export function dropGoods(goods: Goods, words: ReadonlySet<string>, entry: Entry, quote: string): boolean {
  let any = false;
  for (const position of goods.all) {
    if (likeness(words, position.words) < 0.75) continue;
    dropPosition(position, entry, quote);
    any = true;
  }
  return any;
}

/** Goods that nobody has to buy any more. */
export function dropPosition(position: Position, entry: Entry, quote: string): void {
  position.dropped = true;
  position.reasons.push(`dropped ${entry.at.slice(0, 10)}`);
  position.history.push(event(entry, 'dropped', quote));
}
