import { dice, numbered, shuffled } from './common.ts';

/**
 * A linear chain of places weighed by features (a conditional random field), learned by stepping along the gradient of
 * the log likelihood, each weight with a step of its own (AdaGrad). Only the trainer uses it; the product needs Viterbi alone.
 */
export interface Sequence {
  features: readonly (readonly string[])[];
  places: readonly number[];
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
  { rounds = 10, decay = 0.02, rate = 0.1, seenAtLeast = 2 } = {},
): Field {
  const ids = numbered(
    sequences.flatMap(({ features }) => features),
    seenAtLeast,
  );
  const steps = ids.size * PLACES;
  const weights = new Float64Array(steps + PLACES * PLACES);
  const squares = new Float64Array(weights.length).fill(1e-2);
  const move = (i: number, gradient: number) => {
    squares[i]! += gradient * gradient;
    weights[i]! += (rate / Math.sqrt(squares[i]!)) * gradient;
  };
  const data = sequences.map(({ features, places }) => ({
    names: features.map((f) => f.flatMap((name) => ids.get(name) ?? [])),
    places,
  }));
  const random = dice(7);
  // The mean of the later rounds: a single end point leans towards the notes that came last.
  const sum = new Float64Array(weights.length);
  for (let round = 0; round < rounds; round++) {
    for (const { names, places } of shuffled(data, random)) {
      if (!names.length) continue;
      const { single, double } = likelihoods(names, weights, steps);
      for (let t = 0; t < names.length; t++)
        for (let a = 0; a < PLACES; a++) {
          const d = (places[t] === a ? 1 : 0) - single[t * PLACES + a]!;
          if (Math.abs(d) > 1e-4)
            for (const id of names[t]!) move(id * PLACES + a, d - decay * weights[id * PLACES + a]!);
        }
      for (let t = 1; t < names.length; t++)
        for (let ab = 0; ab < PLACES * PLACES; ab++) {
          const truly = places[t - 1]! * PLACES + places[t]! === ab ? 1 : 0;
          move(steps + ab, truly - double[t * PLACES * PLACES + ab]! - decay * weights[steps + ab]!);
        }
    }
    if (round >= Math.floor(rounds / 2)) for (let i = 0; i < sum.length; i++) sum[i]! += weights[i]!;
  }
  return { ids, weights: sum.map((w) => w / Math.ceil(rounds / 2)) };
}

/** How likely each place is at each chunk, and each step between two (forwards and backwards). */
function likelihoods(names: readonly (readonly number[])[], weights: Float64Array, steps: number) {
  const T = names.length;
  const step = (a: number, b: number) => (a === 0 && b === 2 ? NEVER : weights[steps + a * PLACES + b]!);
  const own = new Float64Array(T * PLACES);
  names.forEach((ids, t) => {
    for (const id of ids) for (let a = 0; a < PLACES; a++) own[t * PLACES + a]! += weights[id * PLACES + a]!;
  });
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
  const double = new Float64Array(T * PLACES * PLACES);
  for (let i = 0; i < single.length; i++) single[i] = Math.exp(ahead[i]! + back[i]! - all);
  for (let t = 1; t < T; t++)
    for (let a = 0; a < PLACES; a++)
      for (let b = 0; b < PLACES; b++)
        double[(t * PLACES + a) * PLACES + b] = Math.exp(
          ahead[(t - 1) * PLACES + a]! + step(a, b) + own[t * PLACES + b]! + back[t * PLACES + b]! - all,
        );
  return { single, double };
}

function logSum(values: readonly number[]): number {
  const top = Math.max(...values);
  return top + Math.log(values.reduce((s, v) => s + Math.exp(v - top), 0));
}
