import type { Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { meantOf } from './meant.ts';
import { signsOf } from './signs.ts';
import { candidatesAt } from './stretches.ts';
import { ENOUGH, weightOf } from './weights.ts';

/** A stretch of words that was a name of the trade, misheard. */
export interface Misheard {
  from: number;
  until: number;
  meant: string;
  because: string;
}

/**
 * Names of the trade that were heard as other words, in their order: what sounds like a name, weighed by how likely crews
 * say either among such neighbours. None without a neighbour, or a word heard right, that supports it.
 */
export function misheardIn(tokens: readonly Token[], vocabulary: Vocabulary): Misheard[] {
  const found: Weighed[] = [];
  for (let i = 0; i < tokens.length; i++) {
    for (const candidate of candidatesAt(tokens, i, vocabulary)) {
      const meant = meantOf(candidate.way);
      const { signs, because } = signsOf(candidate, meant, tokens, vocabulary);
      if (!because) continue;
      let score = 0;
      for (const [name, value] of signs) score += value * weightOf(name);
      if (score > ENOUGH + (isOnePlain(tokens, i, candidate.until, vocabulary) ? PLAIN_MORE : 0))
        found.push({ from: i, until: candidate.until, meant, because, score, cost: candidate.cost });
    }
  }
  // "Chock line": the next word was heard right, and tells that no caulk was meant.
  for (const one of found)
    for (const other of found)
      if (one !== other && isWithin(one, other) && other.cost <= one.cost + AS_NEAR)
        other.score = Math.max(other.score, one.score + AS_NEAR);
  const taken: Misheard[] = [];
  for (const one of found.sort((a, b) => b.score - a.score))
    if (!taken.some(({ from, until }) => from < one.until && until > one.from)) taken.push(one);
  return taken.sort((a, b) => a.from - b.from);
}

/** So much more must speak for it where one plain word was heard. */
const PLAIN_MORE = 0.75;

/** One word of everyday English, or of the trade's own: it is said and meant far oftener than misheard. */
const isOnePlain = (tokens: readonly Token[], from: number, until: number, vocabulary: Vocabulary) =>
  until === from + 1 && (everyday(tokens[from]!.word) || vocabulary.has(tokens[from]!.word));

interface Weighed extends Misheard {
  score: number;
  cost: number;
}

const AS_NEAR = 0.15;
const isWithin = (one: Misheard, other: Misheard) =>
  one.from >= other.from && one.until <= other.until && one.until - one.from < other.until - other.from;
