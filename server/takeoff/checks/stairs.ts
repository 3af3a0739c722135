import Fraction from 'fraction.js';
import { compare, type Verdict } from './verdict.ts';

const RISER = new Fraction('7.75');
const TREAD = new Fraction(10);
const VARIATION = new Fraction('0.375');

/** Risers, inches: none over 7-3/4, none differing by more than 3/8 (IRC R311.7.5.1). */
export function risers(heights: readonly Fraction[]): Verdict[] {
  if (heights.length === 0) return [];
  const { most, least } = ends(heights);
  const height = compare({
    of: 'riser height',
    figure: most,
    limit: RISER,
    unit: 'in',
    must: 'be at most',
    source: 'IRC R311.7.5.1',
  });
  return heights.length < 2 ? [height] : [height, variation('riser variation', most.sub(least))];
}

/** Treads nosing to nosing, inches: none under 10, none differing by more than 3/8 (IRC R311.7.5.2). */
export function treads(depths: readonly Fraction[]): Verdict[] {
  if (depths.length === 0) return [];
  const { most, least } = ends(depths);
  const depth = compare({
    of: 'tread depth',
    figure: least,
    limit: TREAD,
    unit: 'in',
    must: 'be at least',
    source: 'IRC R311.7.5.2',
  });
  return depths.length < 2 ? [depth] : [depth, variation('tread variation', most.sub(least))];
}

/** Clear width of a stair above the handrail, inches (IRC R311.7.1). */
export const stairWidth = (width: Fraction): Verdict =>
  compare({
    of: 'stair width',
    figure: width,
    limit: new Fraction(36),
    unit: 'in',
    must: 'be at least',
    source: 'IRC R311.7.1',
  });

/** Headroom over the nosings, inches (IRC R311.7.2). */
export const stairHeadroom = (height: Fraction): Verdict =>
  compare({
    of: 'stair headroom',
    figure: height,
    limit: new Fraction(80),
    unit: 'in',
    must: 'be at least',
    source: 'IRC R311.7.2',
  });

const variation = (of: string, figure: Fraction): Verdict =>
  compare({ of, figure, limit: VARIATION, unit: 'in', must: 'be at most', source: 'IRC R311.7.5' });

function ends(values: readonly Fraction[]): { most: Fraction; least: Fraction } {
  const sorted = [...values].sort((a, b) => a.compare(b));
  return { least: sorted[0]!, most: sorted.at(-1)! };
}
