import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { lengthText } from '../../parser/quantities/format.ts';
import { fold } from '../jobs/index.ts';
import { isLive } from '../jobs/live.ts';
import type { OrderLine } from '../jobs/types.ts';
import { usesText } from '../talk/wording.ts';
import { entriesOf } from './entries.ts';

/** Plays a job's notes in order of time and prints what they add up to: `replay job.json`. */
const JobFile = z.object({
  id: z.string(),
  start: z.string(),
  rooms: z.array(z.string()).default([]),
  builtYear: z.number().nullish(),
  notes: z.array(z.object({ saidAt: z.string(), text: z.string(), by: z.string().nullish() })),
  end: z.object({ asOf: z.string() }).optional(),
  asOf: z.string().optional(),
});

try {
  const path = process.argv[2];
  if (!path) throw new Error('say which job: npm run --silent replay -- job.json');
  process.stdout.write(`${JSON.stringify(replay(JobFile.parse(JSON.parse(readFileSync(path, 'utf8')))), null, 1)}\n`);
} catch (error) {
  process.stderr.write(
    `replay: ${error instanceof z.ZodError ? error.issues.map((i) => `${i.path.join('.')}: ${i.message}`).join('; ') : error instanceof Error ? error.message : String(error)}\n`,
  );
  process.exitCode = 1;
}

function replay(job: z.infer<typeof JobFile>): object {
  const asOf = job.end?.asOf ?? job.asOf ?? job.notes.at(-1)?.saidAt ?? `${job.start}T23:59:59`;
  const state = fold({ areas: job.rooms, builtYear: job.builtYear ?? null }, entriesOf(job), asOf);
  const live = state.items.filter(isLive);
  return {
    id: job.id,
    asOf,
    open: live.map(({ number: n, task, thing, problem, area, state: s, readyOn, due, who, waitingFor }) => ({
      number: n,
      task,
      thing,
      problem,
      area,
      state: s,
      readyOn,
      due,
      who,
      waitingFor,
    })),
    unsure: state.items
      .filter((i) => i.state === 'unsure')
      .map(({ number: n, task, thing, problem, area }) => ({ number: n, task, thing, problem, area })),
    closed: state.items
      .filter((i) => !live.includes(i) && i.state !== 'unsure')
      .map(({ number: n, task, thing, problem, area, closedOn, state: s }) => ({
        number: n,
        task,
        thing,
        problem,
        area,
        closedOn,
        state: s,
      })),
    order: state.order.filter((l) => l.state === 'to buy').map(lineOf),
    unsureOrder: state.order.filter((l) => l.state === 'unsure').map(lineOf),
    onHand: state.onHand.map((h) => ({ ...h, quantity: number(h.quantity) })),
    measurements: state.measurements.map(({ of, area, value, exact, unit, on }) => ({
      of,
      area,
      value,
      text: lengthText(exact, unit),
      unit,
      on,
    })),
    checks: state.checks,
    cautions: state.cautions.map((c) => `${c.hazard}: ${c.text}`),
    questions: state.questions,
  };
}

function number(text: string | null): number | null {
  if (text === null) return null;
  return text
    .split('/')
    .map(Number)
    .reduce((a, b) => a / b);
}

function lineOf({ item, size, quantity, unit, because, specs, uses }: OrderLine) {
  return {
    item,
    size,
    specs: [...specs, usesText(uses)].filter(Boolean),
    quantity: number(quantity),
    unit,
    because,
  };
}
