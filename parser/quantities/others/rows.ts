import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { ONES, TENS } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';

/** So many numbers side by side, with nothing that joins them, count nothing. */
const FEWEST = 4;
/** No name is longer: a longer row is read on from there. */
const LONGEST = 24;

const isSaid = (line: Line, at: number) =>
  ONES.has(line.word(at)) ||
  TENS.has(line.word(at)) ||
  line.word(at) === 'hundred' ||
  (/^(?:oh|o)$/.test(line.word(at)) && line.tokens[at]!.kind === 'word');

/** "Six six ten ten mesh", "oh nine two nine hundred", "eleven oh seven forty six": numbers in a row are a name. */
export const row: ClaimRule = (line, i) => {
  if (!isSaid(line, i) || /^(?:by|x|×|point|and|at)$/.test(line.word(i - 1)) || isDigits(line, i - 1)) return null;
  let until = i;
  while (until - i < LONGEST && isSaid(line, until)) until++;
  if (until - i < FEWEST || line.word(until) === 'thousand' || line.word(until) === 'point') return null;
  const after = lastCounted(line, i, until);
  // "Six six ten ten, five rolls": the last of them counts what is behind it.
  const end = after ?? until;
  return numbersIn(line, i, end) >= FEWEST || (hasOh(line, i, end) && numbersIn(line, i, end) > 2)
    ? ({ until: end, kind: 'code' } satisfies Claim)
    : null;
};

/** Where the last number of a row starts, if a unit or a thing stands behind it; a row that goes on as a size has none. */
function lastCounted(line: Line, from: number, until: number): number | null {
  let last = from;
  for (let k = from; k < until; k = nextOf(line, k)) last = k;
  const number = line.number(last);
  const counted =
    /^(?:by|x|×|and)$/.test(line.word(until)) || unitAt(line, until, number) !== null || !endsPhrase(line, until);
  return counted ? last : null;
}

/** Where the number that starts at `k` ends: tens take their ones, all else stands alone. */
const nextOf = (line: Line, k: number) => {
  const one = ONES.get(line.word(k + 1)) ?? 0;
  const end = TENS.has(line.word(k)) && one > 0 && one < 10 ? k + 2 : k + 1;
  return line.word(end) === 'hundred' ? end + 1 : end;
};

function numbersIn(line: Line, from: number, until: number): number {
  let count = 0;
  for (let k = from; k < until; k = nextOf(line, k)) count++;
  return count;
}

function hasOh(line: Line, from: number, until: number): boolean {
  for (let k = from; k < until; k++) if (/^(?:oh|o)$/.test(line.word(k))) return true;
  return false;
}
