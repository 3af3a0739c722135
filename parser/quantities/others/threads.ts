import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { type ClaimRule, isDigits } from './claim.ts';

/** Threads to the inch of unified screws (ASME B1.1, coarse and fine). */
const THREADS = /^(?:8|9|10|11|12|13|14|16|18|20|24|28|32|40)$/;

/** The thread of `3/8-16`, `1/4-20`: behind a part and a dash. */
export const thread: ClaimRule = (line, i) =>
  isDigits(line, i) &&
  THREADS.test(line.word(i)) &&
  line.word(i - 1) === '-' &&
  line.tight(i) &&
  line.tight(i - 1) &&
  endsPart(line, i - 1) &&
  !unitAt(line, i + 1, line.number(i)) &&
  line.word(i + 1) !== '/'
    ? { until: i + 1, kind: 'code' }
    : null;

const endsPart = (line: Line, until: number) =>
  [1, 2, 3].some((back) => {
    const number = line.number(until - back);
    return number?.until === until && number.shape === 'fraction' && number.n < number.d;
  });
