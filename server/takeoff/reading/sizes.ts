import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { contradicted, doubtIn, unknownUnitIn } from './doubts.ts';
import { feet, feetText, thickness } from './lengths.ts';
import type { Measure } from './measure.ts';
import { openingsIn } from './openings.ts';
import { rectanglesIn } from './rectangles.ts';
import { roofEdgesIn, roofIn } from './roofEdges.ts';
import { roundOpenings, runsIn } from './runs.ts';
import { figureAt, type Said, saying } from './said.ts';
import type { Extent } from './shapes.ts';
import { twoSidesIn } from './twoSides.ts';

/** Reads the sizes of places out of a note; figures in `used` are spoken for and are left alone. */
export function extentIn(said: Said, by: Measure, used: Set<number>): Extent {
  const out: Extent = {
    shapes: [],
    height: null,
    depth: null,
    openings: [],
    lessArea: zero(),
    lessEach: zero(),
    lessLength: zero(),
    makeUp: [],
    corrected: [],
    unknownUnit: null,
    assumed: null,
    doubt: null,
  };
  out.doubt = doubtIn(said, used);
  out.unknownUnit = unknownUnitIn(said);
  contradicted(said, used, out);
  openingsIn(said, used, out);
  if (by === 'length' && goesRound(said.words)) roundOpenings(out);
  depthIn(said, by, used, out);
  if (by === 'length') roofEdgesIn(said, used, out);
  if (by === 'length' && out.shapes.length === 0) alongIn(said, used, out);
  if (out.shapes.length === 0) rectanglesIn(said, by, used, out);
  if (out.shapes.length === 0 && by === 'area') roofIn(said, used, out);
  heightIn(said, by, used, out);
  areasIn(said, used, out);
  if (out.shapes.length === 0 && out.height === null && !out.doubt) twoSidesIn(said, by, used, out);
  if (out.depth === null && by === 'volume') thirdDepth(said, used, out);
  if (out.shapes.length === 0 && (by !== 'area' || out.height)) runsIn(said, used, out);
  if (out.shapes.length === 0 && by === 'area') perimeterIn(said, used, out);
  out.lessArea = out.lessArea.add(out.lessEach.mul(out.shapes.length));
  return out;
}

/** Trim and beads that go round openings, where nothing is said to come off. */
const goesRound = (words: string) =>
  /\b(?:cas(?:e|ing)|trim|round|around|caulk|sealant|silicone|seal|foam|weather ?strip|flash)/.test(words) &&
  !/\b(?:less|minus|take (?:off|out)|deduct|subtract|come off|comes off|come out|base ?boards?|base)\b/.test(words);

const zero = () => new Fraction(0);

/** "Four inches thick", "3 deep" for fills. */
function depthIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  if (by !== 'volume') return;
  const m =
    saying('<LN>(?: inch| inches)? (?:thick|deep|of depth)').exec(said.words) ??
    saying('(?:thick(?:ness)?|depth|deep)(?: of| at| is)? <LN>').exec(said.words) ??
    // "Six inches of concrete".
    saying('(?:at )?<L> (?:of (?!them|it|run|wall|pipe|fence)[a-z]+|compacted|lifts?)').exec(said.words);
  if (!m || used.has(Number(m[1]))) return;
  out.depth = thickness(said, figureAt(said, m[1]));
  used.add(Number(m[1]));
}

/** "40 ft by 10, four inches": inches that nothing else claims are a fill's thickness. */
function thirdDepth(said: Said, used: Set<number>, out: Extent): void {
  const id = said.figures.findIndex((f, k) => !used.has(k) && f.unit === 'in' && f.sure && f.value.compare(36) <= 0);
  if (id < 0 || out.shapes.length === 0) return;
  out.depth = said.figures[id]!.value.div(12);
  used.add(id);
}

/** "Trim along the tub, 5 foot": what a run lies along, whatever else the note measures. */
function alongIn(said: Said, used: Set<number>, out: Extent): void {
  const m = saying(
    "\\balong (?:the |that |one )[a-z]+(?: [a-z]+)?,?(?: (?:it's|is|about|for))* <L>(?! ?(?:x|by|on|sticks))",
  ).exec(said.words);
  const length = m && !used.has(Number(m[1])) ? feet(said, figureAt(said, m[1]), null) : null;
  if (!m || !length) return;
  used.add(Number(m[1]));
  out.shapes.push({ kind: 'run', sides: [length], amount: null, count: 1, working: feetText(length) });
}

