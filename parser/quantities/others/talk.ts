import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { isProportion } from '../proportions.ts';
import { unitAt } from '../unitAt.ts';
import { wordSet } from '../words.ts';
import type { ClaimRule } from './claim.ts';

/** What talk counts and nobody buys, measures or mends. */
const OF_TALK = wordSet(
  'times ways wrongs thoughts minds cents reasons excuses favors favours opinions strikes guesses hoots things',
);
const SMALL_HELP = wordSet(
  'hand thing word trick laugh beer question issue favor favour reason way idea joke story opinion pointer tip',
);
const BEING = wordSet("are were is was aren't weren't look looked looks seem seemed sound sounded went go got get");
const US = wordSet('us you');
const WE = wordSet('i we you he she it they that this');
const PEOPLE = wordSet('team party group family');
const ODDS = wordSet('he she it they we you i that says against odds on');

/** "Nine times", "two ways to look at it", "an extra hand or two", "the first two are his", "one of you", "six to one he forgets". */
export const ofTalk: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (number?.d !== 1 || number.article) return null;
  const [next, after] = [line.word(number.until), line.word(number.until + 1)];
  const [before, earlier] = [line.word(i - 1), line.word(i - 2)];
  const claim = { until: number.until, kind: 'idiom' } as const;
  if (OF_TALK.has(next) && !line.number(number.until + 1)) return { ...claim, until: number.until + 1 };
  // "Give me five I'm on the other line": minutes.
  if (before === 'me' && earlier === 'give' && /^(?:i'm|im|i'll|while|till|until|cause)$/.test(next)) return claim;
  const odds = outOf(line, number.until);
  if (odds) return { ...claim, until: odds };
  if (isOrTwo(line, i)) return claim;
  if (/^(?:first|last)$/.test(before) && BEING.has(next)) return claim;
  if (before === 'of' && PEOPLE.has(earlier) && !unitAt(line, number.until, number)) return claim;
  if (before === 'for' && line.word(i) === 'one' && WE.has(next.replace(/'.*/, ''))) return claim;
  // "It's 2 late".
  if (line.word(i) === '2' && /^(?:much|many|late|early|bad)$/.test(next)) return claim;
  if (next === 'of' && US.has(after)) return { ...claim, until: number.until + 2 };
  if (next === 'to' && after === 'one' && !isProportion(line, i) && ODDS.has(line.word(number.until + 2)))
    return { ...claim, until: number.until + 2 };
  // "I'm seventy one years old".
  if (/^(?:years|yrs|yr)$/.test(next) && after === 'old') return { ...claim, until: number.until + 2 };
  // "My five year old", "a sixty year-old house".
  const old = line.word(number.until + 1) === '-' ? number.until + 2 : number.until + 1;
  if (line.word(number.until) === 'year' && line.word(old) === 'old') return { ...claim, until: old + 1 };
  return fall(line, i) ?? onScale(line, i) ?? share(line, i) ?? speeding(line, i) ?? errand(line, i);
};

/** "Falls one in eighty": rise over run, which no unit of ours holds. */
const fall: ClaimRule = (line, i) => {
  const run = line.word(i + 1) === 'in' && /^(?:one|1)$/.test(line.word(i)) ? line.number(i + 2) : null;
  return run && run.d === 1 && run.n >= 10 && !unitAt(line, run.until, run)
    ? { until: run.until, kind: 'label' }
    : null;
};

/** "Nine out of ten times", "two out of three ain't bad": how often. */
function outOf(line: Line, at: number): number | null {
  const all = line.word(at) === 'out' && line.word(at + 1) === 'of' ? line.number(at + 2) : null;
  if (all?.d !== 1) return null;
  const next = line.word(all.until);
  const marked = all.n === 10 && (next === 'for' || line.tokens[all.until]?.kind !== 'word');
  return marked
    ? all.until
    : /^times?$/.test(next)
      ? all.until + 1
      : /^(?:ain't|isn't|aint|isnt)$/.test(next)
        ? all.until
        : null;
}

/** "Doing ninety in a thirty". */
const speeding: ClaimRule = (line, i) => {
  const number = line.number(i)!;
  const limit =
    line.word(number.until) === 'in' && line.word(number.until + 1) === 'a' ? line.number(number.until + 2) : null;
  return limit?.d === 1 && /^(?:doing|going|did)$/.test(line.word(i - 1))
    ? { until: limit.until, kind: 'idiom' }
    : null;
};

/** "Ninety percent sure", "fifty percent of the time", "ten percent up front": of talk or of a bill. */
const share: ClaimRule = (line, i) => {
  const number = line.number(i)!;
  const at = /^(?:percent|%)$/.test(line.word(number.until))
    ? number.until + 1
    : line.word(number.until) === 'per' && line.word(number.until + 1) === 'cent'
      ? number.until + 2
      : 0;
  if (!at) return null;
  const talked =
    /^(?:sure|certain|positive|confident|right|wrong|convinced|upfront|agree|agreed|serious|behind)$/.test(
      line.word(at),
    ) ||
    (line.word(at) === 'up' && line.word(at + 1) === 'front') ||
    (line.word(at) === 'of' && line.word(at + 1) === 'the' && line.word(at + 2) === 'time');
  return talked ? { until: at, kind: 'idiom' } : null;
};

const ERRANDS = wordSet('job walk drive nap chat break ride fix argument kind sort');

/** "A five minute job", "a three coffee kind of foreman". */
const errand: ClaimRule = (line, i) => {
  const number = line.number(i)!;
  // "A three coffee kind of foreman", whatever of it was heard.
  if (line.word(i - 1) === 'a' && /^(?:coffee|beer)$/.test(line.word(number.until)))
    return { until: number.until, kind: 'idiom' };
  const described =
    line.word(i - 1) === 'a' &&
    ERRANDS.has(line.word(number.until + 1)) &&
    /^(?:minute|hour|second|coffee|beer|day|man)$/.test(line.word(number.until));
  return described ? { until: number.until + 1, kind: 'idiom' } : null;
};

/** "An extra hand or two". */
const isOrTwo = (line: Line, i: number) =>
  line.word(i) === 'two' &&
  line.word(i - 1) === 'or' &&
  SMALL_HELP.has(line.word(i - 2)) &&
  endsPhrase(line, i + 1) &&
  !unitAt(line, i + 1, line.number(i));

/** "On a scale of one to ten it's a six", "a solid eight": marks given, nothing counted. */
const onScale: ClaimRule = (line, i) => {
  const number = line.number(i)!;
  if (line.word(i - 1) === 'of' && line.word(i - 2) === 'scale' && line.word(number.until) === 'to') {
    const top = line.number(number.until + 1);
    return top && { until: top.until, kind: 'idiom' };
  }
  const mark = line.word(i - 2) === 'a' && line.word(i - 1) === 'solid' && number.n <= 10;
  return mark && endsPhrase(line, number.until) ? { until: number.until, kind: 'idiom' } : null;
};
