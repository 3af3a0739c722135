/** Weights by the name of a feature. A feature that is not there weighs nothing. */
export type Weights = ReadonlyMap<string, number>;

/** The sum of the weights of what was seen, on top of a lean. */
export function dot(weights: Weights, features: readonly string[], lean = 0): number {
  let sum = lean;
  for (const feature of features) sum += weights.get(feature) ?? 0;
  return sum;
}

/** Reads a table of weights: a line a feature, then hundredths for each of `kinds`, empty for none. */
export function columns<K extends string>(table: string, kinds: readonly K[]): Record<K, Map<string, number>> {
  const out = Object.fromEntries(kinds.map((kind) => [kind, new Map<string, number>()])) as Record<
    K,
    Map<string, number>
  >;
  for (const line of table.split('\n')) {
    const [name, ...cells] = line.split('\t');
    kinds.forEach((kind, k) => {
      if (cells[k]) out[kind].set(name!, Number(cells[k]) / 100);
    });
  }
  return out;
}
