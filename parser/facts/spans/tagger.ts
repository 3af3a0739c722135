import type { Weights } from './weights.ts';

/** Where a chunk may stand: outside any fact, at the begin of one, or further on in one. */
export const PLACES = ['out', 'begin', 'goOn'] as const;

/**
 * The likeliest places of all chunks together (Viterbi): each feature pulls, each step from place to place costs.
 *
 * @param witness the feature that says that a rule has read a fact of this kind from here on
 * @param trust how much is added to a begin where it does
 * @returns ranges of chunks, `from` inclusive, `until` exclusive
 */
export function rangesOf(
  features: readonly (readonly string[])[],
  { pulls, steps }: Weights,
  witness: string,
  trust: number,
): { from: number; until: number }[] {
  if (!features.length) return [];
  const step = PLACES.map((a) => PLACES.map((b) => (a === 'out' && b === 'goOn' ? -1e9 : (steps[`${a}>${b}`] ?? 0))));
  let best = [0, 0, -1e9];
  const came: number[][] = [];
  features.forEach((names, t) => {
    let [begin, goOn] = [names.includes(witness) ? trust : 0, 0];
    for (const name of names) {
      const pull = pulls.get(name);
      if (!pull) continue;
      begin += pull.begin;
      goOn += pull.goOn;
    }
    const here = [0, begin, goOn];
    if (t === 0) {
      best = [0, begin, -1e9];
      came.push([0, 0, 0]);
      return;
    }
    const from = PLACES.map((_, b) => {
      let arg = 0;
      for (let a = 1; a < PLACES.length; a++) if (best[a]! + step[a]![b]! > best[arg]! + step[arg]![b]!) arg = a;
      return arg;
    });
    came.push(from);
    best = from.map((a, b) => best[a]! + step[a]![b]! + here[b]!);
  });
  let place = best.indexOf(Math.max(...best));
  const ranges: { from: number; until: number }[] = [];
  let until = -1;
  for (let t = features.length - 1; t >= 0; t--) {
    if (place !== 0 && until < 0) until = t + 1;
    if (place === 1) {
      ranges.unshift({ from: t, until });
      until = -1;
    }
    place = came[t]![place]!;
  }
  return ranges;
}
