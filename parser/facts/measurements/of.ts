import type { Measurement, Quantity } from '../../types.ts';
import type { Chunk } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { namedAt } from '../naming/rank.ts';
import { nounPhraseFrom, type Talk } from '../talk.ts';
import { kindOfMeasure } from './kinds.ts';

/** What a figure is the measure of. */
export interface Measured {
  /** The thing, with what of it: `opening width`, `water temperature`. */
  of: string;
  /** Where the words for it begin, when they stand before the figure in the same clause. */
  start: number | null;
  /** Chunks behind the figure that belong to it: "wide", "of standing water". */
  after: Chunk[];
}

/** How far back, in characters, a figure goes on about what the one before it was of. */
const CARRIES = 200;

/**
 * Finds what was measured, named before the figure, behind it, or in a clause near by: the likeliest name by the
 * weights of `naming/`. The second of "96 by 41 1/4" is of what the first is.
 *
 * @param unit what the figure is read in
 * @param before the measurement before this one in the note
 */
export function measuredBy(
  talk: Talk,
  frame: Frame,
  at: number,
  k: number,
  q: Quantity,
  unit: string | null,
  before: Measurement | undefined,
): Measured {
  const { chunks } = frame;
  const after = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)).filter((c) => c.kind !== 'quantity');
  const first = q.group?.kind === 'pair' ? chunks.findIndex((c) => c.quantity?.group?.id === q.group!.id) : k;
  const carried = before && frame.start - before.end < CARRIES ? before.of.split(' ') : [];
  const named = namedAt(talk, { use: 'figure', at, k: first, carried });
  const of = named?.words ?? frame.area ?? 'measurement';
  const name = named?.name;
  const kind = kindOfMeasure(frame, k, unit);
  const own = [name?.part, name?.whole].filter((c) => c?.at === at && c.until <= first);
  return {
    of: kind && !(kind === 'moisture' ? KNOWN_SHARE.test(of) : of.includes(kind)) ? `${of} ${kind}` : of,
    start: own.length ? Math.min(...own.map((c) => c!.chunks[0]!.start)) : null,
    after,
  };
}

/** What a percentage is of where it is not moisture. */
const KNOWN_SHARE = /\b(?:humidity|moisture|waste|slope|charge|relative|offset)\b/;
