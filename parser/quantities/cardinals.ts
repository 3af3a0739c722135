import { figuresAt, swallowedThousand } from './figures.ts';
import type { Line } from './line.ts';
import { STANDS_APART } from './phraseEnds.ts';
import type { Whole } from './saidNumber.ts';
import { isSideInFeet } from './sides.ts';
import { ONES, PARTS, TENS, wordSet } from './words.ts';

const small = (line: Line, i: number) => ONES.get(line.word(i)) ?? null;

/** "Sixty two", "a hundred and four", "one twenty" (120), "two oh eight" (208), "three thousand". */
export function cardinalAt(line: Line, i: number): Whole | null {
  const figures = figuresAt(line, i);
  if (figures) return figures;
  const k = line.word(i) === 'a' && SCALES.has(line.word(i + 1)) ? i + 1 : i;
  let total = 0;
  let at = k;
  let below = belowThousand(line, at);
  if (!below && !SCALES.has(line.word(at))) return null;
  if (line.word(below?.until ?? at) === 'thousand') {
    total = (below?.n ?? 1) * 1000;
    at = (below?.until ?? at) + 1;
    below = belowThousand(line, skipAnd(line, at));
  }
  return below ? { n: total + below.n, until: below.until } : { n: total, until: at };
}

const SCALES = wordSet('hundred thousand');

/** "And" inside a number, "a hundred and four", but not before a part: "a hundred and three quarters". */
function skipAnd(line: Line, at: number): number {
  // "Four at six hundred and one at four fifty": one more, of another size.
  if (line.word(at + 2) === 'at' && line.number(at + 3)) return at;
  const joins = line.word(at) === 'and' && (ONES.has(line.word(at + 1)) || TENS.has(line.word(at + 1)));
  return joins && !PARTS.has(line.word(at + 2)) && !isThirtySecond(line, at + 2) ? at + 1 : at;
}

function belowThousand(line: Line, i: number): Whole | null {
  const first = belowHundred(line, i);
  const at = first?.until ?? i;
  if (line.word(at) === 'hundred' && (first === null || first.n < 100)) {
    const rest = belowHundred(line, skipAnd(line, at + 1));
    const hundreds = (first?.n ?? 1) * 100;
    return rest ? { n: hundreds + rest.n, until: rest.until } : { n: hundreds, until: at + 1 };
  }
  return first && (spokenHundreds(line, i, first) ?? spokenThousand(line, i, first) ?? first);
}

/** "Two seven fifty": behind one figure hundreds of their own. */
const spokenThousand = (line: Line, i: number, first: Whole) =>
  first.until === i + 1 && first.n < 10 && line.tokens[i + 1]?.kind === 'word'
    ? swallowedThousand(line, i, belowThousand(line, i + 1))
    : null;

function belowHundred(line: Line, i: number): Whole | null {
  const ten = TENS.get(line.word(i));
  if (ten === undefined) {
    const one = small(line, i);
    return one === null ? null : { n: one, until: i + 1 };
  }
  const joined = (line.tokens[i + 1]?.text === '-' && line.tight(i + 1)) || isSpanishAnd(line, i + 1);
  const at = joined ? i + 2 : i + 1;
  const one = small(line, at);
  // "Twenty three eighths" is twenty and three eighths, not twenty three.
  const startsPart = PARTS.has(line.word(at + 1));
  const counts = isLumber(line, at) || (ten >= LONGEST_STOCK && isStock(line, at));
  return one !== null && one > 0 && one < 10 && !startsPart && !counts
    ? { n: ten + one, until: at + 1 }
    : { n: ten, until: i + 1 };
}

/** "Twenty two by fours": twenty of them, since nothing is sold twenty two by four. */
const isLumber = (line: Line, at: number) =>
  /^(?:one|two|four|six)$/.test(line.word(at)) &&
  line.word(at + 1) === 'by' &&
  /^(?:threes|fours|sixes|eights|tens|twelves)$/.test(line.word(at + 2));

/** No tube, board or bar is sold so long. */
const LONGEST_STOCK = 30;
const STOCK = wordSet(
  'boards studs joists rafters posts tubes pipes lengths sticks planks battens sheets panels pickets rods bars angles purlins noggins strips',
);

/** "Thirty six foot tubes", "forty eight footers": so many of six or eight feet. */
const isStock = (line: Line, at: number) =>
  /^(?:six|eight)$/.test(line.word(at)) &&
  (line.word(at + 1) === 'footers' || (/^(?:foot|ft)$/.test(line.word(at + 1)) && STOCK.has(line.word(at + 2))));

/** "Treinta y dos". */
const isSpanishAnd = (line: Line, at: number) => line.word(at) === 'y' && /nta$|^veinte$/.test(line.word(at - 1));

const isThirtySecond = (line: Line, i: number) =>
  (line.word(i) === 'thirty' && (line.word(i + 1) === 'second' || line.word(i + 1) === 'seconds')) ||
  (line.word(i) === 'sixty' && (line.word(i + 1) === 'fourth' || line.word(i + 1) === 'fourths'));

