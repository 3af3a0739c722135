import type Fraction from 'fraction.js';
import { fraction, type Refusal, refuse, show, tape } from './reckoned.ts';

/** Pounds of cement grout a cubic inch: 1.6 kg a litre (tilers' reference: 1.4 to 1.6, the heavy end). */
const POUNDS = fraction('0.0578');

/** The thickest stone that is grouted, inches. Common practice, no source. */
export const MOST_THICK = 4;
/** The thickest tile, inches; pavers and brick are thicker. Common practice, no source. */
export const MOST_TILE = 1;
/** The widest joint, inches. Common practice, no source. */
export const MOST_JOINT = 1;

export interface Tile {
  /** Inches. */
  length: Fraction;
  width: Fraction;
  thickness: Fraction;
}

/** What a square foot takes, with its arithmetic. */
export interface PerFoot {
  ok: true;
  value: Fraction;
  working: string;
}

/**
 * Pounds of grout a square foot by the volume of the joints: 144 x (L + W) / (L x W) x joint x depth x 0.0578. The
 * joint is as deep as the tile is thick. Refuses a joint as wide as the tile, or none, and a tile of no size or no tile's thickness.
 */
export function groutPerFoot(tile: Tile, joint: Fraction): PerFoot | Refusal {
  const { length, width, thickness } = tile;
  if ([length, width, thickness].some((side) => side.compare(0) <= 0)) return refuse('a tile must be larger than 0');
  if (thickness.compare(MOST_THICK) > 0) return refuse(`a tile ${tape(thickness)} in thick: is that right?`);
  if (joint.compare(0) <= 0) return refuse('how wide is the joint?');
  if (joint.compare(MOST_JOINT) > 0 || joint.compare(width) >= 0 || joint.compare(length) >= 0)
    return refuse(`a joint of ${tape(joint)} in: is that right?`);
  const volume = length.add(width).div(length.mul(width)).mul(144).mul(joint).mul(thickness);
  return {
    ok: true,
    value: volume.mul(POUNDS),
    working: `144 x (${show(length)} + ${show(width)}) / (${show(length)} x ${show(width)}) x ${tape(joint)} x ${tape(thickness)} = ${show(volume)} cu in a sq ft, x 0.0578 lb`,
  };
}
