import { addDays, nextWeekday, weekdayOf } from './days.ts';
import type { Found, Talk } from './talk.ts';
import { WEEKDAYS } from './weekdayNames.ts';

/** A day that was named before in the same breath, and behind which place. */
export interface Named {
  date: string;
  past: boolean;
  until: number;
}

/** So many words on, the day named before is still the one that is meant. */
const REACH = 14;

/** "Template wednesday, install the wednesday after", "the following friday", "strip it the day after": counted from the day named before. */
export function followingDay(talk: Talk, i: number, named: Named | null): Found | null {
  if (!named || i - named.until > REACH) return null;
  const at = talk.word(i) === 'the' ? i + 1 : i;
  const first = /^(?:following|next)$/.test(talk.word(at));
  const unit = first ? at + 1 : at;
  const behind = /^(?:after|following)$/.test(talk.word(unit + 1)) && talk.ends(unit + 2);
  // "The next friday" is one rule's, "next friday" another's: only with its article does it follow.
  if (at === i || !(behind || first) || !ends(talk, behind ? unit + 2 : unit + 1)) return null;
  const until = behind ? unit + 2 : unit + 1;
  const past = named.past && { past: true };
  const word = talk.word(unit);
  if (/^(?:day|morning|afternoon)$/.test(word))
    return { until, date: addDays(named.date, 1), ...past, rule: 'time/following-day' };
  if (word === 'weekend') {
    const date = nextWeekday(named.date, 6);
    return { until, date, to: addDays(date, 1), relation: 'during', ...past, rule: 'time/following-weekend' };
  }
  if (word === 'week') {
    const monday = addDays(named.date, 7 - ((weekdayOf(named.date) + 6) % 7));
    return { until, date: monday, to: addDays(monday, 6), relation: 'during', ...past, rule: 'time/following-week' };
  }
  const day = WEEKDAYS.get(word);
  if (day === undefined) return null;
  return { until, date: nextWeekday(named.date, day), ...past, rule: 'time/following-day' };
}

const ends = (talk: Talk, at: number) => talk.ends(at) || /^(?:am|pm|morning|afternoon)$/.test(talk.word(at));
