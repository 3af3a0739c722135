import type Fraction from 'fraction.js';
import { fraction } from './reckoned.ts';

/** Actual inches of a dry softwood side, by its nominal inches (PS 20: less 1/2 to 6 in wide, less 3/4 from 8 in). */
export function actualSide(nominal: Fraction): Fraction {
  if (nominal.compare(1) === 0) return fraction('3/4');
  if (nominal.compare(fraction('5/4')) === 0) return fraction(1);
  return nominal.sub(nominal.compare(8) >= 0 ? fraction('3/4') : fraction('1/2'));
}
