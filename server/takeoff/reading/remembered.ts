import type { Said } from './said.ts';

/** More texts than the notes of a long job; the oldest go first. */
const MOST = 32_000;

/** The same text reads the same: a job's old notes are not read again with each new one. */
export function remembered<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    const before = known.get(text);
    if (before !== undefined) return before;
    const reading = read(text);
    if (known.size >= MOST) known.delete(known.keys().next().value!);
    known.set(text, reading);
    return reading;
  };
}

/** The same note reads the same, however often the history is folded. For what its words alone tell, not where it was said. */
export function readOnce<T>(read: (said: Said) => T): (said: Said) => T {
  const known = new WeakMap<Said['figures'], { reading: T }>();
  return (said) => {
    const kept = known.get(said.figures) ?? { reading: read(said) };
    known.set(said.figures, kept);
    return kept.reading;
  };
}
