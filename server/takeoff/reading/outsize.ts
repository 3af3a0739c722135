import type Fraction from 'fraction.js';
import { MOST_JOINT, MOST_THICK, MOST_TILE } from '../calculators/grout.ts';
import { areCoats, show } from '../calculators/reckoned.ts';
import { MOST_BEAD } from '../calculators/sealant.ts';
import { THICK, THICKER } from './bedding.ts';
import { figureAt, lengthIn, type Said, saying } from './said.ts';

/** A size that was said by its name and cannot be: it is asked about, and the usual one is not taken in its stead. */
interface Limit {
  /** What was said, from its size: `a joint of 14 in`. */
  words: (size: string) => string;
  /** Goods that are reckoned from it. */
  goods: RegExp;
  said: RegExp;
  /** Inches; more is a slip of the tongue. Common practice, no source. */
  most: number;
  /** A bare number is such a size, in this unit; where left out only a length said with its unit is. */
  bare?: string;
  /** Goods of the note that may be larger. */
  unless?: RegExp;
}

const IN = '(?: (?:in|inch|inches|wide|square))*';

const LIMITS: readonly Limit[] = [
  {
    words: (size) => `a joint of ${size}`,
    goods: /grout/,
    said: saying(
      `<LN>${IN} (?:grout )?(?:joints?(?! (?:compound|tape|knife))|grout lines?|spacers)\\b|\\b(?:joints?|grout lines?|spacers?)(?: (?:is|are|of|at|wide))*,? (?:a |an )?<LN>(?! ?(?:x|by))`,
    ),
    most: MOST_JOINT,
  },
  {
    words: (size) => `a tile ${size} thick`,
    goods: /grout/,
    said: THICK,
    most: MOST_THICK,
  },
  {
    words: (size) => `a tile ${size} thick`,
    goods: /grout/,
    said: THICK,
    most: MOST_TILE,
    bare: 'in',
    unless: THICKER,
  },
  {
    words: (size) => `a bead of ${size}`,
    goods: /caulk|silicone|sealant/,
    said: saying(`<LN>${IN} (?:fillet|cove|bead)\\b|\\b(?:fillet|bead)(?: (?:is|of|at))* (?:a )?<LN>`),
    most: MOST_BEAD,
  },
  {
    words: (size) => `a notch of ${size}`,
    goods: /thinset|mortar/,
    said: saying(`<LN>${IN}(?: ?(?:x|by) ?\\{[LN]\\d+\\}${IN})?(?: (?:square|u))? (?:notch|notched|trowel)\\b`),
    most: 1,
    bare: 'in',
  },
  {
    words: (size) => `walls ${size} high`,
    goods: /./,
    said: saying('<LN>(?: ?(?:foot|feet|ft))? (?:high|tall|ceilings?|walls?|to the ceiling|lids?|up the wall)\\b'),
    most: 480,
  },
];

/** `14 in`, `900 ft`. */
const sizeOf = (inches: Fraction) => (inches.compare(120) > 0 ? `${show(inches.div(12))} ft` : `${show(inches)} in`);

/** What cannot be of the sizes that goods are reckoned from, in words: `a joint of 14 in`; null where all can. */
export function outsizeIn(said: Said, item: string): string | null {
  for (const { words, goods, said: pattern, most, bare, unless } of LIMITS) {
    const id =
      goods.test(item) && !unless?.test(said.words) ? pattern.exec(said.words)?.slice(1).find(Boolean) : undefined;
    const figure = id === undefined ? null : figureAt(said, id);
    const size: Fraction | null = figure && (figure.sure || bare) ? lengthIn(figure, 'in', bare) : null;
    if (size && size.compare(most) > 0) return words(sizeOf(size));
  }
  const coats = said.figures.find((f) => f.unit === 'coat');
  if (coats && !areCoats(coats.value.valueOf())) return `${show(coats.value)} coats`;
  const empty = said.figures.find((f) => f.per && f.value.compare(0) <= 0);
  return empty ? `${show(empty.value)} ${empty.unit ?? ''} a ${empty.per}`.replace('  ', ' ') : null;
}
