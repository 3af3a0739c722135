import { numbered } from './common.ts';

/** An example to learn a yes or no from. */
export interface Example {
  features: readonly string[];
  yes: boolean;
}

/**
 * Weights whose sum over an example's features is over 0 for yes (logistic regression by stochastic gradient, each
 * weight with a step of its own).
 *
 * @param seenAtLeast features of fewer examples are left out
 */
export function learnYes(
  examples: readonly Example[],
  { rounds = 12, decay = 0.01, rate = 0.15, seenAtLeast = 2 } = {},
): Map<string, number> {
  const names = numbered(
    examples.map(({ features }) => features),
    seenAtLeast,
  );
  const weights = new Map([...names.keys()].map((name) => [name, 0]));
  const squares = new Map([...weights.keys()].map((name) => [name, 0.1]));
  for (let round = 0; round < rounds; round++)
    for (const { features, yes } of examples) {
      const known = features.filter((name) => weights.has(name));
      const sum = known.reduce((s, name) => s + weights.get(name)!, 0);
      const off = (yes ? 1 : 0) - 1 / (1 + Math.exp(-sum));
      for (const name of known) {
        const gradient = off - decay * weights.get(name)!;
        squares.set(name, squares.get(name)! + gradient * gradient);
        weights.set(name, weights.get(name)! + (rate * gradient) / Math.sqrt(squares.get(name)!));
      }
    }
  return weights;
}
