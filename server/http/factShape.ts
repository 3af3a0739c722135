import { z } from 'zod';
import type { Fact } from '../../parser/types.ts';

const base = {
  start: z.number().int().min(0),
  end: z.number().int().min(0),
  quote: z.string(),
  area: z.string().max(60).nullable(),
  confidence: z.number().min(0).max(1),
  rule: z.string().max(80),
  ask: z.string().max(300).optional(),
  at: z.number().min(0).optional(),
  speaker: z.string().max(80).optional(),
  wording: z.string().optional(),
};
const exact = z.string().regex(/^-?\d+(\/[1-9]\d*)?$/, 'a whole number or a fraction, as 11/8');
const words = z.string().max(300);
const day = z
  .string()
  .regex(/^\d{4}-\d\d-\d\d$/)
  .nullable();

/** A fact as a hand corrects it: whole, since the fold reads every field of it. */
export const FactShape: z.ZodType<Fact> = z.discriminatedUnion('kind', [
  z.object({
    ...base,
    kind: z.literal('measurement'),
    of: words,
    value: z.number(),
    exact,
    unit: z.string().nullable(),
    role: z.enum(['found', 'wanted']),
    bound: z.enum(['about', 'atMost', 'atLeast', 'over', 'under']).optional(),
    tolerance: z.enum(['over', 'under']).optional(),
  }),
  z.object({
    ...base,
    kind: z.literal('material'),
    item: words.min(1),
    size: z.string().max(60).nullable(),
    specs: z.array(words),
    quantity: z.number().nullable(),
    exact: exact.nullable(),
    atLeast: z.number().nullable(),
    unit: z.string().nullable(),
    status: z.enum(['need', 'have', 'used', 'bought', 'returned', 'ordered', 'mentioned']),
    counts: z.enum(['more', 'total', 'plain']),
  }),
  z.object({
    ...base,
    kind: z.literal('problem'),
    thing: words,
    defect: words,
    state: z.enum(['open', 'fixed']),
    suspected: z.boolean(),
    repair: words.optional(),
  }),
  z.object({
    ...base,
    kind: z.literal('followUp'),
    task: words.min(1),
    who: words.nullable(),
    due: day,
    notBefore: day,
    waitingFor: words.nullable(),
    condition: words.nullable(),
  }),
  z.object({ ...base, kind: z.literal('done'), task: words.min(1), who: words.nullable() }),
  z.object({ ...base, kind: z.literal('decision'), what: words, drops: words.nullable() }),
  z.object({
    ...base,
    kind: z.literal('spending'),
    amount: z.number(),
    currency: z.string().length(3),
    on: words.nullable(),
  }),
  z.object({
    ...base,
    kind: z.literal('command'),
    verb: z.enum(['done', 'undo', 'drop', 'move', 'change', 'reopen', 'reschedule', 'split', 'same', 'ask']),
    number: z.number().int().nullable(),
    about: words.nullable(),
    to: words.nullable(),
    question: z.enum(['left', 'order', 'list', 'ready', 'measurements', 'waiting', 'told']).nullable(),
  }),
]);
