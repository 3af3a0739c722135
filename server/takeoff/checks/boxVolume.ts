import Fraction from 'fraction.js';

/** Cubic inches of unmarked metal boxes by shape, side and depth in inches, NEC Table 314.16(A). */
const BOXES: readonly [shape: 'round' | 'square', side: string, depth: string, volume: string][] = [
  ['round', '4', '5/4', '12.5'],
  ['round', '4', '3/2', '15.5'],
  ['round', '4', '17/8', '21.5'],
  ['square', '4', '5/4', '18'],
  ['square', '4', '3/2', '21'],
  ['square', '4', '17/8', '30.3'],
  ['square', '75/16', '5/4', '25.5'],
  ['square', '75/16', '3/2', '29.5'],
  ['square', '75/16', '17/8', '42'],
];

/** Device boxes 3 x 2 in by their depth, NEC Table 314.16(A); the two deepest from memory. */
const DEVICE: Readonly<Record<string, string>> = {
  '3/2': '7.5',
  '2': '10',
  '9/4': '10.5',
  '5/2': '12.5',
  '11/4': '14',
  '7/2': '18',
};
const THREE_SIDES = /\{[LN](\d+)\} ?(?:x|by) ?\{[LN](\d+)\} ?(?:x|by) ?\{[LN](\d+)\}/;

/** "Metal box 3x2x2 1/2". */
function deviceVolume(words: string, figures: readonly (Fraction | null)[]): Fraction | null {
  const sides = THREE_SIDES.exec(words)
    ?.slice(1)
    .map((id) => figures[Number(id)]?.toFraction());
  if (sides?.[0] !== '3' || sides[1] !== '2' || !/\b(?:metal|steel|device|gem)\b/.test(words)) return null;
  const volume = DEVICE[sides[2] ?? ''];
  return volume ? new Fraction(volume) : null;
}

/**
 * Volume of the box that the words name by shape and size. Plastic and shallow round boxes are not in the table: their
 * stamp tells, so they give null.
 *
 * @param figures inches of the note's figures, in the order in which the words name them
 */
export function boxVolume(words: string, figures: readonly (Fraction | null)[]): Fraction | null {
  if (/\b(?:plastic|pancake|old work)\b/.test(words)) return null;
  const device = deviceVolume(words, figures);
  if (device) return device;
  const shape = /\b(?:round|octagon(?:al)?)\b/.test(words)
    ? 'round'
    : /\bsquare\b|\bsq\b|\bby \{/.test(words)
      ? 'square'
      : null;
  if (!shape) return null;
  const said = new Set(figures.flatMap((f) => (f ? [f.toFraction()] : [])));
  const box = BOXES.find(([s, side, depth]) => s === shape && said.has(side) && said.has(depth));
  return box ? new Fraction(box[3]) : null;
}
