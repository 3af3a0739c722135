import type { Place } from './features.ts';
import { FIGURE, FLAW, POINTER } from './table.ts';

/** What each sign weighs, for each use. */
export const WEIGHTS: Readonly<Record<Place['use'], ReadonlyMap<string, number>>> = {
  figure: read(FIGURE),
  flaw: read(FLAW),
  pointer: read(POINTER),
};

function read(table: string): Map<string, number> {
  return new Map(
    table.split('\n').map((line) => {
      const [sign, weight] = line.split('\t');
      return [sign!, Number(weight)];
    }),
  );
}
