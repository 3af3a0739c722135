import Fraction from 'fraction.js';
import { convert } from '../../../../parser/quantities/units.ts';
import { type Figure, type Said, saying } from '../../reading/said.ts';
import { tileJoint, tileOffset } from '../tile.ts';
import { inchesOf, matched, type Reader } from './reader.ts';

const SIZE = saying('<NL> ?(?:x|by) ?<NL>');
const JOINT = saying(
  '<LN>(?: inch)? (?:grout )?(?:joints?|spacers?|gaps?|grout lines?)\\b|\\b(?:joints?|spacers?|grout lines?)\\b(?: is| are| at| of| width)*(?: a| an)? <LN>',
);
const WARPAGE = saying(
  '<L>(?: of| inch of)? (?:warp(?:age)?|bow|cup)\\b|\\b(?:warp(?:ed|age)?|bow(?:ed)?|cup(?:ped)?)\\b[^.{]{0,14}<L>',
);
const VARIATION = saying(
  '<L>(?: of| inch of)? (?:variation|difference)\\b|\\b(?:vary|varies|variation|differ)\\b[^.{]{0,20}<L>',
);
const OFFSET = saying(
  '{P(\\d+)}(?: offset| stagger| brick| running| lap| bond)|(?:offset|stagger(?:ed)?|at|lap|bond)(?: of| at| by)? {P(\\d+)}',
);
const BOND =
  /\b(?:offset|stagger(?:ed)?|brick|running bond|(?:third|half) lap|subway pattern|(?:third|half|quarter) bond)\b/;
const GRID = /\b(?:grid|stack(?:ed)?(?: bond)?|straight (?:lay|laid|set|stack)|square lay)\b/;

/** Tile joint against size, edge and layout; offset against length. Only where tile is what is laid. */
export const tiles: Reader = (said) => {
  const { words } = said;
  if (!/\b(?:tiles?|porcelain|planks?|ceramic|mosaic|rectified|calibrated|spacers?|grout)\b/.test(words)) return [];
  const size = SIZE.exec(words);
  if (!size) return [];
  const [a, b] = [size[1], size[2]].map((id) => tileSide(said.figures[Number(id)]));
  if (!a || !b) return [];
  const side = a.compare(b) > 0 ? a : b;
  if (side.compare(60) > 0) return [];
  const joint = matched(said, JOINT);
  const offset = offsetIn(said);
  const layout = offset || BOND.test(words) ? 'running bond' : GRID.test(words) ? 'grid' : null;
  return [
    ...(joint && joint.compare(1) < 0
      ? [
          tileJoint({
            joint,
            side,
            layout,
            edge: edgeIn(words),
            warpage: matched(said, WARPAGE),
            variation: matched(said, VARIATION),
          }),
        ]
      : []),
    ...(offset ? [tileOffset(offset, side)] : []),
  ];
};

/** Bare sides of a hundred and more are millimetres: no tile is that many inches. */
const tileSide = (figure: Figure | undefined): Fraction | null =>
  figure?.unit === null && figure.value.compare(100) >= 0 ? convert(figure.value, 'mm', 'in') : inchesOf(figure);

function offsetIn(said: Said): Fraction | null {
  const match = OFFSET.exec(said.words);
  if (match) return said.figures[Number(match[1] ?? match[2])]!.value;
  if (
    /\b(?:one[- ]|1 ?\/ ?3 |a )?third (?:offset|stagger|lap|bond|running)\b|\b(?:offset|staggered) (?:by )?(?:a|one) third\b/.test(
      said.words,
    )
  )
    return new Fraction(100, 3);
  return /\bhalf (?:offset|stagger|lap)\b|\b(?:offset|staggered) (?:by )?(?:a )?half\b|\bbrick (?:bond|pattern|lay|joint)\b/.test(
    said.words,
  )
    ? new Fraction(50)
    : null;
}

/** "Nothing on the carton about rectified or otherwise": nobody knows. */
const EDGE_UNKNOWN =
  /\b(?:nothing|no (?:word|idea|mention|clue)|don't know|dunno|doesn't say|not sure|can't tell|whether|if (?:it's|they're))\b[^.]{0,44}\brectified\b|\brectified or (?:not|otherwise|calibrated|what|no)\b/;

const edgeIn = (words: string): 'rectified' | 'calibrated' | null =>
  EDGE_UNKNOWN.test(words)
    ? null
    : /\b(?:non-? ?rectified|not rectified|calibrated|pressed)\b/.test(words)
      ? 'calibrated'
      : /\brectified\b/.test(words)
        ? 'rectified'
        : null;
