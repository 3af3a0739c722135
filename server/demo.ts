import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { addDays, localTime } from '../parser/times/days.ts';
import type { Site } from './site.ts';

const Demo = z.object({
  job: z.object({
    id: z.string(),
    name: z.string(),
    zone: z.string(),
    areas: z.array(z.string()),
    builtYear: z.number().nullable(),
    mailTo: z.array(z.string()),
    mailAt: z.string(),
  }),
  notes: z.array(z.object({ day: z.number(), time: z.string(), by: z.string(), text: z.string() })),
});

/**
 * Loads the demo job through the same door as any note. Its days are moved so that the last one was yesterday at the job.
 */
export async function loadDemo(site: Site, now: Date): Promise<void> {
  const { job, notes } = Demo.parse(
    JSON.parse(readFileSync(new URL('../fixtures/demo/studio.json', import.meta.url), 'utf8')),
  );
  const today = localTime(now, job.zone).slice(0, 10);
  const last = Math.max(...notes.map((n) => n.day));
  const start = addDays(today, -1 - last);
  const made = { ...job, start };
  await site.store.putJob(made);
  for (const [k, note] of notes.entries()) {
    const saidAt = `${addDays(start, note.day)}T${note.time}:00`;
    await site.take(made, `demo-note-${String(k).padStart(2, '0')}`, { saidAt, text: note.text, by: note.by });
  }
}
