import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { contradicted, doubtIn, unknownUnitIn } from './doubts.ts';
import type { Measure } from './goods.ts';
import { bareMillimetres, feet, feetText, thickness } from './lengths.ts';
import { openingsIn } from './openings.ts';
import { type MakeUp, roundOpenings, runsIn } from './runs.ts';
import { type Figure, figureAt, type Said, saying } from './said.ts';

/** A piece of floor, wall, run or hole as told, in feet. */
export interface Shape {
  kind: 'rectangle' | 'room' | 'run' | 'area' | 'volume';
  /** Sides in feet: two of a rectangle, length and width of a room, one of a run. */
  sides: Fraction[];
  /** Square or cubic feet of a shape told by its area or volume. */
  amount: Fraction | null;
  count: number;
  /** The place that it was said of: `closet`. */
  label?: string | null;
  working: string;
}

export interface Extent {
  shapes: Shape[];
  /** Feet: height of walls, or of a room. */
  height: Fraction | null;
  /** Feet: thickness of a fill. */
  depth: Fraction | null;
  /** Doors and windows, each in feet. */
  openings: { width: Fraction; height: Fraction | null; count: number; door: boolean }[];
  /** Square feet told to come off. */
  lessArea: Fraction;
  /** Feet told to come off a run. */
  lessLength: Fraction;
  /** Slack at ends and boxes that a run needs beside its length. */
  makeUp: MakeUp[];
  /** One side said again: "24 long, not 22". Feet. */
  corrected: { from: Fraction; to: Fraction }[];
  /** A size was told in what is no measure: "six cubits". */
  unknownUnit: string | null;
  /** How bare figures were read, where that is a guess: told with the working. */
  assumed: string | null;
  /** Two figures were said and nobody knows which. */
  doubt: string | null;
}

export const SIDE = '(?: (?:wide|long|tall|high|deep|across|in length|in width|length|width|run))?';
const SURFACES =
  '(?:walls?|sides?|panels?|sections?|bays?|rooms?|runs?|slopes?|ceilings?|spots?|areas?|closets?|pieces|floors?|bedrooms?|legs?|faces?|gables?|stretch(?:es)?|rows?|beds?|slabs?|pads?|strips?|patch(?:es)?)';

/** Reads the sizes of places out of a note; figures in `used` are spoken for and are left alone. */
export function extentIn(said: Said, by: Measure, used: Set<number>): Extent {
  const out: Extent = {
    shapes: [],
    height: null,
    depth: null,
    openings: [],
    lessArea: zero(),
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
  rectanglesIn(said, by, used, out);
  heightIn(said, used, out);
  areasIn(said, used, out);
  if (out.depth === null && by === 'volume') thirdDepth(said, used, out);
  if (out.shapes.length === 0 && (by !== 'area' || out.height)) runsIn(said, used, out);
  if (out.shapes.length === 0 && by === 'area') perimeterIn(said, used, out);
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
    saying('(?:thick(?:ness)?|depth|deep)(?: of| at| is)? <LN>').exec(said.words);
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

/** Pairs by "x" or "by", with how many of them; a third figure is a fill's thickness. */
function rectanglesIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  const pair = saying(
    `<LN>(?: ?(?:foot|feet|ft))?${SIDE},? ?(?:x|by|and|times) (?:about )?<LN>(${SIDE})(?: ?(?:x|by) ?<LN>(?: thick| deep| high| tall)?)?`,
    'g',
  );
  for (const m of said.words.matchAll(pair)) {
    if ([m[1], m[2]].some((id) => used.has(Number(id)))) continue;
    const joined = /(?: ?(?:x|by|times) )/.test(m[0]);
    const sided = /\} (?:wide|long|tall|high|deep)/.test(m[0]) && m[3] !== '';
    if (!joined && !sided) continue;
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const third = m[4] ? figureAt(said, m[4]) : null;
    const sides = third && by === 'volume' ? [a, b, third] : [a, b];
    const inMillimetres = bareMillimetres(sides);
    const side = (f: Figure, mate: Figure) => (inMillimetres ? convert(f.value, 'mm', 'ft') : feet(said, f, mate));
    const [one, two] = [side(a, b), side(b, a)];
    if (!one || !two) continue;
    if (inMillimetres) out.assumed = `${sides.map((f) => f.value.toString()).join(' x ')} read as millimetres`;
    for (const id of [m[1], m[2], m[4]]) if (id) used.add(Number(id));
    if (third && by === 'volume') out.depth = inMillimetres ? side(third, a) : thickness(said, third);
    else if (third) out.height = feet(said, third, b);
    const count = countBefore(said, m.index, used) ?? countAfter(said, m.index + m[0].length, used) ?? 1;
    const upright = /\b(?:high|tall)\b/.test(m[0].slice(m[0].indexOf('}')));
    out.shapes.push({
      kind: upright || count > 1 ? 'rectangle' : 'room',
      sides: [one, two],
      amount: null,
      count,
      label: labelBefore(said.words, m.index),
      working: `${count > 1 ? `${count} x ` : ''}${feetText(one)} x ${feetText(two)}`,
    });
  }
  // "12 feet long, 9 wide" and "it's 4 wide and runs 15".
  if (out.shapes.length > 0) return;
  const named = (words: string) =>
    saying(`<LN>(?: ?(?:foot|feet|ft))? (?:${words})`).exec(said.words) ??
    saying(`\\b(?:${words.replace('long', 'length').replace('wide', 'width')})(?: is| of|:)? <LN>`).exec(said.words);
  const [long, wide] = [named('long'), named('wide|across')];
  if (!long || !wide || used.has(Number(long[1])) || used.has(Number(wide[1]))) return;
  const [a, b] = [figureAt(said, long[1]), figureAt(said, wide[1])];
  const [one, two] = [feet(said, a, b), feet(said, b, a)];
  if (!one || !two) return;
  for (const id of [long[1], wide[1]]) used.add(Number(id));
  out.shapes.push({
    kind: 'room',
    sides: [one, two],
    amount: null,
    count: 1,
    working: `${feetText(one)} x ${feetText(two)}`,
  });
}

