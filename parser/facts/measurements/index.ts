import type { Measurement, Quantity } from '../../types.ts';
import type { Frame } from '../frames.ts';
import { base } from '../make.ts';
import type { Talk } from '../talk.ts';
import { measuredBy } from './of.ts';
import { isMeasurement } from './readings.ts';
import { unitOf } from './units.ts';

/** Sizes, gaps, levels and readings that somebody took or must hold to; `taken` are the goods' own counts and sizes. */
export function readMeasurements(talk: Talk, taken: ReadonlySet<Quantity>): Measurement[] {
  const out: Measurement[] = [];
  talk.frames.forEach((frame, at) => {
    frame.chunks.forEach((chunk, k) => {
      const q = chunk.quantity;
      if (q && !taken.has(q) && isMeasurement(frame, k, q)) out.push(measurementOf(talk, frame, at, k, q, out.at(-1)));
    });
  });
  return out;
}

const WANTED =
  /\b(?:min|minimum|max|maximum|spec|must|should|needs?|wants?|has to|supposed|till it reads|under|at least|at most)\b/;

function measurementOf(
  talk: Talk,
  frame: Frame,
  at: number,
  k: number,
  q: Quantity,
  before: Measurement | undefined,
): Measurement {
  const { chunks } = frame;
  const { of, start, after } = measuredBy(talk, frame, at, k, q, before);
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
    unit: unitOf(talk, frame, at, of, q, before),
    role: wanted ? 'wanted' : 'found',
    ...(q.bound && { bound: q.bound }),
    ...(q.tolerance && { tolerance: q.tolerance }),
    ...(q.doubt && { ask: q.doubt }),
  };
}
