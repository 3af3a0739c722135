import Fraction from 'fraction.js';

/** An answer with its arithmetic, or a plain reason why there is none. Never a number from absurd input. */
export type Reckoned = Amount | Refusal;

export interface Amount {
  ok: true;
  /** Exact, waste included, in `unit`. */
  amount: Fraction;
  unit: string;
  /** What one purchase unit holds, in `unit`; null where `unit` itself is bought. */
  pack: { unit: string; holds: Fraction } | null;
  working: string;
  assumptions: string[];
  source: string;
}

export interface Refusal {
  ok: false;
  why: string;
}

export const refuse = (why: string): Refusal => ({ ok: false, why });

export const fraction = (value: number | string | Fraction): Fraction => new Fraction(value);

/** As people write it on a board: whole or at most two places. */
export const show = (value: Fraction): string => String(Math.round(value.valueOf() * 100) / 100);

/** Waste over this is a slip of the tongue, not an order. Common practice, no source. */
const MOST_WASTE = new Fraction(1, 2);
export function absurdWaste(waste: Fraction): Refusal | null {
  if (waste.compare(0) < 0) return refuse('waste cannot be negative');
  return waste.compare(MOST_WASTE) > 0 ? refuse(`${show(waste.mul(100))} % waste: is that right?`) : null;
}
