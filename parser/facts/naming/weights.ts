import type { Place } from './features.ts';
import { FIGURE, POINTER } from './table.ts';

/** What each sign weighs, for either use. */
export const WEIGHTS: Readonly<Record<Place['use'], ReadonlyMap<string, number>>> = {
  figure: read(FIGURE),
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
