import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const OF = 'closet bolts';
/**
 * Room over the foot of the bowl: a hex nut takes 7/32 in on a 1/4 in bolt and 17/64 on 5/16 (ASME B18.2.2, in "Nut & washer
 * size chart"; the most by BS 1768 table 2: 0.224 and 0.271); the rest, for washers and thread, is common practice, no source.
 */
export const ABOVE = new Fraction(1, 2);
const SOURCE =
  'engineerfix.com, extra-long toilet bolts: flange to floor, foot of the bowl, and room for the nut; hex nut 7/32 to 17/64 in (ASME B18.2.2), with washers and thread 1/2 in, common practice';

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
  const limit = sunk.add(foot).add(ABOVE);
  if (!length) return cannotSay(OF, 'how long the bolts are', SOURCE, { limit: `${limit.toFraction(true)} in` });
  return compare({
    of: OF,
    figure: length,
    limit,
    unit: 'in',
    must: 'be at least',
    source: SOURCE,
    working: `${sunk.toFraction(true)} in down to the flange + ${foot.toFraction(true)} in foot + 1/2 in for washer and nut`,
  });
}
