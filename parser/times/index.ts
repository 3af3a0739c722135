import type { Quantity, TimeMention, Token } from '../types.ts';
import { monthDay, ordinalMonth, TO } from './calendar.ts';
import { clockAfter } from './clock.ts';
import { addDays, addMonths } from './days.ts';
import { bareDayOfMonth, dayOfMonth } from './daysOfMonth.ts';
import { followingDay } from './following.ts';
import { holiday } from './holidays.ts';
import { monthPart } from './months.ts';
import { endOfDay, nearDay } from './near.ts';
import { relationBefore } from './relation.ts';
import { shifted } from './shifts.ts';
import { slashDate } from './slashes.ts';
import { dayOrTwo, inSomeTime } from './someTime.ts';
import { spanishDay, spanishLength } from './spanish.ts';
import { stretch } from './stretches.ts';
import { type Found, type Rule, Talk } from './talk.ts';
import { lengthOfTime, overnight } from './waits.ts';
import { weekday } from './weekdays.ts';
import { workingDays } from './workingDays.ts';

/** In the order in which they are asked; the first that answers wins. */
const RULES: readonly Rule[] = [
  shifted,
  nearDay,
  endOfDay,
  stretch,
  overnight,
  dayOrTwo,
  inSomeTime,
  spanishLength,
  workingDays,
  lengthOfTime,
  monthPart,
  ordinalMonth,
  monthDay,
  holiday,
  weekday,
  dayOfMonth,
  bareDayOfMonth,
  slashDate,
  spanishDay,
];

/**
 * Every day or wait named in a note, seen from `now`.
 *
 * @param now local wall time at which it was said, ISO without zone
 * @param quantities of the same tokens, for lengths of time
 * @returns mentions in the order of their words, none overlapping another
 */
export function readTimes(
  tokens: readonly Token[],
  text: string,
  { now, quantities }: { now: string; quantities: readonly Quantity[] },
): TimeMention[] {
  const talk = new Talk(tokens, now, quantities);
  const places = tokens.flatMap((token, at) => (token.skip ? [] : [at]));
  const out: TimeMention[] = [];
  let claimed = 0;
  for (let i = 0; i < talk.tokens.length; ) {
    const before = out.at(-1);
    const found =
      followingDay(talk, i, before ? { date: before.to ?? before.date, past: before.past, until: claimed } : null) ??
      firstOf(talk, i);
    if (!found) {
      i++;
      continue;
    }
    const joined = found.rule === 'time/end-of-day' ? dayAfter(talk, found) : found;
    const from = withOpening(talk, Math.max(joined.from ?? i, claimed), claimed);
    const [start, end] = [talk.tokens[from]!.start, talk.tokens[joined.until - 1]!.end];
    const clock = joined.clock ?? clockAfter(talk, joined.until);
    // "Monday through wednesday": the second follows the first.
    const opened = out.at(-1);
    if (joined.rule === 'time/weekday' && opened && isThrough(talk, i, claimed) && joined.date < opened.date)
      joined.date = addDays(joined.date, 7);
    const span = opened && claimed > 0 ? spanOf(talk, opened, { claimed, from, rule: joined.rule }) : null;
    if (opened && span !== null) {
      const later = joined.date < opened.date ? afterOpening(joined) : joined.date;
      // "June 12 to august 24", said in july: it has begun.
      if (later < opened.date) opened.date = addMonths(opened.date, -12);
      Object.assign(opened, {
        from: places[span]!,
        start: talk.tokens[span]!.start,
        until: places[joined.until - 1]! + 1,
        end,
        to: joined.to ?? later,
        relation: 'during',
        quote: text.slice(talk.tokens[span]!.start, end),
      });
      claimed = joined.until;
      i = joined.until;
      continue;
    }
    out.push({
      from: places[from]!,
      until: places[joined.until - 1]! + 1,
      start,
      end,
      quote: text.slice(start, end),
      date: joined.date,
      to: joined.to ?? null,
      relation: joined.relation ?? relationBefore(talk, from, joined.until),
      ...(joined.hours !== undefined && { hours: joined.hours }),
      ...(clock && { clock }),
      past: joined.past ?? false,
      rule: joined.rule,
    });
    claimed = joined.until;
    i = joined.until;
  }
  return out;
}

const DATED = /^time\/(?:slash|month-day|day-of-month)$/;
const MOVED =
  /\b(?:mov(?:e|es|ed|ing)|push(?:es|ed|ing)?|bump(?:s|ed)?|slides?|slid|slips?|slipped|shift(?:s|ed)?|switch(?:es|ed)?|swap(?:s|ped)?|chang(?:e|es|ed)|reschedul(?:e|ed)|postponed?|put back|goes|gone|went)(?: \w+){0,2}$/;

/** "From the 6th to the 8th", "between monday and wednesday": the place at which the span opens, or null. */
function spanOf(
  talk: Talk,
  opened: TimeMention,
  { claimed, from, rule }: { claimed: number; from: number; rule: string },
): number | null {
  const joint = talk.word(from - 1) === 'the' ? from - 2 : from - 1;
  if (claimed !== joint || opened.to) return null;
  let first = claimed - 1;
  while (first > 0 && talk.tokens[first]!.start > opened.start) first--;
  const opening = talk.word(first - 1);
  // "Moved from 7/16 to 7/23": two days and no span.
  const spans =
    (opening === 'from' && !MOVED.test(talk.lead(first - 1)) && TO.test(talk.word(joint))) ||
    (opening === 'between' && talk.word(joint) === 'and');
  if (spans) return first - 1;
  // "10/29 thru 11/2", "the 12th to the 16th": two days named in one way need no opening.
  const alike = opened.rule === rule && DATED.test(rule) && TO.test(talk.word(joint));
  return alike && !MOVED.test(talk.lead(first)) ? first : null;
}

/** A span's last day lies behind its first one. */
const afterOpening = (last: Found) =>
  last.rule === 'time/weekday'
    ? addDays(last.date, 7)
    : last.rule === 'time/day-of-month'
      ? addMonths(last.date, 1)
      : last.date;

const isThrough = (talk: Talk, i: number, claimed: number) =>
  claimed === i - 1 && /^(?:to|through|thru|till|until|-|–)$/.test(talk.word(i - 1));

function firstOf(talk: Talk, i: number): Found | null {
  for (const rule of RULES) {
    const found = rule(talk, i);
    if (found) return found;
  }
  return null;
}

/** "End of day monday", "eod on friday": the day that follows is the one meant. */
function dayAfter(talk: Talk, found: Found): Found {
  const at = /^(?:on|,)$/.test(talk.word(found.until)) ? found.until + 1 : found.until;
  const day = weekday(talk, at) ?? nearDay(talk, at);
  return day && (day.from ?? at) >= at ? { ...found, until: day.until, date: day.date } : found;
}

/** "First thing" belongs to the day that it opens. */
function withOpening(talk: Talk, from: number, claimed: number): number {
  return from - 2 >= claimed && talk.says(from - 2, ['first', 'thing']) ? from - 2 : from;
}
