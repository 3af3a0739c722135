import { z } from 'zod';
import type { CheckForm } from '../takeoff/form/index.ts';

/** A length as people type it: `12 ft 6 in`, `3/8`, `2.4 m`. */
const Length = z.string().trim().min(1).max(40);
const May = Length.optional();
const Pair = z.tuple([Length, Length]);
const Figure = z.number().optional();
const Said = z.boolean().optional();
const Lengths = z.array(Length).max(40).optional();
const Pipe = z.object({ kind: z.enum(['pvc', 'steel', 'copper', 'pex', 'cpvc']), size: Length });

const electrical = [
  z.object({
    of: z.literal('box fill'),
    cables: z
      .array(z.object({ count: z.number(), gauge: z.number(), conductors: z.number(), ground: Said }))
      .max(20)
      .optional(),
    loose: z
      .array(z.object({ count: z.number(), gauge: z.number() }))
      .max(20)
      .optional(),
    devices: Figure,
    clamps: Said,
    volume: Figure,
  }),
  z.object({
    of: z.literal('wire and breaker'),
    gauge: Figure,
    amps: Figure,
    metal: z.enum(['copper', 'aluminum']).optional(),
  }),
  z.object({ of: z.literal('receptacle'), toBasin: May, alongCounter: May, unprotected: May }),
] as const;

const framing = [
  z.object({
    of: z.enum(['hole in stud', 'notch in stud']),
    cut: Length,
    nominal: z.number(),
    bearing: Said,
    doubled: Said,
  }),
  z.object({ of: z.literal('hole in joist'), cut: Length, nominal: Figure, engineered: Said }),
  z.object({
    of: z.literal('notch in joist'),
    cut: Length,
    nominal: Figure,
    engineered: Said,
    at: z.enum(['end', 'middle', 'outer']).optional(),
  }),
  z.object({ of: z.literal('concrete screw'), diameter: May, length: May, through: May, hole: May, holeDepth: May }),
  z.object({
    of: z.literal('deck boards'),
    spacing: Length,
    thick: z.enum(['5/4', '2']).optional(),
    diagonal: Said,
    composite: Said,
  }),
] as const;

const openings = [
  z.object({ of: z.literal('stairs'), risers: Lengths, treads: Lengths, width: May, headroom: May, handrail: May }),
  z.object({ of: z.literal('guard'), on: z.enum(['floor', 'stair']), drop: May, height: May, gap: May }),
  z.object({ of: z.literal('egress window'), width: May, height: May, sill: May, gradeFloor: Said }),
  z.object({ of: z.literal('door opening'), width: Length, height: May, door: Pair }),
  z.object({
    of: z.literal('tile'),
    side: Length,
    joint: May,
    layout: z.enum(['grid', 'running bond']).optional(),
    edge: z.enum(['rectified', 'calibrated']).optional(),
    warpage: May,
    variation: May,
    offset: Figure,
  }),
  z.object({ of: z.literal('wood floor'), flooring: z.number(), subfloor: z.number(), wide: Said }),
] as const;

const plumbing = [
  z.object({ of: z.literal('drain slope'), pipe: May, run: May, fall: May }),
  z.object({ of: z.literal('trap arm'), length: Length, pipe: May }),
  z.object({ of: z.literal('dryer vent'), run: May, nineties: Figure, fortyFives: Figure }),
  z.object({ of: z.literal('closet flange'), below: May, thickRing: Said, bolts: May, foot: May }),
  z.object({
    of: z.literal('clearances'),
    toiletSide: May,
    toiletFront: May,
    toiletCenters: May,
    sinkFront: May,
    showerInside: Pair.optional(),
    showerFront: May,
  }),
  z.object({ of: z.literal('pipe through'), pipe: Pipe, hole: May, outer: Pipe.optional() }),
  z.object({ of: z.literal('part through'), hole: Length, part: May, asked: May }),
  z.object({ of: z.literal('water'), psi: Figure, fahrenheit: Figure, celsius: Figure }),
] as const;

/** A fit check by form: which one, and the sizes that are known. */
export const CheckShape: z.ZodType<CheckForm> = z.discriminatedUnion('of', [
  ...electrical,
  ...framing,
  ...openings,
  ...plumbing,
]);
