import type { Span } from '../../types.ts';
import { cutAt } from '../clauses.ts';
import { firstFrom, type Talk } from '../talk.ts';

/** The talk with a clause ended wherever a span begins and ends, so that each is read by itself. */
export const cutAround = (talk: Talk, spans: readonly Span[]): Talk =>
  cutAt(talk, new Set(spans.flatMap(({ start, end }) => [start, after(talk, end)])));

/** Where the chunk after an end begins. */
const after = (talk: Talk, end: number) => talk.chunks[firstFrom(talk.chunks, end)]?.start ?? talk.text.length;

/** How much of the shorter of two spans lies in the other. */
export const shared = (a: Span, b: Span): number =>
  Math.max(0, Math.min(a.end, b.end) - Math.max(a.start, b.start)) /
  Math.max(1, Math.min(a.end - a.start, b.end - b.start));
