import { columns, type Weights } from '../../../weights.ts';
import { FATES, type FateWeights } from '../fates.ts';
import { FATE } from './fates.ts';
import { NAMING } from './naming.ts';

/** What the reading of goods is decided by; another table can be tried in its place. */
export interface GoodsWeights {
  naming: Weights;
  fates: FateWeights;
}

let known: GoodsWeights | undefined;

/** The weights by which goods are read, learned from annotated notes by `tests/learn/goods.ts`; laid out when first asked for. */
export const shipped = (): GoodsWeights => {
  known ??= { naming: columns(NAMING, ['naming']).naming, fates: columns(FATE, FATES) };
  return known;
};
