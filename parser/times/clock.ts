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
  const said = talk.word(until + 1);
  let hour = /^\d{1,2}$/.test(said) ? Number(said) : HOURS.indexOf(said) + 1;
  if (hour < 1 || hour > 23) return undefined;
  let next = until + 2;
  let minutes = MINUTES.get(talk.word(next));
  if (minutes !== undefined) next++;
  else if (talk.word(next) === ':' && /^\d\d$/.test(talk.word(next + 1))) {
    minutes = Number(talk.word(next + 1));
    next += 2;
  }
  const half = talk.word(next);
  if (minutes === undefined && !/^(?:am|pm|o'clock)$/.test(half) && !talk.ends(next)) return undefined;
  // A crew's day runs from seven to six: a bare "at two" is the afternoon.
  if (hour < 12 && (half === 'pm' || (half !== 'am' && hour < 7))) hour += 12;
  if (hour === 12 && half === 'am') hour = 0;
  return (minutes ?? 0) < 60 ? `${String(hour).padStart(2, '0')}:${String(minutes ?? 0).padStart(2, '0')}` : undefined;
}
