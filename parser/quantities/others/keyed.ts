import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { isBy, wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

const DIGIT = wordSet('oh zero one two three four five six seven eight nine 0 1 2 3 4 5 6 7 8 9');
const KEYED = wordSet(
  'code combo combination lockbox box pin padlock keypad gate password alarm extension serial number ref reference permit licence license ' +
    'plate registration rego account mobile cell phone ring dial call text invoice ticket docket lot dye batch tag model part sku item vin meter job po claim policy barcode asset fault error flat apartment apt suite keypad passcode',
);
/** "Double oh seven", "treble one": so many of the digit behind. */
const REPEATED: ReadonlyMap<string, number> = new Map([
  ['double', 2],
  ['triple', 3],
  ['treble', 3],
]);
const BETWEEN = wordSet('- dash hyphen slash point dot');
/** So many digits one by one are a code wherever they stand; beside a lock fewer are. */
const ENOUGH = 5;
const ENOUGH_KEYED = 3;
const KEYS = wordSet('pound star hash');

/** "The lockbox is 0-4-1-7", "oh seven seven double oh nine hundred", "7 K R T 2 0 8": digits said one by one, letters among them. */
export const keyed: ClaimRule = (line, i) => {
  const first = digitsSaid(line, i);
  if (!first || (line.number(i)?.shape === 'decimal' && !isKeyed(line, i))) return null;
  let { count } = first;
  let odd = first.repeated || line.word(i) === 'oh';
  const spelled = SPOKEN_LETTERS.has(line.word(i - 1)) ? (SPOKEN_LETTERS.has(line.word(i - 2)) ? 2 : 1) : 0;
  count += spelled;
  let letters = spelled || isLetter(line, i - 1) ? 1 : 0;
  let until = i + first.words;
  for (;;) {
    const next = BETWEEN.has(line.word(until)) ? until + 1 : until;
    const said = digitsSaid(line, next);
    const letter = !said && isLetter(line, next);
    if (!said && !letter) break;
    count += said?.count ?? (SPOKEN_LETTERS.has(line.word(next)) ? 1 : 0);
    odd ||= said !== null && (said.repeated || line.word(next) === 'oh');
    letters += letter ? 1 : 0;
    until = next + (said?.words ?? 1);
  }
  // "The two six oh eight": nobody counts with an oh.
  const enough =
    count >= ENOUGH ||
    (count === ENOUGH - 1 && odd && !/^(?:by|x)$/.test(line.word(i - 1))) ||
    (count >= ENOUGH_KEYED && letters > 1) ||
    (count === ENOUGH - 1 && isSpelled(line, i, until) && !/^(?:by|x)$/.test(line.word(i - 1)));
  if (isBy(line.word(until))) return null;
  if (count < ENOUGH_KEYED || (!enough && !isKeyed(line, i))) return null;
  // "Nine hundred one two three" at its end: a phone's number as the British say it.
  while (enough && line.word(until) === 'hundred') until++;
  if (KEYS.has(line.word(until))) return { until: until + 1, kind: 'code' };
  return unitAt(line, until, line.number(until - 1)) ? null : { until, kind: 'code' };
};

function digitsSaid(line: Line, i: number): { count: number; words: number; repeated: boolean } | null {
  const times = REPEATED.get(line.word(i));
  const word = line.bare(times ? i + 1 : i);
  if (!DIGIT.has(word)) return null;
  // "Nine hundred one two three": hundreds in a row of digits.
  const hundred =
    !times && line.word(i + 1) === 'hundred' && DIGIT.has(line.word(i + 2)) && DIGIT.has(line.word(i - 1));
  return { count: (times ?? 1) + (hundred ? 2 : 0), words: times || hundred ? 2 : 1, repeated: times !== undefined };
}

/** "Four four one nine": nobody counts figure by figure. */
function isSpelled(line: Line, from: number, until: number): boolean {
  for (let k = from; k < until; k++) if (!SPELLED.has(line.word(k))) return false;
  return true;
}

const SPELLED = wordSet('zero one two three four five six seven eight nine');

/** A capital alone, but no article and nobody's "I". */
const isLetter = (line: Line, i: number) =>
  /^[B-HJ-Z]$/.test(line.tokens[i]?.text ?? '') || SPOKEN_LETTERS.has(line.word(i));

/** Letters as they are spelled over the phone. */
const SPOKEN_LETTERS = wordSet(
  'alpha bravo charlie delta echo foxtrot juliet kilo lima november oscar papa quebec romeo sierra tango uniform whiskey zulu bee cee dee eff gee aitch kay pee queue ess vee zed zee',
);

const isKeyed = (line: Line, i: number) => [1, 2, 3, 4].some((back) => KEYED.has(line.bare(i - back)));
