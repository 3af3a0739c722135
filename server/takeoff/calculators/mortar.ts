import type Fraction from 'fraction.js';
import { fraction } from './reckoned.ts';

/**
 * Square feet of a 50 lb bag by the trowel's square notch: the low end of 80 to 100, 60 to 80 and 40 to 50
 * (engineerfix.com, "How much thinset do I need per square foot"). Other charts print more, so the label goes first.
 */
const COVERAGE: readonly { deep: Fraction; wide: Fraction; feet: number }[] = [
  { deep: fraction('1/4'), wide: fraction('1/4'), feet: 80 },
  { deep: fraction('3/8'), wide: fraction('1/4'), feet: 60 },
  { deep: fraction('1/2'), wide: fraction('1/2'), feet: 40 },
];

const POUNDS = 50;

/** Mortar of a bag of `pounds` by notch (inches, either way round), and with a tenth more where tiles are back-buttered; null for another notch. */
export function mortarCoverage(
  notch: readonly [Fraction, Fraction],
  pounds = fraction(POUNDS),
  buttered = false,
): Fraction | null {
  const [small, large] = notch[0].compare(notch[1]) <= 0 ? notch : [notch[1], notch[0]];
  const row = COVERAGE.find((c) => c.wide.equals(small) && c.deep.equals(large));
  const feet = row && fraction(row.feet).mul(pounds).div(POUNDS);
  return feet ? (buttered ? feet.div(fraction('1.1')) : feet) : null;
}

/** Notch by the tile's longer side: a start, then checked by lifting a tile. Common practice, no source. */
export function usualNotch(longest: Fraction): [Fraction, Fraction] {
  const { wide, deep } = longest.compare(15) >= 0 ? COVERAGE[2]! : longest.compare(6) > 0 ? COVERAGE[1]! : COVERAGE[0]!;
  return [wide, deep];
}
