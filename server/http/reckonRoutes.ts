import { Router } from 'express';
import { z } from 'zod';
import { askCheck, type Form, reckonForm } from '../takeoff/form/index.ts';
import { CheckShape } from './checkShapes.ts';
import { Refused } from './errors.ts';

/** A length as people type it: `12 ft 6 in`, `3/8`, `2.4 m`. */
const Length = z.string().trim().min(1).max(40);
const Pair = z.tuple([Length, Length]);
const Waste = z.number().optional();
const Bag = z.number().positive().max(200);
const MixBag = z.union([z.literal(40), z.literal(50), z.literal(60), z.literal(80)]);
const Unit = z.string().trim().min(1).max(20);
const extent = { length: Length, width: Length, waste: Waste };
const walls = {
  ...extent,
  height: Length,
  ceiling: z.boolean().optional(),
  openings: z
    .array(z.object({ width: Length, height: Length, count: z.number() }))
    .max(40)
    .optional(),
};

/** What to buy by form: which calculator, and its sizes. */
export const FormShape: z.ZodType<Form> = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('cover'),
    ...extent,
    unit: Unit,
    holds: z.number(),
    coats: z.number().optional(),
    tile: Pair.optional(),
  }),
  z.object({
    kind: z.literal('mortar'),
    ...extent,
    notch: Pair,
    bagPounds: Bag.optional(),
    backButtered: z.boolean().optional(),
  }),
  z.object({ kind: z.literal('grout'), ...extent, tile: Pair, thickness: Length, joint: Length, bagPounds: Bag }),
  z.object({ kind: z.literal('sealant'), run: Length, bead: Pair, ounces: z.number().optional(), waste: Waste }),
  z.object({ kind: z.literal('spacing'), run: Length, spacing: Length, ends: z.boolean().optional() }),
  z.object({ kind: z.literal('boards'), run: Length, width: Length, gap: Length }),
  z.object({ kind: z.literal('balusters'), clear: Length, width: Length, gap: Length.optional() }),
  z.object({
    kind: z.literal('holes'),
    holes: z.number(),
    diameter: Length,
    depth: Length,
    bagPounds: MixBag,
  }),
  z.object({ kind: z.literal('slab'), ...extent, thick: Length, bagPounds: MixBag }),
  z.object({ kind: z.literal('walls'), ...walls, unit: Unit, holds: z.number(), coats: z.number().optional() }),
  z.object({ kind: z.literal('board'), ...walls, sheet: Pair }),
  z.object({
    kind: z.literal('run'),
    run: Length,
    ends: z.number().optional(),
    makeUp: Length.optional(),
    stock: Length.optional(),
    waste: Waste,
  }),
  z.object({ kind: z.literal('batts'), wall: Length, spacing: Length, height: Length, batt: Length }),
  z.object({
    kind: z.literal('cutList'),
    pieces: z
      .array(z.object({ length: Length, count: z.number().int().min(1).max(300) }))
      .min(1)
      .max(60),
    stock: z.array(Length).min(1).max(6),
    kerf: Length.optional(),
  }),
]);

/**
 * The calculators and fit checks without a note: POST a form, get what to buy with its working, or POST to `/check` and
 * get each verdict with figure, limit and source. 422 gives the reason in words why there is no answer.
 */
export function reckonRoutes(): Router {
  const router = Router();
  router.post('/check', (req, res) => {
    const answer = askCheck(CheckShape.parse(req.body));
    if (!answer.ok) throw new Refused('cannot-reckon', answer.why);
    res.json(answer);
  });
  router.post('/', (req, res) => {
    const answer = reckonForm(FormShape.parse(req.body));
    if (!answer.ok) throw new Refused('cannot-reckon', answer.why);
    res.json(answer);
  });
  return router;
}
