import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { shared } from '../../parser/facts/spans/cut.ts';
import type { Span } from '../../parser/types.ts';

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

const goods = z.object({ item: z.string(), size: z.string().nullable() });

const toldJob = z.object({
  id: z.string(),
  rooms: z.array(z.string()),
  builtYear: z.number().nullish(),
  notes: z.array(z.object({ saidAt: z.string(), text: z.string(), by: z.string().nullish() })),
  end: z.object({ asOf: z.string(), open: z.array(item), closed: z.array(item), order: z.array(goods) }),
});

/** A job whose items say where its notes speak of them. */
export type ToldJob = z.infer<typeof toldJob>;

/** Every job of `fixtures/jobs/told`. Throws a ZodError that names what is wrong. */
export const toldJobs = (): ToldJob[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .map((name) => toldJob.parse(JSON.parse(readFileSync(join(FOLDER, name), 'utf8'))));

/** The number of the note that an entry is. */
export const noteOf = (entry: string): number => Number(entry.split('-').at(-1));

/** What an annotation says that a stretch of a note does, and to which item: half of the shorter of the two is shared. */
export const hitsOf = (job: ToldJob, note: number, stretch: Span) => {
  const text = job.notes[note]!.text;
  return [...job.end.open, ...job.end.closed].flatMap((item, i) =>
    item.told.flatMap(({ note: at, quote, does }) => {
      if (at !== note) return [];
      const from = text.indexOf(quote);
      return shared({ start: from, end: from + quote.length }, stretch) >= 0.5 ? [{ i, does }] : [];
    }),
  );
};
