import type { Line } from './line.ts';
import { unitNamed } from './units.ts';
import { CLIPPED_PARTS, GLYPHS, LEANS, ONES, ORDINAL_PARTS, PARTS, TENS, wordSet } from './words.ts';

/** A part of one: `n` of `d`, tokens up to `until`. */
export interface Part {
  n: number;
  d: number;
  until: number;
}

const TAPE = new Set([2, 3, 4, 5, 6, 8, 10, 16, 32, 64]);

/** A part in digits: `3/8`, `5/16ths`, `⅝`. */
export function digitPartAt(line: Line, i: number): Part | null {
  const glyph = GLYPHS.get(line.tokens[i]?.text ?? '');
  return glyph ? { n: glyph[0], d: glyph[1], until: i + 1 } : (slashAt(line, i) ?? unslashed(line, i));
}

/** `5 8ths`: the slash left out. */
function unslashed(line: Line, i: number): Part | null {
  const [n, d] = [Number(line.tokens[i]?.text), Number(line.tokens[i + 1]?.text)];
  const ended = line.word(i + 2) === 'ths' && line.tight(i + 2) && line.tokens[i + 1]!.spaced;
  return ended && Number.isInteger(n) && n > 0 && n < d && (d === 8 || d === 16) ? { n, d, until: i + 3 } : null;
}

