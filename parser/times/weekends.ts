import { addDays, daysBetween, fridayOf, lastWeekday, nextWeekday, weekdayOf } from './days.ts';
import { holidayAt } from './holidays.ts';
import type { Rule, Talk } from './talk.ts';
import { happened } from './told.ts';
import { toldAround } from './toldOf.ts';

/** Behind the last word of "weekend", "week end", "w/end" at `i`; 0 where none is. */
export function weekendAt(talk: Talk, i: number): number {
  if (talk.bare(i) === 'weekend') return i + 1;
  if (talk.says(i, ['week', 'end'])) return i + 2;
  return talk.says(i, ['w', '/', 'end']) ? i + 3 : 0;
}

const BEFORE_WEEKEND = /^(?:over|on|for|by|before|after|until|till|til|through|thru|of|during|all)$/;

/** "This weekend", "over the weekend": the one behind where it is told of, else the coming one. */
export const weekend: Rule = (talk, i) => {
  const end = weekendAt(talk, i);
  if (!end) return null;
  const lead = talk.word(i - 1);
  const later = talk.says(end, ['after', 'next']) || talk.says(end, ['after', 'this', 'one']) ? 1 : 0;
  if (later) {
    const next = talk.word(end + 1) === 'next';
    const saturday = addDays(nextWeekday(addDays(talk.today, -1), 6), next ? 14 : 7);
    const until = end + (next ? 2 : 3);
    const from = lead === 'the' ? i - 1 : i;
    return { from, until, date: saturday, to: addDays(saturday, 1), relation: 'during', rule: 'time/weekend' };
  }
  // "The weekend before labor day".
  const side = /^(?:before|after)$/.exec(talk.word(end))?.[0];
  const named = side ? holidayAt(talk, end + 1) : null;
  if (named) {
    const date = side === 'after' ? nextWeekday(named.date, 6) : addDays(lastWeekday(named.date, 0), -1);
    // A holiday on the monday ends the weekend that it is of: the one before it is meant.
    const own = side === 'before' && daysBetween(date, named.date) <= 2 ? addDays(date, -7) : date;
    const from = lead === 'the' ? i - 1 : i;
    return { from, until: named.until, date: own, to: addDays(own, 1), relation: 'during', rule: 'time/weekend' };
  }
  if (!/^(?:this|the|last|next|all|coming|past)$/.test(lead)) return null;
  const justGone = talk.says(end, ['just', 'gone']) ? end + 2 : /^(?:gone|past)$/.test(talk.word(end)) ? end + 1 : 0;
  const over = talk.word(i - 2) === 'over' && lead === 'the';
  if (
    lead === 'the' &&
    !justGone &&
    !talk.word(i).endsWith("'s") &&
    !BEFORE_WEEKEND.test(talk.word(i - 2)) &&
    !talk.ends(end)
  )
    return null;
  // "After the weekend": the monday.
  if (lead === 'the' && talk.word(i - 2) === 'after') {
    const date = addDays(nextWeekday(addDays(talk.today, -1), 6), 2);
    return { from: i - 1, until: end, date, relation: 'notBefore', rule: 'time/after-weekend' };
  }
  // "Before the weekend": by the friday.
  if (lead === 'the' && /^(?:before|b4)$/.test(talk.word(i - 2)))
    return { from: i - 1, until: end, date: fridayOf(talk.today), relation: 'by', rule: 'time/before-weekend' };
  const from = over ? i - 2 : i - 1;
  const at = talk.word(i - 2) === 'at' && lead === 'the';
  const past =
    lead === 'last' ||
    lead === 'past' ||
    justGone > 0 ||
    (over && isPast(talk, from, end)) ||
    (at && happened(talk, i - 2));
  const sunday = weekdayOf(talk.today) === 0;
  // On its sunday "this weekend" is what is left of it.
  if (lead === 'this' && sunday)
    return { from, until: end, date: talk.today, to: talk.today, relation: 'during', rule: 'time/weekend' };
  const coming = nextWeekday(addDays(talk.today, -1), 6);
  const gone = addDays(lastWeekday(talk.today, 6), sunday && lead === 'last' ? -7 : 0);
  const saturday = past ? gone : coming;
  // "By the weekend", said on one, is by the next.
  const next = lead === 'next' || (talk.word(i - 2) === 'by' && saturday === talk.today);
  const date = next ? addDays(saturday, 7) : saturday;
  return {
    from,
    until: justGone || end,
    date,
    to: addDays(date, 1),
    relation: 'during',
    ...(past && { past }),
    rule: 'time/weekend',
  };
};

/** Told with the deed before "over the weekend" or behind it, or as where something is left from. */
function isPast(talk: Talk, from: number, until: number): boolean {
  const lead = talk.lead(from);
  if (/\b(?:will|gonna|going|to|can|let|leave|need|needs|should|have|let's|keep)\b|'ll\b/.test(lead)) return false;
  if (toldAround(talk, from, until) || talk.toldOfPast(from) || happened(talk, from)) return true;
  return talk.word(from - 1) === 'from' || /\w(?:ed|ung|ug|ent|ame|ook)\b/.test(lead);
}
