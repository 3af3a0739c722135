import type { Line } from './line.ts';
import { STANDS_APART } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { ONES, TENS, wordSet } from './words.ts';

/** "Two point five", "4 point 25". */
export function pointAt(line: Line, at: number, whole: number): SaidNumber | null {
  if (line.word(at) !== 'point') return null;
  let digits = '';
  let k = at + 1;
  for (; line.tokens[k]; k++) {
    const token = line.tokens[k]!;
    const one = /^(?:oh|o)$/.test(token.word) ? 0 : ONES.get(token.word);
    const ten = digits ? undefined : TENS.get(token.word);
    if (token.kind === 'number' && /^\d{1,4}$/.test(token.text)) digits += token.text;
    else if (ten !== undefined) {
      // "Ten point sixty six".
      const next = ONES.get(line.word(k + 1));
      const joined = next !== undefined && next > 0 && next < 10;
      digits += ten + (joined ? next : 0);
      k += joined ? 2 : 1;
      break;
    } else if (one !== undefined && one < 10) digits += one;
    else break;
    if (digits.length > 4) return null;
  }
  if (!digits) return null;
  const d = 10 ** digits.length;
  return { n: whole * d + Number(digits), d, until: k, shape: 'decimal', inWords: true };
}

/** "Point two five inches": only where an inch, a percent or the like follows. */
export function measuredPoint(line: Line, i: number): SaidNumber | null {
  const number = pointAt(line, i, 0);
  return number && isMeasured(line, i, number.until) ? number : null;
}

const OF_POINT =
  /^(?:in|inch|inches|percent|feet|foot|mm|mil|%|"|bar|ohms?|volts?|amps?|metres?|meters?|litres?|milli\w+)$/;
const READING = /^(?:is|at|was|reads?|reading|got|to|of|wants?|say|says|pulling|supposed|be)$/;

/** A unit behind it ("point four seven of an ohm"), or two figures where a reading is told ("static's point six five"). */
const isMeasured = (line: Line, from: number, until: number) =>
  OF_POINT.test(line.word(until)) ||
  until - from > 3 ||
  /^(?:wide|high|tall|deep|long|thick|return|supply|total|static)$/.test(line.word(until)) ||
  isPointSaid(line, from) ||
  (line.word(until) === 'of' && /^an?$/.test(line.word(until + 1)) && OF_POINT.test(line.word(until + 2))) ||
  ((until - from > 1 || standsAlone(line, until)) &&
    (READING.test(line.word(from - 1)) || /'s$/.test(line.word(from - 1))));

/** "Point three and point four five": another decimal with nothing before its point. */
function isPointSaid(line: Line, from: number): boolean {
  for (let k = from - POINT_REACH; k < from + POINT_REACH; k++)
    if (k !== from && line.word(k) === 'point' && (pointAt(line, k, 0)?.until ?? 0) > k + 2) return true;
  return false;
}

const POINT_REACH = 8;

const standsAlone = (line: Line, at: number) =>
  line.tokens[at]?.kind !== 'word' || STANDS_APART.has(line.word(at)) || OF_POINT.test(line.word(at));

/** `2,5 m`, `4,2 %`: a comma before one or two figures and a unit, as much of the world writes it. */
export function decimalComma(line: Line, i: number): SaidNumber | null {
  const [whole, comma, part] = [line.tokens[i]!, line.tokens[i + 1], line.tokens[i + 2]];
  if (comma?.text !== ',' || comma.spaced || !part || part.spaced || !/^\d{1,2}$/.test(part.text)) return null;
  if (!/^\d{1,3}$/.test(whole.text) || !(AFTER_COMMA.has(line.word(i + 3)) || isSide(line, i + 3))) return null;
  const d = 10 ** part.text.length;
  return { n: Number(whole.text) * d + Number(part.text), d, until: i + 3, shape: 'decimal', inWords: false };
}

/** `6,40 by 4,15 m`. */
const isSide = (line: Line, at: number) =>
  /^(?:by|x)$/.test(line.word(at)) &&
  line.word(at + 2) === ',' &&
  !line.tokens[at + 2]!.spaced &&
  AFTER_COMMA.has(line.word(at + 4));

/** "Four comma two percent", as who learned to count elsewhere says four point two. */
export function spokenComma(line: Line, at: number, whole: number): SaidNumber | null {
  if (line.tokens[at]?.text.toLowerCase() !== 'comma') return null;
  const part = ONES.get(line.word(at + 1));
  const measured = part !== undefined && part < 10 && AFTER_COMMA.has(line.word(at + 2));
  return measured ? { n: whole * 10 + part, d: 10, until: at + 2, shape: 'decimal', inWords: true } : null;
}

const AFTER_COMMA = wordSet(
  'm mm cm metros metro litros litro metre metres meter meters l litre litres liter liters kg kilo kilos % percent m2 m² m3 m³ bar kw kpa mpa volts amps',
);
