import { type Chunk, isCopula, isDeterminer, isModal, isNounTerm, isSubjectPronoun } from './chunks.ts';
import { type Predicate, predicateOf } from './predicate.ts';
import { type Stretch, splitClauses } from './split.ts';
import { isNegative, OPENERS } from './words.ts';

/** A clause with its grammar laid open. */
export interface Frame {
  /** As said, openers ("so", "but", "okay") off. */
  chunks: Chunk[];
  openers: string[];
  /** What divides it from the clause before. */
  joinedBy: Stretch['joinedBy'];
  start: number;
  end: number;
  from: number;
  until: number;
  predicate: Predicate;
  /** Position of the verb that says it, in `chunks`; -1 where there is none. */
  verbAt: number;
  lemma: string | null;
  use: string | null;
  subject: Chunk[];
  /** After the verb. */
  rest: Chunk[];
  negative: boolean;
  /** The sentence number: marks that end a sentence, and line ends, count it up. */
  sentence: number;
  area: string | null;
}

/** Lays open every clause of a note; `places` are offsets at which one begins whatever the words say. */
export function framesOf(chunks: readonly Chunk[], places?: ReadonlySet<number>): Frame[] {
  const frames = splitClauses(chunks, places)
    .map(frameOf)
    .filter((frame): frame is Frame => frame !== null);
  return frames
    .map((frame, k) => toldInPast(frame, frames[k - 1], frames[k + 1]))
    .map((frame, k) => stillOwed(frame, frames[k - 1]));
}

/** "Has to be ground and patched": what follows by "and" is owed as well. */
function stillOwed(frame: Frame, before: Frame | undefined): Frame {
  const owes =
    before &&
    frame.joinedBy === 'and' &&
    frame.predicate === 'past' &&
    frame.verbAt === 0 &&
    before.sentence === frame.sentence &&
    /\b(?:to|must|should|gotta|will|gonna|needs?) (?:be|get)\b/.test(before.chunks.map((c) => c.word).join(' '));
  return owes ? { ...frame, predicate: 'owed' } : frame;
}

const PAST_LIKE_BASE = /^(?:put|set|cut|hit|fit|shut|split|spread|hurt)$/;

/** "... it's done, shut the breaker off, used up the box": a base that is also a past, told among past things. */
function toldInPast(frame: Frame, before: Frame | undefined, after: Frame | undefined): Frame {
  const head = frame.chunks[0]!;
  if (
    (frame.predicate !== 'imperative' && frame.predicate !== 'none') ||
    !PAST_LIKE_BASE.test(head.word.split(' ')[0]!) ||
    !head.verb ||
    frame.openers.includes('so') ||
    frame.openers.includes('then')
  )
    return frame;
  // "Set 4 of 10 posts": counted out of all, it is told and no order.
  const [some, of, all] = frame.chunks.slice(1);
  const counted = some?.quantity !== undefined && of?.word === 'of' && (all?.quantity ?? all?.word === 'the');
  const near = (other: Frame | undefined, joint: Frame['joinedBy']) =>
    other?.sentence === frame.sentence &&
    (joint === 'comma' || joint === 'and') &&
    (other.predicate === 'past' || other.rest.some((c) => c.word === 'done'));
  if (!counted && !near(before, frame.joinedBy) && !(after && near(after, after.joinedBy))) return frame;
  return {
    ...frame,
    predicate: 'past',
    verbAt: 0,
    lemma: head.verb.lemma,
    use: head.verb.use,
    subject: [],
    rest: frame.chunks.slice(1),
  };
}

function frameOf(stretch: Stretch): Frame | null {
  let { chunks } = stretch;
  const openers: string[] = [];
  while (chunks.length > 1 && opens(chunks)) {
    openers.push(chunks[0]!.word);
    chunks = chunks.slice(1);
  }
  while (chunks.length && chunks.at(-1)!.kind === 'mark') chunks = chunks.slice(0, -1);
  if (!chunks.length) return null;
  chunks = chunks.slice(reported(chunks));
  const said = afterThen(chunks, openers) ?? predicateOf(mainOf(chunks));
  return {
    chunks,
    openers,
    joinedBy: stretch.joinedBy,
    sentence: stretch.sentence,
    start: chunks[0]!.start,
    end: chunks.at(-1)!.end,
    from: chunks[0]!.from,
    until: chunks.at(-1)!.until,
    ...said,
    subject: chunks.slice(0, Math.max(said.subjectEnd, 0)),
    rest: said.verbAt < 0 ? chunks : chunks.slice(said.verbAt + 1),
    negative: chunks.some((c) => (c.kind === 'word' || c.kind === 'term') && isNegative(c.word)),
    area: null,
  };
}

/** What stands before a condition that trails: "paving thursday if it's dry" says nothing of being dry. */
function mainOf(chunks: readonly Chunk[]): readonly Chunk[] {
  const k = chunks.findIndex((c, i) => i > 0 && /^(?:if|unless|once|because|cause|cuz)$/.test(c.word));
  return k > 0 ? chunks.slice(0, k) : chunks;
}

/** "Luis says the landing is not level", "I think that the pump is dead": what is told stands behind who tells it. */
function reported(chunks: readonly Chunk[]): number {
  const says = chunks.findIndex((c) => c.verb?.use === 'say' && !c.verb.forms.has('ing'));
  if (
    says < 1 ||
    says > 3 ||
    !/^(?:say|tell|think|figure|reckon|guess|mention|swear|claim)$/.test(chunks[says]!.verb!.lemma)
  )
    return 0;
  if (chunks.slice(0, says).some((c) => isModal(c) || c.word === 'to' || isNegative(c.word))) return 0;
  let from = says + 1;
  if (/^(?:me|us)$/.test(chunks[from]?.word ?? '')) from++;
  if (chunks[from]?.word === 'that' && isDeterminer(chunks[from + 1])) from++;
  const inner = chunks.slice(from);
  const opens = inner[0];
  // "I guess sand it all saturday"
  const order =
    /^(?:guess|think|figure)$/.test(chunks[says]!.verb!.lemma) && predicateOf(inner).predicate === 'imperative';
  if (order && inner.length > 1) return from;
  if (inner.length < 3 || !opens || !(isDeterminer(opens) || isNounTerm(opens))) return 0;
  return /^(?:copula|modal|present)$/.test(predicateOf(inner).predicate) ? from : 0;
}

/** "Let it cure, then grout": behind "then" even a word that is mostly a noun is an order. */
function afterThen(chunks: readonly Chunk[], openers: readonly string[]): ReturnType<typeof predicateOf> | null {
  const verb = chunks[0]?.verb;
  if (!openers.includes('then') || !verb?.forms.has('base') || chunks[0]!.owner) return null;
  return { predicate: 'imperative', verbAt: 0, subjectEnd: 0, lemma: verb.lemma, use: verb.use };
}

function opens(chunks: readonly Chunk[]): boolean {
  const [first, second] = chunks;
  if (!first) return false;
  if (first.kind === 'mark') return first.word !== '#' && first.word !== '(';
  // "Boss, the outside unit ...": spoken to.
  if (first.term?.kind === 'role' && /^(?:boss|chief|jefe|hey boss|hi boss|hello boss)$/.test(first.word))
    return !isCopula(second) && !second?.verb;
  if (first.kind !== 'word' || !OPENERS.has(first.word)) return false;
  // "still drips", "just the one", "only two left" keep their word unless a subject follows.
  if (first.word === 'still' || first.word === 'only' || first.word === 'just') return isSubjectPronoun(second);
  return true;
}
