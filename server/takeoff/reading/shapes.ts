import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import type { Measure } from './goods.ts';
import { type Figure, figureAt, type Said, saying } from './said.ts';

/** A piece of floor, wall, run or hole as told, in feet. */
export interface Shape {
  kind: 'rectangle' | 'room' | 'run' | 'area' | 'volume';
  /** Sides in feet: two of a rectangle, length and width of a room, one of a run. */
  sides: Fraction[];
  /** Square or cubic feet of a shape told by its area or volume. */
  amount: Fraction | null;
  count: number;
  working: string;
}

export interface Extent {
  shapes: Shape[];
  /** Feet: height of walls, or of a room. */
  height: Fraction | null;
  /** Feet: thickness of a fill. */
  depth: Fraction | null;
  /** Doors and windows, each in feet. */
  openings: { width: Fraction; height: Fraction | null; count: number }[];
  /** Square feet told to come off. */
  lessArea: Fraction;
  /** Feet told to come off a run. */
  lessLength: Fraction;
  /** Two figures were said and nobody knows which. */
  doubt: string | null;
}

const OPENING =
  'door|doors|doorway|doorways|window|windows|opening|openings|slider|sliders|patio door|garage door|archway|arch|skylight|skylights|vent|hole|island|cabinets?|hearth|tub|closet opening|cased opening';
const SIDE = '(?: (?:wide|long|tall|high|deep|across|in length|in width|length|width|run))?';
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
    doubt: null,
  };
  out.doubt = doubtIn(said, used);
  contradicted(said, used);
  openingsIn(said, used, out);
  depthIn(said, by, used, out);
  rectanglesIn(said, by, used, out);
  heightIn(said, used, out);
  areasIn(said, used, out);
  if (out.shapes.length === 0 && by !== 'area') runsIn(said, used, out);
  if (out.shapes.length === 0 && by === 'area') perimeterIn(said, used, out);
  return out;
}

const zero = () => new Fraction(0);

/** "Not 6", "instead of 6": the figure is the old one. */
function contradicted(said: Said, used: Set<number>): void {
  for (const m of said.words.matchAll(
    saying('\\b(?:not|instead of|rather than|i said|was) (?:the )?<LN>(?: ?(?:x|by) ?<LN>)?', 'g'),
  )) {
    if (m[0].startsWith('i said') || m[0].startsWith('was')) continue;
    for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
  }
}

/** Two figures for one length, or words of not knowing. */
function doubtIn(said: Said, used: Set<number>): string | null {
  for (const m of said.words.matchAll(
    saying(
      '<LN>(?: (?:wide|long|high|deep|tall))?,? (?:or (?:is it |was it |maybe |it might be )?|maybe |could be )<LN>(?: (?!sheets)[a-z]+)?',
      'g',
    ),
  )) {
    if (used.has(Number(m[1])) || used.has(Number(m[2]))) continue;
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const unit = b.unit ?? a.unit ?? (said.figures.some((f) => f.unit === 'm') ? 'm' : 'ft');
    if (a.value.equals(b.value)) continue;
    return `${a.value.toString()} or ${b.value.toString()} ${unit}`;
  }
  const unsure =
    /\b(?:couldn't (?:hear|read|make out)|can't (?:read|remember|recall)|don't (?:remember|recall|know)|not sure|forgot|forget|have to (?:check|measure)|gotta (?:check|measure)|need to (?:re)?measure|didn't measure|haven't measured|no idea|eyeballed|guessing|smudged|can't make out)\b/.exec(
      said.words,
    );
  return unsure ? unsure[0] : null;
}

/** A length in feet; a bare one takes the note's own unit, or another bare-equal figure's. */
function feet(said: Said, figure: Figure, mate: Figure | null): Fraction | null {
  if (figure.sure && figure.unit) return convert(figure.value, figure.unit, 'ft');
  if (figure.unit !== null && figure.kind !== 'length') return null;
  // "11-6 x 18 in, the short one 4 ft x 18": the same figure was said with its unit; a small one may be a thickness.
  const twin = said.figures.find(
    (f) => f !== figure && f.sure && f.kind === 'length' && f.value.equals(figure.value) && f.value.compare(12) >= 0,
  );
  const metric = said.figures.find((f) => f.sure && (f.unit === 'm' || f.unit === 'mm' || f.unit === 'cm'))?.unit;
  const from = twin?.unit ?? (mate?.sure && mate.kind === 'length' ? mate.unit : null) ?? metric ?? 'ft';
  return convert(figure.value, from!, 'ft');
}

