import { shared } from '../../parser/facts/spans/cut.ts';
import { KINDS, type SpanKind } from '../../parser/facts/spans/features.ts';
import { type Proposal, proposalsIn } from '../../parser/facts/spans/likely.ts';
import type { Weights } from '../../parser/facts/spans/weights.ts';
import { wholeSigns } from '../../parser/facts/spans/whole.ts';
import type { Span } from '../../parser/types.ts';
import type { Answer, Lesson } from './corpus.ts';
import { type Example, learnYes } from './logistic.ts';

/** Added to every sum, found by trying on folds: a span told in vain costs a little less than one left out. */
const LEAN = 0.2;
/** The sign that every span has. */
const EVERYWHERE = 'any';

/** A span that may tell of a fact; `yes` where it does, null where a careful reader may leave it out. */
export interface Whole extends Proposal {
  signs: readonly string[];
  yes: boolean | null;
  start: number;
  end: number;
}

/** The proposals in a note, by weights of chunks that were learned without it. */
export function wholesOf(lesson: Lesson, weights: Record<SpanKind, Weights>): Whole[] {
  const { talk, byRule, tuned, features, answers } = lesson;
  const proposals = proposalsIn(features, weights).map((p) => ({
    ...p,
    start: talk.chunks[p.from]!.start,
    end: talk.chunks[p.until - 1]!.end,
  }));
  const signs = wholeSigns(talk, byRule, proposals);
  const met = new Map(
    KINDS.flatMap((kind) =>
      pairs(
        answers[kind],
        proposals.filter((p) => p.kind === kind),
      ),
    ),
  );
  return proposals.map((p, i) => {
    const answer = met.get(p);
    return {
      ...p,
      // Where rules were fitted to a note, their word is kept apart, so that no weight learns to trust them too far.
      signs: tuned ? signs[i]!.map((name) => (name.startsWith('r') ? `fitted ${name}` : name)) : signs[i]!,
      yes: answer ? (answer.optional ? null : true) : false,
    };
  });
}

/** For each kind, weights whose sum is over 0 for a span that tells of such a fact. */
export const weighWholes = (wholes: readonly Whole[]): Map<string, number>[] =>
  KINDS.map((kind) => {
    const examples: Example[] = wholes.flatMap(({ kind: own, signs, yes }) =>
      own === kind && yes !== null ? [{ features: signs, yes }] : [],
    );
    const weights = learnYes(examples, { rounds: 20, decay: 0, pull: 40, rate: 0.1, start: 2, seenAtLeast: 5 });
    weights.set(EVERYWHERE, weights.get(EVERYWHERE)! + LEAN);
    return new Map([...weights].filter(([name]) => !name.startsWith('fitted ')));
  });

/** A span given for an answer may be somewhat longer, not far. */
const tooLong = (given: Span, answer: Span) => given.end - given.start > 2.5 * (answer.end - answer.start) + 25;

/** Spans given, each with the answer that it meets: the nearest first, and each answer once. */
export function pairs<G extends Span>(answers: readonly Answer[], given: readonly G[]): [G, Answer][] {
  const near = given
    .flatMap((g) => answers.map((a) => ({ g, a, both: tooLong(g, a) ? 0 : shared(g, a) })))
    .filter(({ both }) => both > 0.3)
    .sort((x, y) => y.both - x.both);
  const met = new Map<G, Answer>();
  const taken = new Set<Answer>();
  for (const { g, a } of near) {
    if (met.has(g) || taken.has(a)) continue;
    met.set(g, a);
    taken.add(a);
  }
  return [...met];
}
