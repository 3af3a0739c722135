import { monthDay } from './calendar.ts';
import { addDays, nextWeekday, weekdayOf } from './days.ts';
import { dayOfMonth } from './daysOfMonth.ts';
import { holidayAt } from './holidays.ts';
import { nearDay } from './near.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { WEEKDAYS } from './weekdayNames.ts';
import { weekday } from './weekdays.ts';

/** A length of days said before the day that it counts from. */
interface Span {
  days: number;
  until: number;
}

const JOINTS = /^(?:from|after|before|b4)$/;
const WHOLE_WEEKS = 7;

/**
 * A day told by another: "a week from this wednesday", "the day after thanksgiving", "two days before the 14th",
 * "a fortnight today", "a week tomorrow", "the monday after labor day", "tomorrow week".
 */
export const shifted: Rule = (talk, i) => weekBehind(talk, i) ?? weekdayAfter(talk, i) ?? aroundDay(talk, i);

function aroundDay(talk: Talk, i: number): Found | null {
  if (nearDay(talk, i)) return null;
  const span = spanAt(talk, i);
  if (!span || talk.word(i - 1) === 'for') return null;
  const joint = talk.word(span.until);
  // "A week on friday".
  const joined = JOINTS.test(joint) || (joint === 'on' && span.days % WHOLE_WEEKS === 0);
  // "A week monday", "two weeks today": only whole weeks are said without a joint.
  if (!joined && (span.days % WHOLE_WEEKS || !/^(?:today|tomorrow|yesterday)$|day$/.test(joint))) return null;
  const day = dayAt(talk, joined ? span.until + 1 : span.until);
  if (!day || day.to) return null;
  // "A week yesterday" has been, like the day that it counts from.
  const back = /^(?:before|b4)$/.test(joint) || (joint === 'yesterday' && day.past === true);
  const date = addDays(day.date, back ? -span.days : span.days);
  return { from: i, until: day.until, date, ...(joint === 'yesterday' && { past: true }), rule: 'time/shifted' };
}

/** "A week", "two days", "the day", "a fortnight". */
function spanAt(talk: Talk, i: number): Span | null {
  const at = talk.quantityAt(i);
  const count = at?.quantity.value.valueOf();
  if (at && count !== undefined && Number.isInteger(count) && /^(?:day|week)$/.test(at.quantity.unit ?? ''))
    return { days: count * (at.quantity.unit === 'week' ? WHOLE_WEEKS : 1), until: at.until };
  const k = /^(?:the|a)$/.test(talk.word(i)) ? i + 1 : i;
  // "Week from tomorrow": phones swallow the article.
  if (
    talk.says(k, ['week', 'from']) ||
    (talk.says(k, ['week', 'on']) && !/^(?:last|next|this)$/.test(talk.word(k - 1)))
  )
    return { days: WHOLE_WEEKS, until: k + 1 };
  if (talk.word(k) === 'fortnight') return { days: 2 * WHOLE_WEEKS, until: k + 1 };
  return talk.word(k) === 'day' && /^(?:after|before|b4)$/.test(talk.word(k + 1)) ? { days: 1, until: k + 1 } : null;
}

/** The day that is named at `k`: a weekday with what belongs before it, a near day, a holiday, a day of a month. */
function dayAt(talk: Talk, k: number): Found | null {
  const holiday = holidayAt(talk, k);
  if (holiday) return holiday;
  const named = /^(?:this|next|coming|the)$/.test(talk.word(k)) ? k + 1 : k;
  const weekly = WEEKDAYS.has(talk.bare(named)) ? plainWeekday(talk, named) : null;
  return weekly ?? nearDay(talk, k) ?? monthDay(talk, k) ?? dayOfMonth(talk, named);
}

/** The weekday at `k` by itself: its own rule would count a length before it once more. */
function plainWeekday(talk: Talk, k: number): Found | null {
  const day = weekday(talk, k);
  if (day?.rule !== 'time/length-from-weekday') return day;
  return { until: k + 1, date: nextWeekday(talk.today, WEEKDAYS.get(talk.bare(k))!), rule: 'time/weekday' };
}

/** "Tomorrow week", "monday fortnight", "today week". */
function weekBehind(talk: Talk, i: number): Found | null {
  const near = /^(?:today|tomorrow)$/.test(talk.word(i))
    ? nearDay(talk, i)
    : talk.says(i, ['this', 'day'])
      ? { until: i + 2, date: talk.today, rule: 'time/today' }
      : null;
  const day = near ?? (WEEKDAYS.has(talk.word(i)) && talk.word(i + 1) === 'fortnight' ? weekday(talk, i) : null);
  const unit = day && /^(?:week|fortnight)$/.exec(talk.word(day.until))?.[0];
  if (!day || !unit || !talk.ends(day.until + 1)) return null;
  return { ...day, until: day.until + 1, date: addDays(day.date, unit === 'week' ? 7 : 14), rule: 'time/shifted' };
}

/** "The monday after labor day", "the friday before christmas". */
function weekdayAfter(talk: Talk, i: number): Found | null {
  const day = WEEKDAYS.get(talk.word(i));
  const joint = talk.word(i + 1);
  if (day === undefined || !/^(?:after|before)$/.test(joint)) return null;
  const holiday = holidayAt(talk, i + 2);
  if (!holiday) return null;
  const next = nextWeekday(holiday.date, day);
  const back = ((weekdayOf(holiday.date) - day + 6) % 7) + 1;
  return { until: holiday.until, date: joint === 'after' ? next : addDays(holiday.date, -back), rule: 'time/shifted' };
}