const TRIM_BEFORE = /\b(?:base ?boards?|base|trim|casing|skirting|crown|molding|moulding)(?:'s| is)?(?: about)? $/;

const WALL_NAMED =
  'long|short|back|front|side|end|left|right|far|near|other|one|tub|shower|gable|main|north|south|east|west';
/** What tells a height, the surest first. */
const HEIGHTS = [
  saying('<LN>(?: ?(?:foot|feet|ft))? (?:high|tall|ceilings?|walls?|to the ceiling|lids?|up the wall)', 'g'),
  saying(
    '\\b(?:up|goes|go|tile|tiled|board|all|all the way) (?:up )?to (?:about )?<LN>(?! ?(?:x|by)|(?: [a-z]+){0,2} a\\b)',
    'g',
  ),
  // "2.4 m from skirting to coving", "nine foot to the soffit".
  saying(
    '<LN>(?: (?:foot|feet|ft))?(?: (?:up|high))?(?: from (?:the )?[a-z]+(?: [a-z]+)?)? to (?:the )?(?:underside of (?:the )?)?(?:ceiling|coving|cornice|soffit|eaves?|fascia|top plate|picture rail|lid)\\b',
    'g',
  ),
  // "Both 8 foot": rooms, where nothing else is of that size.
  saying('\\b(?:both|all)(?: (?:are|have|rooms|of them))* <L>(?=[.,;]|$)', 'g'),
  // "Both 25 deep": of legs one after another.
  saying(
    '\\b(?:both|all|each)(?: of (?:them|it))?(?: are| is)? <LN>(?: (?:inches|inch|in|feet|foot|ft))? (?:deep|wide)',
    'g',
  ),
  saying(
    `(?:ceilings?|(?<!\\b(?:${WALL_NAMED}) )walls?|height|lids?)(?: (?:is|are|at|of|height|being|they're|about|run|go|to|all))* <LN>(?! ?(?:x|by|long|wide|sheets))`,
    'g',
  ),
];

/** What stands before the figure of a room's height: nobody says it of less than six feet. */
const WALL_OR_LID = /^(?:walls?|ceilings?|lids?)\b/;

/** "Eight foot ceilings", "2.4 high", "walls are nine foot", "tile goes up to seven". */
function heightIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  const mate = said.figures.find((f) => f.sure && f.kind === 'length') ?? null;
  // Along walls "the walls go 13 foot 6" is how long they are.
  for (const pattern of by === 'length' ? HEIGHTS.slice(0, 1) : HEIGHTS)
    for (const m of said.words.matchAll(pattern)) {
      const told = figureAt(said, m[1]);
      // "On three walls" counts them.
      const counts = told.unit === null && / walls?$/.test(m[0]) && m[0].startsWith('{') && told.value.compare(6) <= 0;
      if (used.has(Number(m[1])) || counts) continue;
      // "Base five and a quarter tall": trim is told in inches.
      const trim = !told.sure && TRIM_BEFORE.test(said.words.slice(0, m.index));
      // "36 high" is no house.
      const low = told.unit === null && / (?:high|tall)$/.test(m[0]) && told.value.compare(20) > 0;
      if (!told.sure && WALL_OR_LID.test(m[0]) && told.value.compare(6) < 0) continue;
      const across = !told.sure && /\b(?:deep|wide)$/.test(m[0]) && told.value.compare(12) > 0;
      const value = trim || across || low ? told.value.div(12) : feet(said, told, mate);
      if (!value || value.compare(40) > 0) continue;
      out.height = value;
      used.add(Number(m[1]));
      return;
    }
}

/** "62 feet around", "40 feet of wall": it becomes an area by the height. */
function perimeterIn(said: Said, used: Set<number>, out: Extent): void {
  const m =
    saying('<L>(?: total)?(?: all the way)? (?:around|round|of walls?|of perimeter|perimeter|long)\\b').exec(
      said.words,
    ) ??
    // "4.1 m wide": of one wall whose height is known.
    (out.height ? saying('\\bwall\\b[^{]*<L> (?:wide|across)\\b').exec(said.words) : null) ??
    saying('(?:perimeter|around|total(?:s|ing)?)(?: is| of|:)? <L>|\\bperimeter(?: is| of|:)? <N>').exec(said.words);
  const id = Number(m?.[1] ?? m?.[2]);
  const length = !m || used.has(id) ? null : feet(said, said.figures[id]!, null);
  if (!length) return;
  used.add(id);
  out.shapes.push({ kind: 'run', sides: [length], amount: null, count: 1, working: feetText(length) });
}

const OF_A_PACK =
  /\b(?:box|boxes|cartons?|cases?|bags?|sacks?|bundles?|rolls?|cans?|tins?|pails?|buckets?|gallons?|tubs?|tubes?|packs?|pallets?|kits?)\b(?:(?! (?:for|and then|on) )[^.;,{])*(?:\{W\d+\}[^.;{]*)?$/;

/** "240 square feet of floor". */
function areasIn(said: Said, used: Set<number>, out: Extent): void {
  for (const m of said.words.matchAll(saying('<AV>', 'g'))) {
    const figure = figureAt(said, m[1]);
    if (used.has(Number(m[1])) || !figure.unit || figure.per) continue;
    const unit = figure.kind === 'volume' ? 'cu ft' : 'sq ft';
    const before = said.words.slice(Math.max(0, m.index - 24), m.index);
    const after = said.words.slice(m.index + m[0].length, m.index + m[0].length + 24);
    // "Carton = 23.64 sq ft", "the bag gives 0.6": of a pack, never of a place.
    if (OF_A_PACK.test(said.words.slice(0, m.index))) continue;
    if (/\b(?:have|got|found|left)\b/.test(before) && /\bleft|on hand|already\b/.test(after)) continue;
    if (figure.kind === 'volume' && !/^cu/.test(figure.unit)) continue;
    const amount = convert(figure.value, figure.unit, unit);
    if (!amount) continue;
    used.add(Number(m[1]));
    out.shapes.push({
      kind: figure.kind === 'volume' ? 'volume' : 'area',
      sides: [],
      amount,
      count: 1,
      working: `${figure.value.toString()} ${figure.unit}`,
    });
  }
}
