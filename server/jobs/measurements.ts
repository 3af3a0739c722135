import { sameArea, wordsOf } from '../../parser/trade/likeness.ts';
import type { Measurement } from '../../parser/types.ts';
import type { Entry, Measured } from './types.ts';

/** What was measured, latest of each, filed under its words. */
export type Measurements = Map<string, Measured[]>;

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
  const now: Measured = {
    key,
    of: fact.of,
    area: fact.area,
    value: fact.value,
    exact: fact.exact,
    unit: fact.unit,
    role: fact.role,
    on: entry.at.slice(0, 10),
    noteId,
    earlier: [],
  };
  const file = `${fileOf(fact.of)} ${fact.role} ${fact.unit}`;
  const known = kept.get(file) ?? [];
  const before = known.findLast((m) => m.noteId !== noteId && sameArea(m.area, fact.area));
  if (before) {
    const changed = before.value !== now.value;
    const { value, exact, unit, on } = before;
    now.earlier = changed ? [...before.earlier, { value, exact, unit, on }] : before.earlier;
    now.area ??= before.area;
    known.splice(known.indexOf(before), 1);
  }
  known.push(now);
  kept.set(file, known);
}
