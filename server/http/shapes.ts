import { z } from 'zod';

/** A day that the calendar has: `2026-02-30` is refused. */
const realDay = (text: string) => {
  const at = Date.parse(`${text.slice(0, 10)}T00:00:00Z`);
  return !Number.isNaN(at) && new Date(at).toISOString().startsWith(text.slice(0, 10));
};
/** Local wall time, ISO without zone. */
export const Local = z
  .string()
  .regex(/^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d(:[0-5]\d)?$/, 'local time as 2026-05-12T15:20:00')
  .refine(realDay, 'a day that the calendar has');

export const Day = z
  .string()
  .regex(/^\d{4}-\d\d-\d\d$/, 'day as 2026-05-12')
  .refine(realDay, 'a day that the calendar has');

/** Made by the client. */
export const Id = z
  .string()
  .min(8)
  .max(64)
  .regex(/^[\w-]+$/);
