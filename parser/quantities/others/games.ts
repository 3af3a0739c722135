import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
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
  if (isMargin(line, i, first.until)) return { until: first.until, kind: 'idiom' };
  const joined = /^(?:to|-|–)$/.test(line.word(first.until)) ? first.until + 1 : first.until;
  if (NAUGHT.has(line.word(joined))) return { until: joined + 1, kind: 'idiom' };
  const second = line.number(joined);
  // "Lost 3-2 in overtime": no inches.
  const measured = second && line.word(second.until) !== 'in' && unitAt(line, second.until, second);
  const paired = second?.shape === 'whole' && !second.article && !measured;
  if (!paired || !(isWon(line, i) || isLed(line, i, second.until) || haveFallen(line, i, joined))) return null;
  return { until: second.until, kind: 'idiom' };
};

const PERIOD = wordSet(
  'half halftime break interval overtime ot quarter inning seventh ninth end whistle turn stretch',
);

/** "Packers up by three at the half", "won by eleven", "lost three straight". */
function isMargin(line: Line, i: number, until: number): boolean {
  if (unitAt(line, until, line.number(i))) return false;
  const straight =
    line.word(until) === 'straight' || /^in a row$/.test([0, 1, 2].map((k) => line.word(until + k)).join(' '));
  if (straight && WON.has(line.word(i - 1))) return true;
  if (line.word(i - 1) !== 'by') return false;
  if (/^(?:won|win|wins|lost|loses|lose)$/.test(line.word(i - 2))) return endsPhrase(line, until);
  const at = line.word(until + 1) === 'the' ? until + 2 : until + 1;
  return LEADING.has(line.word(i - 2)) && AFTER_LEAD.has(line.word(until)) && PERIOD.has(line.word(at));
}

/** "Broncos went down thirty two to six": many, so a team, and no reading that falls. */
const haveFallen = (line: Line, i: number, joined: number) =>
  joined > i + 1 &&
  line.word(i - 1) === 'down' &&
  /^(?:went|go|going)$/.test(line.word(i - 2)) &&
  /[^s']s$/.test(line.word(i - 3)) &&
  !/^(?:temps|levels|pressures|readings|numbers|amps|volts)$/.test(line.word(i - 3));

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
