import type { Done, FollowUp, Problem, Span } from '../../types.ts';
import { isCopula } from '../chunks.ts';
import { roleIn } from '../done.ts';
import { fixIn } from '../flaws/fixed.ts';
import { thingOf } from '../flaws/flaw.ts';
import type { Frame } from '../frames.ts';
import { base } from '../make.ts';
import { meantAt } from '../naming/meant.ts';
import { conditionOf, waitBefore } from '../plans/dates.ts';
import { cutAtTime, meant, personIn, resolve, type Told } from '../plans/told.ts';
import { isPerson, isPointer, phrase, rangeIn, type Talk, thingIn } from '../talk.ts';
import { IN_PLACE } from '../words.ts';

/** A flaw that no rule knows the words of: its thing as the clause has it, and all the rest for what is wrong. */
export function problemIn(talk: Talk, at: number, span: Span): Problem | null {
  const frame = talk.frames[at]!;
  const thing = phrase(thingOf(talk, frame, at)) || phrase(thingIn(frame.chunks)) || phrase(meantAt(talk, at));
  if (!thing) return null;
  const rest = phrase(frame.subject.length ? frame.rest : frame.chunks.filter((c) => !thing.includes(c.word)));
  return {
    ...base(talk, frame, 'problem/weighed', span, 0.6),
    kind: 'problem',
    thing,
    defect: rest || phrase(frame.chunks),
    state: fixIn(talk, frame, at, () => false) ? 'fixed' : 'open',
    suspected: false,
  };
}

/** Work told as finished in words that no rule knows; a bare name with its size tells of none. */
export function doneIn(talk: Talk, at: number, span: Span): Done | null {
  const words = talk.chunks.slice(...rangeIn(talk.chunks, span));
  if (!words.some((c) => c.verb || isCopula(c) || IN_PLACE.has(c.word))) return null;
  const task = taskIn(
    talk,
    at,
    (frame) => phrase(frame.rest),
    () => phrase(meantAt(talk, at)),
  );
  return task
    ? {
        ...base(talk, talk.frames[at]!, 'done/weighed', span, 0.6),
        kind: 'done',
        task,
        who: roleIn(talk.frames[at]!.subject),
      }
    : null;
}

/** A plan in words that no rule knows. */
export function followUpIn(talk: Told, at: number, span: Span): FollowUp | null {
  const frame = talk.frames[at]!;
  const task = taskIn(
    talk,
    at,
    () => phrase(cutAtTime(resolve(talk, frame.rest, at))),
    () => meant(talk, at),
  );
  if (!task) return null;
  const wait = waitBefore(talk, frame, at);
  return {
    ...base(talk, frame, 'follow-up/weighed', span, 0.6),
    kind: 'followUp',
    task,
    who: personIn(frame.subject),
    due: null,
    notBefore: null,
    waitingFor: wait?.quote ?? null,
    condition: conditionOf(frame),
  };
}

/** Verb first, then what it is done to: the object, the subject of a passive, or what is being spoken of. */
function taskIn(talk: Talk, at: number, object: (frame: Frame) => string, spokenOf: () => string): string {
  const frame = talk.frames[at]!;
  const verb = frame.lemma && !/^(?:be|have|get|come|go)$/.test(frame.lemma) ? frame.lemma : '';
  const named =
    frame.subject.length && !isPerson(frame.subject) && !isPointer(frame.subject)
      ? [phrase(frame.subject), object(frame)].filter(Boolean).join(' ')
      : object(frame);
  const whole = `${verb} ${named}`.trim();
  const things = thingIn(frame.chunks).length > 0;
  return (things ? whole : `${whole} ${spokenOf()}`).trim();
}
