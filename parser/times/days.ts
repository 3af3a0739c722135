/** Calendar arithmetic on local days (`YYYY-MM-DD`) and local wall times (ISO without zone). No clock, no zone of the machine. */
const DAY_MS = 86_400_000;

const toUtc = (day: string) => Date.UTC(Number(day.slice(0, 4)), Number(day.slice(5, 7)) - 1, Number(day.slice(8, 10)));
const fromUtc = (ms: number) => new Date(ms).toISOString().slice(0, 10);

export const dayOf = (local: string) => local.slice(0, 10);
export const addDays = (day: string, days: number) => fromUtc(toUtc(day) + days * DAY_MS);
/** 0 = Sunday. */
export const weekdayOf = (day: string) => new Date(toUtc(day)).getUTCDay();
export const daysBetween = (from: string, to: string) => Math.round((toUtc(to) - toUtc(from)) / DAY_MS);

/** So many days on, weekends not counted. */
export function addWorkingDays(day: string, days: number): string {
  let at = day;
  for (let left = days; left > 0; ) {
    at = addDays(at, 1);
    if (weekdayOf(at) % 6 !== 0) left--;
  }
  return at;
}

/** Same day of the month that many months on; the month's last day where it has no such day. */
export function addMonths(day: string, months: number): string {
  const at = new Date(toUtc(day));
  const last = new Date(Date.UTC(at.getUTCFullYear(), at.getUTCMonth() + months + 1, 0));
  return fromUtc(Date.UTC(last.getUTCFullYear(), last.getUTCMonth(), Math.min(at.getUTCDate(), last.getUTCDate())));
}

/** The first day of its month. */
export const firstOfMonth = (day: string) => `${day.slice(0, 8)}01`;

/** The next such weekday strictly after `day`. */
export const nextWeekday = (day: string, weekday: number) => addDays(day, ((weekday - weekdayOf(day) + 6) % 7) + 1);
/** The last such weekday strictly before `day`. */
export const lastWeekday = (day: string, weekday: number) => addDays(day, -(((weekdayOf(day) - weekday + 6) % 7) + 1));

/** The friday of its working week: itself, or the coming one. */
export const fridayOf = (day: string) => (weekdayOf(day) === 5 ? day : nextWeekday(day, 5));

/** A local wall time so many hours on. Waits are counted by the wall clock: an hour of daylight saving cures nothing. */
export function addHours(local: string, hours: number): string {
  const time = local.slice(11, 16) || '00:00';
  const ms =
    toUtc(local.slice(0, 10)) +
    Number(time.slice(0, 2)) * 3_600_000 +
    Number(time.slice(3, 5)) * 60_000 +
    hours * 3_600_000;
  return new Date(ms).toISOString().slice(0, 16);
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Making a format costs far more than using it, so each zone's is kept. */
function formatFor(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const format = new Intl.DateTimeFormat('en-CA', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  });
  formats.set(zone, format);
  return format;
}

/** The wall time in an IANA zone at a UTC moment: `2026-05-12T15:20:00`. Throws RangeError for an unknown zone. */
export function localTime(utc: Date, zone: string): string {
  const parts = formatFor(zone).formatToParts(utc);
  const get = (type: string) => parts.find((p) => p.type === type)?.value ?? '00';
  return `${get('year')}-${get('month')}-${get('day')}T${get('hour')}:${get('minute')}:${get('second')}`;
}
