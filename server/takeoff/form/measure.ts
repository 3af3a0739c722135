import Fraction from 'fraction.js';
import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { convert } from '../../../parser/quantities/units.ts';
import { type Refusal, refuse, show } from '../calculators/reckoned.ts';

/** A length as typed: `7-3/4`, `12 ft 6 in`, `1.8 m`. */
export type Length = string;

/** A size of a form that could not be taken; caught where the form is answered. */
export class WrongMeasure extends Error {
  readonly refusal: Refusal;

  constructor(why: string) {
    super(why);
    this.refusal = refuse(why);
  }
}

/**
 * A length as people type it, `12 ft 6 in`, `3/8`, `2.4 m`, in feet or inches; a bare number is in that unit itself.
 *
 * @throws WrongMeasure where it is no one length, or its unit is none that measures length
 */
export function lengthOf(text: string, unit: 'ft' | 'in', what: string): Fraction {
  const [, minus, said] = /^\s*([-−]?)\s*(.*?)\s*$/.exec(text)!;
  const words = said!;
  const tokens = tokenise(words);
  const [quantity, ...more] = readQuantities(tokens, words).quantities;
  const whole = quantity !== undefined && more.length === 0 && quantity.quote.trim().length === words.length;
  const sure = whole && (quantity.unitFrom === 'said' || quantity.unitFrom === 'shared');
  const length = whole ? (sure ? convert(quantity.value, quantity.unit!, unit) : quantity.value) : null;
  if (!length) throw new WrongMeasure(`${what} "${text}": write one length, in feet, inches or metres`);
  return minus ? length.neg() : length;
}

/** A size over nothing and within what can be built, in inches; null where it was left out. A bare number is inches. */
export const size = (text: Length | undefined, what: string, most: number): Fraction | null =>
  text === undefined ? null : positive(lengthOf(text, 'in', what), what, most, 'in');

/** The same in feet, a bare number being feet. */
export const feet = (text: Length | undefined, what: string, most: number): Fraction | null =>
  text === undefined ? null : positive(lengthOf(text, 'ft', what), what, most, 'ft');

/** A plain figure that is over nothing and no slip: amps, degrees, per cent; null where it was left out. */
export const figure = (value: number | undefined, what: string, most: number, unit: string): Fraction | null =>
  value === undefined ? null : positive(new Fraction(value), what, most, unit);

/** @throws WrongMeasure for nothing, less than nothing, and more than anybody builds */
function positive(value: Fraction, what: string, most: number, unit: string): Fraction {
  if (value.compare(0) <= 0) throw new WrongMeasure(`${what} must be more than 0`);
  if (value.compare(most) > 0) throw new WrongMeasure(`${what} of ${show(value)} ${unit}: is that right?`);
  return value;
}

/** @throws WrongMeasure where the size was left out and nothing can be said without it */
export function needed(value: Fraction | null, what: string): Fraction {
  if (!value) throw new WrongMeasure(`${what}: how much?`);
  return value;
}

/** No count, rate or load of a form is more than this. Common practice, no source. */
const MOST_NUMBER = 10_000;

/** Refuses a form with a figure, at any depth, that is no number or more than any job has; null where all can be. */
export function wrongNumber(form: object): Refusal | null {
  for (const value of Object.values(form)) {
    if (typeof value === 'number' && !Number.isFinite(value)) return refuse('write a plain number, such as 10 or 2.5');
    if (typeof value === 'number' && Math.abs(value) > MOST_NUMBER) return refuse(`${value}: is that right?`);
    const deeper = typeof value === 'object' && value !== null ? wrongNumber(value) : null;
    if (deeper) return deeper;
  }
  return null;
}
