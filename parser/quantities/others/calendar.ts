import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { LEANS, TENS, wordSet } from '../words.ts';
import { type ClaimRule, isDigits } from './claim.ts';

const PLACES = wordSet('first second third fourth fifth sixth seventh eighth ninth');

/** 1st, 22nd, "twenty third". */
export const ordinal: ClaimRule = (line, i) => {
  if (isDigits(line, i) && line.word(i - 1) !== '/' && line.tight(i + 1) && /^(?:st|nd|rd|th)$/.test(line.word(i + 1)))
    return { until: i + 2, kind: 'ordinal' };
  if (!TENS.has(line.word(i))) return null;
  const at = line.tokens[i + 1]?.text === '-' ? i + 2 : i + 1;
  return PLACES.has(line.word(at)) && !isPart(line, i - 1) && !line.number(i - 1)
    ? { until: at + 1, kind: 'ordinal' }
    : null;
};

/** "A thirty second", "a strong sixty fourth". */
const isPart = (line: Line, at: number) => line.word(at) === 'a' || LEANS.has(line.word(at));

const MONTHS = wordSet(
  'january february april june july august september october november december jan feb apr jun jul aug sept sep oct nov dec',
);
/** Of those that are verbs too, only with a capital. */
const isMonth = (line: Line, i: number) =>
  MONTHS.has(line.word(i)) || /^(?:May|March|Mar)$/.test(line.tokens[i]?.text ?? '');
const DUE = wordSet('due dated by until till before starting since lands arrives delivered ships');

/** "May 5", "june 3", 4/12/2026, "due 6/1", "by 3/4". A slash pair is a fraction unless something says that it is a day. */
export const date: ClaimRule = (line, i) => {
  if (!isDigits(line, i)) return null;
  if (/^\d{1,4}-\d{1,2}-\d{2,4}$/.test(dashedAt(line, i))) return { until: i + 5, kind: 'date' };
  const n = Number(line.tokens[i]!.text);
  if (isMonth(line, i - 1) && n >= 1 && n <= 31)
    return unitAt(line, i + 1, line.number(i)) ? null : { until: i + 1, kind: 'date' };
  // "3 june", "Mon 20 April".
  if (isMonth(line, i + 1) && line.tokens[i + 1]!.spaced && n >= 1 && n <= 31) return { until: i + 1, kind: 'date' };
  if (!slashed(line, i + 1) || n < 1 || n > 31) return null;
  if (slashed(line, i + 3)) return { until: i + 5, kind: 'date' };
  const day = Number(line.tokens[i + 2]!.text);
  const cue = DUE.has(line.word(i - 1)) || (line.word(i - 1) === 'on' && line.tokens[i + 3]?.kind !== 'word');
  if (line.word(i - 1) === 'by' && (isTapeOff(line, i) || line.tokens[i - 2]?.kind === 'number')) return null;
  // "Short by 3/16ths".
  if (line.tight(i + 3) && /^(?:ths?|nds?|rds?)$/.test(line.word(i + 3))) return null;
  return cue && day >= 1 && day <= 31 && !unitAt(line, i + 3, line.number(i)) ? { until: i + 3, kind: 'date' } : null;
};

const OFF = wordSet(
  'high low short long off out over under miss misses missed clear clears proud shy tight loose wide narrow raise lower drop deep shallow heavy light fat thick thin wider narrower taller shorter closer',
);

/** "Short by 5/8", "misses the strike by 3/16": a part on the tape, no day. */
const isTapeOff = (line: Line, i: number) =>
  Number(line.word(i)) % 2 === 1 &&
  /^(?:4|8|16|32)$/.test(line.word(i + 2)) &&
  Number(line.word(i)) < Number(line.word(i + 2)) &&
  [2, 3, 4].some((back) => OFF.has(line.word(i - back)));

/** `2026-11-11`, `11-11-26`, as written; empty where they stand apart. */
const dashedAt = (line: Line, i: number) =>
  line.word(i + 1) === '-' && [1, 2, 3, 4].every((k) => line.tight(i + k)) && !line.tight(i + 5)
    ? [0, 1, 2, 3, 4].map((k) => line.word(i + k)).join('')
    : '';

const slashed = (line: Line, k: number) =>
  line.tokens[k]?.text === '/' && line.tight(k) && isDigits(line, k + 1) && line.tight(k + 1);

const CENTURIES = wordSet('nineteen eighteen twenty');
const SINCE = wordSet('pre post in since from of built is circa about around was before after the late early mid');

