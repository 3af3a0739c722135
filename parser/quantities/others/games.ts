import type { Line } from '../line.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

const NAUGHT = wordSet('nil nothing zip zilch');
const WON = wordSet(
  'won win wins winning lost lose loses losing beat beats beaten beating drew thrashed hammered scored',
);
const LEADING = wordSet('up down ahead behind leading');
const AFTER_LEAD = wordSet('at with in after when');
const CUE_REACH = 5;

/** "Won 3 nothing", "lost five two", "24 to 17", "two nil up": the score of a game. */
export const score: ClaimRule = (line, i) => {
  const first = line.number(i);
  if (first?.shape !== 'whole' || first.article || first.n > 200 || line.word(i - 1) === 'point') return null;
  const joined = /^(?:to|-|–)$/.test(line.word(first.until)) ? first.until + 1 : first.until;
  if (NAUGHT.has(line.word(joined))) return { until: joined + 1, kind: 'idiom' };
  const second = line.number(joined);
  const paired = second?.shape === 'whole' && !second.article && !unitAt(line, second.until, second);
  if (!paired || !(isWon(line, i) || isLed(line, i, second.until))) return null;
  return { until: second.until, kind: 'idiom' };
};

function isWon(line: Line, i: number): boolean {
  if (/^(?:was|is)$/.test(line.word(i - 1)) && /^(?:final|score)$/.test(line.word(i - 2))) return true;
  for (let k = i - 1; k >= i - CUE_REACH && line.tokens[k]?.kind === 'word'; k--)
    if (WON.has(line.word(k))) return true;
  return false;
}

/** "Up three one at the half". */
const isLed = (line: Line, i: number, until: number) =>
  (LEADING.has(line.word(i - 1)) && AFTER_LEAD.has(line.word(until)) && line.word(until + 1) === 'the') ||
  (LEADING.has(line.word(until)) && line.tokens[i + 1]?.kind === 'word' && /^(?:at|with)$/.test(line.word(until + 1)));
