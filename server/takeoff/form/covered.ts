import Fraction from 'fraction.js';
import { cover } from '../calculators/cover.ts';
import { absurdLength, areCoats, type Refusal, refuse, show, toBuy } from '../calculators/reckoned.ts';
import type { Counted } from '../calculators/spacing.ts';
import { type Length, lengthOf } from './measure.ts';

export interface FormAnswer {
  ok: true;
  /** Whole purchase units. */
  buy: { quantity: number; unit: string }[];
  working: string;
  assumptions: string[];
  source: string;
}

/** A floor or wall by its sides, feet where bare. */
export interface Extent {
  length: Length;
  width: Length;
  /** Per cent. */
  waste?: number | undefined;
}

export const ARITHMETIC = 'arithmetic from what was given';

/** Inches; a bare place is typed in feet. */
export const inches = (text: Length, what: string, bare: 'ft' | 'in' = 'in'): Fraction =>
  bare === 'ft' ? lengthOf(text, 'ft', what).mul(12) : lengthOf(text, 'in', what);

export const counted = (found: Counted | Refusal, source = ARITHMETIC): FormAnswer | Refusal =>
  found.ok
    ? { ok: true, buy: [{ quantity: found.count, unit: 'each' }], working: found.working, assumptions: [], source }
    : found;

export function covered(
  form: Extent & { tile?: [Length, Length] | undefined },
  coats: number,
  pack: { unit: string; holds: Fraction },
  assumptions: string[] = [],
  source = ARITHMETIC,
): FormAnswer | Refusal {
  const [length, width] = [lengthOf(form.length, 'ft', 'the length'), lengthOf(form.width, 'ft', 'the width')];
  const silly = absurdLength(length, 'a length') ?? absurdLength(width, 'a width');
  if (silly) return silly;
  if (!areCoats(coats)) return refuse(`${coats} coats: is that right?`);
  const tile = form.tile?.map((side) => lengthOf(side, 'in', 'the tile'));
  const room = (length.compare(width) >= 0 ? length : width).mul(12);
  if (tile?.some((side) => side.compare(0) <= 0)) return refuse('a tile must be larger than 0');
  if (tile?.some((side) => side.compare(room) > 0)) return refuse('the tile is larger than the place: is that right?');
  const found = cover({
    extent: length.mul(width).mul(coats),
    unit: 'sq ft',
    waste: new Fraction(form.waste ?? 0).div(100),
    pack,
    extentWorking: `${show(length)} ft x ${show(width)} ft${coats > 1 ? ` x ${coats} coats` : ''} = ${show(length.mul(width).mul(coats))} sq ft`,
    assumptions: [...assumptions, ...(form.waste === undefined ? ['no waste added: none was given'] : [])],
    source,
  });
  if (!found.ok) return found;
  return {
    ok: true,
    buy: [{ quantity: toBuy(found), unit: pack.unit }],
    working: found.working,
    assumptions: found.assumptions,
    source: found.source,
  };
}
