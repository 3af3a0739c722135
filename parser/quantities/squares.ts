import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { wordSet } from './words.ts';

/** "Seven buckets over forty eight square", "a square of felt": so much of a roof, and no square hole. */
export const areSquares = (line: Line, from: number, until: number, number: SaidNumber): boolean =>
  number.n === 1 || line.word(until) === 'of' || isOfRoof(line, from, number) || isCover(line, from, until, number);

/** `22 sq`: of a roof; a `3-1/2 sq` newel and a `4sq` box are so wide on each side. */
export const areWrittenSquares = (line: Line, from: number, until: number, number: SaidNumber): boolean =>
  (!line.tight(from) && number.d <= 3 && number.n >= FEWEST_SQUARES * number.d) ||
  line.word(until) === 'of' ||
  isOfRoof(line, from, number);

/** Fewer squares of roofing are told with the roof. */
const FEWEST_SQUARES = 6;

const ROOFING = wordSet('roof roofing shingle shingles felt underlayment waste ridge ice tarp slate metal bundles');

/** "Twenty eight and a third square with the waste": of roofing; a "twelve square" hole elsewhere is twelve inches. */
const isOfRoof = (line: Line, from: number, number: SaidNumber) =>
  number.d === 3 || [-9, -8, -7, -6, -5, -4, -3, -2, 1, 2, 3, 4, 5, 6].some((d) => ROOFING.has(line.word(from + d)));

/** "Seven buckets over forty eight square": so much is covered; what is cut, or is a hole, is square itself. */
const isCover = (line: Line, from: number, until: number, number: SaidNumber) =>
  number.n >= 10 * number.d &&
  endsPhrase(line, until) &&
  ![2, 3, 4, 5, 6].some((back) =>
    /^(?:cut|hole|holes|opening|pad|post|pads|box|column|plate|rip|about|make)$/.test(line.word(from - back)),
  );
