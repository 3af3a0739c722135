import type { Clause, Reading, WordClassOf } from '../types.ts';
import { setAreas } from './areas.ts';
import { chunksOf } from './chunks.ts';
import { framesOf } from './frames.ts';
import { peopleNamed } from './peopleNamed.ts';
import type { Talk } from './talk.ts';

/** Divides a note into clauses and lays their grammar open, each with the area in force. */
export function talkOf(
  text: string,
  reading: Omit<Reading, 'clauses'>,
  areas: readonly string[],
  wordClass?: WordClassOf,
): Talk {
  return divided({ text, reading, areas, chunks: peopleNamed(chunksOf(reading, wordClass), text) });
}

/** The same talk with clauses ended at these places as well (offsets into the text). */
export const cutAt = (talk: Talk, places: ReadonlySet<number>): Talk => divided(talk, places);

function divided(talk: Omit<Talk, 'frames'>, places?: ReadonlySet<number>): Talk {
  const frames = framesOf(talk.chunks, places);
  setAreas(frames, talk.text, talk.areas);
  return { ...talk, frames };
}

/** The same division as plain spans. */
export const clausesIn = (talk: Talk): Clause[] =>
  talk.frames.map(({ start, end, from, until, area }) => ({ start, end, from, until, area }));
