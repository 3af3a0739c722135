import Fraction from 'fraction.js';
import { keyWords, likeness } from '../../parser/trade/likeness.ts';
import type { Material } from '../../parser/types.ts';
import type { ComputedLine } from '../takeoff/types.ts';
import { event } from './items.ts';
import type { Entry, Event, OnHand, OrderLine } from './types.ts';

/** Everything said of one kind of goods, in its own purchase unit. */
export interface Position {
  key: string;
  item: string;
  size: string | null;
  specs: string[];
  unit: string | null;
  counter: string;
  words: Set<string>;
  need: Fraction | null;
  bought: Fraction;
  /** On order with a supplier: neither to buy nor on hand. */
  ordered: Fraction;
  used: Fraction;
  returned: Fraction;
  have: Fraction;
  /** Needed, but nobody said how many. */
  needUncounted: boolean;
  dropped: boolean;
  reasons: string[];
  history: Event[];
}

const zero = () => new Fraction(0);

/** Finds the goods' position by words and size, or makes one. Two sizes said are two kinds of goods. */
export function positionOf(
  positions: Position[],
  fact: Pick<Material, 'item' | 'size' | 'specs' | 'unit'>,
  key: string,
): Position {
  const words = keyWords(fact.item);
  let best: Position | null = null;
  let score = 0.74;
  for (const position of positions) {
    if (position.size && fact.size && sizeKey(position.size) !== sizeKey(fact.size)) continue;
    const same = likeness(words, position.words);
    const scored = same + (position.size && fact.size ? 0.1 : 0) + (position.words.size === words.size ? 0.05 : 0);
    if (same >= 0.75 && scored > score) {
      best = position;
      score = scored;
    }
  }
  if (best) {
    best.size ??= fact.size;
    best.unit ??= fact.unit;
    if (best.unit === 'each' && fact.unit && fact.unit !== 'each' && best.need === null) best.unit = fact.unit;
    return best;
  }
  const made: Position = {
    key,
    item: fact.item,
    size: fact.size,
    specs: [...fact.specs],
    unit: fact.unit,
    counter: 'general',
    words,
    need: null,
    bought: zero(),
    ordered: zero(),
    used: zero(),
    returned: zero(),
    have: zero(),
    needUncounted: false,
    dropped: false,
    reasons: [],
    history: [],
  };
  positions.push(made);
  return made;
}

