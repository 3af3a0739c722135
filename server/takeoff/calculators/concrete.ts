import type Fraction from 'fraction.js';
import { fraction } from './reckoned.ts';

/** Cubic feet a bag yields, by its pounds (bag yield pages: 40 lb 0.30, 60 lb 0.45, 80 lb 0.60). */
export const BAG_YIELD: Readonly<Record<number, Fraction>> = {
  40: fraction('0.3'),
  50: fraction('0.375'),
  60: fraction('0.45'),
  80: fraction('0.6'),
};
