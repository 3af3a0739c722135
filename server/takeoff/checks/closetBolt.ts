import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const OF = 'closet bolts';
/**
 * Room over the foot of the bowl for washers and nut, inches: what J. R. Smith asks on a closet's studs (technical data
 * 16: foot + 1/16 in gap + 9/16 in). The nuts of 1/4 and 5/16 in bolts, 7/32 and 17/64 in, are well within it.
 */
export const ABOVE = new Fraction(9, 16);
const SOURCE =
  "J. R. Smith, technical data 16: gap + foot of the closet + 9/16 in for washers and nut; engineerfix.com, extra-long toilet bolts: flange to floor + foot + nut's room";

/** How long a bolt must be: all that it goes through, and the room for its nut. Any one unit. */
export const boltNeeded = (through: readonly Fraction[], above: Fraction): Fraction =>
  through.reduce((sum, layer) => sum.add(layer), above);

export interface ClosetBolts {
  /** All inches; null where not said. Length of the bolt over its head. */
  length: Fraction | null;
  /** How far the top of the flange lies under the finished floor, negative above it. */
  below: Fraction | null;
  /** Thickness of the bowl's foot at the bolt hole. */
  foot: Fraction | null;
}

/**
 * Is a closet bolt long enough: from the flange up through floor and foot, with thread left for washer and nut. What
 * stands over is cut off, so there is no upper limit. A flange above the floor is not counted in its favour.
 */
export function closetBolts({ length, below, foot }: ClosetBolts): Verdict {
  if (!below) return cannotSay(OF, 'how the flange sits to the finished floor', SOURCE);
  if (!foot) return cannotSay(OF, "how thick the bowl's foot is at the bolt hole: measure it", SOURCE);
  const sunk = below.compare(0) > 0 ? below : new Fraction(0);
  const limit = boltNeeded([sunk, foot], ABOVE);
  if (!length) return cannotSay(OF, 'how long the bolts are', SOURCE, { limit: `${limit.toFraction(true)} in` });
  return compare({
    of: OF,
    figure: length,
    limit,
    unit: 'in',
    must: 'be at least',
    source: SOURCE,
    working: `${sunk.toFraction(true)} in down to the flange + ${foot.toFraction(true)} in foot + 9/16 in for washers and nut`,
  });
}
