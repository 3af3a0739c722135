import type { Term, Vocabulary } from '../types.ts';
import { Phrases } from './phrases.ts';

export { singular } from './words.ts';

/**
 * Builds a vocabulary. Verbs of the trade (kind `task`) are known words but no mentions: their forms are read with
 * their clause (`facts/verbs.ts`), and what they call for by `bringFor`.
 */
export function vocabularyOf(terms: readonly Term[]): Vocabulary {
  const things = new Phrases(terms.filter(({ kind }) => kind !== 'task'));
  let verbs: Phrases | undefined;
  return {
    terms,
    has: (word) => {
      verbs ??= verbsOf(terms);
      return things.has(word) || verbs.has(word);
    },
    match: (tokens, index) => things.longest(tokens, index),
  };
}

export const verbsOf = (terms: readonly Term[]): Phrases => new Phrases(terms.filter(({ kind }) => kind === 'task'));
