import Fraction from 'fraction.js';

/**
 * A length as the trade writes it: `1-3/8 in`, `6 ft 8-1/2 in`. Rounded to the nearest 1/16 in for display only.
 *
 * @param exact the value as a fraction, `11/8`
 * @param unit canonical unit; anything but inches is written plainly
 */
export function lengthText(exact: string, unit: string | null): string {
  const value = new Fraction(exact);
  if (unit !== 'in') return `${plain(value)}${unit ? ` ${unit}` : ''}`;
  const sixteenths = value.mul(16).round();
  const inches = sixteenths.div(16);
  const feet = inches.div(12).floor();
  if (feet.compare(6) < 0) return `${mixed(inches)} in`;
  const rest = inches.sub(feet.mul(12));
  return rest.equals(0) ? `${feet.toFraction()} ft` : `${feet.toFraction()} ft ${mixed(rest)} in`;
}

const mixed = (value: Fraction) => value.toFraction(true).replace(' ', '-');

/** Fractions with a tape's denominator stay fractions; the rest is decimal, at most two places. */
export function plain(value: Fraction): string {
  return [1n, 2n, 4n, 8n, 16n].includes(BigInt(value.d))
    ? mixed(value)
    : String(Math.round(value.valueOf() * 100) / 100);
}
