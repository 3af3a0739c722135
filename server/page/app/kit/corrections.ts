import type { Fact } from '../../../../parser/types.ts';
import type { Correction, Parcel } from './phoneStore.ts';

type Waiting = Extract<Parcel, { kind: 'note' }>;

/** What tells facts of the same words apart: "two boxes of screws and nails". */
const namesIn = (fact: Fact): ReadonlySet<unknown> => new Set(Object.values(fact).filter((v) => typeof v === 'string'));

/** How much two readings of the same words are one fact: 0 where they are not. */
function likeness(a: Fact, b: Fact): number {
  const shared = Math.min(a.end, b.end) - Math.max(a.start, b.start);
  if (shared <= 0) return 0;
  const same = JSON.stringify(a) === JSON.stringify(b) ? 1000 : a.kind === b.kind ? 100 : 0;
  const alike = [...namesIn(a)].filter((name) => namesIn(b).has(name)).length;
  return same + alike + shared / (Math.max(a.end, b.end) - Math.min(a.start, b.start));
}

/** The place at which another reading of the same words has a fact; -1 where nothing was read there. */
function placeOf(was: Fact, facts: readonly Fact[]): number {
  const likenesses = facts.map((fact) => likeness(was, fact));
  const most = Math.max(0, ...likenesses);
  return most ? likenesses.indexOf(most) : -1;
}

/** A reading with what a hand put right in it. */
export function corrected(facts: readonly Fact[], corrections: readonly Correction[] = []): (Fact | null)[] {
  const out: (Fact | null)[] = [...facts];
  for (const { was, fact } of corrections) {
    const index = placeOf(was, facts);
    if (index >= 0) out[index] = fact;
  }
  return out;
}

/** What follows a note once the server has read it, which may be otherwise: each correction goes to the fact that it is of. */
export const following = ({ id: noteId, jobId, note, corrections = [] }: Waiting, facts: readonly Fact[]): Parcel[] =>
  corrections.flatMap(({ id, at, was, fact }): Parcel[] => {
    const index = placeOf(was, facts);
    if (index < 0) return [];
    const what = { kind: 'correctFact', noteId, index, fact } as const;
    return [{ id, jobId, kind: 'entry', entry: { at, by: note.by ?? null, what }, parked: null }];
  });

/** Words of what was put right and could not follow its note, since the server read nothing there. */
export const unplaced = ({ corrections = [] }: Waiting, facts: readonly Fact[]): string[] =>
  corrections.flatMap(({ was, fact }) => (fact && placeOf(was, facts) < 0 ? was.quote : []));

/** Those that still speak of words which are there. */
export const fitting = (corrections: readonly Correction[] = [], text: string): Correction[] =>
  corrections.filter(({ was }) => text.slice(was.start, was.end) === was.quote);
