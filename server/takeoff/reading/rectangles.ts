import { convert } from '../../../parser/quantities/units.ts';
import { bareMillimetres, feet, feetText, thickness } from './lengths.ts';
import type { Measure } from './measure.ts';
import { type Figure, figureAt, figureIds, type Said, saying } from './said.ts';
import { type Extent, SIDE } from './shapes.ts';

const SURFACES =
  '(?:walls?|sides?|panels?|sections?|bays?|rooms?|runs?|slopes?|ceilings?|spots?|areas?|closets?|pieces|floors?|bedrooms?|legs?|faces?|gables?|stretch(?:es)?|rows?|beds?|slabs?|pads?|strips?|patch(?:es)?)';

const isBare = (quote: string) => !/\b(?:in|inch|inches|foot|feet|ft)\b|["″”'′’]/i.test(quote);

/** Whole rooms, of which so many are alike: each has its walls. */
const ROOMS = /\b(?:bed ?rooms?|rooms?|closets?|bath(?:room)?s?|offices?)\b[^.;{]*$/;

/** "Sheets are 12x12", "same 12x12": what one piece measures. */
const OF_PIECES =
  /\b(?:sheets|tiles|boards|planks|panels|pieces)(?: (?:are|come|measure|at|in))+ $|\bsame $|\b(?:each|one|every) (?:sheet|tile|board|panel|piece)(?: (?:is|at|measures))*,? $/;

/** "One sheet of three quarter ply, eight by four": the sheet's own sides. */
const OF_SHEETS =
  /(?:\{K(\d+)\}|\b(?:sheets?|panels?)) of (?:(?!(?:for|walls?|floors?|ceilings?|rooms?|is|are|and)\b)[^.;])*$/;

function isOfSheets(said: Said, at: number): boolean {
  const m = OF_SHEETS.exec(said.words.slice(0, at));
  return m !== null && (m[1] === undefined || /^(?:sheet|panel)$/.test(figureAt(said, m[1]).unit ?? ''));
}

const JOINS = /(?: ?(?:x|by|and|times) )|\b(?:wide|long|tall|high|deep|across)\b/;

/** Pairs by "x" or "by", with how many of them; a third figure is a fill's thickness. */
export function rectanglesIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  const pair = saying(
    `<LN>(?: ?(?:foot|feet|ft))?${SIDE},? ?(?:(?:x|by|and|times) )?(?:about )?<LN>(${SIDE})(?: ?(?:x|by) ?<LN>(?: thick| deep| high| tall)?)?`,
    'g',
  );
  for (let m = pair.exec(said.words); m; m = pair.exec(said.words)) {
    // "Half inch, four by eight": the pair begins behind the comma.
    if (m[4] && !JOINS.test(said.words.slice(m.index, said.words.indexOf(`${m[2]}}`, m.index + 4)))) {
      pair.lastIndex = m.index + 2;
      continue;
    }
    if ([m[1], m[2]].some((id) => used.has(Number(id))) || OF_PIECES.test(said.words.slice(0, m.index))) continue;
    if (isOfSheets(said, m.index)) continue;
    // "Eight by eight by sixteens": pieces, which no place is told by in the plural.
    if ([m[1], m[2], m[4]].some((id) => id && PLURAL.test(figureAt(said, id).quote))) continue;
    const joined = /(?: ?(?:x|by|times) )/.test(m[0]);
    const first = m[0].slice(m[0].indexOf('}') + 1, m[0].lastIndexOf('{'));
    const sided =
      by !== 'length' &&
      /^ (?:wide|long|tall|high|deep|across|(?:foot|feet|ft) (?:wide|long|tall|high|deep))/.test(first) &&
      m[3] !== '';
    if (!joined && !sided) continue;
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const third = m[4] ? figureAt(said, m[4]) : null;
    const sides = third && by === 'volume' ? [a, b, third] : [a, b];
    const inMillimetres = bareMillimetres(sides);
    // "4 by 6 by 4 inches thick": the inches are the thickness's alone.
    const thin = third?.unit === 'in' && by === 'volume' && [a, b].every((f) => f.unit === 'in' && isBare(f.quote));
    const side = (f: Figure, mate: Figure) =>
      inMillimetres ? convert(f.value, 'mm', 'ft') : thin ? f.value : feet(said, f, mate);
    const [one, two] = [side(a, b), side(b, a)];
    if (!one || !two) continue;
    if (inMillimetres) out.assumed = `${sides.map((f) => f.value.toString()).join(' x ')} read as millimetres`;
    for (const id of [m[1], m[2], m[4]]) if (id) used.add(Number(id));
    if (third && by === 'volume') out.depth = inMillimetres ? side(third, a) : thickness(said, third);
    else if (third) out.height = feet(said, third, b);
    const told = countBefore(said, m.index, used) ?? countAfter(said, m.index + m[0].length, used) ?? 1;
    // "All four sides, 28 by 40": of one house.
    const round = told === 4 && /\ball (?:\{N\d+\}|four) (?:sides|walls)[ ,]*$/.test(said.words.slice(0, m.index));
    const count = round || told === listedFrom(said.words, m.index, used) ? 1 : told;
    const [before, behind] = [said.words.slice(0, m.index), said.words.slice(m.index + m[0].length)];
    if (GABLE.test(before.split(/[.;]/).at(-1)!) || PEAK.test(behind)) {
      out.shapes.push({
        kind: 'area',
        sides: [],
        amount: one.mul(two).div(2),
        count,
        label: labelBefore(said.words, m.index),
        working: `${feetText(one)} x ${feetText(two)} / 2 (a triangle)`,
      });
      continue;
    }
    // A third side is a room's height, and its own word stands behind it.
    const base = third ? m[0].slice(0, m[0].lastIndexOf('{')) : m[0];
    const upright = /\b(?:high|tall)\b/.test(base.slice(base.indexOf('}')));
    out.shapes.push({
      kind: upright || (count > 1 && !ROOMS.test(said.words.slice(0, m.index))) ? 'rectangle' : 'room',
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

/** Sides of sheets and blocks, not of a place. */
const PLURAL = /^(?:fours|fives|sixes|eights|nines|tens|twelves|sixteens)$/i;

/** A triangle's sides: "the gable is 31 wide and 6 high in the middle". */
const GABLE = /\b(?:gables?(?: ends?)?|triangles?)\b[^{}]*$/;
const PEAK = /^ ?(?:in the (?:middle|center|centre)|(?:at|to|up to) (?:the )?(?:peak|point|ridge))\b/;

const LABELS =
  /\b(?:closet|nook|pantry|hall(?:way)?|alcove|landing|bay|bump ?out|niche|short|long|main|big|small|north|south|east|west|front|back|left|right|first|second|third|other|island|office|den|bedroom|entry|kitchen|stairs?)\b/g;

/** The place that a size was said of: the last such words before it in its sentence, `front bedroom`. */
const labelBefore = (words: string, at: number): string | null =>
  labelsIn(
    words
      .slice(0, at)
      .split(/[.;]|\}/)
      .at(-1)!,
  ).at(-1) ?? null;

/** Places named in some words: `back bedroom`, `closet`. */
export const labelsIn = (words: string): string[] =>
  words.match(new RegExp(`${LABELS.source}(?: ${LABELS.source})?`, 'g')) ?? [];

const PAIR = '\\{[LN]\\d+\\}(?: (?:foot|feet|ft))? ?(?:x|by) ?\\{[LN]\\d+\\}';
/** "Main one 11 x 13, small one 9 by 10": which of them, between the sizes of a list. */
const WHICH =
  "(?:(?:the )?(?:one|other|main|small|smaller|big|bigger|little|second|first|back|front|left|right|long|short)(?: (?:one|bedroom|room|wall))?(?:'s| is)? )?";
const LISTED = new RegExp(`^${PAIR},?(?: (?:and |then )?${WHICH}${PAIR},?)+`);

/** "Two of them, 5 foot by 8 and 3 foot by 8": sizes told one after another, each of a place of its own. */
function listedFrom(words: string, at: number, used: ReadonlySet<number>): number {
  const list = LISTED.exec(words.slice(at))?.[0] ?? '';
  const [, ...others] = [...list.matchAll(new RegExp(PAIR, 'g'))];
  return 1 + others.filter(([pair]) => !figureIds(pair).some((id) => used.has(id))).length;
}

const NO_PLACES =
  /\b(?:coats|sheets|boxes|bags|rolls|tiles|boards|planks|doors|windows|inches|bundles|sticks|pieces)\b/;

const SPELT = ['two', 'three', 'four', 'five', 'six', 'seven', 'eight'];

/** How many of a shape: "two sides, each one's", "3 walls at", "both slopes are". */
export function countBefore(said: Said, at: number, used: Set<number>): number | null {
  const before = said.words
    .slice(Math.max(0, at - 70), at)
    .split(/[.;]/)
    .at(-1)!;
  const m = saying(
    `(?:<NC>|\\b(two|three|four|five|six|seven|eight)) (?:(?!(?:and|an?|the|by|of|in|for|with|is|at|less) )[a-z]+ ){0,2}${SURFACES}(?: (?:in|on|at|by|off|along|out) (?:the )?[a-z]+(?: [a-z]+)?)?(?:,? (?:of it|each one's|each one is|each one|each|both|all|that are|they're|of them|at|are|is|only|just|alike|measure|measuring|of|about|'s))*[ ,]*$`,
  ).exec(before);
  // "For three walls": what the reading of quantities did not count.
  if (m?.[2]) return SPELT.indexOf(m[2]) + 2;
  if (m && !used.has(Number(m[1])) && figureAt(said, m[1]).value.d === 1n) {
    used.add(Number(m[1]));
    return figureAt(said, m[1]).value.valueOf();
  }
  // "Two eaves at 42 ft": whatever it is, so many of that size.
  const things = saying('<NC> (?:[a-z]+ )?[a-z]{3,}s(?: (?:at|of|are|each|measuring|that are))+ (?:about )?$').exec(
    before,
  );
  if (
    things &&
    !used.has(Number(things[1])) &&
    figureAt(said, things[1]).value.d === 1n &&
    !NO_PLACES.test(things[0])
  ) {
    used.add(Number(things[1]));
    return figureAt(said, things[1]).value.valueOf();
  }
  const bare = saying('<N> (?:at|of (?:them|those)(?:,? (?:are|at|all|each|each one|every one|is))*),? $').exec(before);
  if (bare && figureAt(said, bare[1]).value.d === 1n && figureAt(said, bare[1]).value.compare(30) < 0) {
    used.add(Number(bare[1]));
    return figureAt(said, bare[1]).value.valueOf();
  }
  return new RegExp(`\\bboth (?:[a-z]+ )?${SURFACES}[a-z', ]*$`).test(before) ? 2 : null;
}

/** "600 x 600, three of them". */
function countAfter(said: Said, at: number, used: Set<number>): number | null {
  if (/^,? (?:on |for )?both (?:slopes|sides|walls|faces|gables)\b/.test(said.words.slice(at))) return 2;
  const m = saying('^,? <N> of (?:them|those|these)\\b').exec(said.words.slice(at));
  if (!m || figureAt(said, m[1]).value.d !== 1n) return null;
  used.add(Number(m[1]));
  return figureAt(said, m[1]).value.valueOf();
}
