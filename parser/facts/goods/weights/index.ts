import { FATES, type FateWeights } from '../fates.ts';
import type { Weights } from '../score.ts';
import { FATE } from './fates.ts';
import { NAMING } from './naming.ts';

/**
 * The weights by which goods are read, learnt from annotated notes by `tests/learn/goods.ts` and kept as text: one line
 * for each thing that may be seen. Which word stands where is plain to read there, and so is what it counts for.
 */
const rows = (table: string): string[][] =>
  table
    .trim()
    .split('\n')
    .map((line) => line.split('\t'));

export const NAMING_WEIGHTS: Weights = new Map(rows(NAMING).map(([weight, feature]) => [feature!, Number(weight)]));

export const FATE_WEIGHTS: FateWeights = (() => {
  const out = Object.fromEntries(FATES.map((f) => [f, new Map<string, number>()])) as Record<
    (typeof FATES)[number],
    Map<string, number>
  >;
  for (const [weights, feature] of rows(FATE))
    weights!.split(',').forEach((w, i) => {
      if (w) out[FATES[i]!].set(feature!, Number(w));
    });
  return out;
})();
