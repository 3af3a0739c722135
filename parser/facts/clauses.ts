import type { Clause, Reading, WordClassOf } from '../types.ts';
import { setAreas } from './areas.ts';
import { chunksOf } from './chunks.ts';
import { framesOf } from './frames.ts';
import type { Talk } from './talk.ts';

/** Divides a note into clauses and lays their grammar open, each with the area in force. */
export function talkOf(
  text: string,
  reading: Omit<Reading, 'clauses'>,
  areas: readonly string[],
  wordClass?: WordClassOf,
): Talk {
  const frames = framesOf(chunksOf(reading, wordClass));
  setAreas(frames, text, areas);
  return { text, reading, frames };
}

/** The same division as plain spans. */
export const clausesIn = (talk: Talk): Clause[] =>
  talk.frames.map(({ start, end, from, until, area }) => ({ start, end, from, until, area }));