const LABELS =
  /\b(closet|nook|pantry|hall(?:way)?|alcove|landing|bay|bump ?out|niche|short|long|main|big|small|north|south|east|west|front|back|left|right|first|second|third|other|island|office|den|bedroom|entry|kitchen|stairs?)\b/g;

/** The place that a size was said of: the last such word before it in its sentence. */
const labelBefore = (words: string, at: number): string | null =>
  words
    .slice(0, at)
    .split(/[.;]|\}/)
    .at(-1)!
    .match(LABELS)
    ?.at(-1) ?? null;

/** How many of a shape: "two sides, each one's", "3 walls at", "both slopes are". */
function countBefore(said: Said, at: number, used: Set<number>): number | null {
  const before = said.words
    .slice(Math.max(0, at - 70), at)
    .split(/[.;]/)
    .at(-1)!;
  const m = saying(
    `<NC> (?:[a-z]+ )?${SURFACES}(?:,? (?:of it|each one's|each one is|each one|each|both|all|that are|they're|of them|at|are|is|measure|measuring|of|about|'s))*[ ,]*$`,
  ).exec(before);
  if (m && figureAt(said, m[1]).value.d === 1n) {
    used.add(Number(m[1]));
    return figureAt(said, m[1]).value.valueOf();
  }
  const bare = saying('<N> (?:at|of them(?: are| at)?),? $').exec(before);
  if (bare && figureAt(said, bare[1]).value.d === 1n && figureAt(said, bare[1]).value.compare(30) < 0) {
    used.add(Number(bare[1]));
    return figureAt(said, bare[1]).value.valueOf();
  }
  return new RegExp(`\\bboth (?:[a-z]+ )?${SURFACES}[a-z', ]*$`).test(before) ? 2 : null;
}

/** "600 x 600, three of them". */
function countAfter(said: Said, at: number, used: Set<number>): number | null {
  const m = saying('^,? <N> of (?:them|those|these)\\b').exec(said.words.slice(at));
  if (!m || figureAt(said, m[1]).value.d !== 1n) return null;
  used.add(Number(m[1]));
  return figureAt(said, m[1]).value.valueOf();
}

/** "Eight foot ceilings", "2.4 high", "walls are nine foot". */
function heightIn(said: Said, used: Set<number>, out: Extent): void {
  const m =
    saying('<LN>(?: ?(?:foot|feet|ft))? (?:high|tall|ceilings?|walls?|to the ceiling|lids?|up the wall)').exec(
      said.words,
    ) ??
    saying(
      "(?:ceilings?|walls?|height|lids?)(?: (?:is|are|at|of|height|being|they're|about|run|go|to|all))* <LN>(?! ?(?:x|by|long|wide|sheets))",
    ).exec(said.words);
  if (!m || used.has(Number(m[1]))) return;
  const mate = said.figures.find((f) => f.sure && f.kind === 'length') ?? null;
  const value = feet(said, figureAt(said, m[1]), mate);
  if (!value || value.compare(40) > 0) return;
  out.height = value;
  used.add(Number(m[1]));
}

/** "62 feet around", "40 feet of wall": it becomes an area by the height. */
function perimeterIn(said: Said, used: Set<number>, out: Extent): void {
  const m =
    saying('<L>(?: total)?(?: all the way)? (?:around|round|of walls?|of perimeter|perimeter|long)\\b').exec(
      said.words,
    ) ?? saying('(?:perimeter|around|total(?:s|ing)?)(?: is| of|:)? <L>').exec(said.words);
  if (!m || used.has(Number(m[1]))) return;
  const length = feet(said, figureAt(said, m[1]), null);
  if (!length) return;
  used.add(Number(m[1]));
  out.shapes.push({ kind: 'run', sides: [length], amount: null, count: 1, working: feetText(length) });
}

/** "240 square feet of floor". */
function areasIn(said: Said, used: Set<number>, out: Extent): void {
  for (const m of said.words.matchAll(saying('<AV>', 'g'))) {
    const figure = figureAt(said, m[1]);
    if (used.has(Number(m[1])) || !figure.unit || figure.per) continue;
    const unit = figure.kind === 'volume' ? 'cu ft' : 'sq ft';
    const before = said.words.slice(Math.max(0, m.index - 24), m.index);
    const after = said.words.slice(m.index + m[0].length, m.index + m[0].length + 24);
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
