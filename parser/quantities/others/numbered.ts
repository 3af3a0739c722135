import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { isBy, wordSet } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';

const DETERMINERS = wordSet('the a that his her my our this');
const RIDES = wordSet(
  'bus tram train ferry flight streetcar freeway motorway highway interstate route dually diesel pickup',
);
const FITTED = wordSet('tip boot boots shoe shoes glove gloves hat nozzle orifice');
const PLACED = wordSet(
  'model part serial ref permit policy invoice order account bin door plot unit lot flat drawing dwg job key truck window item snag at house mate for from in of to outside past by next opposite',
);
const SCALED = /^(?:limit|score)(?:'s)?$/;
/** Limits of the work are measured: "limit's twelve". */
const OF_ROAD = /^(?:speed|posted|the|school|age)$/;
const ROADS = /^(?:on|off|down|up|take|took|from)$/;

const claim = (until: number): Claim => ({ until, kind: 'label' });

/** A number that names one of many: "the fourteen bus", "stuck on the 405", "tip size 517", "at no 12", "parked outside sixteen". */
export const numbered: ClaimRule = (line, i) => {
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.article) return null;
  const { until } = number;
  const [before, next] = [line.word(i - 1), line.word(until)];
  if (DETERMINERS.has(before) && RIDES.has(next)) return claim(until + 1);
  if (unitAt(line, until, number) || isBy(next)) return null;
  if (isSubjectsTail(line, i, until)) return claim(until);
  // "Hay tapón en la 52".
  if (before === 'la' && isDigits(line, i) && number.n > 12 && /^(?:en|por|de)$/.test(line.word(i - 2)))
    return claim(until);
  if (before === 'box' && line.word(i - 2) === 'po') return claim(until);
  // "Point two is the drain"; what is a decimal was read as one.
  if (before === 'point' && number.inWords && !/^(?:this|that|the|some|which|what|a|one)$/.test(line.word(i - 2)))
    return claim(until);
  if (before === 'size') {
    const named = FITTED.has(line.word(i - 2)) || FITTED.has(next) || number.n >= 100;
    return named ? claim(until) : null;
  }
  // "At no 12": the short form of number, not a denial of twelve things.
  if (/^nos?$/.test(before) && isDigits(line, i) && PLACED.has(line.word(i - 2))) return claim(until);
  // "Speed limit's thirty five", "his score was eighty".
  const scaled = /^(?:is|was)$/.test(before) ? i - 2 : i - 1;
  const limited = line.word(scaled).startsWith('limit') && !OF_ROAD.test(line.word(scaled - 1));
  if (SCALED.test(line.word(scaled)) && !limited) return claim(until);
  if (/^(?:press|dial|push)$/.test(before) && next === 'for') return claim(until);
  // "She's in two b".
  if (before === 'in' && /^[b-h]$/.test(next)) return claim(until + 1);
  if (!endsPhrase(line, until)) return null;
  if (before === 'outside' && number.n > 2 && line.word(i - 2) === 'parked') return claim(until);
  return isRoad(line, i) ? claim(until) : null;
};

/** Words that are no name of a thing, so that what follows is no number of it. */
const NO_THING = wordSet(
  'a an the this that these those my our your his her their its some any each every another other only just about maybe so then and or but if as ' +
    'at on in of to by for from with up down out off over under near than until till before after between about like around roughly nearly almost ' +
    'is are was were be been am has have had do does did get gets got need needs want wants use used take takes took make makes made put puts cut set ' +
    'say says said reads read measures measured call called go goes went come comes came left right all both which what that i we you he she it they ' +
    'not no plus minus times x and say even still now here there more less most least first last next one two three four five six seven eight nine ten ' +
    'width height depth length size gap rise run reading level count total balance temp temperature humidity moisture pressure superheat subcool spacing distance',
);
const DOES =
  /^(?:is|was|isn't|isnt|wasn't|has|hasn't|won't|wont|doesn't|doesnt|didn't|needs|leaks|trips|trip|sticks|stuck|keeps|went|still|won|rattles|drips|failed|fails)$/;
const MOST_OF_A_KIND = 1000;

/** "Tank two is low", "cable seven won't reach": one thing, its number, and what it does. */
const isSubjectsTail = (line: Line, i: number, until: number) => {
  const thing = line.tokens[i - 1];
  const named =
    thing?.kind === 'word' &&
    thing.word.length > 1 &&
    !NO_THING.has(thing.word) &&
    !/(?:[^s]s|ed|ing|ly|'\w+)$/.test(thing.word);
  return named && DOES.test(line.word(until)) && (line.number(i)?.n ?? 0) < MOST_OF_A_KIND;
};

/** "Stuck on the 405", "come down the 401": three figures. */
const isRoad = (line: Line, i: number) =>
  isDigits(line, i) &&
  line.tokens[i]!.text.length === 3 &&
  line.word(i - 1) === 'the' &&
  ROADS.test(line.word(i - 2)) &&
  /^(?:stuck|traffic|driving|drive|come|came|coming|exit|get|got|take|took|was|am|i'm|he's|accident|jam)$/.test(
    line.word(i - 3),
  );

const JOINS = wordSet('not or and & , to nor than thru through instead');

const BETWEEN_NAMES = wordSet('then do and or , & not to thru through nor');
const MOST_BETWEEN = 2;

/** "Channel four or seven", "house nineteen then do twenty one and twenty three": the number of one name, then of the next. */
function isNextOfName(line: Line, i: number, last: { from: number; until: number; kind: Claim['kind'] }): boolean {
  const gap = i - last.until;
  const named = last.kind === 'label' && line.tokens[last.from - 1]?.kind === 'word' && last.until - last.from < 4;
  if (!named || gap < 1 || gap > MOST_BETWEEN) return false;
  for (let k = last.until; k < i; k++) if (!BETWEEN_NAMES.has(line.word(k))) return false;
  const number = line.number(i);
  if (number?.shape !== 'whole' || number.article || unitAt(line, number.until, number)) return false;
  const next = line.tokens[number.until];
  const ends =
    endsPhrase(line, number.until) ||
    /^[A-H]$/.test(next!.text) ||
    /^(?:are|were|aren't|weren't)$/.test(next!.word) ||
    DOES.test(next!.word);
  return ends && !/^(?:by|x|×|of|more|on|in|at|for|["'”’%/-])$/.test(next?.word ?? '');
}

/** "Unit 214, not 241": figures of the same length behind a name are a name too. */
export function namedAgain(
  line: Line,
  i: number,
  last: { from: number; until: number; kind: Claim['kind'] } | undefined,
) {
  if (!last || !/^(?:label|code)$/.test(last.kind) || i - last.until > 8) return null;
  if (isNextOfName(line, i, last)) return claim(line.number(i)!.until);
  if (!isDigits(line, i)) return null;
  const { length } = line.tokens[i]!.text;
  if (length < 3 || !JOINS.has(line.word(i - 1))) return null;
  for (let k = last.from; k < last.until; k++)
    if (isDigits(line, k) && line.tokens[k]!.text.length === length) {
      const number = line.number(i);
      const sized = number && (unitAt(line, number.until, number) || isBy(line.word(number.until)));
      return number?.shape === 'whole' && !sized ? claim(number.until) : null;
    }
  return null;
}
