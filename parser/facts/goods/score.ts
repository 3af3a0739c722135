/** Weights by the name of a feature. A feature that is not there weighs nothing. */
export type Weights = ReadonlyMap<string, number>;

/** The sum of the weights of what was seen. */
export function dot(weights: Weights, features: readonly string[]): number {
  let sum = 0;
  for (const feature of features) sum += weights.get(feature) ?? 0;
  return sum;
}
