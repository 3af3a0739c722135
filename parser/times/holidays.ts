import { addDays, daysBetween, weekdayOf } from './days.ts';
import { HOLIDAYS } from './holidayDates.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { lookedBack, toldBehind } from './told.ts';
import { toldAround } from './toldOf.ts';

const ROWS = HOLIDAYS.map(([words, on]) => ({ words: words.split(' '), on }));
const OPENING = new Set(ROWS.map(({ words }) => words[0]));

function rowAt(talk: Talk, i: number) {
  return OPENING.has(talk.word(i)) || OPENING.has(talk.bare(i))
    ? ROWS.find(({ words }) => talk.names(i, words))
    : undefined;
}

/** The coming holiday that is named at `i`, whatever stands around it. */
export function holidayAt(talk: Talk, i: number): Found | null {
  const row = rowAt(talk, i);
  if (!row) return null;
  const year = Number(talk.today.slice(0, 4));
  const own = row.on(year, talk.today);
  const date = own >= talk.today ? own : row.on(year + 1, talk.today);
  // "The august bank holiday monday": its weekday belongs to it.
  const until = i + row.words.length;
  const named = WEEKDAY_NAMES[weekdayOf(date)] === talk.bare(until);
  return { until: named ? until + 1 : until, date, rule: 'time/holiday' };
}

const WEEKDAY_NAMES = 'sunday monday tuesday wednesday thursday friday saturday'.split(' ');

/** So near behind today that a deed on it is told, not planned for the next one. */
const JUST_GONE_DAYS = 60;
/** So near that its name alone is not said of the next one. */
const HARDLY_GONE_DAYS = 14;

/** "Since christmas", "the boiler packed in christmas day": the one that has been. */
function heldHoliday(talk: Talk, i: number): Found | null {
  const row = rowAt(talk, i);
  if (!row) return null;
  const year = Number(talk.today.slice(0, 4));
  const own = row.on(year, talk.today);
  const date = own < talk.today ? own : row.on(year - 1, talk.today);
  const until = i + row.words.length;
  const since = talk.word(i - 1) === 'since';
  const behind = toldBehind(talk, i, until);
  const told = since || behind || lookedBack(talk, talk.word(i - 1) === 'on' ? i - 1 : i);
  const gone = daysBetween(date, talk.today);
  // "They promised it before christmas", said a week after.
  const hardly = gone <= HARDLY_GONE_DAYS && toldAround(talk, i, until);
  if (!(told || hardly) || (!since && gone > JUST_GONE_DAYS)) return null;
  return talk.ends(until) || behind || hardly ? { until, date, past: true, rule: 'time/holiday' } : null;
}

const SUBJECT = /^(?:we|they|he|she|i|you|nobody|everybody|everyone|no)(?:'|$)/;
/** "Halloween they want the porch lights on": it opens what is said, and somebody does something on it. */
const opens = (talk: Talk, from: number, until: number) =>
  (from === 0 || !/^[a-z]/.test(talk.word(from - 1)) || /^(?:and|but|so|then|well)$/.test(talk.word(from - 1))) &&
  SUBJECT.test(talk.word(until));

const WEEK_BESIDE: ReadonlyMap<string, number> = new Map([
  ['of', 0],
  ['before', -7],
  ['after', 7],
]);
/** "Merry christmas", "lit up like halloween". */
const LIKENED = /^(?:merry|happy|like|white|father|every|each|a|an|than|as|was|the|my|our|his|her)$/;
const isLast = (talk: Talk, at: number) => {
  const next = talk.tokens[at];
  return next === undefined || next.kind === 'break' || /^[,.;]$/.test(next.text) || next.word === 'latest';
};

/** "Memorial day sale": the day is part of another name. */
const PART_OF_NAME =
  /^(?:sales?|specials?|pric(?:e|es|ing)|part(?:y|ies)|parade|crowd|traffic|rush|dinner|lunch|pay|rates?|deals?|bbq)$/;
const LEADS = /^(?:in|between|by|before|b4|until|till|til|after|on|for|come|off|over|around)$/;

/** "By thanksgiving", "before christmas": the coming one. Without such a lead it may be a light or a paint. */
export const holiday: Rule = (talk, i) => {
  const held = heldHoliday(talk, i);
  if (held) return held;
  const found = holidayAt(talk, i);
  if (!found) return null;
  const { date } = found;
  // "Thanksgiving week", "the week of thanksgiving", "the week before": from its monday on.
  const week = talk.word(found.until) === 'week';
  const side = talk.word(i - 2) === 'week' ? WEEK_BESIDE.get(talk.word(i - 1)) : undefined;
  if (week || side !== undefined) {
    const from = week ? i : talk.word(i - 3) === 'the' ? i - 3 : i - 2;
    const monday = addDays(date, (side ?? 0) - ((weekdayOf(date) + 6) % 7));
    const until = week ? found.until + 1 : found.until;
    return { from, until, date: monday, to: addDays(monday, 6), relation: 'during', rule: 'time/holiday-week' };
  }
  if (talk.word(found.until) === 'fortnight')
    return { until: found.until + 1, date: addDays(date, 14), rule: 'time/shifted' };
  // "Labor day weekend": the days off around it.
  if (talk.bare(found.until) === 'weekend') {
    const saturday = addDays(date, -((weekdayOf(date) + 1) % 7));
    const to = addDays(saturday, weekdayOf(date) === 1 ? 2 : 1);
    return { until: found.until + 1, date: saturday, to, relation: 'during', rule: 'time/holiday-weekend' };
  }
  if (/^(?:night|morning|afternoon)$/.test(talk.word(found.until))) return { ...found, until: found.until + 1 };
  // A holiday called a day is nothing else: "crew's off presidents day".
  const sure =
    LEADS.test(talk.word(i - 1)) ||
    /^(?:day|friday|eve|juneteenth|monday|sunday|tuesday|wednesday|saturday|night|hogmanay|holiday|year|nye|jayanti)$/.test(
      talk.bare(found.until - 1),
    ) ||
    // "Halloween's the deadline".
    (talk.word(found.until - 1).endsWith("'s") && /^(?:the|our|when)$/.test(talk.word(found.until))) ||
    opens(talk, i, found.until) ||
    // "Closed thanksgiving", "the deadline's christmas": said last.
    (!LIKENED.test(talk.word(i - 1)) && i > 0 && isLast(talk, found.until));
  const named = talk.ends(found.until) || talk.word(found.until - 1).endsWith("'s");
  // "Veterans day post office shut": said first, with what happens on it behind.
  const first = talk.opens(i) && /day$/.test(talk.word(found.until - 1)) && !PART_OF_NAME.test(talk.word(found.until));
  return sure && (named || first) ? found : null;
};
