import { cardinalAt } from './cardinals.ts';
import { digitPartAt, type Part, wordPartAt } from './fractions.ts';
import type { Line } from './line.ts';
import { STANDS_APART } from './phraseEnds.ts';
import { decimalComma, measuredPoint, pointAt, spokenComma } from './points.ts';
import type { SaidNumber } from './saidNumber.ts';
import { isBy, LEANS, ONES, PARTS, PLURALS } from './words.ts';

/** The number that starts at token `i`, longest reading, or null. */
export function numberAt(line: Line, i: number): SaidNumber | null {
  const token = line.tokens[i]!;
  if (token.kind === 'number') return dozens(line, millions(line, digitsAt(line, i)));
  return token.kind === 'word' ? dozens(line, millions(line, wordsAt(line, i))) : null;
}

/** "A quarter million", "half a million", "1.2 million", "12 thousand", "two and a half thousand". */
function millions(line: Line, number: SaidNumber | null): SaidNumber | null {
  if (!number || number.article) return number;
  const k = number.shape === 'fraction' && line.word(number.until) === 'a' ? number.until + 1 : number.until;
  const scale = SCALES[line.word(k)];
  if (!scale || (number.n * scale) % number.d !== 0) return number;
  return { n: (number.n * scale) / number.d, d: 1, until: k + 1, shape: 'whole', inWords: true };
}

const SCALES: Readonly<Record<string, number>> = { million: 1_000_000, thousand: 1000, hundred: 100 };

const fraction = (part: Part, inWords: boolean): SaidNumber => ({ ...part, shape: 'fraction', inWords });

const mixed = (whole: number, part: Part, inWords: boolean): SaidNumber => ({
  n: whole * part.d + part.n,
  d: part.d,
  until: part.until,
  shape: 'mixed',
  inWords,
});

function digitsAt(line: Line, i: number): SaidNumber | null {
  const token = line.tokens[i]!;
  const alone = digitPartAt(line, i);
  if (alone) return fraction(alone, false);
  const [whole, places] = token.text.replaceAll(',', '').split('.');
  const n = Number(`${whole}${places ?? ''}`);
  if (!Number.isSafeInteger(n)) return null;
  const comma = places === undefined && !token.text.includes(',') ? decimalComma(line, i) : null;
  if (comma) return comma;
  if (places !== undefined && isThousands(line, i))
    return { n: n * 1000, d: 10 ** places.length, until: i + 2, shape: 'decimal', inWords: false };
  if (places !== undefined) return { n, d: 10 ** places.length, until: i + 1, shape: 'decimal', inWords: false };
  // `40k btu`.
  if (isThousands(line, i)) return { n: n * 1000, d: 1, until: i + 2, shape: 'whole', inWords: false };
  const spoken = wordPartAt(line, i, false);
  if (spoken && line.tokens[i + 1]?.kind === 'word') return fraction(spoken, true);
  return (
    mixedDigits(line, i, n) ?? pointAt(line, i + 1, n) ?? { n, d: 1, until: i + 1, shape: 'whole', inWords: false }
  );
}

/** `40k btu`, `1.2k sf`. */
const isThousands = (line: Line, i: number) =>
  line.word(i + 1) === 'k' &&
  line.tight(i + 1) &&
  /^(?:btus?|btuh|lumens?|psi|cfm|gallons?|gal|sf|sqft|lf|feet|ft|lbs?|pounds|miles?|kelvin)$/.test(line.word(i + 2));

/** `1 3/8`, `1-3/8`, `1½`, `2 and 3/8`, "2 and a half", `7 & 1/2`, "2n a half". */
function mixedDigits(line: Line, i: number, whole: number): SaidNumber | null {
  const joint = line.tokens[i + 1];
  const dash = joint !== undefined && /^[-–]$/.test(joint.text) && !joint.spaced && line.tight(i + 2);
  const thumbed = joint?.word === 'n' && line.tight(i + 1);
  const and = joint?.word === 'and' || joint?.word === '&' || joint?.word === 'y' || thumbed;
  const k = dash || and ? i + 2 : i + 1;
  // "4x8 3/4 cdx": the sheet's size, then how thick it is.
  if (!dash && !and && isSheet(line, i)) return null;
  const digits = digitPartAt(line, k);
  if (digits && !dash && !and && areFittings(line, whole, digits)) return null;
  if (digits) return mixed(whole, digits, false);
  const words = and ? wordPartAt(line, k, true) : null;
  return words && mixed(whole, words, true);
}

