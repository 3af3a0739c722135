import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';

const FOLDER = join(import.meta.dirname, '../../fixtures/jobs/told');

const item = z.object({
  task: z.string(),
  /** Every place in the notes that speaks of it, in order; `note` counts from 0. */
  told: z.array(
    z.object({
      note: z.number().int().nonnegative(),
      quote: z.string().min(1),
      does: z.enum(['opens', 'again', 'closes', 'reopens', 'drops']),
    }),
  ),
});

const toldJob = z.object({
  id: z.string(),
  rooms: z.array(z.string()),
  builtYear: z.number().nullish(),
  notes: z.array(z.object({ saidAt: z.string(), text: z.string(), by: z.string().nullish() })),
  end: z.object({ asOf: z.string(), open: z.array(item), closed: z.array(item) }),
});

/** A job whose items say where its notes speak of them. */
export type ToldJob = z.infer<typeof toldJob>;

/** Every job of `fixtures/jobs/told`. Throws a ZodError that names what is wrong. */
export const toldJobs = (): ToldJob[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => toldJob.parse(JSON.parse(readFileSync(join(FOLDER, name), 'utf8'))));
