import { type Chunk, isDeterminer, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { meantAt } from '../naming/meant.ts';
import { isPerson, isPointer, nounPhraseFrom, type Talk, thingIn } from '../talk.ts';
import { isNegative, isSmall } from '../words.ts';

/** One flaw found in one clause. */
export interface Flaw {
  thing: Chunk[];
  defect: string;
  span: { start: number; end: number };
  rule: string;
  confidence: number;
}

/** "Crack in the step", "runs on two window sills". */
export function placeAfter(chunks: readonly Chunk[], k: number): Chunk[] {
  const prep = chunks.findIndex(
    (c, i) =>
      i > k &&
      i <= k + 4 &&
      /^(in|on|at|under|behind|around|along|by|of|near|to|between|through|above|over)$/.test(c.word),
  );
  if (prep < 0) return [];
  let end = nounPhraseFrom(chunks, skipDeterminer(chunks, prep + 1));
  // "On the back of the paneling", "under the window on the sheathing": a side is named by what it is the side of.
  if (/^(?:of|on|in)$/.test(chunks[end]?.word ?? '')) end = nounPhraseFrom(chunks, skipDeterminer(chunks, end + 1));
  return chunks.slice(prep + 1, end).filter((c) => !isDeterminer(c) && !c.quantity && !isPreposition(c));
}

export const skipDeterminer = (chunks: readonly Chunk[], i: number) => (isDeterminer(chunks[i]) ? i + 1 : i);

export function subjectWords(chunks: readonly Chunk[]): Chunk[] {
  return chunks.filter(
    (c) =>
      !c.quantity &&
      c.kind !== 'mark' &&
      !isNegative(c.word) &&
      !/^(is|are|was|were|has|have|had|been|looks|a|the|there's|got|gets|it's|they|their|i|we|that|there|some|where|still|only|just|now|one|of|also|some)$/.test(
        c.word,
      ),
  );
}

export function isNegativeBefore(chunks: readonly Chunk[], k: number): boolean {
  for (let i = Math.max(0, k - 4); i < k; i++) {
    const c = chunks[i]!;
    if (isNegative(c.word) || c.word === 'any') return true;
  }
  return false;
}

/**
 * What is spoken of as amiss: the clause's subject, else what stands before the flaw in it, else what "it" means.
 *
 * @param flawAt where the words of the flaw begin
 */
export function thingOf(talk: Talk, frame: Frame, at: number, flawAt?: number): Chunk[] {
  // "Nail pops: 3 in hall ceiling": the place follows the colon.
  if (frame.chunks.length === 1 && talk.text[frame.end] === ':') {
    const place = thingIn(talk.frames[at + 1]?.chunks ?? []);
    if (place.length) return place;
  }
  const subject = frame.subject.filter((c) => !c.quantity || c.quantity.unit === null);
  if (subject.length && !isPointer(subject) && !isPerson(subject)) return subject;
  // "One sheet came wet": the unit is the thing.
  const counted = frame.subject.find((c) => c.quantity?.unitKind === 'pack' || c.quantity?.unitKind === 'count');
  if (counted?.quantity?.unit && counted.quantity.unit !== 'each') return [counted];
  if (flawAt !== undefined && frame.subject.length === 0 && !isPerson(frame.chunks.slice(0, 1))) {
    const before = subjectWords(frame.chunks.slice(0, flawAt));
    if (before.some((c) => isNounTerm(c) || (c.kind === 'word' && !c.verb && !isSmall(c.word))) && !isPointer(before))
      return before;
  }
  if (frame.predicate === 'none') {
    const nouns = thingIn(frame.chunks);
    if (nouns.length) return nouns;
  }
  const object = thingIn(frame.rest);
  if (isPerson(frame.subject) && object.length) return object;
  const back = meantAt(talk, at);
  return back.length ? back : object;
}
