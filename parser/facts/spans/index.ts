import type { Done, Fact, FollowUp, Problem, Span } from '../../types.ts';
import { readDone } from '../done.ts';
import { isMetWith } from '../flaws/cameAcross.ts';
import { readFollowUps } from '../followUps.ts';
import { readProblems } from '../problems.ts';
import { firstFrom, type Talk } from '../talk.ts';
import { cutAround, shared } from './cut.ts';
import { featuresOf, KINDS, type SpanKind } from './features.ts';
import { proposalsIn } from './likely.ts';
import { nameIn } from './names.ts';
import { doneIn, followUpIn, problemIn } from './plainly.ts';
import { leftOut } from './plainOrders.ts';
import { isRepaired } from './repaired.ts';
import { shipped } from './weights.ts';
import { held } from './whole.ts';

/** A note of so few clauses has nothing to weigh: what the rules read in it stands. */
const PLAIN = 3;

interface ByRule {
  goods: readonly Fact[];
  measurements: readonly Fact[];
  problems: readonly Problem[];
  done: readonly Done[];
  followUps: readonly FollowUp[];
}

/**
 * Problems, plans and finished work. Weights learned from annotated notes tell from each chunk, and from what the rules
 * read there, where each kind may stand (`table.ts`); others weigh each such span as a whole (`wholeTable.ts`). The rules
 * then read each place again, cut out of its run-on surroundings, and weights choose its name (`names.ts`).
 */
export function weighed(talk: Talk, byRule: ByRule): Fact[] {
  if (talk.frames.length <= PLAIN) return [...byRule.problems, ...byRule.done, ...byRule.followUps];
  const spans = spansOf(talk, [
    ...byRule.goods,
    ...byRule.measurements,
    ...byRule.problems,
    ...byRule.done,
    ...byRule.followUps,
  ]);
  const problems = named(
    fitted(talk, spans.problem, readProblems, problemIn),
    (fact, name) => ({ ...fact, thing: name }),
    byRule.goods,
  ).map(
    ({ fact, cut, reach }): Problem => ({
      ...fact,
      state: fixedBy(cut, fact, reach) ? 'fixed' : 'open',
    }),
  );
  const done = named(
    fitted(talk, spans.done, (cut) => readDone(cut, problems), doneIn),
    (fact, name) => ({ ...fact, task: name }),
    [...byRule.goods, ...problems],
  ).map(({ fact }) => fact);
  const followUps = named(
    fitted(talk, spans.followUp, (cut) => readFollowUps(cut, done, problems), followUpIn),
    (fact, name) => ({ ...fact, task: name }),
    [...byRule.goods, ...problems, ...done],
  ).map(({ fact }) => fact);
  const taken = [...problems, ...done, ...followUps];
  return [...taken, ...leftOut(talk, byRule.followUps, [...taken, ...byRule.goods])];
}

/** What was only met with ("found an old splice") is put right where a rule finds its repair, and never by likeness alone. */
function fixedBy(cut: Talk, { start, state }: Problem, reach: number): boolean {
  const first = cut.frames[firstFrom(cut.frames, start)];
  if (first && isMetWith(first) && state === 'open') return false;
  return isRepaired(cut, { start, end: reach }, state === 'fixed');
}

/** Where a fact stands, and how sure that is. */
interface Place extends Span {
  confidence: number;
}

function spansOf(talk: Talk, byRule: readonly Fact[]): Record<SpanKind, Place[]> {
  const chosen = held(talk, byRule, proposalsIn(featuresOf(talk, byRule), shipped()));
  return Object.fromEntries(
    KINDS.map((kind) => [
      kind,
      chosen
        .filter((one) => one.kind === kind)
        .map(({ from, until, confidence }) => ({
          start: talk.chunks[from]!.start,
          end: talk.chunks[until - 1]!.end,
          confidence,
        })),
    ]),
  ) as Record<SpanKind, Place[]>;
}

interface Fitted<F extends Fact> {
  fact: F;
  /** The talk as it was cut. */
  cut: Talk;
  /** How far a rule read on (to a repair told later). */
  reach: number;
}

/** Each with its likeliest name; one that nothing names is left out. */
const named = <F extends Problem | Done | FollowUp>(
  list: readonly Fitted<F>[],
  withName: (fact: F, name: string) => F,
  others: readonly Fact[],
): Fitted<F>[] =>
  list.flatMap((one) => {
    const { fact, cut } = one;
    const ruled = { name: fact.kind === 'problem' ? fact.thing : fact.task, rule: fact.rule };
    const name = nameIn(cut, fact, fact.kind, ruled, others);
    return name ? [{ ...one, fact: withName(fact, name) }] : [];
  });

/**
 * One fact a span: what the rules read there once it is cut out, else what its words say plainly.
 */
function fitted<F extends Fact>(
  talk: Talk,
  spans: readonly Place[],
  read: (cut: Talk) => F[],
  plainly: (cut: Talk, at: number, span: Span) => F | null,
): Fitted<F>[] {
  if (!spans.length) return [];
  const cut = cutAround(talk, spans);
  const told = read(cut);
  return spans.flatMap((span) => {
    const own = told.filter((fact) => shared(fact, span) >= 0.5).sort((a, b) => shared(b, span) - shared(a, span))[0];
    if (own) {
      told.splice(told.indexOf(own), 1);
      const fact = { ...own, ...span, quote: talk.text.slice(span.start, span.end) };
      return [{ fact, cut, reach: Math.max(own.end, span.end) }];
    }
    const at = cut.frames.findIndex((f) => f.end > span.start);
    const made = at < 0 ? null : plainly(cut, at, span);
    return made ? [{ fact: { ...made, confidence: span.confidence }, cut, reach: span.end }] : [];
  });
}
