import { isNounTerm, isSubjectPronoun } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { phrase } from '../talk.ts';
import { cutAtTime, IDLE, meant, type Plan, personIn, resolve, type Told } from './told.ts';

/** "Don't caulk till monday": held back, not forbidden, when a day or a wait ends it. */
export function heldBack(talk: Told, frame: Frame, at: number): Plan | null {
  const verbAt = frame.chunks.findIndex((c, k) => k > frame.verbAt && c.verb);
  if (verbAt < 0) return null;
  const until =
    frame.chunks.some((c) => c.time) ||
    /\b(?:till|til|until|before|b4)\b/.test(frame.chunks.map((c) => c.word).join(' '));
  if (!until) return null;
  const verb = frame.chunks[verbAt]!.verb!;
  return IDLE.has(verb.lemma)
    ? null
    : {
        task: `${verb.lemma} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(verbAt + 1), at))) || meant(talk, at)}`,
        who: personIn(frame.subject),
        confidence: 0.75,
        held: true,
      };
}

/** "Let it cure 24 hours" is a wait, and a task only where nothing follows it; "let the plumber look at it" is a task. */
export function letPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const rest = frame.rest;
  const verb = rest.findIndex((c) => c.verb?.forms.has('base'));
  if (verb < 1) return null;
  const who = personIn(rest.slice(0, verb));
  const next = rest.findIndex((c, k) => k > verb && (c.word === 'before' || c.word === 'then'));
  const step = next < 0 ? -1 : rest.findIndex((c, k) => k > next && c.verb && !isSubjectPronoun(c));
  if (step > 0 && rest[step]!.verb!.lemma !== 'be')
    return {
      task: `${rest[step]!.verb!.lemma} ${phrase(rest.slice(step + 1)) || meant(talk, at)}`,
      who: null,
      confidence: 0.75,
    };
  if (rest[verb]!.verb!.lemma === 'know' && !/^(?:me|us)$/.test(rest[0]!.word))
    return {
      task: `let ${rest
        .slice(0, verb)
        .map((c) => c.word)
        .join(' ')} know`,
      who: null,
      confidence: 0.7,
    };
  return who && rest[verb]!.verb!.lemma !== 'know'
    ? {
        task: `${rest[verb]!.verb!.lemma} ${phrase(resolve(talk, rest.slice(verb + 1), at))}`,
        who,
        confidence: 0.7,
      }
    : null;
}

export function haveDo(talk: Told, frame: Frame, at: number): Plan | null {
  const from = frame.verbAt + 1;
  const verb = frame.chunks.findIndex(
    (c, k) => k > from && c.verb?.forms.has('base') && !(isNounTerm(c) && k === from),
  );
  // "Get a test kit" is nobody's test.
  if (verb < 0 || !phrase(frame.chunks.slice(from, verb))) return null;
  const lemma = frame.chunks[verb]!.verb!.lemma;
  return {
    task: `${lemma} ${phrase(cutAtTime(resolve(talk, frame.chunks.slice(verb + 1), at)))}`,
    who: personIn(frame.chunks.slice(from, verb)) ?? phrase(frame.chunks.slice(from, verb)),
    confidence: 0.85,
  };
}
