import { type Chunk, isCopula, isDeterminer, isNounTerm, isPreposition } from './chunks.ts';
import type { Frame } from './frames.ts';
import { isModifier, isPerson, isPointer, nounPhraseFrom, type Talk } from './talk.ts';
import { isSmall } from './words.ts';

/** A thing that was named, and how likely "it" is to mean it. */
interface Named {
  chunks: Chunk[];
  score: number;
}

/** What speaks for and against a thing being meant by a later "it"; learned by trying on annotated notes. */
const WEIGHTS = {
  /** For each clause, and each sentence, that lies between. */
  clauseBack: -1,
  sentenceBack: -0.5,
  subject: 2,
  object: 1.5,
  /** "There's a spur": brought up to be spoken of. */
  broughtUp: 2.5,
  /** "... for the towel rail": only says where, of what or with what. */
  afterPreposition: -1,
  /** Goods that are counted out, bought or used up are seldom spoken of again. */
  counted: -1.5,
  area: -2,
  flawed: 1,
} as const;

/**
 * The thing that "it" means at a clause: every thing named in the clauses before is weighed by how near it is, whether
 * it was spoken of or only mentioned on the way, and what was said of it.
 *
 * @param reach how many clauses to look back
 */
export function antecedent(talk: Talk, at: number, reach = 4): Chunk[] {
  const here = talk.frames[at]!;
  let best: Named | null = null;
  for (let k = at - 1; k >= 0 && k >= at - reach; k--) {
    const frame = talk.frames[k]!;
    // "Not the washer one, the sink one": which of them, not what.
    if (frame.predicate === 'none' && frame.chunks.some((c) => c.word === 'one')) continue;
    const far = WEIGHTS.clauseBack * (at - k - 1) + WEIGHTS.sentenceBack * (here.sentence - frame.sentence);
    // "It's loose and there's no button on it": what "it" was there, it is here.
    const carried = k > 0 && reach > 1 && saysIt(frame) ? antecedent(talk, k, reach - 1) : [];
    const names = thingsIn(frame);
    if (carried.length) names.push({ chunks: carried, score: WEIGHTS.subject });
    for (const named of names) {
      const score = named.score + far;
      if (!best || score > best.score) best = { chunks: named.chunks, score };
    }
  }
  return best?.chunks ?? [];
}

const saysIt = (frame: Frame) =>
  frame.subject.length === 1 && /^(?:it|it's|they|they're|that|that's)$/.test(frame.subject[0]!.word);

/** Every thing that a clause names, weighed by its place in it. */
function thingsIn(frame: Frame): Named[] {
  const { chunks, verbAt } = frame;
  const out: Named[] = [];
  const broughtUp = /^(?:there's|theres|there|have|got)$/.test(chunks[0]!.word);
  const spent = /^(?:use|need|buy|return)$/.test(frame.use ?? '');
  for (let k = 0; k < chunks.length; k++) {
    const end = thingAt(chunks, k, verbAt);
    if (!end) continue;
    const before = chunks[k - 1];
    const own = chunks.slice(k, end).filter((c) => !isDeterminer(c) && c.kind !== 'quantity' && c.kind !== 'mark');
    const head = own.at(-1)!;
    let score = 0;
    if (verbAt > 0 && end <= verbAt + (head.owner ? 1 : 0) && k <= 1 && !isPerson(frame.subject))
      score += WEIGHTS.subject;
    else if (isPreposition(before)) score += WEIGHTS.afterPreposition;
    else score += broughtUp ? WEIGHTS.broughtUp : WEIGHTS.object;
    if (head.term?.kind === 'area') score += WEIGHTS.area;
    if (spent || (before?.quantity && before.quantity.unitKind === 'pack')) score += WEIGHTS.counted;
    if (chunks.some((c) => c.term?.kind === 'defect')) score += WEIGHTS.flawed;
    if (own.some((c) => c.term?.kind !== 'role')) out.push({ chunks: own, score });
    k = end - 1;
  }
  return out;
}

/** Where the thing that begins at `k` ends, or 0 where none does. A word outside the trade counts behind an article or as subject. */
function thingAt(chunks: readonly Chunk[], k: number, verbAt: number): number {
  const first = chunks[k]!;
  const from = isDeterminer(first) ? k + 1 : k;
  const start = chunks[from];
  if (!start || isPointer([start]) || start.kind === 'time' || start.term?.kind === 'role') return 0;
  let end = Math.max(nounPhraseFrom(chunks, from), isNounTerm(start) ? from + 1 : from);
  // "Hall bath floor grouted": what was done to it is no part of its name.
  const lastNoun = chunks.findLastIndex((c, i) => i < end && i >= from && isNounTerm(c));
  const said = chunks.findIndex(
    (c, i) => i > lastNoun && i < end && (c.verb || /^(?:only|wide|deep|long|high|tall)$/.test(c.word)),
  );
  if (lastNoun >= from && said > 0) end = said;
  const own = chunks.slice(from, end);
  if (!own.length) return 0;
  if (own.some(isNounTerm)) {
    // Begin with the words that belong to the name.
    return isNounTerm(start) || isModifier(start) || start.kind === 'quantity' || from > k ? end : 0;
  }
  const named =
    own.at(-1)!.kind === 'word' &&
    !own.at(-1)!.verb &&
    /^[a-z]{3,}/.test(own.at(-1)!.word) &&
    !isSmall(own.at(-1)!.word);
  const subject = k === 0 && verbAt > 0 && end <= verbAt + 1 && isCopula(chunks[verbAt]);
  return named && (from > k || subject) ? end : 0;
}
