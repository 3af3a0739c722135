import type { Talk } from './talk.ts';

const HOURS = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');
const MINUTES: ReadonlyMap<string, number> = new Map([
  ['fifteen', 15],
  ['twenty', 20],
  ['thirty', 30],
  ['forty-five', 45],
]);

/** `HH:MM` where a time of day follows the day ("tomorrow around seven thirty", "friday at 8", "thursday noon"). */
export function clockAfter(talk: Talk, until: number): string | undefined {
  if (/^(?:noon|midday)$/.test(talk.word(until - 1))) return '12:00';
  if (/^(?:noon|midday)$/.test(talk.word(until + 1)) && /^(?:at|by|around|before)$/.test(talk.word(until)))
    return '12:00';
  if (!/^(?:at|around|about|by|before|after)$/.test(talk.word(until))) return undefined;
  const hour = hourFrom(talk, until + 1);
  return hour && (hour.sure || talk.ends(hour.until)) ? hour.clock : undefined;
}

/**
 * The hour of the clock named at a place: `HH:MM` and where its words end. `sure`: minutes, am, pm or o'clock were said.
 * A crew's day runs from seven to six: a bare "at two" is the afternoon.
 */
export function hourFrom(talk: Talk, at: number): { clock: string; until: number; sure: boolean } | undefined {
  const [, digits, tight] = /^(\d{1,2})(am|pm)?$/.exec(talk.word(at)) ?? [];
  let hour = digits ? Number(digits) : HOURS.indexOf(talk.word(at)) + 1;
  if (hour < 1 || hour > 23) return undefined;
  let next = at + 1;
  let minutes = MINUTES.get(talk.word(next));
  if (minutes !== undefined) next++;
  else if (talk.word(next) === ':' && /^\d\d$/.test(talk.word(next + 1))) {
    minutes = Number(talk.word(next + 1));
    next += 2;
  }
  const half = tight ?? talk.word(next);
  const named = /^(?:am|pm|o'clock)$/.test(half);
  if (named && !tight) next++;
  if (hour < 12 && (half === 'pm' || (half !== 'am' && hour < 7))) hour += 12;
  if (hour === 12 && half === 'am') hour = 0;
  if ((minutes ?? 0) >= 60) return undefined;
  const clock = `${String(hour).padStart(2, '0')}:${String(minutes ?? 0).padStart(2, '0')}`;
  return { clock, until: next, sure: minutes !== undefined || named };
}
