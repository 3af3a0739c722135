import { hourFrom } from './clock.ts';
import { addHours } from './days.ts';
import type { Talk } from './talk.ts';

/** The hour at which a wait shorter than a day ends that begins now. */
export const endsAt = (talk: Talk, hours: number) => (hours < 24 ? { clock: addHours(talk.now, hours).slice(11) } : {});

/** Words that may stand behind an hour that nothing else tells to be one. */
const GOES_ON = /^(?:before|then|so|till|until|on|and|or|today|yesterday)$/;

/** "24 hours from 4 pm", "from four": when the wait begins, and where its words end; null where no hour of the day is named. */
export function begunAt(talk: Talk, at: number): { from: string; until: number } | null {
  if (talk.word(at) !== 'from') return null;
  const hour = hourFrom(talk, at + 1);
  if (!hour || !(hour.sure || talk.ends(hour.until) || GOES_ON.test(talk.word(hour.until)))) return null;
  return { from: `${talk.today}T${hour.clock}`, until: hour.until };
}
