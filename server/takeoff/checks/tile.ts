import Fraction from 'fraction.js';
import { compare, dependsOn, type Verdict } from './verdict.ts';

const LEAST = new Fraction(1, 16);
const LONG = new Fraction(15);
/** Least average joint of running bond with a side over 15 in, by how true the edges are. */
const BOND = { rectified: new Fraction(1, 8), calibrated: new Fraction(3, 16) } as const;
const MOST_OFFSET = new Fraction(100, 3);

export interface TileJoint {
  /** Inches. */
  joint: Fraction;
  /** Longest side of the tile, inches. */
  side: Fraction;
  layout: 'grid' | 'running bond' | null;
  edge: 'rectified' | 'calibrated' | null;
  /** Measured bow of the longest edge, inches; null where not measured. */
  warpage: Fraction | null;
  /** Measured difference between the biggest and the smallest face, inches. */
  variation: Fraction | null;
}

/** Tile joint by ANSI A108.02, 4.3.8: by the edge where long tile is offset, by three times the difference in size else. */
export function tileJoint({ joint, side, layout, edge, warpage, variation }: TileJoint): Verdict {
  const check = (limit: Fraction, working: string) =>
    compare({
      of: 'tile joint',
      figure: joint,
      limit,
      unit: 'in',
      must: 'be at least',
      source: 'ANSI A108.02, 4.3.8',
      working,
    });
  const grid = variation
    ? check(larger(variation.mul(3), LEAST), `3 x ${variation.toFraction(true)} in of difference in size`)
    : check(LEAST, '1/16 in for any tile; at least three times what the tiles differ in size, measure them');
  if (layout === 'grid' || side.compare(LONG) <= 0 || grid.result !== 'fits') return grid;
  const bond = (kind: keyof typeof BOND) => {
    const limit = BOND[kind].add(warpage ?? 0);
    const bow = warpage ? ` + ${warpage.toFraction(true)} in of warpage` : '; add the warpage of the longest edge';
    return check(
      larger(limit, variation?.mul(3) ?? LEAST),
      `running bond over 15 in, ${kind}: ${BOND[kind].toFraction()} in${bow}`,
    );
  };
  if (edge) return layout ? bond(edge) : unlessBoth(bond(edge), grid, 'whether the layout is a grid or offset');
  const calibrated = bond('calibrated');
  return layout
    ? unlessBoth(calibrated, bond('rectified'), 'whether the tile is rectified or calibrated')
    : unlessBoth(calibrated, grid, 'whether the layout is a grid or offset');
}

/** Offset of running bond, per cent of the longest side: a third at most over 15 in, unless the tile maker allows more. */
export const tileOffset = (offset: Fraction, side: Fraction): Verdict =>
  compare({
    of: 'tile offset',
    figure: offset,
    limit: side.compare(LONG) > 0 ? MOST_OFFSET : new Fraction(50),
    unit: '%',
    must: 'be at most',
    source: 'ANSI A108.02, 4.3.8.2',
    working:
      side.compare(LONG) > 0
        ? `${side.toFraction(true)} in side is over 15 in: a third, unless the tile maker says otherwise`
        : 'sides of 15 in or less: half',
  });

const larger = (a: Fraction, b: Fraction) => (a.compare(b) > 0 ? a : b);

const unlessBoth = (strict: Verdict, loose: Verdict, missing: string): Verdict =>
  strict.result === loose.result ? strict : dependsOn(strict, missing);
