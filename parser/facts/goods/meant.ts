import type { Quantity } from '../../types.ts';
import { type Chunk, isDeterminer, isGoods, isModal, isNounTerm, isPreposition, isSubjectPronoun } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isSize, nounPhraseFrom, type Talk } from '../talk.ts';
import { isNegative } from '../words.ts';

/** How far back, in clauses, a count may point. */
const REACH = 6;

/** Goods already told in this note, with the clause and the unit that they were told in. */
export interface Told {
  item: Chunk[];
  at: number;
  unit: string | null;
}

/** Goods that a count may be of, and how likely. */
interface Candidate {
  chunks: Chunk[];
  score: number;
}

/**
 * The goods that a count without a name is of: "1 left", "need 8", "thirty bags". Every thing named in the clauses
 * before is a candidate; what was nearer, stood as a heading ("clips - used 8"), was counted in the same unit, or is a
 * stuff that comes that way, weighs more. Null where nothing fits.
 */
export function goodsMeant(
  talk: Talk,
  at: number,
  before: number,
  amount: Quantity | null,
  told: readonly Told[] = [],
): Chunk[] | null {
  let best: Candidate | null = null;
  const last = told.at(-1);
  if (last && last.at >= at - REACH) {
    const sameUnit = amount?.unit && last.unit === amount.unit ? 2 : 0;
    best = { chunks: last.item, score: nearness(talk, last.at, at) + 0.5 + sameUnit };
  }
  for (let k = at; k >= 0 && k >= at - REACH; k--) {
    for (const candidate of candidatesIn(talk, k, at, before, amount))
      if (!best || candidate.score > best.score) best = candidate;
  }
  return best && best.score > 0 ? best.chunks : null;
}

/** Clauses, sentences and rooms between what was named and what points at it. */
function nearness(talk: Talk, k: number, at: number): number {
  const [frame, here] = [talk.frames[k]!, talk.frames[at]!];
  return REACH - (at - k) - (frame.sentence === here.sentence ? 0 : 2) - (frame.area === here.area ? 0 : 1);
}

/** "Then I can grout": a trade word that is the verb there. */
const isVerbHere = (chunks: readonly Chunk[], j: number) =>
  chunks[j]!.verb !== undefined &&
  (isModal(chunks[j - 1]) || chunks[j - 1]?.word === 'to' || isPerson(chunks.slice(j - 1, j)));

function candidatesIn(talk: Talk, k: number, at: number, before: number, amount: Quantity | null): Candidate[] {
  const frame = talk.frames[k]!;
  const out: Candidate[] = [];
  const near = nearness(talk, k, at);
  frame.chunks.forEach((c, j) => {
    if (c.start >= before) return;
    if ((isGoods(c) || c.term?.kind === 'tool') && !isVerbHere(frame.chunks, j)) {
      if (isGoods(frame.chunks[j + 1])) return;
      let from = j;
      while (from > 0 && (describes(frame.chunks[from - 1]!) || isSize(frame.chunks[from - 1]!))) from--;
      const chunks = frame.chunks.slice(from, j + 1);
      // Later in the same clause is nearer; what hangs on a preposition ("next to the sink") is where, not what.
      const place = isPreposition(frame.chunks[from - 1]) && frame.chunks[from - 1]!.word !== 'of' ? -2 : 0;
      const subject = k < at && frame.subject.includes(c) ? 1 : 0;
      out.push({ chunks, score: near + j / 20 + place + subject + suits(c, frame, from, amount) });
    } else if (isCounted(frame.chunks, j)) out.push({ chunks: [c], score: near + j / 20 });
  });
  const heading = headingOf(frame, k < at ? talk.frames[k + 1]! : null);
  if (heading && heading.at(-1)!.end <= before) {
    const colon = talk.text.slice(frame.end, talk.frames[k + 1]?.start).includes(':');
    out.push({ chunks: heading, score: near - 0.5 + (colon ? 4 : 0) });
  }
  return out;
}

/** A word that the vocabulary lacks, counted: "40 pins". */
const isCounted = (chunks: readonly Chunk[], j: number) =>
  chunks[j]!.kind === 'word' &&
  /^[a-z]{3,}s$/.test(chunks[j]!.word) &&
  !chunks[j]!.verb &&
  chunks[j - 1]?.quantity?.unit === 'each' &&
  !isGoods(chunks[j + 1]);

/** Whether a thing comes by the unit that was counted. */
function suits(goods: Chunk, frame: Frame, from: number, amount: Quantity | null): number {
  if (!amount) return 0;
  const counted = frame.chunks[from - 1]?.word === 'of' ? frame.chunks[from - 2] : frame.chunks[from - 1];
  const sameUnit = counted?.quantity?.unit && counted.quantity.unit === amount.unit ? 2 : 0;
  const fixture = goods.term!.kind === 'fixture' && amount.unit !== null && amount.unit !== 'each' ? -3 : 0;
  // Packs and bulk hold stuff and small parts; a single count is of pieces.
  const loose = /^(?:yd|ton|cu yd)$/.test(amount.unit ?? '') && goods.term!.kind !== 'material' ? -8 : 0;
  const stuff = goods.term!.kind === 'material' && (amount.unitKind === 'pack' || amount.unitKind === 'volume') ? 1 : 0;
  return sameUnit + fixture + stuff + loose;
}

/** A label before a dash, colon or comma that the vocabulary lacks: "undermount clips - used 8", "heads: 6 swapped". */
function headingOf(frame: Frame, next: Frame | null): Chunk[] | null {
  if (frame.verbAt > 0 && frame.predicate !== 'none' && frame.predicate !== 'present') return null;
  if (next && next.sentence !== frame.sentence && frame.chunks.length > 3) return null;
  const end = nounPhraseFrom(frame.chunks, 0);
  const chunks = frame.chunks.slice(0, Math.max(end, frame.predicate === 'present' ? frame.chunks.length : 0));
  if (!chunks.length || chunks.length > 3 || chunks.length < frame.chunks.length || isPerson(chunks)) return null;
  if (!chunks.every((c) => c.kind === 'term' || (c.kind === 'word' && /^[a-z]{3,}/.test(c.word)))) return null;
  if (chunks.some((c) => c.term?.kind === 'area' || c.term?.kind === 'defect' || c.term?.kind === 'role')) return null;
  return /s$/.test(chunks.at(-1)!.word) ? chunks : null;
}

/** Words that describe the goods behind them. */
const describes = (c: Chunk) =>
  isNounTerm(c) ||
  (c.kind === 'term' && c.term!.kind === 'finish') ||
  (c.kind === 'word' &&
    !c.verb &&
    /^[a-z]{2,}/.test(c.word) &&
    !isPreposition(c) &&
    !isSubjectPronoun(c) &&
    !isDeterminer(c) &&
    !isNegative(c.word) &&
    !/^(?:and|or|but|is|are|was|were|has|have|had|need|more|any|then|so|also|just|about|got|new|old|left|of|we|used)$/.test(
      c.word,
    ));
