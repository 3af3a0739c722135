import { numbered, pullsOf } from './common.ts';

/** An example to learn a yes or no from. */
export interface Example {
  features: readonly string[];
  yes: boolean;
}

/**
 * Weights whose sum over an example's features is over 0 for yes (logistic regression by stochastic gradient, each
 * weight with a step of its own).
 *
 * @param decay pull towards nought whenever a feature is met
 * @param pull pull towards nought that every feature is given alike in a round, however often it is met (an L2 prior)
 * @param start slope that each weight is taken to have met before the first: the more, the smaller the first steps
 * @param seenAtLeast features of fewer examples are left out
 */
export function learnYes(
  examples: readonly Example[],
  { rounds = 12, decay = 0.01, pull = 0, rate = 0.15, start = 0.1, seenAtLeast = 2 } = {},
): Map<string, number> {
  const ids = numbered(
    examples.map(({ features }) => features),
    seenAtLeast,
  );
  const rows = examples.map(({ features, yes }) => ({ known: features.flatMap((name) => ids.get(name) ?? []), yes }));
  const pulls = pullsOf(
    rows.map(({ known }) => known),
    ids.size,
    pull,
  ).map((own) => decay + own);
  const weights = new Float64Array(ids.size);
  const squares = new Float64Array(ids.size).fill(start);
  for (let round = 0; round < rounds; round++)
    for (const { known, yes } of rows) {
      const sum = known.reduce((s, id) => s + weights[id]!, 0);
      const off = (yes ? 1 : 0) - 1 / (1 + Math.exp(-sum));
      for (const id of known) {
        const gradient = off - pulls[id]! * weights[id]!;
        squares[id]! += gradient * gradient;
        weights[id]! += (rate * gradient) / Math.sqrt(squares[id]!);
      }
    }
  return new Map([...ids].map(([name, id]) => [name, weights[id]!]));
}
