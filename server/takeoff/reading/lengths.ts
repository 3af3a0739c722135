import type Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import type { Figure, Said } from './said.ts';

/**
 * The metric unit in which a note tells places, null where it tells them in feet: metres or square metres said, a side
 * of a foot or more in millimetres or centimetres, or bare sides of a thousand and more. A joint or a blade in
 * millimetres tells nothing of the place.
 */
export function metricUnit(figures: readonly Figure[]): 'm' | 'mm' | 'cm' | null {
  const said = (unit: string) => figures.filter((f) => f.sure && f.unit === unit);
  if (said('m').length > 0) return 'm';
  if (said('ft').length > 0) return null;
  // "3.6 by 3.2, sheets are 2.4 by 1.2": no foot and no inch said, and every side in tenths.
  const tenths = figures.filter((f) => f.unit === null && /^\d{1,2}\.\d{1,2}$/.test(f.quote));
  if (said('in').length === 0 && tenths.length > 2) return 'm';
  if (said('sq m').length > 0) return 'm';
  // Bags of 20 kg, or so many to the cube.
  const metricBags = figures.some((f) => f.unit === 'kg' || f.unit === 'cu m' || f.per === 'cu m');
  if (metricBags && figures.filter((f) => f.unit === null && f.value.compare(100) >= 0).length > 1) return 'mm';
  const long = (unit: 'mm' | 'cm', most: number) => said(unit).some((f) => f.value.compare(most) >= 0);
  if (long('mm', 300) || figures.filter((f) => f.unit === null && f.value.compare(1000) >= 0).length > 1) return 'mm';
  return long('cm', 30) ? 'cm' : null;
}

const IN_FEET = /\b(?:foot|feet|ft)\b|\d ?['′’]/i;

const SIDES = /(\b(?:doors?|windows?|openings?|slider)[^.,;{]*)?\{L(\d+)\} ?(?:x|by) ?\{[LN]\d+\}/g;

/** A place was told by a side in inches longer than any tile, and nothing in feet: "96 inches by 18". */
function toldInInches({ words, figures }: Said): boolean {
  if (figures.some((f) => f.sure && f.kind === 'length' && (f.unit !== 'in' || IN_FEET.test(f.quote)))) return false;
  return [...words.matchAll(SIDES)].some(([, opening, id]) => {
    const side = figures[Number(id)]!;
    return !opening && side.sure && side.value.compare(60) >= 0;
  });
}

/** A length in feet; a bare one takes the note's own unit, or another bare-equal figure's. */
export function feet(said: Said, figure: Figure, mate: Figure | null): Fraction | null {
  if (figure.sure && figure.unit) return convert(figure.value, figure.unit, 'ft');
  if (figure.unit !== null && figure.kind !== 'length') return null;
  // "11-6 x 18 in, the short one 4 ft x 18": the same figure was said with its unit; a small one may be a thickness.
  const twin = said.figures.find(
    (f) => f !== figure && f.sure && f.kind === 'length' && f.value.equals(figure.value) && f.value.compare(12) >= 0,
  );
  // "Nine foot four by seven": the bare side is feet as well.
  const told = mate?.sure && mate.kind === 'length' ? (IN_FEET.test(mate.quote) ? 'ft' : mate.unit) : null;
  // "96 inches by 18, another at 64 by 18": where all was told in inches, so is the rest.
  const inches = !told && figure.value.compare(12) >= 0 && toldInInches(said) ? 'in' : null;
  const from = twin?.unit ?? told ?? metricUnit(said.figures) ?? inches ?? 'ft';
  // "2.7 m by 1850": nobody builds a hundred metres of floor, and tiles are told in millimetres.
  return convert(figure.value, from === 'm' && figure.value.compare(100) >= 0 ? 'mm' : from!, 'ft');
}

/** Every side bare and too long to be feet: a thousand and more of two, a hundred and more of a fill's three. */
export const bareMillimetres = (sides: readonly Figure[]): boolean =>
  sides.every((f) => f.unit === null && f.value.compare(sides.length === 3 ? 100 : 1000) >= 0);

/** In feet. A bare thickness is inches, but millimetres of a place told in metric. */
export function thickness(said: Said, { value, unit, sure }: Figure): Fraction | null {
  if (sure && unit) return convert(value, unit, 'ft');
  return metricUnit(said.figures) && value.compare(20) >= 0 ? convert(value, 'mm', 'ft') : value.div(12);
}

/** A length in the note's own measure: `8 ft 4 in`, or metres where it spoke in metres. */
export function sizeText(feet: Fraction, metric: boolean): string {
  const metres = metric ? convert(feet, 'ft', 'm') : null;
  return metres ? `${Math.round(metres.valueOf() * 1000) / 1000} m` : feetText(feet);
}

/** `8 ft 4 in`. */
export function feetText(value: Fraction): string {
  const whole = value.floor();
  const inches = value.sub(whole).mul(12);
  if (inches.equals(0)) return `${whole.toFraction()} ft`;
  if (16 % Number(inches.d) !== 0) return `${Math.round(value.valueOf() * 1000) / 1000} ft`;
  const rest = inches.toFraction(true).replace(' ', '-');
  return whole.equals(0) ? `${rest} in` : `${whole.toFraction()} ft ${rest} in`;
}