/** A slash with no blanks, or one on both sides, and a tape's denominator. `12/2` is cable, `6/12` a pitch, `2/8` a door: not here. */
function slashAt(line: Line, i: number): Part | null {
  const [a, slash, b] = [line.tokens[i], line.tokens[i + 1], line.tokens[i + 2]];
  if (a?.kind !== 'number' || slash?.text !== '/' || b?.kind !== 'number' || slash.spaced !== b.spaced) return null;
  const [n, d] = [Number(a.text), Number(b.text)];
  if (!Number.isInteger(n) || n < 1 || !TAPE.has(d) || n >= d || line.tokens[i + 3]?.text === '/') return null;
  const ended = line.tight(i + 3) && /^(?:ths?|nds?|rds?)$/.test(line.word(i + 3));
  if (n % 2 === 0 && d % 2 === 0 && !ended && !/^(?:"|in|inch|inches|″|”|of)$/.test(line.word(i + 3))) return null;
  return { n, d, until: ended ? i + 4 : i + 3 };
}

const PACKED = wordSet('pack volume weight');

/**
 * A part in words: "a half", "three eighths", "quarter", "five thirty seconds", "half a sixteenth", "3 quarters".
 *
 * @param afterAnd it follows "and": there "three eight" is heard as three eighths
 */
export function wordPartAt(line: Line, i: number, afterAnd: boolean): Part | null {
  const tens = manyOf(line, i);
  if (tens) return tens;
  // "Third of a tube left": phones swallow the article.
  if (
    line.word(i) === 'third' &&
    /^of an?$/.test(`${line.word(i + 1)} ${line.word(i + 2)}`) &&
    PACKED.has(unitNamed(line.word(i + 3))?.kind ?? '')
  )
    return /^(?:the|\w+ty|that|this)$/.test(line.word(i - 1)) ? null : { n: 1, d: 3, until: i + 1 };
  const first = line.word(i);
  const counted = countAt(line, i);
  // "Un octavo de pulgada"; "un cuarto" alone is a room.
  const article = /^an?$/.test(first) || (/^una?$/.test(first) && line.word(i + 2) === 'de');
  let k = counted !== null || article ? i + 1 : i;
  if (k > i && line.tokens[k]?.text === '-') k++;
  const n = counted ?? 1;
  const d = divisorAt(line, k, counted !== null || article || LEANS.has(line.word(k - 1)));
  if (d) {
    // "Two quarter inch bits" are two; "quarters" alone, and "three half inch bolts", name no part; "inch and a quarters" are screws.
    const many = d.plural && !(afterAnd && article);
    const uncounted = counted === null && (many || !(article || standsBare(line, k, afterAnd)));
    const unreduced = n > 1 && n % 2 === 0 && d.d % 2 === 0 && !d.plural;
    return n >= d.d || uncounted || unreduced ? null : halved(line, { n, d: d.d, until: d.until });
  }
  const clipped = CLIPPED_PARTS.get(line.word(k));
  const plural = line.word(k).endsWith('s');
  const bare = isBoardsThickness(line, i, k + 1) || SPLIT_GOODS.has(line.word(k + 1)) || isOneGap(line, k + 1);
  return clipped &&
    counted !== null &&
    counted > 1 &&
    counted % 2 === 1 &&
    counted < clipped &&
    (afterAnd || plural || bare)
    ? isMeasured(line, k + 1)
      ? { n, d: clipped, until: k + 1 }
      : null
    : null;
}

/** "Twenty three thirty seconds", "thirty three sixty fourths": how sheets are told. */
function manyOf(line: Line, i: number): Part | null {
  const [ten, one] = [TENS.get(line.word(i)), ONES.get(line.word(i + 1))];
  if (ten === undefined || ten > 60 || one === undefined || one < 1 || one > 9) return null;
  const d = divisorAt(line, i + 2, true);
  const n = ten + one;
  return d && d.d > 16 && n < d.d && n % 2 === 1 ? { n, d: d.d, until: d.until } : null;
}

/** A count of parts, in words or digits, 1 to 63. */
function countAt(line: Line, i: number): number | null {
  const token = line.tokens[i];
  if (token?.kind === 'number')
    return /^\d{1,2}$/.test(token.text) && Number(token.text) > 0 ? Number(token.text) : null;
  const n = ONES.get(line.word(i));
  return n === undefined || n < 1 ? null : n;
}

function divisorAt(line: Line, k: number, counted: boolean): { d: number; until: number; plural: boolean } | null {
  const [word, next] = [line.word(k), line.word(k + 1)];
  if (counted && word === 'thirty' && /^seconds?$/.test(next))
    return { d: 32, until: k + 2, plural: next === 'seconds' };
  if (counted && word === 'sixty' && /^fourths?$/.test(next))
    return { d: 64, until: k + 2, plural: next === 'fourths' };
  const d = PARTS.get(word);
  return d === undefined ? null : { d, until: k + 1, plural: word.endsWith('s') || word === 'halves' };
}

/** "Quarter inch", "and half": no count said. A place in a row ("third bay") needs its unit behind it. */
const standsBare = (line: Line, k: number, afterAnd: boolean) =>
  !(ORDINAL_PARTS.has(line.word(k)) || TENS.has(line.word(k))) ||
  (LEANS.has(line.word(k - 1)) && /^(?:eighth|sixteenth|thirty|sixty)$/.test(line.word(k))) ||
  (line.word(k - 1) === 'by' && /^(?:eighth|sixteenth)$/.test(line.word(k))) ||
  (!afterAnd && /^(?:inch|inches|")$/.test(line.word(k + 1)));

/** "Half a sixteenth". */
function halved(line: Line, part: Part): Part {
  if (part.d !== 2 || part.n !== 1 || !/^an?$/.test(line.word(part.until))) return part;
  const d = PARTS.get(line.word(part.until + 1));
  return d && d > 4 ? { n: 1, d: 2 * d, until: part.until + 2 } : part;
}

/** What is sold by the eighth and the sixteenth: "seven sixteen osb", "five eight rock". */
const SPLIT_GOODS = wordSet('osb ply plywood cdx sheathing drywall rock sheetrock rebar gyprock');

/** "A five sixteen inch gap": one thing, so nothing of it is counted. */
const isOneGap = (line: Line, inch: number) =>
  line.word(inch) === 'inch' &&
  (line.tokens[inch + 1]?.kind !== 'word' ||
    /^(?:gap|hole|bit|bolt|reveal|joint|crack|lip|notch|drop|space|shim|thick)$/.test(line.word(inch + 1)));

/** "Two of the five eight": how thick the board is, one number to a hanger. */
const isBoardsThickness = (line: Line, i: number, until: number) =>
  line.word(i - 1) === 'the' &&
  /^(?:of|for|with|in|on)$/.test(line.word(i - 2)) &&
  (line.tokens[until]?.kind !== 'word' ||
    /^(?:drywall|rock|sheetrock|board|ply|plywood|osb|cdx|type|for|on|in|and)$/.test(line.word(until)));

/** What follows a clipped part must leave it a length: "ten and seven eight foot studs" are ten and seven. */
const isMeasured = (line: Line, k: number) => !/^(?:foot|feet|ft|by|x|hundred)$/.test(line.word(k));
