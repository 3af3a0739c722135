import { addDays, addMonths, firstOfMonth, fridayOf, nextWeekday, weekdayOf } from './days.ts';
import { monthPart } from './months.ts';
import { byFirstWord } from './phrases.ts';
import type { Found, Rule, Talk } from './talk.ts';
import { WEEKDAYS } from './weekdayNames.ts';
import { weekend, weekendAt } from './weekends.ts';

interface Reach {
  date: string;
  to?: string;
  by?: true;
  past?: true;
}

const friday = (talk: Talk) => fridayOf(talk.today);
const monday = (talk: Talk) => nextWeekday(talk.today, 1);
const endOfWeek = (talk: Talk): Reach => ({ date: friday(talk), by: true });
const endOfNextWeek = (talk: Talk): Reach => ({ date: addDays(monday(talk), 4), by: true });
const endOfMonth = (talk: Talk): Reach => ({ date: addDays(firstOfNextMonth(talk), -1), by: true });
const nextWeek = (talk: Talk): Reach => ({ date: monday(talk), to: addDays(monday(talk), 6) });
const weekAfterNext = (talk: Talk): Reach => ({ date: addDays(monday(talk), 7), to: addDays(monday(talk), 13) });
const weekBeforeLast = (talk: Talk): Reach => ({
  date: addDays(monday(talk), -21),
  to: addDays(monday(talk), -15),
  past: true,
});
const lastWeek = (talk: Talk): Reach => ({
  date: addDays(monday(talk), -14),
  to: addDays(monday(talk), -8),
  past: true,
});
/** On a weekend the week that is left is the one to come. */
const restOfWeek = (talk: Talk): Reach => ({
  date: weekdayOf(talk.today) % 6 === 0 ? monday(talk) : talk.today,
  to: friday(talk),
});
const newYear = (talk: Talk): Reach => ({ date: `${Number(talk.today.slice(0, 4)) + 1}-01-01` });
const pastWeek = (talk: Talk): Reach => ({ date: addDays(talk.today, -7), to: talk.today, past: true });
const midNextWeek = (talk: Talk): Reach => ({ date: addDays(monday(talk), 2) });
const startOfNextWeek = (talk: Talk): Reach => ({ date: monday(talk), to: addDays(monday(talk), 1) });
const lateNextWeek = (talk: Talk): Reach => ({ date: addDays(monday(talk), 3), to: addDays(monday(talk), 4) });
/** Thursday and friday, or what is left of them. */
const lateThisWeek = (talk: Talk): Reach => {
  const last = friday(talk);
  return { date: last === talk.today ? last : addDays(last, -1), to: last };
};
const comingWeekend = (talk: Talk): Reach => {
  const saturday = nextWeekday(addDays(talk.today, -1), 6);
  return { date: saturday, to: addDays(saturday, 1) };
};
const midweek = (talk: Talk): Reach => ({ date: nextWeekday(addDays(talk.today, -1), 3) });
const endOfYear = (talk: Talk): Reach => ({ date: `${talk.today.slice(0, 4)}-12-31`, by: true });
/** The fifteenth of this month, or of the next where it lies behind. */
const midMonth = (talk: Talk): Reach => {
  const own = `${talk.today.slice(0, 8)}15`;
  return { date: own > talk.today ? own : addMonths(own, 1) };
};
const firstOfNextMonth = (talk: Talk) => addMonths(firstOfMonth(talk.today), 1);

const nextMonth = (talk: Talk): Reach => ({
  date: firstOfNextMonth(talk),
  to: addDays(addMonths(firstOfNextMonth(talk), 1), -1),
});