const FITTINGS =
  /^(?:elbows|ells|els|nineties|90s|45s|tees|couplings|couplers|wyes|unions|caps|plugs|adapters|adaptors|bushings|valves|nipples|reducers|connectors|straps|hangers|clamps|ferrules|sleeves|stops|cplgs|cplg|elbs|nips)$/;
/** Fittings come in wholes and halves up to this size. */
const WIDEST_IN_PARTS = 3;

/** "6 3/4 elbows", `4 1/2" couplings`: so many of a pipe's size; no pipe is four and a half. */
const areFittings = (line: Line, whole: number, part: Part) =>
  (whole > WIDEST_IN_PARTS || (whole > 1 && part.d > 2)) &&
  [0, 1, 2].some((k) => FITTINGS.test(line.word(part.until + k)));

/** The long side of a sheet, `4x8` or `4 x 10`, with no inch behind the part that follows. */
const isSheet = (line: Line, i: number) =>
  /^(?:8|9|10|12)$/.test(line.word(i)) &&
  /^(?:x|by|×)$/.test(line.word(i - 1)) &&
  /^(?:4|5|54)$/.test(line.word(i - 2)) &&
  line.tokens[i + 4]?.kind === 'word' &&
  !/^(?:in|inch|inches|x|by)$/.test(line.word(i + 4));

function wordsAt(line: Line, i: number): SaidNumber | null {
  const word = line.word(i);
  const part = wordPartAt(line, i, false);
  if (part) return fraction(part, true);
  if (word === 'couple' || (word === 'a' && line.word(i + 1) === 'couple')) {
    const k = word === 'a' ? i + 2 : i + 1;
    const scale = { hundred: 100, thousand: 1000 }[line.word(k)];
    if (scale) return { n: 2 * scale, d: 1, until: k + 1, shape: 'whole', inWords: true };
    return { n: 2, d: 1, until: line.word(k) === 'of' ? k + 1 : k, shape: 'whole', inWords: true };
  }
  if (/^(?:oh|o)$/.test(word) && line.word(i + 1) === 'point') return pointAt(line, i + 1, 0);
  if (/^una?$/.test(word) && line.word(i + 1) === 'y') {
    const half = wordPartAt(line, i + 2, true);
    if (half) return mixed(1, half, true);
  }
  if (word === 'dozen') return { n: 1, d: 1, until: i, shape: 'whole', inWords: true };
  if (word === 'point')
    return /^(?:this|that|the|some|which|to|a)$/.test(line.word(i - 1)) ? null : measuredPoint(line, i);
  const plural = pluralAt(line, i);
  if (plural) return { ...plural, d: 1, shape: 'whole', inWords: true };
  const whole = cardinalAt(line, i);
  if (!whole) {
    const article = word === 'a' || word === 'an' || word === 'un' || word === 'una';
    return article ? { n: 1, d: 1, until: i + 1, shape: 'whole', inWords: true, article: true } : null;
  }
  const scaled = hundredsToCome(line, whole.n, whole.until);
  if (scaled) return scaled;
  const comma = spokenComma(line, whole.until, whole.n);
  if (comma) return comma;
  return (
    mixedWords(line, whole.n, whole.until) ??
    pointAt(line, whole.until, whole.n) ?? { ...whole, d: 1, shape: 'whole', inWords: true }
  );
}

/** "Two by fours", "nine twelve footers and six eights": a size said of many. */
const pluralAt = (line: Line, i: number) => {
  const n =
    line.word(i - 1) === 'by' || isCountedLength(line, i) || isCountedSize(line, i)
      ? PLURALS.get(line.word(i))
      : undefined;
  return n === undefined ? null : { n, until: i + 1 };
};

/** "Two fives of the eggshell", "two fifteens and a twenty": pails, breakers or boards by their size. */
const isCountedSize = (line: Line, i: number) =>
  (ONES.has(line.word(i - 1)) || /^[2-9]$/.test(line.word(i - 1))) &&
  !/^(?:by|x|at)$/.test(line.word(i - 2)) &&
  !(/^(?:twos|threes)$/.test(line.word(i)) && /^(?:six|eight|ten|twelve|fourteen)$/.test(line.word(i - 1))) &&
  (line.tokens[i + 1]?.kind !== 'word' || /^(?:of|and|for|in|on|plus|or|left)$/.test(line.word(i + 1)));

/** Boards by their length, where other footers were counted before. */
const isCountedLength = (line: Line, i: number) =>
  (ONES.has(line.word(i - 1)) || /^\d{1,2}$/.test(line.word(i - 1))) &&
  [3, 4, 5, 6, 7].some((back) => /^footers?$/.test(line.word(i - back)));

