import type { Done, Problem } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm } from '../chunks.ts';
import { roleIn } from '../done.ts';
import type { Frame } from '../frames.ts';
import { meantAt } from '../naming/meant.ts';
import { phrase, type Talk, thingIn } from '../talk.ts';
import { waitBefore } from './dates.ts';

/** The talk with what was already found: a repair speaks of a flaw, a next step of what was last made. */
export type Told = Talk & { problems: readonly Problem[]; done: readonly Done[] };

export interface Plan {
  task: string;
  who: string | null;
  confidence: number;
  held?: boolean;
}

export const BUYS = /^(get|grab|buy|order|bring|purchase|pick)$/;
export const IDLE = new Set(
  'be have let know think guess say tell figure want need like love hope see try work happen cost take go come mean remember wait worry care believe mind swear feel seem sound trust forget stay stop sit'.split(
    ' ',
  ),
);

export function verbPhrase(talk: Told, frame: Frame, at: number): string {
  if (frame.rest.length && frame.rest.every((c) => c.time) && !waitBefore(talk, frame, at)) return frame.lemma ?? '';
  if (frame.rest.every((c) => c.time || c.kind === 'mark'))
    return `${frame.lemma} ${waitBefore(talk, frame, at) ? lastMade(talk, frame) || meant(talk, at) : meant(talk, at)}`;
  // "Swap for rigid", "move to the left": what is swapped was told before.
  if (
    /^(?:for|to)$/.test(frame.rest[0]?.word ?? '') &&
    /^(?:swap|change|exchange|move|switch|replace)$/.test(frame.lemma ?? '')
  )
    return `${frame.lemma} ${meant(talk, at)} ${phrase(cutAtTime(frame.rest))}`;
  if (
    /^(?:ask|tell|call|text|email|remind|show)$/.test(frame.lemma ?? '') &&
    /^(?:him|her|them)$/.test(frame.rest[0]?.word ?? '')
  ) {
    const whom = talk.frames
      .slice(0, at + 1)
      .flatMap((f) => f.chunks)
      .findLast((c) => c.term?.kind === 'role' && c.start < frame.start);
    if (whom) return `${frame.lemma} ${whom.word.replace(/'s$/, '')} ${phrase(cutAtTime(frame.rest.slice(1)))}`.trim();
  }
  return `${frame.lemma ?? phrase([frame.chunks[frame.verbAt]!])} ${phrase(cutAtTime(resolve(talk, frame.rest, at)))}`.trim();
}

/** Puts the named thing where "it" stands: what was last finished for the step after a wait, else the last thing named. */
export function resolve(talk: Told, chunks: readonly Chunk[], at: number): Chunk[] {
  const k = chunks.findIndex((c) => /^(it|them|that|those|these|'em|em|this|one)$/.test(c.word));
  if (k < 0 || chunks.some((c, j) => isNounTerm(c) && c.term!.kind !== 'area' && c.term!.kind !== 'role' && j <= k + 1))
    return [...chunks];
  const frame = talk.frames[at]!;
  const word = (waitBefore(talk, frame, at) && lastMade(talk, frame)) || meant(talk, at);
  return [...chunks.slice(0, k), { ...chunks[k]!, kind: 'word', word }, ...chunks.slice(k + 1)];
}

/** What a step comes after, where talk leaves it at "it": common practice, no source. */
const COMES_AFTER: ReadonlyMap<string, RegExp> = new Map(
  Object.entries({
    grout: /^(?:tile|lay|set|install|finish)\b/,
    sand: /^(?:mud|tape|coat|patch|skim|apply|prime)\b|\b(?:mud|coat|patch)\b/,
    prime: /^(?:sand|patch|tape|skim|float)\b/,
    paint: /^(?:prime|sand|caulk)\b/,
    seal: /^(?:grout|pour|stain|caulk)\b/,
  }),
);

/** What was last finished before this clause. */
function lastMade(talk: Told, frame: Frame): string {
  const before = talk.done.filter((d) => d.end <= frame.start);
  const suits = COMES_AFTER.get(frame.lemma ?? '');
  const made = (suits && before.findLast((d) => suits.test(d.task))) ?? before.at(-1);
  const told = made && talk.frames.find((f) => f.start === made.start);
  return told ? phrase(thingIn(told.chunks)) : '';
}

/** What "it" is, in words: the flaw found just before, for a repair; else the thing last named. */
export function meant(talk: Told, at: number): string {
  const from = talk.frames[Math.max(0, at - 3)]!.start;
  const flaw = talk.problems
    .filter((p) => p.start >= from && p.start < talk.frames[at]!.start && p.thing !== 'something')
    .at(-1);
  return flaw ? flaw.thing : phrase(meantAt(talk, at));
}

/** A task's words end where its condition or its date begins. */
export function cutAtTime(chunks: readonly Chunk[]): Chunk[] {
  const end = chunks.findIndex(
    (c, k) =>
      !(c.word === 'if' && k <= 1 && chunks[0]!.kind !== 'time') &&
      /^(before|until|till|til|when|if|so|because|b4|once|after|since|unless)$/.test(c.word),
  );
  return (end >= 0 ? chunks.slice(0, end) : chunks).filter((c) => c.kind !== 'time' && !/^(by|on)$/.test(c.word));
}

/** "Get two tubes", "pick up a box": goods, so it belongs to the order. */
export const isPurchase = (frame: Frame) => frame.rest.some((c) => isGoods(c) || c.quantity) || frame.rest.length <= 2;

export function personIn(chunks: readonly Chunk[]): string | null {
  const role = roleIn(chunks);
  if (role) return role;
  return null;
}
