import type { Chunk } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import { isNegative } from '../words.ts';
import { type Name, nameAt } from './rank.ts';

/** Words that point at a thing named elsewhere. */
export const POINTS = /^(?:it|it's|it'll|that|that's|this|them|'em|em|they|they're|those|these|one|ones|both)$/;

/** Where a clause points: at its pointing word, else where its verb lacks a name. */
export function pointerIn(talk: Talk, at: number): number {
  const { chunks, verbAt } = talk.frames[at]!;
  const k = chunks.findIndex((c) => POINTS.test(c.word));
  return k >= 0 ? k : Math.max(0, verbAt);
}

/**
 * The thing that "it" means in clause `at`, or what its verb was done to where nothing is named: the likeliest of the
 * things named before (`weights.ts`). Empty where none was named.
 *
 * @param k the chunk that points; found by itself where left out
 */
export function meantAt(talk: Talk, at: number, k: number = pointerIn(talk, at)): Chunk[] {
  const name = nameAt(talk, { use: 'pointer', at, k });
  return name ? [...(name.whole?.chunks ?? []), ...name.part.chunks] : [];
}

/** The chunk of clause `at` that tells what is amiss: a word for a flaw, else a "no" or "not", else its verb. */
export function flawIn(talk: Talk, at: number): number {
  const { chunks, verbAt } = talk.frames[at]!;
  const told = chunks.findIndex((c) => c.term?.kind === 'defect');
  const negated = told < 0 ? chunks.findIndex((c) => isNegative(c.word)) : told;
  return Math.max(0, negated < 0 ? verbAt : negated);
}

/**
 * The thing that clause `at` tells to be amiss, with what it belongs to; null where nothing near is named.
 *
 * @param told what the rule that found the flaw took for the thing, where there was one
 */
export const amissAt = (talk: Talk, at: number, told: readonly Chunk[] = []): Name | null =>
  nameAt(talk, { use: 'flaw', at, k: flawIn(talk, at), told });
