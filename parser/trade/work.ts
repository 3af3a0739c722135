import type { Term, Token, Vocabulary } from '../types.ts';
import type { Phrases } from './phrases.ts';
import { verbsOf } from './vocabulary.ts';

const indexes = new WeakMap<Vocabulary, Phrases>();

/** The work named in the words of a task, each kind once: "tape and mud the patch" is `tape`, `mud` and `patch`. */
export function workIn(tokens: readonly Token[], vocabulary: Vocabulary): Term[] {
  let index = indexes.get(vocabulary);
  if (!index) {
    index = verbsOf(vocabulary.terms);
    indexes.set(vocabulary, index);
  }
  const found = new Set<Term>();
  for (let i = 0; i < tokens.length; ) {
    const work = index.longest(tokens, i);
    if (work) found.add(work.term);
    i = work?.until ?? i + 1;
  }
  return [...found];
}

/** The tools and small parts that a task calls for, most needed first. */
export function bringFor(tokens: readonly Token[], vocabulary: Vocabulary): string[] {
  return [...new Set(workIn(tokens, vocabulary).flatMap(({ bring }) => bring ?? []))];
}
