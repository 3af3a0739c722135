import Fraction from 'fraction.js';
import type { EntryBody, OrderLine, OrderState } from '../types.ts';
import { toBuy } from './left.ts';
import type { Position } from './position.ts';

type SetOrder = Extract<EntryBody, { kind: 'setOrder' }>;

/** What a hand set on an order line, and how much a tick met: nothing that can be counted where nobody had said how many. */
export type HandSet = SetOrder & { met?: string | null };

const ticked = (state: OrderState | undefined) => state === 'bought' || state === 'have' || state === 'ordered';

/** One more setting of a line: what it does not touch stays as it was set before. */
export const setAlso = (before: HandSet | undefined, now: SetOrder, position: Position | undefined): HandSet => ({
  ...before,
  ...now,
  ...(now.state && { met: ticked(now.state) && position ? (toBuy(position)?.toFraction() ?? '0') : null }),
});

/** A line as the hand left it. A tick meets what was wanted then; what is asked for later is to buy again. */
export function asSet(line: OrderLine, set: HandSet | undefined): OrderLine {
  if (!set) return line;
  const more = set.met && line.quantity !== null ? new Fraction(line.quantity).sub(set.met) : null;
  if (more && more.compare(0) > 0)
    return {
      ...line,
      state: 'to buy',
      quantity: more.toFraction(),
      because: `${line.because}; less ${new Fraction(set.met!).toFraction(true)} ${set.state === 'have' ? 'on hand' : set.state}`,
    };
  // What a hand has touched is no doubt any more.
  const stands = line.state === 'unsure' ? 'to buy' : line.state;
  const { state = stands, quantity = line.quantity, unit = line.unit } = set;
  const put = set.quantity !== undefined && set.quantity !== line.quantity;
  const because = put
    ? `${line.because}; put at ${new Fraction(set.quantity!).toFraction(true)} by hand`
    : line.because;
  return { ...line, state, quantity, unit, because };
}
