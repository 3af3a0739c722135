import type { Span } from '../../types.ts';
import { type Chunk, isNounTerm } from '../chunks.ts';
import { phrase, rangeIn, type Talk } from '../talk.ts';
import { columns, dot, type Weights } from '../weights.ts';
import { clauseAt, clauseFeatures, KINDS, type SpanKind, sortOf, wordOf } from './features.ts';
import { NAMES } from './namesTable.ts';

/** A chunk of a span, and what speaks for its being part of the name of the thing or the work. */
export interface NamePart {
  chunk: Chunk;
  features: string[];
}

/**
 * The chunks of a span with what is known of each.
 *
 * @param byRule the name that the rules gave
 */
export function namePartsIn(cut: Talk, span: Span, byRule: string): NamePart[] {
  const { chunks, frames } = cut;
  const clauses = clausesOf(cut);
  const ruled = new Set(byRule.split(' '));
  const [from, until] = rangeIn(chunks, span);
  let nouns = 0;
  return chunks.slice(from, until).map((chunk, k) => {
    const t = from + k;
    const [before, after] = [chunks[t - 1], chunks[t + 1]];
    const sort = sortOf(chunk);
    const isRuled = chunk.word.split(' ').some((word) => ruled.has(word));
    const features = [
      'any',
      `w=${wordOf(chunk)}`,
      `c=${sort}`,
      `c-=${before ? sortOf(before) : '#'}|${sort}`,
      `c+=${sort}|${after ? sortOf(after) : '#'}`,
      `w-=${before ? wordOf(before) : '#'}`,
      `w+=${after ? wordOf(after) : '#'}`,
      `k=${Math.min(k, 8)}`,
      `n=${Math.min(nouns, 3)}|${sort}`,
      `rule=${isRuled}`,
      `rule=${isRuled}|${sort}`,
      `end=${until - t < 3}`,
      ...clauseFeatures(chunk, frames, clauses[t]!).filter((name) => !/^(?:pp|np|fn|fo|ft)/.test(name)),
    ];
    if (isNounTerm(chunk)) nouns++;
    return { chunk, features };
  });
}

const known = new WeakMap<Talk, number[]>();

/** The clause of each chunk, found once a talk. */
function clausesOf(cut: Talk): number[] {
  const clauses = known.get(cut) ?? clauseAt(cut.chunks, cut.frames);
  known.set(cut, clauses);
  return clauses;
}

/** A word too many reads badly, a word too few loses the thing: found by trying on annotated notes. */
const LEAN = 0.4;

/** Words that a line of the list holds. */
const LONGEST = 7;

let weights: Record<SpanKind, Weights> | undefined;

/**
 * The name of what a span is about: words of the span that learned weights take for its name, with what the rules named
 * besides ("it" looked up, the verb of a task).
 */
export function nameIn(cut: Talk, span: Span, kind: SpanKind, byRule: string): string {
  weights ??= columns(NAMES, KINDS);
  const own = weights[kind];
  const named = namePartsIn(cut, span, byRule)
    .filter(({ features }) => dot(own, features, LEAN) > 0)
    .map(({ chunk }) => chunk);
  const ruled = byRule.split(' ').filter(Boolean);
  const found = phrase(named).split(' ').filter(Boolean);
  // A task is led by its verb, which the rules have; a thing by what it is part of.
  const more = found.filter((word) => !ruled.includes(word)).slice(0, Math.max(0, LONGEST - ruled.length));
  return kind === 'problem' && ruled.every((word) => found.includes(word))
    ? found.join(' ')
    : [...ruled, ...more].join(' ');
}
