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

/** Whole purchase units: always up, so that nothing runs short. */
export const toBuy = ({ amount, pack }: Pick<Amount, 'amount' | 'pack'>): number =>
  (pack ? amount.div(pack.holds) : amount).ceil().valueOf();

export const fraction = (value: number | string | Fraction): Fraction => new Fraction(value);

/** As people write it on a board: whole or at most two places. */
export const show = (value: Fraction): string => String(Math.round(value.valueOf() * 100) / 100);

/** `23-1/2`, for a figure read off a tape. */
export const tape = (value: Fraction): string =>
  [1n, 2n, 4n, 8n, 16n, 32n].includes(BigInt(value.d)) ? value.toFraction(true).replace(' ', '-') : show(value);

/** Waste over this is a slip of the tongue, not an order. Common practice, no source. */
const MOST_WASTE = new Fraction(1, 2);
/** A room or run longer than this is asked about, in feet. Common practice, no source. */
const LONGEST = new Fraction(300);

/** Null where the figure can be built with, else why not. */
export function absurdLength(feet: Fraction, what: string, most: Fraction = LONGEST): Refusal | null {
  if (feet.compare(0) <= 0) return refuse(`${what} must be more than 0`);
  return feet.compare(most) > 0 ? refuse(`${what} of ${show(feet)} ft: is that right?`) : null;
}

export function absurdWaste(waste: Fraction): Refusal | null {
  if (waste.compare(0) < 0) return refuse('waste cannot be negative');
  return waste.compare(MOST_WASTE) > 0 ? refuse(`${show(waste.mul(100))} % waste: is that right?`) : null;
}

/** More packs, or more single pieces, than any job takes. Common practice, no source. */
const MOST_PACKS = 2000;
const MOST_PIECES = 100_000;

/** Null where so many can be bought for one job, else why not. */
export function absurdPacks(amount: Fraction, pack: Amount['pack']): Refusal | null {
  if (!pack) return null;
  const count = toBuy({ amount, pack });
  const pieces = /^(?:each|screw|nail|piece)$/.test(pack.unit);
  return count > (pieces ? MOST_PIECES : MOST_PACKS)
    ? refuse(`${count} by the ${pieces ? 'piece' : pack.unit}: is that right?`)
    : null;
}

/** More coats than this is a slip. Common practice, no source. */
const MOST_COATS = 6;

/** Whole coats, as many as are put on. */
export const areCoats = (count: number): boolean => Number.isInteger(count) && count >= 1 && count <= MOST_COATS;

/** 355/113 is above pi by less than one part in ten million: never short. */
export const PI = new Fraction(355, 113);
