import { dot, type Weights } from '../../parser/weights.ts';
import { dice, numbered, pullsOf, shuffled, softmax } from './common.ts';

/** One place where a choice is to be made: the signs of every answer that is possible, and how good each is, 0 to 1. */
export interface Choice {
  /** Which note it is from, so that a note is never learned from and judged at once. */
  note: number;
  answers: readonly { signs: readonly string[]; worth: number }[];
}

export interface Settings {
  epochs: number;
  rate: number;
  /** Pull towards nought whenever a sign is met. */
  shrink: number;
  /** Pull towards nought that every sign is given alike in a round, however often it is met (an L2 prior). */
  pull?: number;
  /** Slope that each weight is taken to have met before the first: the more, the smaller the first steps. */
  start?: number;
  /** Whether the mean of the later rounds is taken: an end point leans towards the notes that came last. */
  mean?: boolean;
  /** A sign must be met in this many places. */
  atLeast: number;
}

export const SETTINGS: Settings = { epochs: 8, rate: 0.2, shrink: 0.06, atLeast: 6 };

/** Weights of the signs that make the worth to be expected highest (softmax over the answers, AdaGrad). */
export function learn(choices: readonly Choice[], settings: Settings = SETTINGS): Map<string, number> {
  const ids = numbered(
    choices.map(({ answers }) => new Set(answers.flatMap((a) => a.signs))),
    settings.atLeast,
  );
  const useful = choices
    .filter((c) => c.answers.some((a) => a.worth > 0))
    .map((c) => ({
      worth: c.answers.map((a) => a.worth),
      signs: c.answers.map((a) => Int32Array.from(a.signs.flatMap((s) => ids.get(s) ?? []))),
    }));
  const weights = new Float64Array(ids.size);
  const squares = new Float64Array(ids.size).fill(settings.start ?? 1);
  const met = useful.map(({ signs }) => new Set(signs.flatMap((own) => [...own])));
  const pulls = pullsOf(met, ids.size, settings.pull ?? 0).map((pull) => settings.shrink + pull);
  const taken = settings.mean ? Math.ceil(settings.epochs / 2) : 1;
  const sum = new Float64Array(ids.size);
  const slope = new Float64Array(ids.size);
  const random = dice(1);
  for (let epoch = 0; epoch < settings.epochs; epoch++) {
    for (const { worth, signs } of shuffled(useful, random)) {
      const odds = softmax(signs.map((own) => own.reduce((sum, id) => sum + weights[id]!, 0)));
      const expected = odds.reduce((sum, p, i) => sum + p * worth[i]!, 1e-9);
      const touched = new Set<number>();
      signs.forEach((own, i) => {
        const pull = odds[i]! * (1 - worth[i]! / expected);
        if (Math.abs(pull) < 1e-5) return;
        for (const id of own) {
          slope[id]! += pull;
          touched.add(id);
        }
      });
      for (const id of touched) {
        const down = slope[id]! + pulls[id]! * weights[id]!;
        squares[id]! += down * down;
        weights[id]! -= (settings.rate * down) / Math.sqrt(squares[id]!);
        slope[id] = 0;
      }
    }
    if (epoch >= settings.epochs - taken) for (let id = 0; id < sum.length; id++) sum[id]! += weights[id]!;
  }
  return new Map([...ids].map(([sign, id]) => [sign, sum[id]! / taken]));
}

/** The answer with the highest weight, or -1 where there is none. */
export function choose(choice: Choice, weights: Weights): number {
  let best = -1;
  let most = Number.NEGATIVE_INFINITY;
  choice.answers.forEach(({ signs }, i) => {
    const weight = dot(weights, signs);
    if (weight > most) [best, most] = [i, weight];
  });
  return best;
}
