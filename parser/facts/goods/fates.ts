import { dot, type Weights } from '../../weights.ts';

/** What becomes of a lot: one of the statuses that are told, or nothing of goods. */
export const FATES = ['none', 'need', 'have', 'used', 'bought', 'returned'] as const;
export type Fate = (typeof FATES)[number];

/** Weights of each fate. */
export type FateWeights = Readonly<Record<Fate, Weights>>;

/** How likely each fate is, by the weights of what was seen; they sum to 1. */
export function likelihoods(weights: FateWeights, features: readonly string[]): Record<Fate, number> {
  const scores = FATES.map((fate) => dot(weights[fate], features));
  const top = Math.max(...scores);
  const powers = scores.map((s) => Math.exp(s - top));
  const sum = powers.reduce((a, b) => a + b, 0);
  return Object.fromEntries(FATES.map((fate, i) => [fate, powers[i]! / sum])) as Record<Fate, number>;
}

/** The likeliest fate; nothing where that is likelier than `doubt`. */
export const decided = (chances: Record<Fate, number>, doubt: number): Fate =>
  chances.none >= doubt
    ? 'none'
    : FATES.reduce<Fate>(
        (best, f) => (f !== 'none' && (best === 'none' || chances[f] > chances[best]) ? f : best),
        'none',
      );
