import { literal } from '../literal.ts';
import { isNumberedRoom } from '../trade/numberedRooms.ts';
import type { Chunk } from './chunks.ts';
import type { Frame } from './frames.ts';

/**
 * Sets the area that is in force at each clause: the one named in it, else the one that the talk was last in.
 * A known area of the job is taken by name even where the vocabulary does not hold it ("station 3").
 */
export function setAreas(frames: readonly Frame[], text: string, areas: readonly string[]): void {
  const known = areas.map((name) => ({
    name,
    words: new RegExp(`\\b${literal(name.toLowerCase()).replace(/\s+/g, '\\s+')}\\b`, 'u'),
  }));
  let inForce: string | null = null;
  for (const frame of frames) {
    const said = text.slice(frame.chunks[0]!.start, frame.end).toLowerCase();
    const meant = frame.chunks.map((c) => c.word).join(' ');
    const named =
      known
        .filter(({ words }) => words.test(said) || words.test(meant))
        .sort((a, b) => b.name.length - a.name.length)[0]?.name ?? knownAs(areaTerm(frame.chunks), areas);
    inForce = named ?? inForce;
    frame.area = inForce;
  }
}

/** The job's own name for a room: "laundry" is its `laundry room`, where only one fits. */
function knownAs(area: string | null, areas: readonly string[]): string | null {
  if (!area) return null;
  const fits = areas.filter((name) => ` ${name.toLowerCase()} `.includes(` ${area} `));
  return fits.length === 1 ? fits[0]! : area;
}

function areaTerm(chunks: readonly Chunk[]): string | null {
  const found = chunks.find((c) => c.kind === 'term' && c.term!.kind === 'area');
  if (!found) return null;
  return isNumberedRoom(found.term!) ? found.term!.name : found.word.replace(/'s$/, '');
}
