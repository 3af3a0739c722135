import type { Done, FollowUp, Problem, Span } from '../../types.ts';
import { isCopula } from '../chunks.ts';
import { roleIn } from '../done.ts';
import { fixIn } from '../flaws/fixed.ts';
import type { Frame } from '../frames.ts';
import { isGot } from '../goods/onHand.ts';
import { base } from '../make.ts';
import { conditionOf, waitBefore, waitText } from '../plans/dates.ts';
import { isWaitOnly } from '../plans/owed.ts';
import { isQuestion } from '../plans/questions.ts';
import { isDenied } from '../plans/standing.ts';
import { personIn } from '../plans/told.ts';
import { isPerson, phrase, rangeIn, type Talk } from '../talk.ts';
import { IN_PLACE } from '../words.ts';

// What a span says where no rule knows its words. Its name is for `names.ts` to find.

/** A flaw: all that is said behind its subject for what is wrong. */
export function problemIn(talk: Talk, at: number, span: Span): Problem {
  const frame = talk.frames[at]!;
  return {
    ...base(talk, frame, 'problem/weighed', span, 0.6),
    kind: 'problem',
    thing: '',
    defect: phrase(frame.subject.length ? frame.rest : frame.chunks) || phrase(frame.chunks),
    state: fixIn(talk, frame, at, () => false) ? 'fixed' : 'open',
    suspected: false,
  };
}

/** Finished work; a bare name with its size tells of none. */
export function doneIn(talk: Talk, at: number, span: Span): Done | null {
  const words = talk.chunks.slice(...rangeIn(talk.chunks, span));
  if (!words.some((c) => c.verb || isCopula(c) || IN_PLACE.has(c.word))) return null;
  const frame = talk.frames[at]!;
  // "Ceilings flat white, got that already": goods, and no work.
  if (talk.frames.slice(at, at + 2).some((f) => f.start < span.end && isGot(f.chunks.map((c) => c.word).join(' '))))
    return null;
  return {
    ...base(talk, frame, 'done/weighed', span, 0.6),
    kind: 'done',
    task: '',
    who: roleIn(frame.subject),
  };
}

/** A plan; figures without a verb or a day tell of none. */
export function followUpIn(talk: Talk, at: number, span: Span): FollowUp | null {
  const words = talk.chunks.slice(...rangeIn(talk.chunks, span));
  if (words.some((c) => c.quantity) && !words.some((c) => c.verb || c.time)) return null;
  const frame = talk.frames[at]!;
  if (isDenied(frame) || isIntroduction(frame) || isWaitOnly(frame) || isQuestion(talk, frame)) return null;
  const wait = waitBefore(talk, frame, at);
  return {
    ...base(talk, frame, 'follow-up/weighed', span, 0.6),
    kind: 'followUp',
    task: '',
    who: personIn(frame.subject),
    due: null,
    notBefore: null,
    waitingFor: wait ? waitText(wait) : null,
    condition: conditionOf(frame),
  };
}

/** "He's the electrician": who somebody is, and nothing to do. */
const isIntroduction = ({ predicate, subject, rest }: Frame) =>
  predicate === 'copula' && isPerson(subject) && rest.at(-1)?.term?.kind === 'role' && !rest.some((c) => c.verb);