/** Units said in front of what they describe: "two fifty pound bags" are two, "one twenty amp breaker" is one. */
const DESCRIBING = wordSet(
  'foot footer footers inch pound ounce amp watt gallon quart pint yard grit gauge minute hour penny litre kilo piece pack ton metre meter degree',
);
/** "Two gates sixteen foot and one twelve", "four twenty amp breakers and one fifteen": one more, of another size. */
export const isOneMore = (line: Line, i: number): boolean =>
  line.word(i) === 'one' &&
  /^(?:and|plus)$/.test(line.word(i - 1)) &&
  (/^(?:foot|footers?|ft)$/.test(line.word(i - 2)) ||
    (/[^s']s$/.test(line.word(i - 2)) && DESCRIBING.has(line.word(i - 3))));

const BULBS: ReadonlySet<number> = new Set([25, 40, 60, 75]);

/** "Two fifty inch pounds": one unit of two words. */
const TORQUE = wordSet('pounds lbs lb');

/** "One twenty", "two fifteen", "two oh eight": hundreds with the word swallowed, unless a count and a size stand there. */
function spokenHundreds(line: Line, i: number, first: Whole): Whole | null {
  if (first.n > 9) return teenHundreds(line, i, first);
  if (first.until !== i + 1 || first.n < 1) return null;
  if (line.word(i + 1) === 'oh' || line.word(i + 1) === 'o') {
    const one = small(line, i + 2);
    if (one === null || one < 1 || one > 9) return null;
    // "Two oh four oh": millimetres said figure by figure.
    const naught = /^(?:oh|o)$/.test(line.word(i + 3));
    return naught ? { n: first.n * 1000 + one * 10, until: i + 4 } : { n: first.n * 100 + one, until: i + 3 };
  }
  const rest = belowHundred(line, i + 1);
  if (!rest || rest.n < 10 || isThirtySecond(line, i + 1)) return null;
  if (isOneMore(line, i) || isSideInFeet(line, i)) return null;
  if (PARTS.has(line.word(rest.until))) return null;
  if (!/(?:^is|^are|^at|'s)$/.test(line.word(i - 1)) && isSizeBehind(line, first.n, rest)) return null;
  // "Five ten and a half": feet and inches, the words swallowed.
  const part =
    line.word(rest.until) === 'and' && (PARTS.has(line.word(rest.until + 2)) || PARTS.has(line.word(rest.until + 1)));
  if (part && first.n >= 5 && rest.n < 12) return null;
  const unit = line.word(rest.until);
  const next = line.tokens[rest.until + 1];
  if (/^footers?$/.test(unit)) return null;
  // "Six forty fives": so many elbows by their bend.
  if (/^(?:forty fives|twenty twos)$/.test(`${line.word(rest.until - 1)} ${unit}`)) return null;
  // "Get two sixty watt": bulbs.
  if (unit === 'watt' && BULBS.has(rest.n)) return null;
  // "Eight ten feet of wire": from eight to ten.
  if (rest.n - first.n <= 2 && /^(?:feet|foot|inches|minutes|hours|days|bags|boxes|sheets)$/.test(unit)) return null;
  if (DESCRIBING.has(unit) && next?.kind === 'word' && !STANDS_APART.has(next.word) && !TORQUE.has(next.word))
    return null;
  return { n: first.n * 100 + rest.n, until: rest.until };
}

/** "Two twenty by twenty": so many of a size, where the hundred would dwarf its other side. */
function isSizeBehind(line: Line, count: number, rest: Whole): boolean {
  if (!/^(?:by|x)$/.test(line.word(rest.until)) || /^(?:by|x)$/.test(line.word(rest.until - 3))) return false;
  const other = belowHundred(line, rest.until + 1);
  const whole =
    other &&
    !/^(?:hundred|thousand)$/.test(line.word(other.until)) &&
    !TENS.has(line.word(other.until)) &&
    other.n > 0 &&
    rest.n < 100;
  return Boolean(whole && other && count * 100 + rest.n > DWARFED * other.n && rest.n <= DWARFED * other.n);
}

const DWARFED = 6;

const BESIDE_SIZE = wordSet('by x wide high deep long tall off centre centres center centers mm mil to');

/** "Eleven forty rpm", "a twelve fifty gallon tank": what is told by the thousand. A count of a size stands before its plural. */
function isByThousands(line: Line, i: number, first: Whole, rest: Whole): boolean {
  const broad = /^(?:square|board) (?:feet|foot)$/.test(`${line.word(rest.until)} ${line.word(rest.until + 1)}`);
  const said = broad ? rest.until + 1 : rest.until;
  // "Thirty forty psi" runs from the one to the other; only motors turn by more.
  const range = first.n >= 20 || (rest.n > first.n && rest.n <= 2 * first.n);
  if (!(broad || THOUSANDFOLD.has(line.word(said))) || (range && !line.word(said).startsWith('rpm'))) return false;
  return /^an?$/.test(line.word(i - 1)) || /'s$/.test(line.word(i - 2)) || !/[^s']s$/.test(line.word(said + 1));
}

const THOUSANDFOLD = wordSet('rpm rpms cfm psi btu btus gallon gallons sf lumens');

/** "Eighteen hundred by eleven fifty": hundreds above ten, in a size or of what is told by the thousand, where they are no clock time. */
function teenHundreds(line: Line, i: number, first: Whole): Whole | null {
  const many = TENS.has(line.word(first.until)) ? belowHundred(line, first.until) : null;
  if (many && isByThousands(line, i, first, many)) return { n: first.n * 100 + many.n, until: many.until };
  if (first.until !== i + 1) return null;
  const behind = /^(?:by|x)$/.test(line.word(i - 1));
  const sized = behind || BESIDE_SIZE.has(line.word(i + 2));
  // "Eight twenty by twenty forty": a door in millimetres.
  const rest =
    (first.n < 20 || (behind && first.n < 25)) && TENS.has(line.word(i + 1)) ? belowHundred(line, i + 1) : null;
  if (!rest || !sized || isThirtySecond(line, i + 1) || PARTS.has(line.word(rest.until))) return null;
  const next = line.word(rest.until);
  if (line.word(i - 1) === 'by' && /^(?:by|x)$/.test(next) && rest.n % 10 !== 0) return null;
  return { n: first.n * 100 + rest.n, until: rest.until };
}
