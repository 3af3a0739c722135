import { type Chunk, isSubjectPronoun } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { phrase } from '../talk.ts';
import { cutAtTime, type Plan, personIn, type Told } from './told.ts';

/** Words that may stand between somebody and the day on which he comes. */
const COMES = /^(?:is|are|'s|comes?|coming|back|here|there|in|out|by|over|due|again|now|then|probably)$/;
const IS_THERE = /^(?:comes?|coming|back|here|there|in|out|by|over|due)\b/;
const CANNOT = /^(?:can't|cant|cannot|couldn't|won't|wont|isn't|ain't)$/;
const PRONOUN = /^(?:he|she|they)(?:'s|'re|'ll)?$/;

/**
 * Somebody of the trade comes on a day: "roofer's coming Thursday to see about a vent", "the plumber's back Monday"; or
 * comes on another than was set: "Gil can't Thursday, he's Tuesday now".
 */
export function visitPlan(talk: Told, frame: Frame, at: number): Plan | null {
  const { chunks, negative } = frame;
  const day = chunks.findIndex((c) => c.time && !c.time.past && c.time.hours === undefined);
  if (negative || day < 1) return null;
  const put = putOff(talk, frame, at);
  const who = put ?? personIn(chunks.slice(0, day));
  if (!who) return null;
  const person = put ? 0 : chunks.findIndex((c) => c.term?.kind === 'role');
  const between = chunks.slice(person + 1, day);
  const opens = chunks.slice(0, person).every((c) => !c.verb && !isSubjectPronoun(c));
  if (!opens || !between.every((c) => COMES.test(c.word))) return null;
  const told = [...between, chunks[day]!].some((c) => IS_THERE.test(c.word));
  if (!put && !told) return null;
  return { task: whatFor(chunks.slice(day + 1)), who, confidence: 0.75 };
}

/** Who was just said not to be able to come on his day, where this clause gives another. */
function putOff(talk: Told, frame: Frame, at: number): string | null {
  const before = talk.frames[at - 1];
  if (!before || before.sentence !== frame.sentence || !PRONOUN.test(frame.chunks[0]!.word)) return null;
  const not = before.chunks.findIndex((c) => CANNOT.test(c.word));
  if (not < 1 || !before.chunks.slice(not).some((c) => c.time)) return null;
  return personIn(before.chunks.slice(0, not));
}

/** "To see about a vent": his work; else that he comes. */
function whatFor(rest: readonly Chunk[]): string {
  const [to, verb, ...more] = rest;
  if (to?.word === 'to' && verb?.verb) return `${verb.verb.lemma} ${phrase(cutAtTime(more))}`.trim();
  return to?.word === 'for' ? `come for ${phrase(cutAtTime(rest.slice(1)))}` : 'come';
}
