import type { Span } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import type { Frame } from '../frames.ts';
import { firstFrom, rangeIn, type Talk } from '../talk.ts';
import { REPAIRED } from './repairedTable.ts';

/**
 * What speaks for a flaw having been put right: the words it was told in, how each clause after the first says its
 * thing, what comes next, and what the rules made of it.
 *
 * @param cut the talk with clauses ended at the span
 */
export function repairFeatures(cut: Talk, span: Span, byRule: boolean): string[] {
  const words = cut.chunks
    .slice(...rangeIn(cut.chunks, span))
    .filter((c) => c.kind !== 'mark')
    .map((c) => (c.kind === 'quantity' ? '<q>' : c.word));
  const frames = cut.frames.slice(...rangeIn(cut.frames, span));
  const next = cut.frames[firstFrom(cut.frames, span.end)];
  const last = frames.at(-1);
  const names = new Set([
    'any',
    `rule=${byRule}`,
    `n=${Math.min(frames.length, 4)}`,
    `first=${frames[0]?.predicate}`,
    `last=${last?.predicate}${last?.negative ? '-' : ''}`,
    `lastl=${last?.lemma}`,
    `lastu=${last?.predicate}|${last?.use}`,
    `next=${next?.predicate}|${next?.use}`,
  ]);
  words.forEach((word, k) => {
    names.add(`w=${word}`);
    if (k) names.add(`ww=${words[k - 1]} ${word}`);
  });
  for (const frame of frames.slice(1)) for (const name of laterClause(frame)) names.add(name);
  return [...names];
}

const laterClause = (frame: Frame): string[] => [
  `p=${frame.predicate}`,
  `pu=${frame.predicate}|${frame.use}`,
  `s=${frame.subject[0]?.word ?? ''}`,
  `o=${frame.openers[0] ?? ''}`,
];

let weights: Weights | undefined;

/** Was the flaw put right, as the note tells it? */
export function isRepaired(cut: Talk, span: Span, byRule: boolean): boolean {
  weights ??= columns(REPAIRED, ['repaired']).repaired;
  return dot(weights, repairFeatures(cut, span, byRule)) > 0;
}
