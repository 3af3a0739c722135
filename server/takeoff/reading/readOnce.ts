import type { Said } from './said.ts';

let readers = 0;

/** A place for what each reader makes of a note's words; undefined where it has not read them. */
export const noReadings = (): unknown[] => new Array(readers).fill(undefined);

/**
 * The same words read the same, however often the history is folded: each reader keeps its answer with them. For what
 * the words alone tell, not where or when they were said.
 */
export function readOnce<T extends NonNullable<unknown> | null>(read: (said: Said) => T): (said: Said) => T {
  const place = readers++;
  return (said) => {
    const known = said.readings[place] as T | undefined;
    if (known !== undefined) return known;
    const reading = read(said);
    said.readings[place] = reading;
    return reading;
  };
}
