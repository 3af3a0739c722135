import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

/** The lists that are scored, in the order of the table. */
export const LISTS = ['measurements', 'materials', 'problems', 'followUps', 'done'] as const;
export type ListName = (typeof LISTS)[number];

/** `seen` may be looked at while rules are written; `unseen` may not, and only it is held to the bars. */
export const HALVES = ['seen', 'unseen'] as const;
export type Half = (typeof HALVES)[number];

const words = z.string().min(1);
const day = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/)
  .nullable();
/** `quote` is an exact substring of the note. A fact that a careful reader may leave out is `optional`. */
const anchored = { quote: words, optional: z.boolean().optional() };

const noteSchema = z.strictObject({
  id: words,
  /** Local wall time, ISO without zone. */
  saidAt: z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}$/),
  text: words,
  areas: z.array(words),
  gold: z.strictObject({
    measurements: z.array(z.strictObject({ of: words, value: z.number(), unit: words.nullable(), ...anchored })),
    materials: z.array(
      z.strictObject({
        item: words,
        size: words.nullable(),
        quantity: z.number().positive().nullable(),
        unit: words.nullable(),
        status: z.enum(['need', 'have', 'used', 'bought', 'returned']),
        ...anchored,
      }),
    ),
    problems: z.array(z.strictObject({ thing: words, defect: words, state: z.enum(['open', 'fixed']), ...anchored })),
    followUps: z.array(z.strictObject({ task: words, who: words.nullable(), due: day, notBefore: day, ...anchored })),
    done: z.array(z.strictObject({ task: words, ...anchored })),
  }),
  /** What the note is there for: voice, trade, phenomena. */
  about: words,
});

export type Note = z.infer<typeof noteSchema>;
export type Gold<L extends ListName> = Note['gold'][L][number];

/** One half of the corpus, file by file. Throws a ZodError, or the JSON error, naming what is wrong. */
export function readFiles(half: Half): { file: string; notes: Note[] }[] {
  const folder = fileURLToPath(new URL(`../../../fixtures/notes/${half}/`, import.meta.url));
  return readdirSync(folder)
    .filter((name) => name.endsWith('.jsonl'))
    .sort()
    .map((file) => ({
      file,
      notes: readFileSync(folder + file, 'utf8')
        .split('\n')
        .filter((line) => line.trim())
        .map((line) => noteSchema.parse(JSON.parse(line))),
    }));
}

export const readHalf = (half: Half): Note[] => readFiles(half).flatMap(({ notes }) => notes);
