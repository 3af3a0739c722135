import type { Measurement, Quantity } from '../../types.ts';
import { type Chunk, isDeterminer, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { antecedent, isPerson, isPointer, nounPhraseFrom, phrase, type Talk, thingIn } from '../talk.ts';
import { DIMENSIONS } from './readings.ts';

/** What a figure is the measure of. */
export interface Measured {
  /** The thing, with what of it: `opening width`, `water temperature`. */
  of: string;
  /** Where the words for it begin, when they stand before the figure in the same clause. */
  start: number | null;
  /** Chunks behind the figure that belong to it: "wide", "of standing water". */
  after: Chunk[];
}

/** Finds what was measured: named before the figure, behind it, or a clause earlier. */
export function measuredBy(
  talk: Talk,
  frame: Frame,
  at: number,
  k: number,
  q: Quantity,
  before: Measurement | undefined,
): Measured {
  const { chunks } = frame;
  const after = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)).filter((c) => c.kind !== 'quantity');
  const dimension = after.find((c) => DIMENSIONS.test(c.word))?.word;
  const noun = after.filter(
    (c) =>
      isNounTerm(c) || (c.kind === 'word' && !DIMENSIONS.test(c.word) && !isPreposition(c) && !NO_NAME.test(c.word)),
  );
  // "The spec is sixteen", "plate says 20 max": a limit for what was read just before.
  if (before && LIMIT.test(clean(frame.subject.length ? frame.subject : chunks.slice(0, k))) && at > 0)
    return { of: before.of, start: null, after };
  const named = namedBefore(frame, k);
  const behind = named.length ? [] : namedBehind(chunks, k, noun);
  const thing = named.length ? named : behind.length ? behind : earlier(talk, frame, at);
  const of =
    [clean(thing), named.length && noun.some(isNounTerm) ? phrase(noun) : ''].filter(Boolean).join(' ') ||
    phrase(noun) ||
    clean(thingIn(chunks)) ||
    (frame.area ?? 'measurement');
  const start = named[0] && named[0].start < q.start && named[0].start >= frame.start ? named[0].start : null;
  return { of: withKind(of, dimension, q), start, after };
}

const LIMIT =
  /^(?:the )?(?:spec|min|max|minimum|maximum|code|plate|name plate|tag|print|plans?|sticker|ticket|drawing|label)$/;

/** Words beside a figure that name nothing. */
const NO_NAME =
  /^(?:by|too|used|away|each|like|even|all|overall|total|far|tight|apart|end|told|from|of|give|exactly|max|min|[a-z])$/;

/** The thing named before the figure in its own clause: what hangs nearest on it, else the subject. */
function namedBefore(frame: Frame, k: number): Chunk[] {
  const { chunks } = frame;
  const pair = chunks[k]!.quantity!.group;
  // The second of "96 by 41 1/4" is of what the first is.
  const first = pair ? chunks.findIndex((c) => c.quantity?.group?.id === pair.id) : k;
  const end = first >= 0 ? first : k;
  const subject = frame.subject.filter((c) => c.kind !== 'quantity');
  if (frame.verbAt >= 0 && frame.verbAt < end) {
    const own = ownedBefore(chunks.slice(frame.verbAt + 1, end));
    if (own.length) return own;
  }
  if (subject.length && !isPointer(subject) && !isPerson(subject)) return subject;
  if (frame.predicate === 'none') return chunks.slice(0, end).filter((c) => c.kind !== 'quantity' && c.kind !== 'mark');
  if (frame.verbAt >= 0 && frame.verbAt < end) {
    const rest = chunks.slice(frame.verbAt + 1, end);
    const thing = thingIn(rest);
    return thing.length ? thing : plainObject(rest);
  }
  return [];
}

/** "Wants weeps at 24", "the roll holder at 650": what the verb takes, though the vocabulary lacks it. */
function plainObject(rest: readonly Chunk[]): Chunk[] {
  const from = isDeterminer(rest[0]) ? 1 : 0;
  const end = nounPhraseFrom(rest, from);
  const words = rest.slice(from, end);
  return end < rest.length &&
    isPreposition(rest[end]) &&
    words.every((c) => c.kind === 'word' && !c.verb && !LEADS_UP.test(c.word))
    ? words
    : [];
}