function openingsIn(said: Said, used: Set<number>, out: Extent): void {
  const { words } = said;
  if (
    /\b(?:don't|do not|not|no need to) (?:take|deduct|subtract|count|bother)[a-z ]* (?:out|off|openings|doors|windows|them)\b/.test(
      words,
    )
  ) {
    for (const m of words.matchAll(saying(`\\b(?:${OPENING})(?: (?:is|are|at|each))* <LN>(?: ?(?:x|by) ?<LN>)?`, 'g')))
      for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
    return;
  }
  const take = (count: string | undefined, a: string | undefined, b: string | undefined) => {
    if (used.has(Number(a)) || (b && used.has(Number(b)))) return;
    const first = figureAt(said, a);
    const second = b ? figureAt(said, b) : null;
    const width = feet(said, first, second);
    const height = second ? feet(said, second, first) : null;
    if (!width || (second && !height)) return;
    out.openings.push({ width, height, count: count ? figureAt(said, count).value.valueOf() : 1 });
    for (const id of [count, a, b]) if (id) used.add(Number(id));
  };
  const named = new RegExp(`\\b(?:${OPENING})\\b`);
  for (const m of words.matchAll(
    saying(
      `(?:<N> )?(?:[a-z]+ ){0,2}(?:${OPENING})(?: (?:is|are|at|of|each|that's|that are|being|'s|measuring)|,|:)* <LN>${SIDE} ?(?:x|by) ?<LN>`,
      'g',
    ),
  ))
    if (
      !/\b(?:by|near|behind|at|outside|beside|from|to) the [a-z ]*$/.test(words.slice(0, m.index + m[0].indexOf('{')))
    )
      take(m[1], m[2], m[3]);
  for (const m of words.matchAll(
    saying(`(?:<N> )?<LN>${SIDE} ?(?:x|by) ?<LN>(?: [a-z]+){0,2}? (?:${OPENING})\\b`, 'g'),
  ))
    take(m[1], m[2], m[3]);
  for (const m of words.matchAll(
    saying(
      `(?:less|minus|take (?:off|out)|deduct|subtract|knock off|not counting|except(?: for)?|skip)[^.;]{0,30}?<A>`,
      'g',
    ),
  )) {
    const area = convert(figureAt(said, m[1]).value, figureAt(said, m[1]).unit!, 'sq ft');
    if (area && !used.has(Number(m[1]))) out.lessArea = out.lessArea.add(area);
    used.add(Number(m[1]));
  }
  for (const m of words.matchAll(
    saying(
      `(?:<N> )?(?:[a-z]+ )?(?:${OPENING})(?: (?:is|are|at|of|come to|total|totaling|each|that's))* <A>( each)?`,
      'g',
    ),
  )) {
    if (used.has(Number(m[2]))) continue;
    const area = convert(figureAt(said, m[2]).value, figureAt(said, m[2]).unit!, 'sq ft');
    const each = m[1] && !/come to|total/.test(m[0]) ? figureAt(said, m[1]).value : new Fraction(1);
    if (area) out.lessArea = out.lessArea.add(area.mul(each));
    for (const id of [m[1], m[2]]) if (id) used.add(Number(id));
  }
  // "Less two three-foot doors", "minus a 32 inch doorway": width only, for runs.
  for (const m of words.matchAll(
    saying(
      `(?:<N> |\\ba |\\bone |\\bthe )?<LN> (?:wide |foot |cased |closet |entry |bifold |sliding |front |back )*(?:${OPENING})\\b`,
      'g',
    ),
  )) {
    if (
      !/\b(?:less|minus|off|out|deduct|subtract|except|skip|not counting|without|no base|for the)\b/.test(words) ||
      !named.test(m[0])
    )
      continue;
    take(m[1], m[2], undefined);
  }
  for (const m of words.matchAll(
    saying(
      `(?:less|minus|take (?:off|out)|deduct|subtract|knock off|off) (?:<N> )?(?:for |the |a |an |one |that )*(?:[a-z]+ )?(?:${OPENING})(?: (?:at|of|is|are|each))* <LN>`,
      'g',
    ),
  ))
    take(m[1], m[2], undefined);
  for (const m of words.matchAll(
    saying('(?:less|minus|take (?:off|out)|deduct|subtract|knock off) (?:about )?<L>(?! ?(?:x|by))', 'g'),
  )) {
    const length = feet(said, figureAt(said, m[1]), null);
    if (length && !used.has(Number(m[1]))) out.lessLength = out.lessLength.add(length);
    used.add(Number(m[1]));
  }
}

