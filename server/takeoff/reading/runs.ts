import type Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { feet, feetText } from './lengths.ts';
import { type Figure, figureAt, figureIds, type Said, saying } from './said.ts';
import type { Extent } from './shapes.ts';

const NO_RUN =
  /^ ?(?:on center|o\.?c\b|apart|spacing|max|wide|thick|deep|joint|bead|gap|high|tall|rolls?|coils?|sticks?|sections?|spools?|lengths?\b|footers|diameter|pex|pipe\b|conduit|emt|copper|pvc|x |by \{)/;
const COUNTED =
  '(?: (?!(?:for|to|an?|per|in|every|on|with|and|from|by|x|of|is|are|at|coats?|percent|over|under)\\b)[a-z]+){0,2}';

/** "12 foot four, three runs", "27 feet, two lines", "18 feet, also two". */
const BEHIND = saying(
  '^,? (?:also |only |just )?<N> (?:runs?|rows?|lines?|of (?:them|those|these))\\b|^,? (?:also|only|just|times|x) <N>(?=[.,;]|$)',
);
/** "Nine windows, 15 ft of joint at each": as often as the things that were counted. */
const AT_EACH =
  /^(?: of (?:the )?[a-z]+)?(?: [a-z]+)? (?:at|per|for|on|around|to|in) (?:each|every)(?: (?:one|of them|[a-z]+))?(?=[ .,;]|$)/;
const THINGS = saying('<NC> (?:[a-z]+ )?[a-z]{3,}s\\b[^.{]*$');
const thingsOf = (before: string, rest: string): string | undefined =>
  AT_EACH.test(rest) ? THINGS.exec(before)?.[1] : undefined;

const BARE_LIST = saying(
  '\\b(?:perimeters?|runs|lengths|walls|legs|sides|stretches)(?: (?:are|of|is|at|measure|come to))*[:,]? ((?:\\{N\\d+\\},? (?:and |then )?)+\\{N\\d+\\})(?! ?(?:x|by|feet|foot|ft|high|tall)\\b)',
  'g',
);

/** "Hot's 31 ft and cold's 28": the name of a line before its length. */
const LINE =
  "(?:the )?(?:hot|cold|supply|return|vent|drain|other|second|third|last|back|front|side|end|left|right|long|short|north|south|east|west)(?: (?:one|line|run|side|wall|end|leg))?(?:'s| is| at| about)?";

/**
 * Lengths that are run along, each with how many: "two at 12 and one at 14", "84 feet of it", "12, 9, 14 and 8 foot",
 * "home run 30 then 11 and 9", "38 foot each, hot and cold".
 */
export function runsIn(said: Said, used: Set<number>, out: Extent): void {
  const { words } = said;
  const unit =
    said.figures.find((f) => f.sure && f.kind === 'length' && (f.unit === 'ft' || f.unit === 'm'))?.unit ?? 'ft';
  const push = (length: Fraction, count: number, ...ids: number[]) => {
    for (const id of ids) used.add(id);
    out.shapes.push({
      kind: 'run',
      sides: [length],
      amount: null,
      count,
      working: `${count > 1 ? `${count} x ` : ''}${feetText(length)}`,
    });
  };
  const bare = (id: number, beside?: Figure): Fraction | null => {
    const figure = said.figures[id]!;
    // "30 inches and 60 across": inches as well.
    const from = beside?.unit === 'in' && !/\b(?:foot|feet|ft)\b|['′’]/i.test(beside.quote) ? 'in' : unit;
    return used.has(id) || figure.unit !== null ? null : convert(figure.value, from, 'ft');
  };
  const home = saying("home ?runs?(?: (?:is|of|at|about)|'s|:)? (?:about )?<N>").exec(words);
  const first = home ? bare(Number(home[1])) : null;
  if (home && first) push(first, 1, Number(home[1]));
  const list = saying(
    `(?:<N>(?:${COUNTED})?(?: (?:of them|at|of|each|are|is|about|x))* )?((?:\\{N\\d+\\},? (?:and |then )?)*)<L>((?:,? (?:and |then )?(?:${LINE} )?\\{N\\d+\\}(?! ?(?:x|by|to|per|of|at|percent|%|straight|long|high|tall|deep|(?!across)[a-z]+s\\b)))*)`,
    'g',
  );
  // "Then six more cans eight feet apart": from one to the next.
  for (const m of words.matchAll(saying('<NCK>(?: more| other)?(?: [a-z]+){0,2} <L> apart\\b', 'g'))) {
    const length = feet(said, figureAt(said, m[2]), null);
    if (!length || used.has(Number(m[1])) || used.has(Number(m[2])) || figureAt(said, m[1]).value.d !== 1n) continue;
    push(length, figureAt(said, m[1]).value.valueOf(), Number(m[1]), Number(m[2]));
  }
  // "Perimeters 44, 51 and 38": bare lengths of one list.
  for (const m of words.matchAll(BARE_LIST))
    for (const id of figureIds(m[1]!)) {
      const length = bare(id);
      if (length) push(length, 1, id);
    }
  // "Two at 32 in and one at 60": a bare length takes the unit of the one before.
  const before = said.figures.find((f) => f.sure && f.kind === 'length')?.unit ?? unit;
  for (const m of words.matchAll(
    saying(
      '<N> (?:(?:drops|runs|legs|tails|lengths|pieces|hops|spurs|branches) )?(?:at|of) <N>(?! ?(?:x|by|percent|%|to|per))',
      'g',
    ),
  )) {
    if (used.has(Number(m[1])) || used.has(Number(m[2])) || figureAt(said, m[1]).value.d !== 1n) continue;
    const last = said.figures.findLast((f, k) => k < Number(m[1]) && f.sure && f.kind === 'length' && f.unit !== 'mm');
    const length = convert(figureAt(said, m[2]).value, last?.unit ?? before, 'ft');
    if (length) push(length, figureAt(said, m[1]).value.valueOf(), Number(m[1]), Number(m[2]));
  }
  // "Three runs of ten two, 55 foot each".
  for (const m of words.matchAll(
    saying('<NC> (?:home ?)?(?:runs?|lines?|circuits?)(?: of [a-z0-9/ -]{2,24}?)?,? <L> each\\b', 'g'),
  )) {
    const length = feet(said, figureAt(said, m[2]), null);
    if (!length || used.has(Number(m[1])) || used.has(Number(m[2]))) continue;
    push(length, figureAt(said, m[1]).value.valueOf(), Number(m[1]), Number(m[2]));
  }
  // "Six hops after that, eleven foot each": so many of one length, whatever they are called.
  for (const m of words.matchAll(
    saying('<N> (?!of\\b)[a-z]{3,}s(?: (?!and\\b|then\\b|at\\b)[a-z]+){0,3},? <L> (?:each|apiece)\\b', 'g'),
  )) {
    const length = feet(said, figureAt(said, m[2]), null);
    if (!length || used.has(Number(m[1])) || used.has(Number(m[2])) || figureAt(said, m[1]).value.d !== 1n) continue;
    push(length, figureAt(said, m[1]).value.valueOf(), Number(m[1]), Number(m[2]));
  }
  for (const m of words.matchAll(list)) {
    const id = Number(m[3]);
    const figure = said.figures[id]!;
    // "22 ft, 8 ft and 11 and a half": a bare one of the list is in its unit.
    const listed =
      !figure.sure && out.shapes.some((s) => s.kind === 'run') && /(?:, |and )$/.test(words.slice(0, m.index));
    const length =
      figure.onCenter || figure.per || /\bevery \{L$/.test(words.slice(0, words.indexOf(`${id}}`)))
        ? null
        : figure.sure
          ? feet(said, figure, null)
          : listed
            ? convert(figure.value, unit, 'ft')
            : null;
    const rest = words.slice(m.index + m[0].length);
    // No more than nothing is no short piece: it is asked about.
    const short = length !== null && length.compare(0) > 0 && length.compare(1) < 0;
    if (used.has(id) || !length || short || NO_RUN.test(rest)) continue;
    // "Two at 12": a count. "Nine, twelve and 14 foot": lengths of one list.
    const head = m[1] === undefined ? null : Number(m[1]);
    const counts = head !== null && !used.has(head) && said.figures[head]!.value.d === 1n;
    const ids = [...`${m[2]} ${m[4]}`.matchAll(/\{N(\d+)\}/g)].map((x) => Number(x[1]));
    for (const other of ids) {
      const also = bare(other, figure);
      if (also) push(also, 1, other);
    }
    // "12 foot four, three runs": counted behind the length.
    const behind = BEHIND.exec(rest)?.slice(1).find(Boolean) ?? thingsOf(words.slice(0, m.index), rest);
    const counter = counts ? head : behind !== undefined && !used.has(Number(behind)) ? Number(behind) : null;
    const count =
      counter !== null ? said.figures[counter]!.value.valueOf() : twice(words, rest, words.slice(0, m.index)) ? 2 : 1;
    push(length, count, id, ...(counter !== null ? [counter] : []));
  }
}

/** "Hot and cold both, 38 foot each", "both sides are 24 ft". */
const twice = (words: string, rest: string, before: string) =>
  // "Back 5 ft, sides 32 each": a place has two.
  (/\b(?:sides|ends)(?: are)?,? $/.test(before) && /^ (?:each|apiece)\b/.test(rest)) ||
  /\bboth (?:sides|ends|edges|walls|eaves|rakes)(?: of (?:the |that )?[a-z]+(?: [a-z]+)?)?(?: (?:at|are|is|run))*,? $/.test(
    before,
  ) ||
  /^ (?:long,? |of it )?(?:on |down |along )?(?:both|two|either) sides\b/.test(rest) ||
  (/^ (?:each|apiece|a side)\b/.test(rest) &&
    /\b(?:hot and cold|both|(?<!(?:six|eight|ten|twelve|fourteen) )two|pair|(?:supply|flow) and return|either side)\b/.test(
      words,
    )) ||
  (/\bhot and cold\b/.test(words) && /\b(?:both|each)\b/.test(words));

/** "9 windows, each 3 ft x 4 ft 6 all the way round": beads and trim go round openings; a door has no bottom side. */
export function roundOpenings(out: Extent): void {
  for (const { width, height, count, door } of out.openings) {
    if (!height) continue;
    const round = door ? width.add(height.mul(2)) : width.add(height).mul(2);
    const sides = door
      ? `${feetText(width)} + 2 x ${feetText(height)}`
      : `2 x (${feetText(width)} + ${feetText(height)})`;
    out.shapes.push({
      kind: 'run',
      sides: [round],
      amount: null,
      count,
      working: count > 1 ? `${count} x (${sides})` : sides,
    });
  }
  out.openings = [];
}
