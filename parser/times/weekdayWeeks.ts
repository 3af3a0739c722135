import { countAt } from './counts.ts';
import { addDays, lastWeekday, nextWeekday } from './days.ts';
import type { Found, Talk } from './talk.ts';
import { happened, toldBehind } from './told.ts';
import { WEEKDAYS } from './weekdayNames.ts';

/** "Friday of last week", "friday this week", "monday after next", "el martes de la semana que viene": the weekday of the week that is named beside it. */
export function ofNamedWeek(talk: Talk, i: number, { day, until }: { day: number; until: number }): Found | null {
  if (talk.says(i + 1, ['after', 'next'])) {
    const following = addDays(nextWeekday(talk.today, 1), 7);
    return { until: i + 3, date: addDays(following, (day + 6) % 7), rule: 'time/weekday-after-next' };
  }
  const spanish = spanishWeek(talk, i);
  if (spanish) {
    const date = addDays(nextWeekday(talk.today, 1), ((day + 6) % 7) - (spanish.coming ? 0 : 7));
    return { until: spanish.until, date, rule: 'time/weekday-next-week' };
  }
  const week = talk.word(i + 1) === 'of' ? i + 2 : i + 1;
  if (talk.says(week, ['last', 'week'])) return { until: week + 2, ...ofLastWeek(talk, day) };
  if (talk.word(i - 1) === 'on' ? talk.says(i - 3, ['last', 'week']) : talk.says(i - 2, ['last', 'week']))
    return { until, ...ofLastWeek(talk, day) };
  const back = countAt(talk, until);
  if (back && talk.says(back.until, ['weeks', 'ago'])) {
    const monday = addDays(nextWeekday(talk.today, 1), -7 * (back.count + 1));
    return { until: back.until + 2, date: addDays(monday, (day + 6) % 7), past: true, rule: 'time/weekday-ago' };
  }
  // "Friday this week": whatever is said of the week behind it.
  if (talk.says(week, ['this', 'week']) && talk.word(week + 2) !== "'")
    return toldBehind(talk, i, week + 2) || happened(talk, i)
      ? { until: week + 2, date: lastWeekday(talk.today, day), past: true, rule: 'time/weekday-past' }
      : { until: week + 2, date: nextWeekday(addDays(talk.today, -1), day), rule: 'time/this-weekday' };
  if (talk.says(week, ['next', 'week'])) {
    const monday = nextWeekday(talk.today, 1);
    return { until: week + 2, date: addDays(monday, (day + 6) % 7), rule: 'time/weekday-next-week' };
  }
  return null;
}

/** "Friday of last week", "last week on thursday". */
const ofLastWeek = (talk: Talk, day: number) =>
  ({
    date: addDays(nextWeekday(talk.today, 1), ((day + 6) % 7) - 14),
    past: true,
    rule: 'time/last-weekday',
  }) as const;

/** "Two fridays from now": so many of them on. */
export function weekdaysFromNow(talk: Talk, i: number): Found | null {
  const day = WEEKDAYS.get(talk.word(i).replace(/s$/, ''));
  const count = talk.says(i + 1, ['from', 'now']) ? talk.quantityEndingAt(i) : undefined;
  if (day === undefined || !count || (count.quantity.unit !== null && count.quantity.unit !== 'each')) return null;
  const weeks = Math.round(count.quantity.value.valueOf()) - 1;
  return {
    from: count.from,
    until: i + 3,
    date: addDays(nextWeekday(talk.today, day), 7 * weeks),
    rule: 'time/weekday',
  };
}

/** "A week ago thursday", "two weeks ago monday", "two mondays ago": how many weeks before the last one. */
export function weeksAgo(talk: Talk, i: number): { from: number; until?: number; weeks: number } | null {
  if (talk.word(i + 1) === 'ago') {
    const count = talk.quantityEndingAt(i);
    return count?.quantity.unit === null
      ? { from: count.from, until: i + 2, weeks: Math.round(count.quantity.value.valueOf()) - 1 }
      : null;
  }
  if (talk.word(i - 1) !== 'ago') return null;
  if (talk.word(i - 2) === 'week' && !countAt(talk, i - 3))
    return { from: talk.word(i - 3) === 'a' ? i - 3 : i - 2, weeks: 1 };
  const span = talk.quantityEndingAt(i - 1);
  return span?.quantity.unit === 'week' ? { from: span.from, weeks: Math.round(span.quantity.value.valueOf()) } : null;
}

/** "A week from", "two days after" before a weekday: how many days on from it. */
export function lengthFrom(talk: Talk, i: number): { from: number; days: number } | null {
  if (!/^(?:from|after)$/.test(talk.word(i - 1))) return null;
  const span = talk.quantityEndingAt(i - 1);
  const days = span?.quantity.unit === 'week' ? 7 : span?.quantity.unit === 'day' ? 1 : 0;
  if (span && days) return { from: span.from, days: Math.round(span.quantity.value.valueOf() * days) };
  return talk.word(i - 2) === 'week' ? { from: i - 2, days: 7 } : null;
}

const COMING_WEEK = [
  ['de', 'la', 'proxima', 'semana'],
  ['de', 'la', 'semana', 'que', 'viene'],
  ['de', 'la', 'otra', 'semana'],
];

/** "El martes de la semana que viene", "de esta semana": which week's it is, and where its words end. */
function spanishWeek(talk: Talk, i: number): { until: number; coming: boolean } | null {
  const coming = COMING_WEEK.find((words) => talk.says(i + 1, words));
  if (coming) return { until: i + 1 + coming.length, coming: true };
  return talk.says(i + 1, ['de', 'esta', 'semana']) ? { until: i + 4, coming: false } : null;
}
