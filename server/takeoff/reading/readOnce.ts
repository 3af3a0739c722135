import type { Said } from './said.ts';

/** The same note reads the same, however often the history is folded. For what its words alone tell, not where it was said. */
export function readOnce<T>(read: (said: Said) => T): (said: Said) => T {
  const known = new WeakMap<Said['figures'], { reading: T }>();
  return (said) => {
    const kept = known.get(said.figures) ?? { reading: read(said) };
    known.set(said.figures, kept);
    return kept.reading;
  };
}
