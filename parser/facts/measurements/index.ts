import type { Measurement, Quantity } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import { base } from '../make.ts';
import type { Talk } from '../talk.ts';
import { type Answer, answersFor, COLUMNS, type Column } from './answers.ts';
import { type Figure, figuresIn } from './figures.ts';
import type { Earlier } from './near.ts';
import { measuredBy } from './of.ts';
import { systemOf } from './signs.ts';
import { READINGS } from './table.ts';
import { takenAnew } from './takenAnew.ts';

let known: Record<Column, Weights> | undefined;

const shipped = (): Record<Column, Weights> => {
  known ??= columns(READINGS, COLUMNS);
  return known;
};

/**
 * Sizes, gaps, levels and readings that somebody took or must hold to; `taken` are the goods' own counts and sizes.
 * Whether a figure is one, and in which unit where none was said, is weighed (`table.ts`, learned from annotated notes).
 */
export function readMeasurements(
  talk: Talk,
  taken: ReadonlySet<Quantity>,
  weights: Record<Column, Weights> = shipped(),
): Measurement[] {
  const out: Measurement[] = [];
  for (const { figure, unit } of readingsIn(talk, taken, weights))
    for (const q of figure.sides) {
      const k = figure.frame.chunks.findIndex((c) => c.quantity === q);
      out.push(measurementOf(talk, figure, k, q, unit, out.at(-1)));
    }
  return takenAnew(talk, out);
}

/** The figures that are readings, each with its unit. */
export function readingsIn(talk: Talk, taken: ReadonlySet<Quantity>, weights: Record<Column, Weights>): Earlier[] {
  const out: Earlier[] = [];
  const system = systemOf(talk);
  for (const figure of figuresIn(talk, taken)) {
    const { unit } = best(answersFor(talk, figure, system, out), weights);
    if (unit) out.push({ figure, unit });
  }
  return out;
}

function best(answers: readonly Answer[], weights: Record<Column, Weights>): Answer {
  const worth = answers.map(({ signs }) => signs.reduce((sum, [column, names]) => dot(weights[column], names, sum), 0));
  return answers[worth.indexOf(Math.max(...worth))]!;
}

const WANTED =
  /\b(?:min|minimum|max|maximum|spec|must|should|needs?|wants?|has to|supposed|till it reads|under|at least|at most)\b/;

function measurementOf(
  talk: Talk,
  { frame, at }: Figure,
  k: number,
  q: Quantity,
  unit: string,
  before: Measurement | undefined,
): Measurement {
  const { chunks } = frame;
  const { of, start, after } = measuredBy(talk, frame, at, k, q, unit, before);
  const wanted =
    frame.predicate === 'owed' ||
    frame.predicate === 'imperative' ||
    WANTED.test(talk.text.slice(frame.start, frame.end).toLowerCase());
  const from = Math.min(start ?? q.start, q.takenBackFrom ?? q.start);
  const last = after.length && after[0]!.start >= q.end ? chunks[k + after.length]! : chunks[k]!;
  return {
    ...base(
      talk,
      frame,
      `measurement/${wanted ? 'wanted' : 'found'}`,
      { start: from, end: Math.max(q.end, last.end) },
      q.unitFrom === 'none' ? 0.6 : 0.85,
    ),
    kind: 'measurement',
    of,
    value: q.value.valueOf(),
    exact: q.value.toFraction(),
    unit,
    role: wanted ? 'wanted' : 'found',
    ...(q.bound && { bound: q.bound }),
    ...(q.tolerance && { tolerance: q.tolerance }),
    ...(q.doubt && { ask: q.doubt }),
  };
}
