import { FATES, type FateWeights } from '../../parser/facts/goods/fates.ts';
import { learn } from './choice.ts';
import { choicesIn, examplesIn, type Lesson } from './goodsExamples.ts';
import { classify } from './softmax.ts';

const NAMING = { epochs: 12, rate: 0.2, shrink: 0.02, atLeast: 5 };
const FATE = { epochs: 12, rate: 0.05, pull: 0.01, thin: 0.02, least: 4 };
/** Weights nearer to nought are left out of the tables. */
export const SMALL = { naming: 0.02, fates: 0.04 };
/** A miss costs as much as a false find: how much less sure than "nothing" a find may be, as a log of odds. */
const READINESS = 0.8;

/** Weights to two decimals, without the small ones. */
const pruned = (weights: ReadonlyMap<string, number>, least: number): Map<string, number> =>
  new Map([...weights].filter(([, w]) => Math.abs(w) >= least).map(([f, w]) => [f, Number(w.toFixed(2))]));

/** What tells goods, learned from notes: which name a lot has, and what became of it. */
export function learnGoods(from: readonly Lesson[]) {
  const naming = pruned(
    learn(
      from.flatMap((l) => choicesIn(l)),
      NAMING,
    ),
    SMALL.naming,
  );
  const examples = from.flatMap((l) => examplesIn(l, naming));
  const learnt = classify(examples, FATES.length, FATE).map((w) => pruned(w, SMALL.fates));
  const fates = Object.fromEntries(FATES.map((f, i) => [f, learnt[i]!])) as Record<
    keyof FateWeights,
    Map<string, number>
  >;
  fates.none.set('any', Number(((fates.none.get('any') ?? 0) - READINESS).toFixed(2)));
  return { naming, fates };
}
