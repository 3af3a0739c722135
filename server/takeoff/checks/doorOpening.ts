import type Fraction from 'fraction.js';
import { compare, type Verdict } from './verdict.ts';

const SOURCE = 'prehung door, slab + 2 in wide and + 2-1/2 in high (published rough opening list)';

/** A rough opening against a prehung interior door, inches: width, and height where it was said. */
export function roughOpening(
  opening: { width: Fraction; height: Fraction | null },
  slab: { width: Fraction; height: Fraction },
): Verdict[] {
  const check = (of: string, figure: Fraction, need: Fraction, working: string) =>
    compare({ of, figure, limit: need, unit: 'in', must: 'be at least', source: SOURCE, working });
  const width = check(
    'rough opening width',
    opening.width,
    slab.width.add(2),
    `${slab.width.toFraction(true)} in slab + 2 in`,
  );
  if (!opening.height) return [width];
  const need = slab.height.add('2.5');
  return [
    width,
    check('rough opening height', opening.height, need, `${slab.height.toFraction(true)} in slab + 2-1/2 in`),
  ];
}
