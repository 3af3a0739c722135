import type { FactBase } from '../types.ts';
import type { Frame } from './frames.ts';
import type { Talk } from './talk.ts';

/** The part of a fact that says where it came from. */
export function base(
  talk: Talk,
  frame: Frame,
  rule: string,
  span?: { start: number; end: number },
  confidence = 0.8,
): FactBase {
  const start = span?.start ?? frame.start;
  const end = span?.end ?? frame.end;
  return { start, end, quote: talk.text.slice(start, end), area: frame.area, confidence, rule };
}
