import { shortDay, daysSpelt as spelt } from '../../../talk/wording.ts';

/** Wall time in `zone`, now or at another moment, ISO without zone: `2026-05-12T15:20:00`. */
export function wallTime(zone: string, at = new Date()): string {
  const parts = wallForm(zone).formatToParts(at);
  const part = (type: Intl.DateTimeFormatPartTypes) => parts.find((p) => p.type === type)?.value ?? '00';
  return `${part('year')}-${part('month')}-${part('day')}T${part('hour')}:${part('minute')}:${part('second')}`;
}

const wallForms = new Map<string, Intl.DateTimeFormat>();

/** Made once for a zone: each form of dates that a browser makes costs an old phone time. */
function wallForm(zone: string): Intl.DateTimeFormat {
  const form =
    wallForms.get(zone) ??
    new Intl.DateTimeFormat('en-CA', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
  wallForms.set(zone, form);
  return form;
}

const utcDay = (day: string) => Date.parse(`${day.slice(0, 10)}T00:00:00Z`);

/** Whole days from `a` to `b`, negative when `b` lies before. */
export const daysBetween = (a: string, b: string) => Math.round((utcDay(b) - utcDay(a)) / 86_400_000);

export const dayAfter = (day: string, days: number) =>
  new Date(utcDay(day) + days * 86_400_000).toISOString().slice(0, 10);

/** `Tue May 12`, or today / tomorrow / yesterday. */
export function dayWords(day: string, today: string): string {
  const near: Record<number, string> = { [-1]: 'yesterday', 0: 'today', 1: 'tomorrow' };
  return near[daysBetween(today, day)] ?? shortDay(day);
}

/** Words of the server's with its days as people say them. */
export const daysSpelt = (words: string, today: string) => spelt(words, (day) => dayWords(day, today));

let hourForm: Intl.DateTimeFormat | null = null;

/** `4:30 PM` or `16:30`, as this phone is set, of local wall time. */
export function clockOf(local: string): string {
  hourForm ??= new Intl.DateTimeFormat(undefined, { hour: 'numeric', minute: '2-digit', timeZone: 'UTC' });
  return hourForm.format(Date.parse(`${local.slice(0, 16)}:00Z`));
}
