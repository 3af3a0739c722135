import { addHours } from './days.ts';
import type { Talk } from './talk.ts';

/** The hour at which a wait shorter than a day ends that begins now. */
export const endsAt = (talk: Talk, hours: number) => (hours < 24 ? { clock: addHours(talk.now, hours).slice(11) } : {});

/** "24 hours from 4 pm": when the wait begins, and where its words end; null where no hour of the day is named. */
export function begunAt(talk: Talk, at: number): { from: string; until: number } | null {
  if (talk.word(at) !== 'from') return null;
  const [, hour, tight] = /^(\d{1,2})(am|pm)?$/.exec(talk.word(at + 1)) ?? [];
  const half = tight ?? /^(am|pm)$/.exec(talk.word(at + 2))?.[1];
  if (!half || Number(hour) < 1 || Number(hour) > 12) return null;
  const of24 = (Number(hour) % 12) + (half === 'pm' ? 12 : 0);
  return { from: `${talk.today}T${String(of24).padStart(2, '0')}:00`, until: at + (tight ? 2 : 3) };
}
