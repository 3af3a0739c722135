import Fraction from 'fraction.js';
import { compare, dependsOn, type Verdict } from './verdict.ts';

const SOURCE = 'NWFA guideline: strip within 4 points of the subfloor, plank 3 in and wider within 2';
const STRIP = new Fraction(4);
const PLANK = new Fraction(2);

/**
 * Moisture of solid wood flooring against its subfloor, both in per cent as the meter reads.
 *
 * @param wide boards of 3 in and wider; null where nobody said, and the answer then holds only where both limits agree
 */
export function woodMoisture(floor: Fraction, subfloor: Fraction, wide: boolean | null): Verdict {
  const apart = floor.sub(subfloor).abs();
  const against = (limit: Fraction) =>
    compare({
      of: 'wood floor moisture',
      figure: apart,
      limit,
      unit: 'points',
      must: 'be at most',
      source: SOURCE,
      working: `flooring ${floor.toString()} %, subfloor ${subfloor.toString()} %`,
    });
  const [strip, plank] = [against(STRIP), against(PLANK)];
  if (wide !== null) return wide ? plank : strip;
  return strip.result === plank.result
    ? plank
    : dependsOn(plank, 'how wide the boards are: 4 points under 3 in, else 2');
}
