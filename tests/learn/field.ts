import { dice, numbered, pullsOf, shuffled } from './common.ts';

/**
 * A linear chain of places weighed by features (a conditional random field), learned by stepping along the gradient of
 * the log likelihood, each weight with a step of its own (AdaGrad). Only the trainer uses it; the product needs Viterbi alone.
 */
export interface Sequence {
  features: readonly (readonly string[])[];
  /** Null where any place is as good. */
  places: readonly (number | null)[];
}

export interface Field {
  ids: ReadonlyMap<string, number>;
  /** Three weights a feature, by place, then nine steps from place to place. */
  weights: Float64Array;
}

const PLACES = 3;
const NEVER = -1e9;

export function learn(
  sequences: readonly Sequence[],
  { rounds = 6, pull = 2, rate = 0.1, start = 2, seenAtLeast = 10 } = {},
): Field {
  const ids = numbered(
    sequences.flatMap(({ features }) => features),
    seenAtLeast,
  );
  const steps = ids.size * PLACES;
  const weights = new Float64Array(steps + PLACES * PLACES);
  // First steps are small: from 0.01 on, names met a few times were learned by heart (F1 left out 0.774, with this 0.779).
  const squares = new Float64Array(weights.length).fill(start);
  const move = (i: number, gradient: number) => {
    squares[i]! += gradient * gradient;
    weights[i]! += (rate / Math.sqrt(squares[i]!)) * gradient;
  };
  const data = sequences.map(({ features, places }) => ({
    names: features.map((f) => f.flatMap((name) => ids.get(name) ?? [])),
    places,
  }));
  const pulls = pullsOf(
    data.flatMap(({ names }) => names),
    ids.size,
    pull,
  );
  const random = dice(7);
  // The mean of the later rounds: a single end point leans towards the notes that came last.
  const sum = new Float64Array(weights.length);
  for (let round = 0; round < rounds; round++) {
    for (const { names, places } of shuffled(data, random)) {
      if (!names.length) continue;
      const own = scores(names, weights);
      const given = likelihoods(own, weights, steps);
      const truly = likelihoods(held(own, places), weights, steps);
      for (let t = 0; t < names.length; t++)
        for (let a = 0; a < PLACES; a++) {
          const d = truly.single[t * PLACES + a]! - given.single[t * PLACES + a]!;
          if (Math.abs(d) > 1e-4)
            for (const id of names[t]!) move(id * PLACES + a, d - pulls[id]! * weights[id * PLACES + a]!);
        }
      for (let ab = 0; ab < PLACES * PLACES; ab++) move(steps + ab, truly.double[ab]! - given.double[ab]!);
    }
    if (round >= Math.floor(rounds / 2)) for (let i = 0; i < sum.length; i++) sum[i]! += weights[i]!;
  }
  return { ids, weights: sum.map((w) => w / Math.ceil(rounds / 2)) };
}

/** What the features of each chunk say for each place there. */
function scores(names: readonly (readonly number[])[], weights: Float64Array): Float64Array {
  const own = new Float64Array(names.length * PLACES);
  names.forEach((ids, t) => {
    for (const id of ids) for (let a = 0; a < PLACES; a++) own[t * PLACES + a]! += weights[id * PLACES + a]!;
  });
  return own;
}

/** The same, with every place ruled out that is not the true one. */
const held = (own: Float64Array, places: readonly (number | null)[]): Float64Array =>
  own.map((score, i) => {
    const place = places[Math.floor(i / PLACES)];
    return place === null || place === i % PLACES ? score : NEVER;
  });

/** How likely each place is at each chunk, and how often each step between two is to be expected (forwards and backwards). */
function likelihoods(own: Float64Array, weights: Float64Array, steps: number) {
  const T = own.length / PLACES;
  const step = (a: number, b: number) => (a === 0 && b === 2 ? NEVER : weights[steps + a * PLACES + b]!);
  const ahead = new Float64Array(T * PLACES);
  const back = new Float64Array(T * PLACES);
  const sum = [0, 0, 0];
  for (let a = 0; a < PLACES; a++) ahead[a] = own[a]! + (a === 2 ? NEVER : 0);
  for (let t = 1; t < T; t++)
    for (let b = 0; b < PLACES; b++) {
      for (let a = 0; a < PLACES; a++) sum[a] = ahead[(t - 1) * PLACES + a]! + step(a, b);
      ahead[t * PLACES + b] = logSum(sum) + own[t * PLACES + b]!;
    }
  for (let t = T - 2; t >= 0; t--)
    for (let a = 0; a < PLACES; a++) {
      for (let b = 0; b < PLACES; b++) sum[b] = step(a, b) + own[(t + 1) * PLACES + b]! + back[(t + 1) * PLACES + b]!;
      back[t * PLACES + a] = logSum(sum);
    }
  const all = logSum([...ahead.slice((T - 1) * PLACES)]);
  const single = new Float64Array(T * PLACES);
  const double = new Float64Array(PLACES * PLACES);
  for (let i = 0; i < single.length; i++) single[i] = Math.exp(ahead[i]! + back[i]! - all);
  for (let t = 1; t < T; t++)
    for (let a = 0; a < PLACES; a++)
      for (let b = 0; b < PLACES; b++)
        double[a * PLACES + b]! += Math.exp(
          ahead[(t - 1) * PLACES + a]! + step(a, b) + own[t * PLACES + b]! + back[t * PLACES + b]! - all,
        );
  return { single, double };
}

function logSum(values: readonly number[]): number {
  const top = Math.max(...values);
  return top + Math.log(values.reduce((s, v) => s + Math.exp(v - top), 0));
}
