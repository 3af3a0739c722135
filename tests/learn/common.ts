/** What the learners share. */

/** Numbers the features that stand in at least so many rows. A row that names one twice counts twice. */
export function numbered(rows: Iterable<Iterable<string>>, seenAtLeast: number): Map<string, number> {
  const count = new Map<string, number>();
  for (const row of rows) for (const name of row) count.set(name, (count.get(name) ?? 0) + 1);
  const ids = new Map<string, number>();
  for (const [name, n] of count) if (n >= seenAtLeast) ids.set(name, ids.size);
  return ids;
}

/** Likelihoods that sum to 1, from scores that are logarithms. */
export function softmax(scores: readonly number[]): number[] {
  const top = Math.max(...scores);
  const raised = scores.map((s) => Math.exp(s - top));
  const sum = raised.reduce((a, b) => a + b, 0);
  return raised.map((r) => r / sum);
}

const CHANCES = 2147483648;

/** Repeatable chance, a whole number under 2 to the 31st, so that the same notes give the same table. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1103515245 + 12345) % CHANCES;
    return state;
  };
}

/** The same, 0 to 1. */
export function dice(seed: number): () => number {
  const next = chance(seed);
  return () => next() / CHANCES;
}

/** A pull for each of `size` ids, so that each is pulled alike in a round, however often the rows name it (an L2 prior). */
export function pullsOf(rows: Iterable<Iterable<number>>, size: number, pull: number): Float64Array {
  const met = new Float64Array(size);
  for (const row of rows) for (const id of row) met[id]!++;
  return met.map((count) => pull / Math.max(1, count));
}

export const shuffled = <T>(list: readonly T[], random: () => number): T[] =>
  list
    .map((item) => ({ item, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
