import { behind, dateIn, monthDay, ordinalMonth } from './calendar.ts';
import { weekdayOf } from './days.ts';
import { theOrdinal } from './daysOfMonth.ts';
import type { Found, Talk } from './talk.ts';
import { PART, WEEKDAYS } from './weekdayNames.ts';

/** "Poured friday the 7th": of the last and the coming day of that number, the one that falls on the weekday. */
function onWeekday(talk: Talk, coming: Found, at: number): Found {
  const day = WEEKDAYS.get(talk.bare(PART.test(talk.word(at)) ? at - 1 : at));
  const last = behind(talk, Number(coming.date.slice(8)));
  if (weekdayOf(coming.date) === day || weekdayOf(last) !== day) return coming;
  return { ...coming, date: last, past: true };
}

/** "Sat 10/17", "mon 3/1": a pair of figures that falls on that weekday is a date. */
export function slashDay(talk: Talk, at: number): Found | null {
  const [month, day] = [talk.word(at), talk.word(at + 2)];
  if (talk.word(at + 1) !== '/' || !/^\d{1,2}$/.test(month) || !/^\d{1,2}$/.test(day)) return null;
  const weekday = WEEKDAYS.get(talk.bare(/^[,.]$/.test(talk.word(at - 1)) ? at - 2 : at - 1));
  for (const past of [false, true]) {
    const date = dateIn(talk, Number(month), Number(day), undefined, past);
    if (date && weekdayOf(date) === weekday) return { until: at + 3, date, ...(past && { past }), rule: 'time/slash' };
  }
  return null;
}

/** "Friday the 14th", "monday, Aug 14": the named day wins over the coming weekday. `until`: behind the weekday. */
export function namedDay(talk: Talk, until: number): Found | null {
  const at = /^[,.]$/.test(talk.word(until)) && until < talk.tokens.length - 1 ? until + 1 : until;
  const ordinal =
    talk.word(at) === 'the' ? theOrdinal(talk, at + 1) : /^\d{1,2}$/.test(talk.word(at)) ? theOrdinal(talk, at) : null;
  const figure = /^\d{1,2}$/.test(talk.word(at)) ? monthDay(talk, at + 1) : null;
  const dated =
    ordinalMonth(talk, talk.word(at) === 'the' ? at + 1 : at) ?? (figure?.from === at ? figure : monthDay(talk, at));
  const found =
    slashDay(talk, at) ?? dated ?? (ordinal && talk.ends(ordinal.until) ? onWeekday(talk, ordinal, until - 1) : null);
  return found && (found.from ?? at) >= until - 1 ? { ...found, from: until - 1 } : null;
}
