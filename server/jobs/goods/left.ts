/** What is left to buy of goods, and what is left of them in the van. */
import type Fraction from 'fraction.js';
import { isSome, NONE, positive } from './amounts.ts';
import type { Position } from './position.ts';

/** Bought or had, less what went back: that much of the need is met. */
export const covered = (p: Position): Fraction => positive(p.bought.add(p.have).sub(p.returned));

/** What is left in the van: had or bought, less what was used or went back. */
export const onHandOf = (p: Position): Fraction => positive(p.have.add(p.bought).sub(p.used).sub(p.returned));

/** What has still to be bought of said needs, in whole purchase units; null where nobody said how many. */
export function toBuy(p: Position): Fraction | null {
  if (p.need === null) return null;
  if (p.met) return NONE;
  return positive(p.need.sub(covered(p)).sub(p.ordered)).ceil();
}

/** Goods wanted and not yet bought, had or on order. */
export function openNeed(p: Position): boolean {
  if (p.dropped || p.met) return false;
  if (p.need === null) return p.needUncounted && !isSome(covered(p)) && !p.ordered.compare(0);
  return p.need.compare(covered(p).add(p.ordered)) > 0;
}
