import { MONTHS } from './calendar.ts';
import { addDays, addMonths, firstOfMonth, lastWeekday, nextWeekday, weekdayOf } from './days.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { happened } from './told.ts';
import { WEEKDAYS } from './weekdayNames.ts';

const WEEKS = new Map<string, number>(
  ['first 1st', 'second 2nd', 'third 3rd', 'fourth 4th'].flatMap((names, k) =>
    names.split(' ').map((name) => [name, k] as const),
  ),
);
/** First and last day of a part of the month; day 0 is its last. */
const PARTS = new Map<string, readonly [first: number, last: number]>([
  ['early', [1, 10]],
  ['beginning', [1, 10]],
  ['start', [1, 10]],
  ['mid', [15, 15]],
  ['middle', [15, 15]],
  ['late', [21, 0]],
  ['end', [0, 0]],
  ['principios', [1, 10]],
  ['mediados', [15, 15]],
  ['fines', [0, 0]],
  ['finales', [0, 0]],
]);

/** "Early june", "end of april", "the second week of march", "the last week of july", "sometime in october". */
export const monthPart: Rule = (talk, i) => {
  const word = talk.word(i);
  const week = weekOf(talk, i, word);
  if (week) return week;
  const part = PARTS.get(word);
  if (part) {
    const of = /^(?:of|de|-|in)$/.test(talk.word(i + 1)) ? i + 2 : i + 1;
    if (of === i + 1 && !/^(?:early|mid|late)$/.test(word)) return null;
    const month = monthAt(talk, of);
    return month && within(talk, i, month.until, month.start, part[0], part[1]);
  }
  const nth = edgeDay(talk, i, word) ?? weekdayOfMonth(talk, i, word);
  if (nth) return nth;
  if (/^(?:until|till|til|by|before|b4|come)$/.test(talk.word(i - 1)) && MONTHS.has(word) && talk.ends(i + 1))
    return { until: i + 1, date: monthAt(talk, i)!.start, rule: 'time/month-start' };
  if (word !== 'in' && word !== 'during') return null;
  const month = MONTHS.has(talk.word(i + 1)) ? monthAt(talk, i + 1) : null;
  // "Back in march", "we did it in march", "I told him in march".
  const told =
    talk.word(i - 1) === 'back' || happened(talk, i) || /\btold (?:me|him|her|us|them|you)$/.test(talk.lead(i));
  if (month && month.start > talk.today && told && talk.ends(month.until))
    return { ...whole(addMonths(month.start, -12)), from: i, until: month.until, past: true };
  return month && talk.ends(month.until) ? { ...whole(month.start), from: i, until: month.until } : null;
};

/** "The last day of the month", "the last working day of january", "the first day of june". */
function edgeDay(talk: Talk, i: number, word: string): Found | null {
  if (word !== 'last' && word !== 'first') return null;
  const working = /^(?:working|business|work)$/.test(talk.word(i + 1));
  const at = working ? i + 2 : i + 1;
  if (talk.word(at) !== 'day' || !/^(?:of|in)$/.test(talk.word(at + 1))) return null;
  const month = monthAt(talk, at + 2);
  if (!month) return null;
  const from = talk.word(i - 1) === 'the' ? i - 1 : i;
  const edge = word === 'last' ? lastOf(month.start) : month.start;
  const off = working && weekdayOf(edge) % 6 === 0;
  const date = !off ? edge : word === 'last' ? lastWeekday(edge, 5) : nextWeekday(edge, 1);
  return { from, until: month.until, date, rule: `time/${word === 'last' ? 'end' : 'start'}-of-a-month` };
}

/** "The last friday in january", "first monday of june". */
function weekdayOfMonth(talk: Talk, i: number, word: string): Found | null {
  const n = word === 'last' ? -1 : WEEKS.get(word);
  const weekday = n === undefined ? undefined : WEEKDAYS.get(talk.word(i + 1));
  if (n === undefined || weekday === undefined || !/^(?:of|in)$/.test(talk.word(i + 2))) return null;
  const month = monthAt(talk, i + 3);
  if (!month) return null;
  const dateOf = (start: string) =>
    n < 0 ? lastWeekday(addMonths(start, 1), weekday) : addDays(nextWeekday(addDays(start, -1), weekday), 7 * n);
  // Once it has gone by, the next month's or the next year's is meant.
  const own = dateOf(month.start);
  const date =
    own >= talk.today ? own : dateOf(addMonths(month.start, MONTHS.has(talk.word(month.until - 1)) ? 12 : 1));
  return { from: talk.word(i - 1) === 'the' ? i - 1 : i, until: month.until, date, rule: 'time/weekday-of-month' };
}

function weekOf(talk: Talk, i: number, word: string): Found | null {
  const digits = /^[1-4]$/.test(word) && /^(?:st|nd|rd|th)$/.test(talk.word(i + 1)) && !talk.tokens[i + 1]!.spaced;
  const at = digits ? i + 2 : i + 1;
  const n = digits ? Number(word) - 1 : WEEKS.get(word);
  if ((n === undefined && word !== 'last') || talk.word(at) !== 'week' || !/^(?:of|in)$/.test(talk.word(at + 1)))
    return null;
  const month = monthAt(talk, at + 2);
  if (!month) return null;
  return n === undefined
    ? within(talk, i, month.until, month.start, -6, 0)
    : within(talk, i, month.until, month.start, 7 * n + 1, 7 * n + 7);
}

/** The month named at `k`, this year's or the next that comes; "next month", "the month" too. */
function monthAt(talk: Talk, k: number): { start: string; until: number } | null {
  const first = firstOfMonth(talk.today);
  if (talk.says(k, ['the', 'month']) || talk.says(k, ['this', 'month'])) return { start: first, until: k + 2 };
  if (talk.word(k) === 'mes') return { start: first, until: k + 1 };
  if (talk.says(k, ['next', 'month'])) return { start: addMonths(first, 1), until: k + 2 };
  const month = MONTHS.get(talk.word(k));
  if (!month) return null;
  const now = Number(talk.today.slice(5, 7));
  return { start: addMonths(first, (month - now + 12) % 12), until: k + 1 };
}

const MIDDLE = 15;
const lastOf = (start: string) => addDays(addMonths(start, 1), -1);
const dayIn = (start: string, day: number) => (day > 0 ? addDays(start, day - 1) : addDays(lastOf(start), day));

function within(talk: Talk, i: number, until: number, start: string, first: number, last: number): Found {
  const [date, to] = [dayIn(start, first), dayIn(start, last)];
  const from = talk.word(i - 1) === 'the' ? i - 1 : i;
  if (first === MIDDLE) return { from, until, date, rule: 'time/middle-of-a-month' };
  return date === to
    ? { from, until, date, relation: 'by', rule: 'time/end-of-a-month' }
    : { from, until, date, to, relation: 'during', rule: 'time/part-of-a-month' };
}

const whole = (start: string) => ({ date: start, to: lastOf(start), relation: 'during', rule: 'time/month' }) as const;
