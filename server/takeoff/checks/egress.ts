import Fraction from 'fraction.js';
import { compare, dependsOn, type Verdict } from './verdict.ts';

export interface Egress {
  /** Net clear, window fully open, inches. */
  width: Fraction;
  height: Fraction;
  /** Sill within 44 in of the ground outside; null where not said. */
  gradeFloor: boolean | null;
}

/** Net clear opening of an escape window: the area, and each side that is too small (IRC R310.2.1). */
export function egressOpening({ width, height, gradeFloor }: Egress): Verdict[] {
  const area = width.mul(height).div(144);
  const check = (limit: string) =>
    compare({
      of: 'egress opening',
      figure: area,
      limit: new Fraction(limit),
      unit: 'sq ft',
      must: 'be at least',
      source: 'IRC R310.2.1',
      working: `${width.toFraction(true)} x ${height.toFraction(true)} in / 144`,
    });
  const strict = check('5.7');
  const low = check('5');
  const opening =
    gradeFloor !== null || strict.result === low.result
      ? gradeFloor
        ? low
        : strict
      : dependsOn(strict, 'whether the sill is within 44 in of the ground outside (5.0 sq ft is then enough)');
  const sides = [side('egress width', width, 20), side('egress height', height, 24)];
  return [opening, ...sides.filter((s) => s.result !== 'fits')];
}

const side = (of: string, figure: Fraction, limit: number): Verdict =>
  compare({ of, figure, limit: new Fraction(limit), unit: 'in', must: 'be at least', source: 'IRC R310.2.1' });

/** Sill of an escape window above the floor, inches (IRC R310.2.2). */
export const egressSill = (sill: Fraction): Verdict =>
  compare({
    of: 'egress sill',
    figure: sill,
    limit: new Fraction(44),
    unit: 'in',
    must: 'be at most',
    source: 'IRC R310.2.2',
  });
