import type Fraction from 'fraction.js';
import { MOST_THICK, MOST_TILE } from '../calculators/grout.ts';
import { metricUnit } from './lengths.ts';
import { figureAt, lengthIn, type Said, saying } from './said.ts';

/** Sizes that tell how much of a filling goods take: joint, notch and bead, inches; null where nothing was said. */
export interface Bedding {
  joint: Fraction | null;
  thickness: Fraction | null;
  notch: [Fraction, Fraction] | null;
  buttered: boolean;
  bead: { width: Fraction; depth: Fraction } | { leg: Fraction } | null;
  /** Height of a wallpaper's pattern. */
  repeat: Fraction | null;
}

export const NO_BEDDING: Bedding = {
  joint: null,
  thickness: null,
  notch: null,
  buttered: false,
  bead: null,
  repeat: null,
};

/** What lies under the tile may be thicker. */
const UNDER = '(?! (?:mud|mortar|bed|float|slab|foam|concrete|sub ?floor|plywood|ply|topping|screed))';

/** "12x12x2 tile", "two inches thick", "3/8 deep joint". */
export const THICK = saying(
  `\\{[NL]\\d+\\} ?(?:x|by) ?\\{[NL]\\d+\\} ?(?:x|by) ?<LN>(?: [a-z]+){0,2}? tiles?\\b|<LN>(?: (?:in|inch|inches))* (?:thick\\b${UNDER}|deep joint)|\\bthick(?:ness)?(?: (?:is|of|at))* <LN>`,
);

/** "24 inch repeat", "the pattern repeats every 18 inches". */
const REPEAT = saying('<L>(?: (?:pattern|drop))? repeats?\\b|\\brepeats?(?: (?:is|of|every|at))* <L>');

/** What is grouted and thicker than tile. */
export const THICKER = /^(?=.*\b(?:grout|joints?)\b).*\b(?:pavers?|bricks?|flag ?stones?|cobbles?|blocks?|stones?)\b/;

/** Reads joints, tile thickness, trowel notch and bead; claims their figures. */
export function beddingIn(said: Said, used: Set<number>): Bedding {
  const { words } = said;
  const inches = (id: string | undefined, most: number): Fraction | null => {
    if (id === undefined || used.has(Number(id))) return null;
    const figure = figureAt(said, id);
    // "10 wide by 10 deep" beside metres: millimetres.
    const bare = metricUnit(said.figures) && figure.value.compare(3) >= 0 ? 'mm' : 'in';
    const length = lengthIn(figure, 'in', bare);
    return length && length.compare(most) <= 0 ? length : null;
  };
  const claim = (...ids: (string | undefined)[]) => {
    for (const id of ids) if (id) used.add(Number(id));
  };
  const out: Bedding = { ...NO_BEDDING, buttered: /\bback ?-? ?butter/.test(words) };
  const notch =
    saying('<LN>(?: in(?:ch)?)? ?(?:x|by) ?<LN>(?: [a-z]+){0,2}? (?:notch|trowel|square notch|u notch)').exec(words) ??
    saying('(?:notch|trowel)(?: is|,| of| at)? (?:a |the )?<LN>(?: in(?:ch)?)? ?(?:x|by) ?<LN>').exec(words) ??
    // "Thinset, quarter by three eighths": parts of an inch can only be the trowel's.
    (/\b(?:thin ?set|mortar)\b/.test(words) ? saying('(?:, |a )<L> ?(?:x|by) ?<L>(?! ?(?:x|by))').exec(words) : null);
  const [deep, wide] = [inches(notch?.[1], 1), inches(notch?.[2], 1)];
  if (notch && deep && wide) {
    out.notch = [deep, wide];
    claim(notch[1], notch[2]);
  }
  const single = notch ? null : saying('<LN>(?: (?:in|inch|square))* (?:notch|notched)').exec(words);
  const side = inches(single?.[1], 1);
  if (single && side) {
    out.notch = [side, side];
    claim(single[1]);
  }
  const bead =
    saying('<LN>(?: (?:in|inch|wide))* ?(?:x|by) ?<LN>(?: (?:deep|bead|joint|gap))').exec(words) ??
    saying('(?:bead|joint|gap)s?(?: (?:is|are|of|at))* <LN>(?: (?:in|inch|wide))* ?(?:x|by) ?<LN>').exec(words);
  const [width, depth] = [inches(bead?.[1], 2), inches(bead?.[2], 2)];
  const fillet =
    saying('<LN>(?: (?:in|inch))* (?:fillet|cove|bead|triangle)').exec(words) ??
    saying('(?:fillet|bead)(?: (?:is|of|at))* (?:a )?<LN>').exec(words);
  const leg = inches(fillet?.[1], 2);
  if (bead && width && depth) {
    out.bead = { width, depth };
    claim(bead[1], bead[2]);
  } else if (fillet && leg) {
    out.bead = { leg };
    claim(fillet[1]);
  }
  const joint =
    saying('<LN>(?: (?:in|inch|wide))* (?:grout )?(?:joints?|grout lines?|spacers?|spacing)').exec(words) ??
    saying('(?:joints?|grout lines?|spacers?)(?: (?:is|are|of|at|wide))*,? (?:a |an )?<LN>(?! ?(?:x|by))').exec(words);
  out.joint = inches(joint?.[1], 1);
  if (out.joint) claim(joint?.[1]);
  const pattern = REPEAT.exec(words)?.slice(1).find(Boolean);
  out.repeat = inches(pattern, 60);
  if (out.repeat) claim(pattern);
  const thick = THICK.exec(words)?.slice(1).find(Boolean);
  // What no tile is, is asked about; brick and stone are as thick as said.
  out.thickness = inches(thick, THICKER.test(words) ? MOST_THICK : MOST_TILE);
  if (out.thickness) claim(thick);
  return out;
}
