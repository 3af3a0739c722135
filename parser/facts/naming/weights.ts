import type { Place } from './features.ts';
import { FIGURE, FLAW, POINTER } from './table.ts';

/**
 * What each sign weighs, for each use: learned by `tests/learn/naming.ts` from annotated notes, the worth of a name being
 * how many of the wanted words it holds and how few others. Learned from all but two hands' notes, of the figures that
 * were found in those two 87 % and 78 % had a right name, where rules had 73 % and 71 %.
 */
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
