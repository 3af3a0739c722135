import { sameArea, wordsOf } from '../../parser/trade/likeness.ts';
import type { Measurement } from '../../parser/types.ts';
import type { Entry, Measured } from './types.ts';

/** A reading, and the one that it took the place of: never changed, so that a long history is not copied with each. */
interface Reading extends Omit<Measured, 'earlier'> {
  before: Reading | null;
}

/** What was measured, latest of each, filed under its words. */
export type Measurements = Map<string, Reading[]>;

const filed = new WeakMap<ReadonlySet<string>, string>();

/** The same thing measured, in whatever order its words were said. */
function fileOf(thing: string): string {
  const words = wordsOf(thing);
  const known = filed.get(words) ?? [...words].sort().join(' ');
  filed.set(words, known);
  return known;
}

/** The latest reading of a thing stands; the earlier ones go with it. Two readings in one note are two sides of it. */
export function measure(kept: Measurements, entry: Entry, fact: Measurement, key: string, noteId: string): void {
  const now: Reading = {
    key,
    of: fact.of,
    area: fact.area,
    value: fact.value,
    exact: fact.exact,
    unit: fact.unit,
    role: fact.role,
    on: entry.at.slice(0, 10),
    noteId,
    before: null,
  };
  const file = `${fileOf(fact.of)} ${fact.role} ${fact.unit}`;
  const known = kept.get(file) ?? [];
  const before = known.findLast((m) => m.noteId !== noteId && sameArea(m.area, fact.area));
  if (before) {
    now.before = before.value === now.value ? before.before : before;
    now.area ??= before.area;
    known.splice(known.indexOf(before), 1);
  }
  known.push(now);
  kept.set(file, known);
}

/** Every measurement that stands, with its earlier readings, by day. */
export const measuredIn = (kept: Measurements): Measured[] =>
  [...kept.values()]
    .flat()
    .map(({ before, ...now }) => ({ ...now, earlier: earlierOf(before) }))
    .sort((x, y) => (x.on < y.on ? -1 : x.on > y.on ? 1 : x.key < y.key ? -1 : 1));

/** Oldest first. */
function earlierOf(last: Reading | null): Measured['earlier'] {
  const out: Measured['earlier'] = [];
  for (let reading = last; reading; reading = reading.before) {
    const { value, exact, unit, on } = reading;
    out.push({ value, exact, unit, on });
  }
  return out.reverse();
}
