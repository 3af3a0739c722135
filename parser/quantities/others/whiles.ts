import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

/** What lasts for years by promise, and is told of goods. */
const PROMISED = wordSet('warranty warrantee warranted guarantee guaranteed lifetime rated shingle shingles roof life');
const PROCESS = wordSet('for hold held dwell every wait after over count');
/** So few seconds are said of somebody's patience. */
const MOST_OF_PATIENCE = 5;

/** "2 secs", "ten minutes late", "back in twenty minutes", "I have nine year in this": whiles of talk, which no work takes. */
export const talkedWhile: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (!number || number.article) return null;
  const said = unitAt(line, number.until, number);
  if (said?.unit.kind !== 'time') return null;
  const claim = { until: said.until, kind: 'idiom' } as const;
  const { unit } = said.unit;
  const [before, next] = [line.word(i - 1), line.word(said.until)];
  if (/^(?:late|early|overdue)$/.test(next) || before === 'overdue') return claim;
  const shift = endOfShift(line, said.until);
  if (shift) return { ...claim, until: shift };
  // "Five minutes from the yard", "half an hour up the road": a way that is driven.
  if (/^(?:min|hr)$/.test(unit) && isDriven(line, said.until)) return claim;
  if (unit === 'year') return isPromised(line, i, said.until) ? null : claim;
  if (unit === 'sec')
    return number.n <= MOST_OF_PATIENCE * number.d && !PROCESS.has(before) && endsPhrase(line, said.until)
      ? claim
      : null;
  if (unit !== 'min') return null;
  if (next === 'out' && line.word(said.until + 1) !== 'of') return claim;
  // "Gimme ten minutes".
  const asked = before === 'gimme' || (before === 'me' && line.word(i - 2) === 'give');
  if (asked && endsPhrase(line, said.until) && !/^(?:on|for|of)$/.test(next)) return claim;
  const coming = [2, 3, 4, 5].some((back) => COMING.test(line.word(i - back)));
  return before === 'in' &&
    (/^(?:back|there|here|over)$/.test(line.word(i - 2)) || (coming && endsPhrase(line, said.until)))
    ? claim
    : null;
};

const isDriven = (line: Line, at: number) =>
  (line.word(at) === 'from' &&
    /^(?:the|here|there|my|our|his|her|home|town)$/.test(line.word(at + 1)) &&
    !/^(?:time|start|moment|mix|end|last|first)$/.test(line.word(at + 2))) ||
  (/^(?:up|down)$/.test(line.word(at)) &&
    line.word(at + 1) === 'the' &&
    /^(?:road|street|hill|highway)$/.test(line.word(at + 2))) ||
  (line.word(at) === 'away' && line.word(at + 1) !== 'from' && endsPhrase(line, at + 1));

/** Who will be there: "he'll come now in five minutes". */
const COMING = /^(?:come|comes|coming|arrive|arrives|arriving|leave|leaves|leaving|pulling|calling|ring|call)$/;

/** "Six months on six months off", "two weeks on, one off": turns of work. Where they end; 0 where they are none. */
function endOfShift(line: Line, at: number): number {
  const other =
    line.word(at) === 'on'
      ? line.number(line.word(at + 1) === ',' || line.word(at + 1) === 'and' ? at + 2 : at + 1)
      : null;
  if (!other) return 0;
  const end = unitAt(line, other.until, other)?.until ?? other.until;
  return line.word(end) === 'off' ? end + 1 : 0;
}

/** "A ten year warranty", "thirty year shingles": so long goods last. */
const isPromised = (line: Line, i: number, until: number) =>
  !endsPhrase(line, until) || [-4, -3, -2, -1].some((d) => PROMISED.has(line.word(i + d)));
