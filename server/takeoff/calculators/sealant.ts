import type Fraction from 'fraction.js';
import { fraction, type Refusal, refuse, tape } from './reckoned.ts';

/** Cubic inches of a US fluid ounce: 231 / 128, exactly. */
const OUNCE = fraction('231/128');
/** A usual cartridge, fluid ounces. */
export const CARTRIDGE = fraction('10.1');

/** The widest or deepest bead, inches. Common practice, no source. */
export const MOST_BEAD = 2;

/** Section of a bead, inches: a rectangular joint, or a fillet of two equal legs. */
export type Bead = { width: Fraction; depth: Fraction } | { leg: Fraction };

/** Feet of bead from a tube: its cubic inches over the section. Refuses a bead of nothing or over 2 in. */
export function feetPerTube(
  bead: Bead,
  ounces: Fraction = CARTRIDGE,
): { ok: true; feet: Fraction; working: string } | Refusal {
  const sides = 'leg' in bead ? [bead.leg] : [bead.width, bead.depth];
  if (sides.some((side) => side.compare(0) <= 0)) return refuse('how thick is the bead?');
  if (sides.some((side) => side.compare(MOST_BEAD) > 0))
    return refuse(`a bead of ${tape(sides[0]!)} in: is that right?`);
  if (ounces.compare(0) <= 0) return refuse('how much does a tube hold?');
  const section = 'leg' in bead ? bead.leg.mul(bead.leg).div(2) : bead.width.mul(bead.depth);
  const feet = ounces.mul(OUNCE).div(section.mul(12));
  const shape = 'leg' in bead ? `${tape(bead.leg)} in fillet` : `${tape(bead.width)} x ${tape(bead.depth)} in bead`;
  return { ok: true, feet, working: `${shape}, ${tape(ounces)} oz tube` };
}
