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
  ['christmas eve', (year) => `${year}-12-24`],
  ['christmas', (year) => `${year}-12-25`],
  ["new year's eve", (year) => `${year}-12-31`],
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
];

function newYear(year: number): string {
  return first(year, 1);
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
const LEADS = /^(?:by|before|b4|until|till|til|after|on|for|come|off|over|around)$/;

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
  // A holiday called a day is nothing else: "crew's off presidents day".
  const sure = LEADS.test(talk.word(i - 1)) || talk.word(found.until - 1) === 'day';
  return sure && talk.ends(found.until) ? found : null;
};