/** "Has a split about nine inches long", "a hole behind the door about four inches": the thing with its own article. */
function ownedBefore(chunks: readonly Chunk[]): Chunk[] {
  const article = chunks.findIndex((c) => /^(?:a|an|another|some)$/.test(c.word));
  if (article < 0) return [];
  const from = article + 1;
  let end = from;
  while (
    chunks[end] &&
    !isPreposition(chunks[end]) &&
    !isDeterminer(chunks[end]) &&
    !/^(?:about|around|like|that|maybe)$/.test(chunks[end]!.word)
  )
    end++;
  return chunks.slice(from, end).filter((c) => c.kind === 'term' || (c.kind === 'word' && !c.verb));
}

/** "Half inch gap at the jamb", "two inches of standing water": the noun behind, or one behind a preposition. */
function namedBehind(chunks: readonly Chunk[], k: number, noun: readonly Chunk[]): Chunk[] {
  if (chunks[k + 1]?.word === 'of') {
    const from = chunks[k + 2] && isDeterminer(chunks[k + 2]) ? k + 3 : k + 2;
    const end = nounPhraseFrom(chunks, from);
    if (end > from && !isPointer(chunks.slice(k + 2, end))) return chunks.slice(from, end);
  }
  // "118 V on A leg, 121 V on B leg"
  if (/^(?:on|for)$/.test(chunks[k + 1]?.word ?? '')) {
    const from = isDeterminer(chunks[k + 2]) ? k + 3 : k + 2;
    const end = nounPhraseFrom(chunks, from);
    if (end > from && !isPointer(chunks.slice(from, end))) return chunks.slice(from, end);
  }
  return noun.some((c) => isNounTerm(c) || c.term?.kind === 'defect') ? [...noun] : [];
}

/** A clause earlier: the subject that the sentence goes on about ("zone 5 low, 28 psi"), else what "it" would be. */
function earlier(talk: Talk, frame: Frame, at: number): Chunk[] {
  const points = isPointer(frame.subject) && frame.subject.length > 0;
  for (let k = at - 1; k >= 0 && k >= at - (points ? 4 : 2); k--) {
    const past = talk.frames[k]!;
    if (past.sentence < frame.sentence - (points ? 1 : 0)) break;
    const subject = past.subject.filter((c) => c.kind !== 'quantity');
    if (subject.length && !isPointer(subject) && !isPerson(subject)) return subject;
    if (!points && past.predicate === 'none' && past.chunks.some((c) => isNounTerm(c)))
      return past.chunks.slice(0, nounPhraseFrom(past.chunks, 0));
  }
  return antecedent(talk, at);
}

/** A thing's words without what only leads up to the figure. */
const clean = (chunks: readonly Chunk[]) =>
  phrase(
    chunks
      .slice(chunks.findLastIndex((c) => c.word === '(') + 1)
      .filter(
        (c, i, all) => !(LEADS_UP.test(c.word) && (i === all.length - 1 || LEADS_UP.test(all[i + 1]!.word) || i === 0)),
      ),
  );
const LEADS_UP =
  /^(?:if|about|around|by|to|at|like|even|only|starts?|till|until|from|off|up|short|sags|drops|reading|reads|and|is|was|blown|down|now|still|good|come|came|out|into|set|maybe|so|every|new|one|min|max|be)$/;

const DIMENSION_NAMES: Readonly<Record<string, string>> = {
  wide: 'width',
  tall: 'height',
  high: 'height',
  long: 'length',
  deep: 'depth',
  thick: 'thickness',
  showing: 'exposure',
};
const KIND_NAMES: Readonly<Record<string, string>> = {
  temperature: 'temperature',
  pressure: 'pressure',
  voltage: 'voltage',
  slope: 'slope',
  torque: 'torque',
  area: 'area',
};

/** The thing with what of it was measured: `opening width`, `can temperature`, `sawcut spacing`. */
function withKind(of: string, dimension: string | undefined, q: Quantity): string {
  const damp =
    q.unitKind === 'percent' && !/\b(?:humidity|moisture|waste|slope|charge|relative)\b/.test(of)
      ? 'moisture'
      : undefined;
  const part = dimension
    ? (DIMENSION_NAMES[dimension] ?? dimension)
    : q.onCenter
      ? 'spacing'
      : (damp ?? KIND_NAMES[q.unitKind ?? '']);
  return part && !of.includes(part) ? `${of} ${part}` : of;
}
