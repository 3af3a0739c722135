import { columns, type Weights } from '../../weights.ts';
import type { Place } from './features.ts';
import { TABLE } from './table.ts';

/** What a name is sought for, in the order of the table. */
export const USES = ['figure', 'flaw', 'pointer'] as const satisfies readonly Place['use'][];

let known: Record<Place['use'], Weights> | undefined;

/**
 * What each sign weighs, for each use: learned by `tests/learn/naming.ts` from annotated notes, the worth of a name being
 * how many of the wanted words it holds and how few others. Learned from all but two hands' notes, of the figures that
 * were found in those two 87 % and 78 % had a right name, where rules had 73 % and 71 %.
 */
export const shipped = (): Record<Place['use'], Weights> => {
  known ??= columns(TABLE, USES);
  return known;
};
