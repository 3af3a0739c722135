import type Fraction from 'fraction.js';
import { absurdLength, fraction, PI, type Refusal, refuse, show } from './reckoned.ts';

/** Cubic feet a bag yields, by its pounds (bag yield pages: 40 lb 0.30, 60 lb 0.45, 80 lb 0.60; 50 lb by proportion). */
export const BAG_YIELD: Readonly<Record<number, Fraction>> = {
  40: fraction('0.3'),
  50: fraction('0.375'),
  60: fraction('0.45'),
  80: fraction('0.6'),
};

/** Pounds of the bag where nobody said. */
export const USUAL_BAG = 80;

/** Cubic feet of a bag by its size as named, `60 lb`; the usual bag where none was, null for one of no published yield. */
export function bagYield(packSize: string | null): { pounds: number; yields: Fraction } | null {
  const pounds = packSize === null ? USUAL_BAG : Number(/^([\d.]+) lb$/.exec(packSize)?.[1]);
  const yields = BAG_YIELD[pounds];
  return yields ? { pounds, yields } : null;
}

/** What a bag was taken to hold, for the working. */
export const yieldWords = ({ pounds, yields }: { pounds: number; yields: Fraction }): string =>
  `${show(yields)} cu ft a bag of ${pounds} lb (published yield)`;

/** What is asked of a bag of no published yield. */
export const yieldAsked = (packSize: string | null): string => `how much does a ${packSize} bag make? The bag tells`;

export interface Volume {
  ok: true;
  cubicFeet: Fraction;
  working: string;
}

const CUBIC_INCHES = 1728;

/** A round hole or tube, with what stands in it (a post's section, square inches) taken out. Lengths in inches. */
export function holeVolume(hole: { diameter: Fraction; depth: Fraction; inside?: Fraction }): Volume | Refusal {
  const { diameter, depth, inside } = hole;
  const silly = absurdLength(diameter.div(12), 'a hole') ?? absurdLength(depth.div(12), 'a depth');
  if (silly) return silly;
  if (diameter.compare(48) > 0) return refuse(`a hole ${show(diameter)} in across: is that right?`);
  if (depth.compare(120) > 0) return refuse(`a hole ${show(depth)} in deep: is that right?`);
  const radius = diameter.div(2);
  const round = PI.mul(radius).mul(radius);
  const section = inside ? round.sub(inside) : round;
  if (section.compare(0) <= 0) return refuse('the post does not fit the hole');
  const cubicFeet = section.mul(depth).div(CUBIC_INCHES);
  const less = inside ? ` - ${show(inside)}` : '';
  const area = `pi x ${show(radius)} x ${show(radius)}`;
  return {
    ok: true,
    cubicFeet,
    working: `${inside ? `(${area}${less})` : area} x ${show(depth)} in / 1,728 = ${thousandths(cubicFeet)} cu ft`,
  };
}

const thousandths = (value: Fraction) => String(Math.round(value.valueOf() * 1000) / 1000);
