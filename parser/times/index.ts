import type { Quantity, TimeMention, Token } from '../types.ts';
import { dayOfMonth, monthDay, slashDate } from './calendar.ts';
import { clockAfter } from './clock.ts';
import { addDays } from './days.ts';
import { holiday } from './holidays.ts';
import { monthPart } from './months.ts';
import { endOfDay, nearDay, stretch } from './near.ts';
import { relationBefore } from './relation.ts';
import { shifted } from './shifts.ts';
import { type Found, type Rule, Talk } from './talk.ts';
import { dayOrTwo, inSomeTime, lengthOfTime, overnight, workingDays } from './waits.ts';
import { weekday } from './weekdays.ts';

/** In the order in which they are asked; the first that answers wins. */
const RULES: readonly Rule[] = [
  shifted,
  nearDay,
  endOfDay,
  stretch,
  overnight,
  dayOrTwo,
  inSomeTime,
  workingDays,
  lengthOfTime,
  monthPart,
  monthDay,
  weekday,
  dayOfMonth,
  slashDate,
  holiday,
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
    const found = firstOf(talk, i);
    if (!found) {
      i++;
      continue;
    }
    const joined = found.rule === 'time/end-of-day' ? dayAfter(talk, found) : found;
    const from = withOpening(talk, Math.max(joined.from ?? i, claimed), claimed);
    const [start, end] = [talk.tokens[from]!.start, talk.tokens[joined.until - 1]!.end];
    const clock = clockAfter(talk, joined.until);
    // "Monday through wednesday": the second follows the first.
    const opened = out.at(-1);
    if (joined.rule === 'time/weekday' && opened && isThrough(talk, i, claimed) && joined.date < opened.date)
      joined.date = addDays(joined.date, 7);
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