/** "Four inches thick", "3 deep" for fills. */
function depthIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  if (by !== 'volume') return;
  const m =
    saying('<LN>(?: inch| inches)? (?:thick|deep|of depth)').exec(said.words) ??
    saying('(?:thick(?:ness)?|depth|deep)(?: of| at| is)? <LN>').exec(said.words);
  if (!m || used.has(Number(m[1]))) return;
  const figure = figureAt(said, m[1]);
  out.depth = figure.sure ? convert(figure.value, figure.unit!, 'ft') : figure.value.div(12);
  used.add(Number(m[1]));
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
    const [one, two] = [feet(said, a, b), feet(said, b, a)];
    if (!one || !two) continue;
    for (const id of [m[1], m[2], m[4]]) if (id) used.add(Number(id));
    const third = m[4] ? figureAt(said, m[4]) : null;
    if (third && by === 'volume')
      out.depth = third.sure ? convert(third.value, third.unit!, 'ft') : third.value.div(12);
    else if (third) out.height = feet(said, third, b);
    const count = countBefore(said, m.index, used);
    const upright = /\b(?:high|tall)\b/.test(m[0].slice(m[0].indexOf('}')));
    out.shapes.push({
      kind: upright || count > 1 ? 'rectangle' : 'room',
      sides: [one, two],
      amount: null,
      count,
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

/** How many of a shape: "two sides, each one's", "3 walls at", "both slopes are". */
function countBefore(said: Said, at: number, used: Set<number>): number {
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
  const bare = saying('<N> (?:at|of them(?: are| at)?) $').exec(before);
  if (bare && figureAt(said, bare[1]).value.d === 1n && figureAt(said, bare[1]).value.compare(30) < 0) {
    used.add(Number(bare[1]));
    return figureAt(said, bare[1]).value.valueOf();
  }
  return new RegExp(`\\bboth (?:[a-z]+ )?${SURFACES}[a-z', ]*$`).test(before) ? 2 : 1;
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

/** Lengths that are run along, each with how many: "two at 12 and one at 14", "84 feet of it", "12, 9, 14 and 8 foot". */
function runsIn(said: Said, used: Set<number>, out: Extent): void {
  const { words } = said;
  for (const m of words.matchAll(saying('(?:<N>(?: [a-z]+){0,2} (?:at |of )?|\\b)<L>', 'g'))) {
    const figure = figureAt(said, m[2]);
    if (used.has(Number(m[2])) || !figure.sure || figure.onCenter) continue;
    const length = feet(said, figure, null);
    if (!length || length.compare(1) < 0) continue;
    const around = words.slice(m.index + m[0].length, m.index + m[0].length + 28);
    if (/^ (?:on center|o\.?c|apart|spacing|max|wide|thick|deep|joint|bead|gap|high|tall)/.test(around)) continue;
    const counted =
      m[1] &&
      !used.has(Number(m[1])) &&
      / (?:at|of|walls?|runs?|sides?|pieces|windows?|doors?|tubs?|seams?|joints?|lengths?)[a-z ]*$/.test(
        m[0].slice(0, m[0].lastIndexOf('{')),
      );
    const count = counted ? figureAt(said, m[1]).value.valueOf() : 1;
    // Bare figures right before share the run's unit: "9, 12, 8 and 14 foot".
    const listed = /((?:\{N\d+\},? (?:and )?)+)$/.exec(words.slice(0, m.index + m[0].lastIndexOf('{')));
    const bare = counted
      ? []
      : [...(listed?.[1] ?? '').matchAll(/\{N(\d+)\}/g)].map((x) => x[1]!).filter((id) => !used.has(Number(id)));
    for (const id of [...bare, m[2]!, ...(counted ? [m[1]!] : [])]) used.add(Number(id));
    for (const id of bare) {
      const run = convert(figureAt(said, id).value, figure.unit!, 'ft');
      if (run) out.shapes.push({ kind: 'run', sides: [run], amount: null, count: 1, working: feetText(run) });
    }
    out.shapes.push({
      kind: 'run',
      sides: [length],
      amount: null,
      count,
      working: `${count > 1 ? `${count} x ` : ''}${feetText(length)}`,
    });
  }
}

/** A length in the note's own measure: `8 ft 4 in`, or metres where it spoke in metres. */
export function sizeText(feet: Fraction, metric: boolean): string {
  const metres = metric ? convert(feet, 'ft', 'm') : null;
  return metres ? `${Math.round(metres.valueOf() * 1000) / 1000} m` : feetText(feet);
}

/** `8 ft 4 in`. */
function feetText(value: Fraction): string {
  const whole = value.floor();
  const inches = value.sub(whole).mul(12);
  if (inches.equals(0)) return `${whole.toFraction()} ft`;
  if (16 % Number(inches.d) !== 0) return `${Math.round(value.valueOf() * 1000) / 1000} ft`;
  const rest = inches.toFraction(true).replace(' ', '-');
  return whole.equals(0) ? `${rest} in` : `${whole.toFraction()} ft ${rest} in`;
}
