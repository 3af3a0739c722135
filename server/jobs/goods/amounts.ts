/** Exact amounts of goods: which is the greater, and how one is told. */
import Fraction from 'fraction.js';
import { unitWord } from '../../../parser/quantities/containers.ts';
import { remembered } from '../../../parser/remembered.ts';

export const NONE = new Fraction(0);
export const most = (a: Fraction, b: Fraction): Fraction => (a.compare(b) > 0 ? a : b);
export const least = (a: Fraction, b: Fraction): Fraction => (a.compare(b) < 0 ? a : b);
/** Nothing where it would be less than nothing. */
export const positive = (amount: Fraction): Fraction => (isSome(amount) ? amount : NONE);

/** More than nothing. */
export const isSome = (amount: Fraction): boolean => amount.s > 0n && amount.n > 0n;

/** `2 1/2 bags`; what is counted singly has no unit. */
export const amountText = (amount: Fraction, unit: string | null): string =>
  `${amount.toFraction(true)}${unit && unit !== 'each' ? ` ${unitWord(unit, amount.compare(1) > 0)}` : ''}`;

/** An amount as it was told (`5/2`); a fraction never changes, so the same one serves wherever it is told again. */
export const amountOf = remembered((told) => new Fraction(told));
