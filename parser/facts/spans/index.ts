import type { Done, Fact, FollowUp, Problem, Span } from '../../types.ts';
import { readDone } from '../done.ts';
import { readFollowUps } from '../followUps.ts';
import { readProblems } from '../problems.ts';
import type { Talk } from '../talk.ts';
import { cutAround, shared } from './cut.ts';
import { featuresOf, KINDS, type SpanKind } from './features.ts';
import { nameIn } from './names.ts';
import { doneIn, followUpIn, problemIn } from './plainly.ts';
import { isRepaired } from './repaired.ts';
import { rangesOf } from './tagger.ts';
import { shipped } from './weights.ts';

/** Missing a thing costs a second trip, a false one a tap: found by trying on annotated notes. */
const LEAN = 0.2;

interface ByRule {
  goods: readonly Fact[];
  measurements: readonly Fact[];
  problems: readonly Problem[];
  done: readonly Done[];
  followUps: readonly FollowUp[];
}

/**
 * Problems, plans and finished work. The rules propose; weights learned from annotated notes decide where each kind
 * stands (`spans/table.ts`); the rules then read each place again, cut out of its run-on surroundings, and name it.
 */
export function weighed(talk: Talk, byRule: ByRule): Fact[] {
  const spans = spansOf(talk, [
    ...byRule.goods,
    ...byRule.measurements,
    ...byRule.problems,
    ...byRule.done,
    ...byRule.followUps,
  ]);
  const problems = fitted(talk, spans.problem, readProblems, problemIn).map(
    ({ fact, cut }): Problem => ({
      ...fact,
      thing: nameIn(cut, fact, 'problem', fact.thing),
      state: isRepaired(cut, fact, fact.state === 'fixed') ? 'fixed' : 'open',
    }),
  );
  const done = fitted(talk, spans.done, (cut) => readDone(cut, problems), doneIn).map(
    ({ fact, cut }): Done => ({
      ...fact,
      task: nameIn(cut, fact, 'done', fact.task),
    }),
  );
  const followUps = fitted(
    talk,
    spans.followUp,
    (cut) => readFollowUps(cut, done, problems),
    (cut, at, span) => followUpIn({ ...cut, problems, done }, at, span),
  ).map(({ fact, cut }): FollowUp => ({ ...fact, task: nameIn(cut, fact, 'followUp', fact.task) }));
  return [...problems, ...done, ...followUps];
}

function spansOf(talk: Talk, proposed: readonly Fact[]): Record<SpanKind, Span[]> {
  const features = featuresOf(talk, proposed);
  const weights = shipped();
  return Object.fromEntries(
    KINDS.map((kind) => [
      kind,
      rangesOf(features, weights[kind], LEAN).map(({ from, until }) => ({
        start: talk.chunks[from]!.start,
        end: talk.chunks[until - 1]!.end,
      })),
    ]),
  ) as Record<SpanKind, Span[]>;
}

/** One fact a span, with the talk as it was cut for it: what the rules read there once it is cut out, else what its words say plainly. */
function fitted<F extends Fact>(
  talk: Talk,
  spans: readonly Span[],
  read: (cut: Talk) => F[],
  plainly: (cut: Talk, at: number, span: Span) => F | null,
): { fact: F; cut: Talk }[] {
  if (!spans.length) return [];
  const cut = cutAround(talk, spans);
  const told = read(cut);
  return spans.flatMap((span) => {
    const own = told.filter((fact) => shared(fact, span) >= 0.5).sort((a, b) => shared(b, span) - shared(a, span))[0];
    if (own) {
      told.splice(told.indexOf(own), 1);
      return [{ fact: { ...own, ...span, quote: talk.text.slice(span.start, span.end) }, cut }];
    }
    const at = cut.frames.findIndex((f) => f.end > span.start);
    const made = at < 0 ? null : plainly(cut, at, span);
    return made ? [{ fact: made, cut }] : [];
  });
}
