import Fraction from 'fraction.js';
import { absurdLength, type Refusal, refuse, show } from './reckoned.ts';
import { absurdSpacing, bays, type Counted } from './spacing.ts';

/** More bays than this in one wall is a slip. Common practice, no source. */
const MOST_BAYS = 400;

/**
 * Batts for so many bays: each takes as many as its height holds, the last one cut; a batt as long as the bay is one.
 * Lengths in inches. Refuses no bays, part of a bay, and lengths that cannot be built.
 */
export function battsOf(
  count: number,
  bay: { height: Fraction; batt: Fraction } | { each: number },
): Counted | Refusal {
  if (!Number.isInteger(count) || count <= 0) return refuse('bays must be a whole number above 0');
  if (count > MOST_BAYS) return refuse(`${count} bays: is that right?`);
  if ('each' in bay) {
    if (!Number.isInteger(bay.each) || bay.each <= 0) return refuse('how many batts to a bay?');
    return { ok: true, count: count * bay.each, working: `${count} bays x ${bay.each} = ${count * bay.each}` };
  }
  const silly = absurdLength(bay.height.div(12), 'a bay', new Fraction(40)) ?? absurdLength(bay.batt.div(12), 'a batt');
  if (silly) return silly;
  const each = bays(bay.height, bay.batt);
  return {
    ok: true,
    count: count * each,
    working: `${show(bay.height)} in high / ${show(bay.batt)} in a batt, so ${each} a bay; ${count} bays x ${each} = ${count * each}`,
  };
}

/** Bays of a wall by its length and the spacing of its studs, inches: the last one may be narrow and still takes a batt. */
export function baysOf(run: Fraction, spacing: Fraction): Counted | Refusal {
  const silly = absurdSpacing(spacing) ?? absurdLength(run.div(12), 'a wall');
  if (silly) return silly;
  const count = bays(run, spacing);
  return { ok: true, count, working: `${show(run)} in / ${show(spacing)} in, so ${count} bays` };
}
