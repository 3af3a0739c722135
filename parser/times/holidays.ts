import { addDays, weekdayOf } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';

const first = (year: number, month: number) => `${year}-${String(month).padStart(2, '0')}-01`;

/** The nth such weekday of a month, counted from 1. */
function nth(year: number, month: number, weekday: number, n: number): string {
  const start = first(year, month);
  return addDays(start, ((weekday - weekdayOf(start) + 7) % 7) + 7 * (n - 1));
}

/** Days that crews plan around. The moving ones after 5 U.S.C. 6103(a). */
const HOLIDAYS: readonly (readonly [words: string, on: (year: number) => string])[] = [
  ['thanksgiving', (year) => nth(year, 11, 4, 4)],
  ['christmas day', (year) => `${year}-12-25`],
  ['christmas eve', (year) => `${year}-12-24`],
  ['christmas', (year) => `${year}-12-25`],
  ["new year's eve", (year) => `${year}-12-31`],
  ["new year's day", newYear],
  ['new years day', newYear],
  ["new year's", newYear],
  ['new years', newYear],
  ['labor day', (year) => nth(year, 9, 1, 1)],
  ['memorial day', (year) => addDays(nth(year, 6, 1, 1), -7)],
  ['the fourth of july', (year) => `${year}-07-04`],
  ['fourth of july', (year) => `${year}-07-04`],
  ['the new year', newYear],
  ['black friday', (year) => addDays(nth(year, 11, 4, 4), 1)],
  ['cinco de mayo', (year) => `${year}-05-05`],
  ['halloween', (year) => `${year}-10-31`],
  ['presidents day', (year) => nth(year, 2, 1, 3)],
  ["president's day", (year) => nth(year, 2, 1, 3)],
  ['mlk day', (year) => nth(year, 1, 1, 3)],
  ['columbus day', (year) => nth(year, 10, 1, 2)],
  ['veterans day', (year) => `${year}-11-11`],
  ['juneteenth', (year) => `${year}-06-19`],
  ['canada day', (year) => `${year}-07-01`],
  ['anzac day', (year) => `${year}-04-25`],
  ['australia day', (year) => `${year}-01-26`],
  ['boxing day', (year) => `${year}-12-26`],
  ['good friday', (year) => addDays(easter(year), -2)],
  ['easter monday', (year) => addDays(easter(year), 1)],
  ['easter sunday', easter],
  ['easter', easter],
  ["mother's day", (year) => nth(year, 5, 0, 2)],
  ['mothers day', (year) => nth(year, 5, 0, 2)],
  ["father's day", (year) => nth(year, 6, 0, 3)],
  ['fathers day', (year) => nth(year, 6, 0, 3)],
  ["st patrick's day", (year) => `${year}-03-17`],
  ["valentine's day", (year) => `${year}-02-14`],
  ['independence day', (year) => `${year}-07-04`],
  ['bonfire night', (year) => `${year}-11-05`],
];

function newYear(year: number): string {
  return first(year, 1);
}

/** Easter Sunday of the Gregorian calendar, by the anonymous algorithm that J. Meeus, Astronomical Algorithms, ch. 8 gives. */
function easter(year: number): string {
  const century = Math.floor(year / 100);
  const golden = year % 19;
  const moon =
    (19 * golden +
      century -
      Math.floor(century / 4) -
      Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3) +
      15) %
    30;
  const rest = (32 + 2 * (century % 4) + 2 * Math.floor((year % 100) / 4) - moon - (year % 4)) % 7;
  const late = Math.floor((golden + 11 * moon + 22 * rest) / 451);
  return addDays(first(year, 3), moon + rest - 7 * late + 21);
}

const ROWS = HOLIDAYS.map(([words, on]) => ({ words: words.split(' '), on }));
const OPENING = new Set(ROWS.map(({ words }) => words[0]));

/** The coming holiday that is named at `i`, whatever stands around it. */
export function holidayAt(talk: Talk, i: number): Found | null {
  if (!OPENING.has(talk.word(i))) return null;
  const found = ROWS.find(({ words }) => talk.says(i, words));
  if (!found) return null;
  const year = Number(talk.today.slice(0, 4));
  const date = found.on(year) >= talk.today ? found.on(year) : found.on(year + 1);
  return { until: i + found.words.length, date, rule: 'time/holiday' };
}

const WEEK_BESIDE: ReadonlyMap<string, number> = new Map([
  ['of', 0],
  ['before', -7],
  ['after', 7],
]);
const LEADS = /^(?:in|by|before|b4|until|till|til|after|on|for|come|off|over|around)$/;

/** "By thanksgiving", "before christmas": the coming one. Without such a lead it may be a light or a paint. */
export const holiday: Rule = (talk, i) => {
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
  // "Labor day weekend": the days off around it.
  if (talk.word(found.until) === 'weekend') {
    const saturday = addDays(date, -((weekdayOf(date) + 1) % 7));
    const to = addDays(saturday, weekdayOf(date) === 1 ? 2 : 1);
    return { until: found.until + 1, date: saturday, to, relation: 'during', rule: 'time/holiday-weekend' };
  }
  // A holiday called a day is nothing else: "crew's off presidents day".
  const sure = LEADS.test(talk.word(i - 1)) || /^(?:day|friday|eve|juneteenth)$/.test(talk.word(found.until - 1));
  return sure && talk.ends(found.until) ? found : null;
};
