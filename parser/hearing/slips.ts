import { remembered } from '../remembered.ts';
import { COMMON } from './common.ts';

/** Number words, units and days whose typing slips would cost a quantity or a date. */
const SPELLED = (
  'three four five seven eight eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty ' +
  'fifty sixty seventy eighty ninety hundred thousand half quarter quarters eighth eighths sixteenth sixteenths inches gallon ' +
  'gallons square boxes sheets bundles bucket monday tuesday wednesday thursday friday saturday sunday tomorrow yesterday today'
).split(' ');

const SHORTEST = 5;
const MOST_KNOWN = 5000;

/** What a mistyped number word, unit or day was meant to be ("twleve", "eigths", "thrusday"), or null. */
export function slipOf(word: string): string | null {
  if (word.length < SHORTEST || !/^[a-z]+$/.test(word) || COMMON.has(word)) return null;
  return meantBy(word);
}

const meantBy = remembered((word) => SPELLED.find((right) => isOneSlip(word, right)) ?? null, MOST_KNOWN);

/** One letter too many or too few, or two that changed places; the first letter stands. */
function isOneSlip(word: string, right: string): boolean {
  if (word[0] !== right[0] || Math.abs(word.length - right.length) > 1 || word === right) return false;
  let k = 0;
  while (word[k] === right[k]) k++;
  if (word.length === right.length)
    return word[k] === right[k + 1] && word[k + 1] === right[k] && word.slice(k + 2) === right.slice(k + 2);
  const [short, long] = word.length < right.length ? [word, right] : [right, word];
  return short.slice(k) === long.slice(k + 1);
}
