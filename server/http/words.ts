import { Router } from 'express';
import { z } from 'zod';
import { packOf } from '../catalogue/rows.ts';
import type { Site } from '../site.ts';
import type { NewWord } from './api.ts';
import { Id } from './shapes.ts';

const Word = z
  .string()
  .trim()
  .toLowerCase()
  .min(2)
  .max(60)
  .regex(/^[^;,@~+]+$/, 'a word or a few, without marks');

const NewWordShape: z.ZodType<NewWord> = z
  .object({
    name: Word,
    kind: z.enum(['material', 'part', 'fixture', 'tool', 'surface', 'area', 'role', 'defect', 'finish', 'work']),
    also: z.array(Word).max(20).optional(),
    counter: Word.optional(),
    soldBy: z.array(Word).max(6).optional(),
    holds: z
      .string()
      .trim()
      .max(40)
      .refine((text) => packOf(text), 'write what one holds: 11.5 sq ft, 50 lb, 8')
      .optional(),
  })
  .refine((word) => !word.holds || word.soldBy?.length, 'say by what it is sold: box, bag');

/** The firm's own words: taught, taught otherwise, forgotten. */
export function wordsRoutes(site: Site): Router {
  const router = Router();
  router.get('/', async (_req, res) => {
    res.json(await site.words());
  });
  router.put('/:wordId', async (req, res) => {
    const fresh = await site.teach(Id.parse(req.params.wordId), NewWordShape.parse(req.body));
    res.status(fresh ? 201 : 200).json(await site.words());
  });
  router.delete('/:wordId', async (req, res) => {
    await site.forget(Id.parse(req.params.wordId));
    res.json(await site.words());
  });
  return router;
}
