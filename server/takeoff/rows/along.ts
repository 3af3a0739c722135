import Fraction from 'fraction.js';
import { type Figure, figureAt, lengthIn, type Said, saying } from '../reading/said.ts';
import { claim, free, NUMBER, numberOf, type RowTold } from './row.ts';

/** A length that is neither spacing nor size of a piece, by what stands behind it. */
const NOT_A_RUN =
  /^ ?(?:\{N\d+\} ?(?:x|by)|on center|o\.?c\b|apart|cent(?:er|re)s?|spacing|gap|high|tall|deep|wide boards?|thick|square|long (?:studs?|posts?|boards?|joists?|rafters?|pickets?)|footers?|studs?\b|posts?\b|joists?\b|rafters?\b|pickets?\b|boards?\b|rails?\b|shelf boards?\b|sticks?\b|sections?\b|way\b|lengths?\b|gate|x |by \{)/;

/** What the row runs along: lengths that nothing else has claimed. */
export function runsIn(said: Said, told: RowTold): void {
  const { words } = said;
  const least = told.spacing ?? told.width ?? new Fraction(12);
  const pair = saying('<LN>(?: (?:foot|feet|ft|long|wide|deep|out))* ?(?:x|by) ?<LN>').exec(words);
  if (pair && free(told, pair[1]) && free(told, pair[2])) {
    const sides = [pair[1], pair[2]].map((id) => lengthIn(figureAt(said, id), 'in', 'ft'));
    if (sides[0] && sides[1]) {
      claim(told, pair[1], pair[2]);
      const [long, short] = sides[0].compare(sides[1]) >= 0 ? [sides[0], sides[1]] : [sides[1], sides[0]];
      if (told.item === 'stud' && /\b(?:walls|room|around|perimeter|all four)\b/.test(words))
        told.runs = [long, short, long, short];
      else if (told.item === 'deck board') told.runs = [acrossOf(said, told, short, long)];
      // Joists stand across the boards; else pieces reach the short way, so that their row runs the long way.
      else told.runs = [told.item === 'joist' && wayOf(said, told)?.equals(short) ? short : long];
      return;
    }
  }
  const across = acrossIn(said, told);
  if (across) {
    told.runs = [across];
    return;
  }
  // "Two at twelve and two at eight": bare lengths of walls are feet.
  for (const m of words.matchAll(saying('<N> at <N>(?! ?(?:x|by|on center))', 'g'))) {
    const [n, length] = [figureAt(said, m[1]).value, lengthIn(figureAt(said, m[2]), 'in', 'ft')];
    if (!free(told, m[1]) || !free(told, m[2]) || n.d !== 1n || n.compare(20) > 0 || !length) continue;
    told.runs.push(...Array<Fraction>(n.valueOf()).fill(length));
    claim(told, m[1], m[2]);
  }
  for (const m of words.matchAll(
    saying(
      `(?:${NUMBER} (?:walls?|sides?|runs?|sections?|rows?|stretch(?:es)?|bays|rails?|flights?|shelves|of (?:them|those))(?: (?:and every one|every one|each one|and each one|at|of|each|are|is|both))* )?<LN>`,
      'g',
    ),
  )) {
    const id = m[3];
    const figure = figureAt(said, id);
    const rest = words.slice(m.index + m[0].length);
    if (!free(told, id) || NOT_A_RUN.test(rest) || figure.per || isFenceHeight(said, figure, rest)) continue;
    // "14 footers" are bought; joists do not stand along what reaches out from the house.
    if (/foot ?ers?$/i.test(figure.quote) || (told.item === 'joist' && /^ (?:out|back)\b/.test(rest))) continue;
    const bare = figure.unit === null && /^(?:,|\.| and\b| then\b|$)/.test(rest);
    const at = m.index + m[0].lastIndexOf('{');
    // A ceiling's height is no run, and "on a 45" is an angle.
    if (/\b(?:ceilings?|height)(?: (?:is|are|at|of))* $/.test(words.slice(0, at))) continue;
    // "An 18 foot ledger now, not 14": the old one.
    if (/\b(?:not|instead of|rather than|was) (?:the |a )?$/.test(words.slice(0, at))) continue;
    if (!figure.sure && !(bare && listed(words, at) && !/\b(?:on|at) an? $/.test(words.slice(0, at)))) continue;
    const length = lengthIn(figure, 'in', 'ft');
    if (!length || (length.compare(0) > 0 && length.compare(least) < 0)) continue;
    const pair =
      /^ (?:each|apiece)\b/.test(rest) && /\b(?:flow and return|hot and cold|supply and return)\b/.test(words);
    const count = m[1] || m[2] ? numberOf(said, m[1], m[2]) : pair ? 2 : 1;
    told.runs.push(...Array<Fraction>(Math.min(20, Math.max(1, count))).fill(length));
    claim(told, id, m[1]);
  }
  const both = /\b(?:both|each|two|either) (?:side|slope|end|gable|way)s?\b/.test(
    words.replace(/\b(?:at|on) (?:both|each|either) ends?\b|\bends? of each\b/g, ''),
  );
  const sides = saying('<N> (?:sides|slopes|walls alike|gables|rows)\\b').exec(words);
  if (sides && free(told, sides[1])) {
    told.times = figureAt(said, sides[1]).value.valueOf();
    claim(told, sides[1]);
  } else if (both && told.runs.length === 1 && /rafter|truss|baluster|purlin|batten/.test(told.item)) told.times = 2;
}

/** "Six foot privacy fence, fifty six foot of it": how high, where another length tells how long. */
function isFenceHeight(said: Said, figure: Figure, rest: string): boolean {
  if (!/^ ?(?:[a-z]+ ){0,2}(?:fence|fencing)\b/.test(rest)) return false;
  const feet = lengthIn(figure, 'ft', 'ft');
  const longer = said.figures.some((f) => f.sure && (lengthIn(f, 'ft')?.compare(8) ?? 0) > 0);
  return feet !== null && feet.compare(8) <= 0 && longer;
}

/** A bare figure between commas of a list of lengths: "9, 12 and 14 foot". */
const listed = (words: string, at: number) =>
  /(?:, |and )$/.test(words.slice(0, at)) || /^\{[A-Z]\d+\}(?:,| and)/.test(words.slice(at));

/** The side that boards were said to lie along: "boards run the 16 ft way". */
function wayOf(said: Said, told: RowTold): Fraction | null {
  const m =
    saying('\\b(?:run|runs|running|go|goes|going|laid|lay)(?: (?:the|along|with))* <LN>').exec(said.words) ??
    saying('\\bboards?(?: go| run)? the <LN>(?: (?:foot|feet|ft))? way').exec(said.words);
  if (!m || !free(told, m[1])) return null;
  claim(told, m[1]);
  return lengthIn(figureAt(said, m[1]), 'in', 'ft');
}

/** "Deck's 12 ft out from the house", "12 ft across the boards". */
function acrossIn(said: Said, told: RowTold): Fraction | null {
  if (told.item !== 'deck board') return null;
  wayOf(said, told);
  const out = saying('<LN>(?: (?:foot|feet|ft))? (?:out|deep|wide|across|the other way|to the house)').exec(said.words);
  if (!out || !free(told, out[1])) return null;
  claim(told, out[1]);
  return lengthIn(figureAt(said, out[1]), 'in', 'ft');
}

/** Boards of a deck told by two sides lie along the side that was said, else the long one. */
const acrossOf = (said: Said, told: RowTold, short: Fraction, long: Fraction): Fraction =>
  wayOf(said, told)?.equals(short) || /\b(?:the short way|short direction)\b/.test(said.words) ? long : short;
