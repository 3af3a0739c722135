import type { Fact } from '../../parser/types.ts';
import { correctionsIn, noteOf, standing } from './history.ts';
import type { Entry } from './types.ts';

/**
 * Facts that stand otherwise than as they were first read, by note and place: read anew, or put right by a hand, whose
 * word is the last. Null where there is no fact any more.
 */
export function factsOtherwise(entries: readonly Entry[]): Map<string, Map<number, Fact | null>> {
  const out = new Map<string, Map<number, Fact | null>>();
  const history = standing(entries, '9999');
  const first = new Map<string, number>();
  for (const entry of entries)
    if (entry.what.kind === 'noteRead' && !entry.what.places) first.set(noteOf(entry), entry.what.facts.length);
  for (const entry of history) {
    if (entry.what.kind !== 'noteRead' || !entry.what.places) continue;
    const { facts, places } = entry.what;
    const lost = Array.from({ length: first.get(noteOf(entry)) ?? 0 }, (_, k): [number, null] => [k, null]);
    out.set(noteOf(entry), new Map([...lost, ...facts.map((fact, k): [number, Fact] => [places[k] ?? k, fact])]));
  }
  for (const [noteId, put] of correctionsIn(history))
    out.set(noteId, new Map<number, Fact | null>([...(out.get(noteId) ?? []), ...put]));
  return out;
}
