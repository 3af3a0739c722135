import Fraction from 'fraction.js';
import type { EntryBody, OnHand, OrderLine } from '../types.ts';

type BySetting = ReadonlyMap<string, Extract<EntryBody, { kind: 'setOrder' }>>;

/** What stays over of whole packs once a reckoned line is ticked as bought: it is on hand for the next need. */
export const leftOvers = (order: readonly OrderLine[], byHand: BySetting): OnHand[] =>
  order.flatMap((line) => {
    const set = byHand.get(line.key);
    if (!line.needs || set?.state !== 'bought') return [];
    const packs = new Fraction(set.quantity ?? line.quantity ?? 0);
    const over = packs.mul(line.needs.holds).sub(line.needs.exact);
    return over.compare(0) > 0
      ? [{ item: line.item, size: line.size, quantity: over.toFraction(), unit: line.needs.unit }]
      : [];
  });
