import type { Span } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import type { Chunk } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { firstFrom, rangeIn, type Talk } from '../talk.ts';
import { OBJECT_PRONOUNS } from '../words.ts';
import { REPAIRED } from './repairedTable.ts';

/**
 * What speaks for a flaw having been put right: the words it was told in, how each clause after the first says its
 * thing, what comes next, and what the rules made of it.
 *
 * @param cut the talk with clauses ended at the span
 */
export function repairFeatures(cut: Talk, span: Span, byRule: boolean): string[] {
  const words = wordsOf(cut.chunks.slice(...rangeIn(cut.chunks, span)));
  const frames = cut.frames.slice(...rangeIn(cut.frames, span));
  const behind = firstFrom(cut.frames, span.end);
  const last = frames.at(-1);
  const names = new Set([
    'any',
    `rule=${byRule}`,
    `n=${Math.min(frames.length, 4)}`,
    `first=${frames[0]?.predicate}`,
    `last=${last?.predicate}${last?.negative ? '-' : ''}`,
    `lastl=${last?.lemma}`,
    `lastu=${last?.predicate}|${last?.use}`,
  ]);
  words.forEach((word, k) => {
    names.add(`w=${word}`);
    if (k) names.add(`ww=${words[k - 1]} ${word}`);
  });
  for (const frame of frames.slice(1)) for (const name of laterClause(frame)) names.add(name);
  for (let k = 0; k < FOLLOWED; k++)
    for (const name of nextClause(cut.frames[behind + k], last)) names.add(`${k + 1}${name}`);
  return [...names];
}

/** How many clauses behind a flaw are looked at: the repair is told there, or what is still to do. */
const FOLLOWED = 3;

const wordsOf = (chunks: readonly Chunk[]) =>
  chunks.filter((c) => c.kind !== 'mark').map((c) => (c.kind === 'quantity' ? '<q>' : c.word));

const laterClause = (frame: Frame): string[] => [
  `p=${frame.predicate}`,
  `pu=${frame.predicate}|${frame.use}`,
  `s=${frame.subject[0]?.word ?? ''}`,
  `o=${frame.openers[0] ?? ''}`,
];

function nextClause(frame: Frame | undefined, flaw: Frame | undefined): string[] {
  if (!frame) return ['none'];
  const joint = frame.sentence === flaw?.sentence ? frame.joinedBy : '.';
  const about = frame.rest.some((c) => OBJECT_PRONOUNS.has(c.word)) ? 'it' : '';
  const subject = frame.subject.length > 1 ? 'some' : (frame.subject[0]?.word ?? '');
  return [
    `next=${frame.predicate}|${frame.use}`,
    `nextl=${frame.lemma}|${frame.predicate}`,
    `nexts=${subject}|${frame.predicate}`,
    `nexta=${about}|${frame.predicate}|${subject}`,
    `nextj=${joint}|${frame.predicate}`,
    `nexto=${frame.openers[0] ?? ''}|${frame.predicate}`,
    ...wordsOf(frame.chunks).map((word) => `nextw=${word}`),
  ];
}

let weights: Weights | undefined;

/** Was the flaw put right, as the note tells it? */
export function isRepaired(cut: Talk, span: Span, byRule: boolean): boolean {
  weights ??= columns(REPAIRED, ['repaired']).repaired;
  return dot(weights, repairFeatures(cut, span, byRule)) > 0;
}
