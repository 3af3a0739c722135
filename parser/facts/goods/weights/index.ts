import { columns } from '../../../weights.ts';
import { FATES } from '../fates.ts';
import type { GoodsWeights } from '../index.ts';
import { FATE } from './fates.ts';
import { NAMING } from './naming.ts';

let known: GoodsWeights | undefined;

/** The weights by which goods are read, learned from annotated notes by `tests/learn/goods.ts`; laid out when first asked for. */
export const shipped = (): GoodsWeights => {
  known ??= { naming: columns(NAMING, ['naming']).naming, fates: columns(FATE, FATES) };
  return known;
};