/** "Seven or eight hundred": the first is hundreds as well, unless a size follows ("two or three hundred foot rolls"). */
function hundredsToCome(line: Line, n: number, until: number): SaidNumber | null {
  const other = ONES.get(line.word(until + 1));
  const scale = { hundred: 100, thousand: 1000 }[line.word(until + 2)];
  const joined = /^(?:or|to|maybe)$/.test(line.word(until)) && other !== undefined && n < 10 && n > 0;
  if (!joined || !scale || other <= n || other > 10 || /^(?:foot|watt|amp|pound|gallon)$/.test(line.word(until + 3)))
    return null;
  return { n: n * scale, d: 1, until, shape: 'whole', inWords: true };
}

/** "One and three eighths", "two y media", and with the "and" swallowed "twelve three eighths". */
function mixedWords(line: Line, whole: number, at: number): SaidNumber | null {
  const and = /^(?:and|y|&)$/.test(line.word(at)) || isClippedAnd(line, at);
  if (and) {
    const part = digitPartAt(line, at + 1) ?? wordPartAt(line, leaned(line, at + 1), true);
    if (part) return mixed(whole, part, true);
    return unnamedPart(line, whole, at + 1);
  }
  const part = digitPartAt(line, at) ?? (ONES.has(line.word(at)) ? wordPartAt(line, at, false) : null);
  if (!part || part.d === 2 || part.d === 3 || isCountOfSize(line, whole, part)) return null;
  // The electrician's box.
  if (whole === 4 && part.n === 11 && part.d === 16) return mixed(whole, part, true);
  // "Two three quarter inch elbows" are two; "twelve three eighths on the long side" is one length.
  const [unit, noun] = [line.word(part.until), line.tokens[part.until + 1]];
  const describes = /^(?:inch|in|["″”])$/.test(unit) && noun?.kind === 'word' && !STANDS_APART.has(noun.word);
  const named = line.tokens[part.until]?.kind === 'word' && !STANDS_APART.has(unit) && !unit.startsWith('inch');
  // "Ten three quarter nineties".
  const counted = named && /[^s'i]s$/.test(unit);
  return describes || counted || (named && whole < 6) ? null : mixed(whole, part, true);
}

/** "Forty three quarter by two and a half": so many bolts, since nothing is so many times as thick as it is long. */
function isCountOfSize(line: Line, whole: number, part: Part): boolean {
  const length = isBy(line.word(part.until)) ? line.number(part.until + 1) : null;
  return length !== null && whole * length.d > THICKEST * length.n;
}

const THICKEST = 6;

/** "Three an a half": dictation drops the d. */
const isClippedAnd = (line: Line, at: number) =>
  line.word(at) === 'an' && line.word(at + 1) === 'a' && PARTS.has(line.word(at + 2));

/** "Thirty four and a heavy quarter": the part behind how it leans. */
const leaned = (line: Line, at: number) => (line.word(at) === 'a' && LEANS.has(line.word(at + 1)) ? at + 2 : at);

/** "Thirty two and three": eighths to some, sixteenths to others. Nothing is guessed: the whole stands, with the question. */
function unnamedPart(line: Line, whole: number, at: number): SaidNumber | null {
  const n = ONES.get(line.word(at));
  const next = line.tokens[at + 1];
  const ends = next === undefined || next.kind === 'break' || /^[.;!?]$/.test(next.text);
  if (n === undefined || n < 1 || n > 9 || n % 2 === 0 || whole < 13 || !ends) return null;
  const doubt = `${whole} and ${n}: is that ${n > 7 ? '' : `${whole}-${n}/8 or `}${whole}-${n}/16?`;
  return { n: whole, d: 1, until: at + 1, shape: 'whole', inWords: true, doubt };
}

/** "Two dozen", "half a dozen", "2 doz": twelves. */
function dozens(line: Line, number: SaidNumber | null): SaidNumber | null {
  if (!number) return null;
  const k = number.d === 2 && number.n === 1 && line.word(number.until) === 'a' ? number.until + 1 : number.until;
  if (!/^(?:dozen|doz|dz)$/.test(line.word(k)) || (number.n * 12) % number.d !== 0) return number;
  // "A dozen and a half".
  const half = line.word(k + 1) === 'and' && line.word(k + 2) === 'a' && line.word(k + 3) === 'half';
  if (half)
    return { n: (number.n * 12) / number.d + 6, d: 1, until: k + 4, shape: 'whole', inWords: true, pieces: true };
  return { n: (number.n * 12) / number.d, d: 1, until: k + 1, shape: 'whole', inWords: true, pieces: true };
}
