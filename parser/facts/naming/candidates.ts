import { type Chunk, isDeterminer, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPointer, type Talk } from '../talk.ts';
import { isNegative, isSmall } from '../words.ts';

/** A noun phrase of the note that a figure or a pointing word may mean. */
export interface Candidate {
  /** Position of its clause in the talk. */
  at: number;
  /** First chunk of the phrase in its clause (articles off), and the one behind its last. */
  from: number;
  until: number;
  chunks: Chunk[];
  head: Chunk;
}

/** Every noun phrase of clause `at`, in order. A word outside the trade counts where it can be no verb and no small word. */
export function candidatesIn(talk: Talk, at: number): Candidate[] {
  const { chunks, verbAt } = talk.frames[at]!;
  const out: Candidate[] = [];
  for (let k = 0; k < chunks.length; k++) {
    let until = k;
    while (until < chunks.length && belongs(chunks, until, k, verbAt)) {
      until++;
      if (chunks[until - 1]!.owner && (until - 1 === verbAt || !names(chunks, until, verbAt))) break;
    }
    // A name ends on a noun or its number, never on what only describes.
    while (until > k && !ends(chunks[until - 1]!, chunks[until - 2])) until--;
    if (until === k) continue;
    // "The wrong hinges", "cracked tile": how the thing is found is no part of its name.
    if (until - k > 1 && FOUND.test(chunks[k]!.word) && chunks[k]!.term?.kind === 'defect') k++;
    const own = chunks.slice(k, until);
    const head = own.findLast((c) => c.kind !== 'quantity' && c.kind !== 'number') ?? own.at(-1)!;
    if (!isPointer(own) && head.term?.kind !== 'role') out.push({ at, from: k, until, chunks: own, head });
    k = until - 1;
  }
  return out;
}

const FOUND = /(?:ed|en|wrong|bad|loose|bent|worn|dead|split|torn)$/;

const NOUN_OF_FLAW = /^[a-z]+$(?<!ed|en|ing|wrong|bad|loose|bent|worn|dead|torn|s)/;

/** A chunk that can stand in a name that began at `from`. */
function belongs(chunks: readonly Chunk[], k: number, from: number, verbAt: number): boolean {
  // "Door doesn't latch", "joint opening up": what is said of it ends the name; "wall crack" is one.
  if (k > from && chunks[k]!.term?.kind === 'defect' && !NOUN_OF_FLAW.test(chunks[k]!.word)) return false;
  if (names(chunks, k, verbAt)) return true;
  const c = chunks[k]!;
  // "Door 4", "joist 12"; not "the gap 3/8 in".
  if (k > from && (c.kind === 'number' || c.kind === 'quantity'))
    return c.notQuantity?.kind === 'label' || isLabel(c, chunks[k - 1]);
  return c.kind === 'word' && DESCRIBES.test(c.word) && k + 1 < chunks.length && belongs(chunks, k + 1, k + 1, verbAt);
}

const isLabel = (c: Chunk, before: Chunk | undefined) =>
  c.quantity !== undefined &&
  c.quantity.unit === null &&
  c.quantity.value.d === 1n &&
  before !== undefined &&
  NUMBERED.test(before.word);
const NUMBERED =
  /^(?:door|unit|room|window|stair|step|joist|stud|bay|circuit|zone|station|suite|lot|building|floor|wall|panel|pump|post|pier|hole|tank|apt|apartment|number|no|cabinet|drawer|opening|valve|head)$/;

/** Small words that tell which one: "back wall", "top hinge", "other side". */
const DESCRIBES =
  /^(?:back|top|bottom|left|right|upper|lower|front|far|near|inside|outside|first|second|third|fourth|last|other|main|new|old|middle|end|under|over|through|off|out|down|up)$/;

function names(chunks: readonly Chunk[], k: number, verbAt: number): boolean {
  const c = chunks[k];
  if (!c || (k === verbAt && !c.owner)) return false;
  // "The wall's sixteen foot": a noun with its "is".
  if (c.owner) return !isSmall(c.owner) && !PADDING.test(c.owner);
  const before = chunks[k - 1];
  const held =
    isDeterminer(before) ||
    (before !== undefined && !isPreposition(before) && (isNounTerm(before) || before.term?.kind === 'finish'));
  if (c.kind === 'term') return isNounTerm(c) || c.term!.kind === 'finish' || c.term!.kind === 'defect' || held;
  if (c.kind !== 'word' || !/^[a-z][a-z0-9-]*/.test(c.word) || isDeterminer(c) || isNegative(c.word)) return false;
  if (/^(?:top|bottom|middle|end|side|edge|corner|inside|outside)$/.test(c.word)) return true;
  if (isSmall(c.word) || /[a-z]{3}ly$/.test(c.word) || PADDING.test(c.word)) return false;
  const next = chunks[k + 1];
  return !c.verb || (held && !(next?.quantity && !isDeterminer(before)));
}

const PADDING =
  /^(?:about|like|maybe|exactly|roughly|max|min|minimum|maximum|wide|tall|high|long|deep|thick|apart|more|less|enough|few|lot|bit|couple|dead|low|short|shy|proud|clear|ones?|thing|things|stuff|way|left|todo|who|whose|inch|inches|foot|feet|x|w|h|d|l|guys?|boss|today|yesterday|tomorrow|morning|afternoon|night|day|days|week|weeks|time|times|minutes?|hours?|two|three|four|five|six)$/;

const ends = (c: Chunk, before: Chunk | undefined) =>
  c.kind === 'number'
    ? before !== undefined
    : c.kind === 'quantity'
      ? before !== undefined
      : !(c.kind === 'word' && isSmall(c.word) && !/^(?:top|bottom|middle|end|inside|outside)$/.test(c.word));

/** "Chimney:", "stairs -", "Hall bath.": a clause that only says what the talk turns to. */
export const isHeading = (talk: Talk, frame: Frame) =>
  frame.predicate === 'none' &&
  frame.chunks.length <= 4 &&
  !frame.chunks.some((c) => c.quantity && c.quantity.unit !== null) &&
  /^\s*[:–—.-]/.test(talk.text.slice(frame.end, frame.end + 3));