const sizeKey = (size: string) =>
  size
    .toLowerCase()
    .replace(/["”″]|\bin\b\.?|\s+/g, '')
    .replace(/×/g, 'x');

/** One statement about goods meets what stands: a need said twice is one need, "one more" adds, "make it three" replaces. */
export function meetMaterial(position: Position, fact: Material, entry: Entry): void {
  const amount = fact.exact ? new Fraction(fact.exact) : fact.quantity !== null ? new Fraction(fact.quantity) : null;
  const day = entry.at.slice(0, 10);
  position.history.push(event(entry, fact.status, fact.quote));
  const count = amount ?? new Fraction(1);
  switch (fact.status) {
    case 'need': {
      position.dropped = false;
      if (!amount) position.needUncounted = true;
      else if (position.need === null) position.need = amount;
      else if (fact.counts === 'more') position.need = position.need.add(amount);
      else if (fact.counts === 'total' || amount.compare(position.need) !== 0)
        position.need = restated(position, amount, fact);
      position.reasons.push(
        `${amount ? amount.toFraction(true) : 'some'} ${fact.unit ?? ''} ${fact.counts === 'more' ? 'more ' : ''}needed, said ${day}`.replace(
          / +/g,
          ' ',
        ),
      );
      break;
    }
    case 'bought':
      position.bought = position.bought.add(count);
      position.ordered = zero();
      position.reasons.push(`${count.toFraction(true)} bought ${day}`);
      break;
    case 'ordered':
      position.ordered = position.ordered.add(amount ?? position.need ?? count);
      position.reasons.push(`ordered ${day}`);
      break;
    case 'used':
      position.used = position.used.add(count);
      if (position.need !== null && position.bought.compare(0) === 0 && position.have.compare(0) === 0)
        position.need = position.need.sub(count).compare(0) > 0 ? position.need : zero();
      position.reasons.push(`${count.toFraction(true)} used ${day}`);
      break;
    case 'returned':
      position.returned = position.returned.add(count);
      position.reasons.push(`${count.toFraction(true)} taken back ${day}`);
      break;
    case 'have':
      // What is said to be on hand is counted, whatever was bought and used before.
      position.have = count;
      position.bought = zero();
      position.used = zero();
      position.reasons.push(`${count.toFraction(true)} on hand ${day}`);
      break;
    case 'mentioned':
      break;
  }
}

/** A second count: of the same need when goods were bought in between, else the later figure stands. */
function restated(position: Position, amount: Fraction, fact: Material): Fraction {
  return fact.counts === 'total' || position.bought.compare(0) === 0 ? amount : position.bought.add(amount);
}

/** What is left in the van: had or bought, less what was used or went back. */
export const onHandOf = (p: Position): Fraction => {
  const left = p.have.add(p.bought).sub(p.used).sub(p.returned);
  return left.compare(0) > 0 ? left : zero();
};

/** What has still to be bought of said needs, in whole purchase units. */
function toBuy(p: Position): Fraction | null {
  if (p.need === null) return null;
  const left = p.need.sub(p.bought).sub(p.have).sub(p.ordered);
  return left.compare(0) > 0 ? left.ceil() : zero();
}

/** The order and the stock, from what was said and what was reckoned; a reckoned line stands before a said one. */
export function settle(
  positions: readonly Position[],
  computed: readonly ComputedLine[],
): { order: OrderLine[]; onHand: OnHand[] } {
  const order: OrderLine[] = [];
  const reckoned = new Set<Position>();
  for (const line of computed) {
    const words = keyWords(line.item);
    const position = positions.find(
      (p) => likeness(words, p.words) >= 0.75 && (!p.size || !line.size || sizeKey(p.size) === sizeKey(line.size)),
    );
    if (position) reckoned.add(position);
    // "Studs, 2x4 eight footers": the section is the reckoned line's own size, no goods beside it.
    for (const p of positions) if (p.need === null && line.size?.split(' ').includes(p.item)) reckoned.add(p);
    if (position?.dropped) continue;
    const stock = position && !line.stockUsed ? stockIn(position, line) : zero();
    const net = line.amount.sub(stock);
    if (net.compare(0) <= 0) continue;
    const packs = (line.pack ? net.div(line.pack.holds) : net).ceil();
    const bought = position && line.pack && position.unit === line.pack.unit ? position.bought : zero();
    const left = packs.sub(bought);
    if (left.compare(0) <= 0) continue;
    order.push({
      key: `reckoned:${line.item}:${line.size ?? ''}:${line.area ?? ''}`,
      item: line.item,
      size: line.size,
      specs: line.specs,
      quantity: left.toFraction(),
      unit: line.pack?.unit ?? line.unit,
      state: 'to buy',
      because: `${line.working}${stock.compare(0) > 0 ? `; less ${stock.toFraction(true)} on hand` : ''}`,
      counter: position?.counter ?? 'general',
      history: position?.history ?? [],
      needs: {
        exact: net.sub(line.pack ? bought.mul(line.pack.holds) : bought).toFraction(),
        unit: line.unit,
        holds: (line.pack?.holds ?? new Fraction(1)).toFraction(),
      },
    });
  }
  for (const p of positions) {
    if (reckoned.has(p) || p.dropped) continue;
    const buy = toBuy(p);
    const uncounted =
      buy === null &&
      p.needUncounted &&
      p.bought.compare(0) === 0 &&
      p.ordered.compare(0) === 0 &&
      p.have.compare(0) === 0 &&
      p.used.compare(0) === 0;
    if (!uncounted && (buy === null || buy.compare(0) === 0)) continue;
    order.push({
      key: p.key,
      item: p.item,
      size: p.size,
      specs: p.specs,
      quantity: buy?.toFraction() ?? null,
      unit: p.unit,
      state: 'to buy',
      because: p.reasons.join('; '),
      counter: p.counter,
      history: p.history,
    });
  }
  const onHand = positions
    .filter((p) => onHandOf(p).compare(0) > 0)
    .map((p) => ({ item: p.item, size: p.size, quantity: onHandOf(p).toFraction(), unit: p.unit }));
  return { order, onHand };
}

/** Stock in the line's own unit: the pack's, or the amount's. */
function stockIn(p: Position, line: ComputedLine): Fraction {
  const stock = p.have.sub(p.returned);
  if (stock.compare(0) <= 0) return zero();
  if (line.pack && p.unit === line.pack.unit) return stock.mul(line.pack.holds);
  return p.unit === line.unit || p.unit === null || (p.unit === 'each' && !line.pack) ? stock : zero();
}