/** A year that something was built in: 1978, "nineteen twenty six", "the nineteen fifties", '62. */
export const year: ClaimRule = (line, i) => {
  const since = SINCE.has(line.word(i - 1));
  if (isDigits(line, i) && (since || (line.tokens[i - 1]?.kind === 'mark' && line.tokens[i + 1]?.kind !== 'word'))) {
    const text = line.tokens[i]!.text;
    const whole = /^(?:1[89]|20)\d\d$/.test(text) && !line.tokens[i + 1]?.text.match(/^["'”’x×%/]$/);
    const built =
      /^[’']$/.test(line.tokens[i - 1]!.text) && text.length === 2 && line.tight(i) && line.tokens[i - 1]!.spaced;
    return (whole && !unitAt(line, i + 1, line.number(i))) || built ? { until: i + 1, kind: 'year' } : null;
  }
  if (isDecade(line, i)) return { until: i + 2, kind: 'year' };
  const edition = line.number(i);
  if (
    edition?.d === 1 &&
    edition.n >= 60 &&
    EDITIONS.has(line.word(edition.until)) &&
    !unitAt(line, edition.until, edition)
  )
    return { until: edition.until, kind: 'year' };
  // "The twenty twenty four code".
  if (line.word(i) === 'twenty' && line.word(i + 1) === 'twenty' && line.number(i + 1)) {
    const tail = line.number(i + 1)!;
    if (
      tail.n > 20 &&
      /^(?:code|edition|model|nec|irc|ibc|pricing|prices|rates|version|price)$/.test(line.word(tail.until))
    )
      return { until: tail.until, kind: 'year' };
  }
  const car = carYear(line, i);
  if (car) return { until: car, kind: 'year' };
  if (isDwelling(line, i)) return { until: i + 1, kind: 'year' };
  if (isSpokenYear(line, i)) return { until: line.number(i)!.until, kind: 'year' };
  if (isBackIn(line, i)) return { until: line.number(i)!.until, kind: 'year' };
  if (!CENTURIES.has(line.word(i))) return null;
  if (/^(?:twenties|thirties|forties|fifties|sixties|seventies|eighties|nineties|hundreds)$/.test(line.word(i + 1)))
    return { until: i + 2, kind: 'year' };
  if (!since) return null;
  const tail = line.number(i + 1);
  const late = tail?.d === 1 && tail.n >= 10 && tail.n < 100 && !tail.article;
  return late && !unitAt(line, tail.until, tail) && line.word(i - 1) !== 'about'
    ? { until: tail.until, kind: 'year' }
    : null;
};

/** "The 2018 code", "the ninety four edition". */
const EDITIONS = wordSet('code edition nec irc ibc');

/** "The 90's kitchen", "that 70s paneling". */
const isDecade = (line: Line, i: number) =>
  isDigits(line, i) &&
  /^[3-9]0$/.test(line.word(i)) &&
  /^(?:s|'s)$/.test(line.word(i + 1)) &&
  line.tight(i + 1) &&
  !/^(?:by|x)$/.test(line.word(i - 1)) &&
  !/^(?:two|six|four|\d+)$/.test(line.word(i - 1));

const HOUSES = wordSet(
  'ranch bungalow house home cottage terrace colonial craftsman victorian build building model wiring panel boiler kitchen chevy ford truck semi duplex cape',
);

const CARS = wordSet(
  'chevy ford dodge ram toyota tacoma corolla hilux ranger silverado civic honda nissan transit sprinter van jeep',
);

/** "A ninety eight corolla", "an oh six chevy": where the year's words end, or 0. */
function carYear(line: Line, i: number): number {
  if (isDigits(line, i) && /^(?:19|20)\d\d$/.test(line.word(i)) && CARS.has(line.word(i + 1))) return i + 1;
  if (!/^(?:a|an|his|her|my|the|that|old)$/.test(line.word(i - 1))) return 0;
  if (/^0\d$/.test(line.word(i)) && CARS.has(line.word(i + 1))) return i + 1;
  if (line.word(i) === 'oh') return CARS.has(line.word(i + 2)) && line.number(i + 1) ? i + 2 : 0;
  const number = line.number(i);
  return number?.shape === 'whole' && number.n > 25 && number.n < 100 && CARS.has(line.word(number.until))
    ? number.until
    : 0;
}

/** "A 1962 ranch". */
const isDwelling = (line: Line, i: number) =>
  isDigits(line, i) &&
  /^(?:1[89]|20)\d\d$/.test(line.word(i)) &&
  HOUSES.has(line.word(i + 1)) &&
  /^(?:a|the|this|that|his|her|their|old|in)$/.test(line.word(i - 1));

/** "In two thousand nine", "the class of two thousand and six". */
function isSpokenYear(line: Line, i: number): boolean {
  if (line.word(i) !== 'two' || line.word(i + 1) !== 'thousand') return false;
  const number = line.number(i)!;
  const since =
    /^(?:in|since|from|circa|back)$/.test(line.word(i - 1)) ||
    /^(?:class|summer|winter|spring)$/.test(line.word(i - 2));
  return since && number.d === 1 && number.n < 2040 && endsPhraseOrVerb(line, number.until);
}

const endsPhraseOrVerb = (line: Line, at: number) =>
  !unitAt(line, at, null) && !/^(?:by|x|of|or|to)$/.test(line.word(at)) && !/[^s]s$/.test(line.word(at));

/** "Back in seventy eight", "built in '62", "since eighty four": the century left out. */
function isBackIn(line: Line, i: number): boolean {
  const cued =
    line.word(i - 1) === 'in'
      ? /^(?:back|built|born|done|poured|put|bought|opened|married|retired|started)$/.test(line.word(i - 2))
      : line.word(i - 1) === 'since' ||
        (line.word(i - 1) === 'of' &&
          /^(?:class|summer|winter|spring|autumn|fall|storm|flood)$/.test(line.word(i - 2)));
  const number = cued ? line.number(i) : null;
  if (number?.d !== 1 || number.n < 40 || number.n > 99 || number.article) return false;
  return endsPhrase(line, number.until) && !unitAt(line, number.until, number);
}
