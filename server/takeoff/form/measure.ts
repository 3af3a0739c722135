import type Fraction from 'fraction.js';
import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { convert } from '../../../parser/quantities/units.ts';
import { type Refusal, refuse } from '../calculators/reckoned.ts';

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