/** Stretches of days; longer phrases first. */
const STRETCHES = byFirstWord(
  (
    [
      ['the end of next week', endOfNextWeek],
      ['end of next week', endOfNextWeek],
      ['the end of the week', endOfWeek],
      ['the end of this week', endOfWeek],
      ['end of the week', endOfWeek],
      ['end of this week', endOfWeek],
      ['end of week', endOfWeek],
      ['eow', endOfWeek],
      ['the end of the month', endOfMonth],
      ['end of the month', endOfMonth],
      ['the end of this month', endOfMonth],
      ['end of this month', endOfMonth],
      ['the last of the month', endOfMonth],
      ['last of the month', endOfMonth],
      ['month end', endOfMonth],
      ["month's end", endOfMonth],
      ['months end', endOfMonth],
      ['the month is out', endOfMonth],
      ["the month's out", endOfMonth],
      ['end of month', endOfMonth],
      ['eom', endOfMonth],
      ['the week after next', weekAfterNext],
      ['next to next week', weekAfterNext],
      ['week after next', weekAfterNext],
      ['mid next week', midNextWeek],
      ['middle of next week', midNextWeek],
      ['the middle of next week', midNextWeek],
      ['first of next week', startOfNextWeek],
      ['start of next week', startOfNextWeek],
      ['the start of next week', startOfNextWeek],
      ['the back end of next week', lateNextWeek],
      ['back end of next week', lateNextWeek],
      ['the back half of next week', lateNextWeek],
      ['back half of next week', lateNextWeek],
      ['beginning of next week', startOfNextWeek],
      ['the beginning of next week', startOfNextWeek],
      ['middle of the week', midweek],
      ['the middle of the week', midweek],
      ['mid week next week', midNextWeek],
      ['next week midweek', midNextWeek],
      ['next week mid week', midNextWeek],
      ['midweek next week', midNextWeek],
      ['mid week', midweek],
      ['midweek', midweek],
      ['early next week', startOfNextWeek],
      ['early in the week', startOfNextWeek],
      ['the beginning of the week', startOfNextWeek],
      ['beginning of the week', startOfNextWeek],
      ['the start of the week', startOfNextWeek],
      ['start of the week', startOfNextWeek],
      ['first of the week', startOfNextWeek],
      ['first half of next week', startOfNextWeek],
      ['front end of next week', startOfNextWeek],
      ['first part of next week', startOfNextWeek],
      ['late next week', lateNextWeek],
      ['late in the week next week', lateNextWeek],
      ['second half of next week', lateNextWeek],
      ['tail end of next week', lateNextWeek],
      ['latter part of next week', lateNextWeek],
      ['later next week', lateNextWeek],
      ['this time next week', (talk) => ({ date: addDays(talk.today, 7) })],
      ['this time last week', (talk) => ({ date: addDays(talk.today, -7), past: true })],
      ['this coming week', nextWeek],
      ['the coming week', nextWeek],
      ['sometime next week', nextWeek],
      ['next week', nextWeek],
      ['la proxima semana', nextWeek],
      ['proxima semana', nextWeek],
      ['la semana que viene', nextWeek],
      ['semana que viene', nextWeek],
      ['la otra semana', nextWeek],
      ['esta semana', restOfWeek],
      ['la semana pasada', lastWeek],
      ['este fin de semana', comingWeekend],
      ['el fin de semana', comingWeekend],
      ['fin de mes', endOfMonth],
      ['el proximo mes', nextMonth],
      ['el mes que viene', nextMonth],
      ['later in the week', restOfWeek],
      ['later on this week', restOfWeek],
      ['back end of this week', lateThisWeek],
      ['tail end of the week', lateThisWeek],
      ['late in the week', lateThisWeek],
      ['late this week', lateThisWeek],
      ['the rest of the week', restOfWeek],
      ['rest of the week', restOfWeek],
      ['back end of the week', lateThisWeek],
      ['later this week', restOfWeek],
      ['sometime this week', restOfWeek],
      ['this week', restOfWeek],
      ['last to last week', weekBeforeLast],
      ['the week before last', weekBeforeLast],
      ['week before last', weekBeforeLast],
      ['last week', lastWeek],
      ['the past week', pastWeek],
      ['this past week', pastWeek],
      ['this month', (talk) => ({ date: talk.today, to: addDays(firstOfNextMonth(talk), -1) })],
      [
        'last month',
        (talk) => ({
          date: addMonths(firstOfNextMonth(talk), -2),
          to: addDays(addMonths(firstOfNextMonth(talk), -1), -1),
          past: true,
        }),
      ],
      ['the first of the year', newYear],
      ['first of the year', newYear],
      ['the end of the year', endOfYear],
      ['end of the year', endOfYear],
      ['end of year', endOfYear],
      ['year end', endOfYear],
      ["year's end", endOfYear],
      ["the year's out", endOfYear],
      ['mid month', midMonth],
      ['the middle of the month', midMonth],
      ['next month', nextMonth],
    ] as [string, (talk: Talk) => Reach][]
  ).map(([phrase, reach]) => [phrase.split(' '), reach] as const),
);

/** End of the week, next week, end of the month, and weekends. */
export const stretch: Rule = (talk, i) => {
  for (const [words, reach] of STRETCHES.get(talk.word(i)) ?? []) {
    if (!talk.names(i, words)) continue;
    // "This week end" is a weekend.
    if (words.at(-1) === 'week' && weekendAt(talk, i + words.length - 1)) continue;
    // "The last week in july" is a part of that month.
    if (words[0] === 'last' && monthPart(talk, i)) continue;
    // "Last week friday" is that friday's.
    if (words.length === 2 && words[0] === 'last' && dayBehind(talk, i + 2)) return null;
    if (reach === nextWeek && words[0] !== 'sometime') {
      const day = dayBehind(talk, i + words.length);
      if (day) return day;
    }
    const { by, ...days } = reach(talk);
    return { until: i + words.length, ...days, relation: by ? 'by' : 'during', rule: `time/${words.join('-')}` };
  }
  return weekend(talk, i);
};

/** "Next week on monday": the day is the one meant. */
function dayBehind(talk: Talk, at: number): Found | null {
  const k = /^(?:on|el|,)$/.test(talk.word(at)) ? at + 1 : at;
  const day = WEEKDAYS.get(talk.word(k));
  return day === undefined || talk.word(k).length < 4
    ? null
    : { until: k + 1, date: addDays(monday(talk), (day + 6) % 7), rule: 'time/weekday-next-week' };
}
