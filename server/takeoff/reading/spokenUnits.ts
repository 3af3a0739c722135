import Fraction from 'fraction.js';
import type { Mend } from './mend.ts';

/** "Sixteenth joint", "tile vary a 32nd": parts of an inch that have no article or no word. */
export const partsOfInch: Mend = (words, figures) =>
  words.replace(
    /\b(?:a |an )?(?:(sixteenth|eighth)(?= (?:inch )?(?:grout )?(?:joints?|spacers?|gaps?|beads?|lines?)\b)|(?:a )(32|16) ?(?:nd|th)\b)/g,
    (_, word: string | undefined, part: string | undefined) => {
      const value = new Fraction(1, word ? (word === 'eighth' ? 8 : 16) : Number(part));
      const figure = {
        value,
        unit: 'in',
        kind: 'length' as const,
        sure: true,
        per: null,
        onCenter: false,
        doubt: null,
      };
      return `{L${figures.push({ ...figure, quote: word ?? part! }) - 1}}`;
    },
  );

/** "107 feet of 12x24": feet of tile are square feet. */
export const feetOfTile: Mend = (words, figures) =>
  words.replace(
    /\{L(\d+)\}(?= of (?:the )?\{N(\d+)\} ?(?:x|by) ?\{N(\d+)\})/g,
    (all, id: string, a: string, b: string) => {
      const figure = figures[Number(id)]!;
      const sides = [a, b].map((side) => figures[Number(side)]!.value);
      const tile = sides.every((s) => s.compare(6) >= 0) && sides.some((s) => s.compare(12) >= 0);
      if (!tile || figure.unit !== 'ft' || !/\b(?:tiles?|grout|thin ?set|mortar|floor|wall)/.test(words)) return all;
      figures[Number(id)] = { ...figure, unit: 'sq ft', kind: 'area' };
      return `{A${id}}`;
    },
  );

/** "Half square notch": a trowel's notch is no roofing square. */
const squareNotch: Mend = (words, figures) =>
  words.replace(/\{A(\d+)\}(?= (?:[a-z]+ )?(?:notch|trowel))/g, (all, id: string) => {
    const figure = figures[Number(id)]!;
    if (figure.unit !== 'square') return all;
    figures[Number(id)] = { ...figure, unit: 'in', kind: 'length', sure: true };
    return `{L${id}} square`;
  });

/** "A cubic foot and a half": a volume. */
const cubicFeet: Mend = (words, figures) =>
  words.replace(/\bcubic \{L(\d+)\}/g, (all, id: string) => {
    const figure = figures[Number(id)]!;
    if (figure.unit !== 'ft' && figure.unit !== 'm') return all;
    figures[Number(id)] = { ...figure, unit: `cu ${figure.unit}`, kind: 'volume', sure: true };
    return `{V${id}}`;
  });

/** "600 mil sausages": millilitres of what comes in tubes. */
const milsOfTubes: Mend = (words, figures) =>
  words.replace(/\{L(\d+)\}(?= (?:sausages?|tubes?|cartridges?)\b)/g, (all, id: string) => {
    const figure = figures[Number(id)]!;
    if (figure.unit !== 'mm' || !/mil/i.test(figure.quote)) return all;
    figures[Number(id)] = { ...figure, unit: 'ml', kind: 'volume' };
    return `{V${id}}`;
  });

/** "Roll says 4 square": of what goes on roofs and walls, squares of 100 sq ft. */
const roofSquares: Mend = (words, figures) => {
  if (!/\b(?:roof|felt|shingles?|underlayment|siding)\b/.test(words)) return words;
  for (const [id, figure] of figures.entries())
    if (figure.unit === 'sq ft' && /\bsquares?$/i.test(figure.quote) && figure.value.compare(60) <= 0)
      figures[id] = { ...figure, unit: 'square' };
  return words.replace(
    /\{N(\d+)\} squares?\b(?! (?:foot|feet|ft|inch|in|yard|met(?:er|re)|edge|notch|cut|head))/g,
    (all, id: string) => {
      const figure = figures[Number(id)]!;
      if (figure.value.compare(60) > 0) return all;
      figures[Number(id)] = { ...figure, unit: 'square', kind: 'area', sure: true };
      return `{A${id}}`;
    },
  );
};

/** Units that only the words beside them tell; before sizes are put together. */
export const UNIT_MENDS: readonly Mend[] = [squareNotch, cubicFeet, milsOfTubes, roofSquares];
