import { readNote } from '../../parser/index.ts';
import { type Entry, fold, type JobState } from '../../server/jobs/index.ts';
import { JOB, note } from './made.ts';

/** Morning of a day of the month in which the tests' jobs are. */
export const at = (day: number): string => `2026-03-${String(day).padStart(2, '0')}T08:00:00`;
/** The evening after everything. */
export const END = '2026-03-31T18:00:00';

/** Notes as people say them, a day apart, read and folded. */
export const told = (...texts: string[]): JobState =>
  fold(
    JOB,
    texts.map((text, k): Entry => {
      const entry = note(`n${k}`, at(k + 1), ...readNote(text, { saidAt: at(k + 1), areas: JOB.areas }).facts);
      return { ...entry, what: { ...entry.what, text } as Entry['what'] };
    }),
    END,
  );
