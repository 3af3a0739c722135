import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

const DIGIT = wordSet('oh zero one two three four five six seven eight nine 0 1 2 3 4 5 6 7 8 9');
const KEYED = wordSet(
  'code combo combination lockbox box pin padlock keypad gate password alarm extension serial number',
);
/** So many digits one by one are a code wherever they stand; beside a lock fewer are. */
const ENOUGH = 5;
const ENOUGH_KEYED = 3;
const KEYS = wordSet('pound star hash');

/** "The lockbox is 0-4-1-7", "gate code nine nine one four pound": digits said one by one, blanks or hyphens between. */
export const keyed: ClaimRule = (line, i) => {
  if (!DIGIT.has(line.word(i))) return null;
  let count = 1;
  let naught = false;
  let until = i + 1;
  for (;;) {
    const next = line.tokens[until]?.text === '-' ? until + 1 : until;
    if (!DIGIT.has(line.word(next).replace(/'s$/, ''))) break;
    count++;
    naught ||= line.word(next) === 'oh';
    until = next + 1;
  }
  // "The two six oh eight": nobody counts with an oh.
  const said = count >= ENOUGH || (count === ENOUGH - 1 && naught);
  if (count < ENOUGH_KEYED || (!said && !isKeyed(line, i))) return null;
  if (KEYS.has(line.word(until))) return { until: until + 1, kind: 'code' };
  return unitAt(line, until, line.number(until - 1)) ? null : { until, kind: 'code' };
};

const isKeyed = (line: Line, i: number) => [1, 2, 3].some((back) => KEYED.has(line.word(i - back).replace(/'s$/, '')));
