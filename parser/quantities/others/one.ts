import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { unitNamed } from '../units.ts';
import { isBy, TENS, wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

const POINTING = wordSet(
  'quick long either neither that this which no every each the some any another old new big small other wrong same good bad first second third last next',
);
const DETERMINERS = wordSet('a an the that this my his her our their your another any some each every which no');
/** These point without a word before them. */
const ALONE = wordSet('each every this that another');
const BEHIND = wordSet('who that thing day is was s time way');
const PEOPLE = wordSet('the those these them us you my our his her their');

/** "That one", "the one behind the toilet", "one of the guys", "a taller one": a pronoun, nobody counts anything. */
export const one: ClaimRule = (line, i) => {
  // "Thirty one of them".
  if (line.word(i) !== 'one' || TENS.has(line.word(i - 1))) return null;
  // "Cut a new one thirty three and a half", "each one twenty four foot": the pronoun, then the size.
  if (POINTING.has(line.word(i - 1)) && line.number(i + 1) && !isSpokenHundred(line, i))
    return DETERMINERS.has(line.word(i - 2)) || ALONE.has(line.word(i - 1)) ? { until: i + 1, kind: 'idiom' } : null;
  if (line.number(i)?.until !== i + 1) return null;
  // "Lengths of the one by five".
  if (isBy(line.word(i + 1)) && line.number(i + 2)) return null;
  if (unitAt(line, i + 1, line.number(i)) || line.number(i + 1)) return null;
  const [before, next] = [line.word(i - 1), line.word(i + 1)];
  const claimed = { until: i + 1, kind: 'idiom' } as const;
  // "The 2nd one".
  const placed = /^(?:st|nd|rd|th)$/.test(before) && line.tight(i - 1);
  if (placed || POINTING.has(before) || isDescribed(line, i)) return claimed;
  // "One on each leg", "from one end to the other": told apart, not counted.
  if (isOneOfTwo(line, i)) return claimed;
  if (next === 'of') return PEOPLE.has(line.bare(i + 2)) && before !== 'each' ? claimed : null;
  // "I don't have one on the truck".
  if (isMissing(line, i)) return claimed;
  if (next === 'at' && line.word(i + 2) === 'a') return claimed;
  return BEHIND.has(next) ? claimed : null;
};

/** "Each one hundred foot roll", "that one twenty volt line": one is part of the number. */
const isSpokenHundred = (line: Line, i: number) => {
  if (/^(?:hundred|thousand|and)$/.test(line.word(i + 1))) return true;
  const number = line.number(i);
  return number !== null && unitAt(line, number.until, number)?.unit.kind === 'voltage';
};

/** "A bigger one", "the kitchen one". */
const isDescribed = (line: Line, i: number) =>
  line.tokens[i - 1]?.kind === 'word' &&
  DETERMINERS.has(line.word(i - 2)) &&
  !/^(?:of|and|plus|or|least|just|only|about|need|half)$/.test(line.word(i - 1));

const isMissing = (line: Line, i: number) =>
  /^(?:have|got|see|find|need|want|bring)$/.test(line.word(i - 1)) &&
  [2, 3].some((back) =>
    /^(?:don't|dont|didn't|didnt|doesn't|haven't|hasn't|never|not|can't|couldn't)$/.test(line.word(i - back)),
  ) &&
  endsPhrase(line, i + 1);

const SIDES = wordSet('end side leg wall edge corner half hand face line phase pole way');

/** "From one end to the other", "two bars on one leg and three on the other". */
function isOneOfTwo(line: Line, i: number): boolean {
  if (!SIDES.has(line.word(i + 1))) return false;
  // "Bearing only 95 mm one end".
  if (unitNamed(line.word(i - 1))?.kind === 'length' && endsPhrase(line, i + 2)) return true;
  for (let k = i + 2; k < i + 14 && line.tokens[k]; k++)
    if (line.word(k) === 'other' && /^(?:the|to)$/.test(line.word(k - 1))) return true;
  return false;
}
