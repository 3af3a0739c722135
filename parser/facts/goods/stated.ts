import type { MaterialStatus } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';
import { FATES, type Fate } from './fates.ts';
import { isCount, type Lot } from './lot.ts';

const ARRIVED = /^(?:turned|showed)\b/;
const RECKONED = /^(?:(?:so|and|but|now|then) )*(?:i|we) (?:make|reckon|figure) (?:it|that|them)\b/;
/** "Let's do six sheets", "let's go with the two-inch": settled on, and so to buy. */
const SETTLED =
  /^(?:(?:so|ok|okay|and|then|yeah|now) )*(?:let's|lets) (?:do|get|grab|go with|say|make it|plan on|figure)\b/;
/** Whether goods told in these words are settled on. */
export const isSettled = (said: string): boolean => SETTLED.test(said);
const ON_ORDER = /\b(?:on order|back-?ordered|on back-?order)\b/;

/**
 * What a clause states of its goods outright, which no weighing overrules: that they are on order, or how many there
 * shall be ("make the hinges three"); null where it states nothing.
 */
export function statedOf(frame: Frame, lot: Lot): MaterialStatus | null {
  const { chunks, predicate, lemma, negative, verbAt } = frame;
  if (!lot.amount && !lot.own.some(isNounTerm)) return null;
  const before = chunks[lot.from - 1];
  const placed = isPreposition(before) && before!.word !== 'of';
  const behind = lot.from > verbAt;
  const said = chunks.map((c) => c.word).join(' ');
  // "Call it six sticks of base".
  const calls = lemma === 'call' && /^(?:it|that)$/.test(frame.rest[0]?.word ?? '') && lot.amount !== null;
  if (predicate === 'imperative' && calls && behind && lot.own.some(isGoods)) return 'need';
  // "I make it eighteen sheets".
  if (RECKONED.test(said) && lot.amount && behind && lot.own.some(isNounTerm)) return 'need';
  if (isSettled(said) && lot.amount && isCount(lot.amount) && behind && lot.own.some(isGoods)) return 'need';
  if (predicate === 'imperative' && lemma === 'make' && behind && lot.own.some(isNounTerm))
    return chunks.slice(verbAt + 1).some((c) => c.quantity) ? 'need' : null;
  // "The other two tubes turned up don't need them now".
  const behindCount = chunks[chunks.findIndex((c) => c.quantity !== undefined && c.quantity === lot.amount) + 1];
  if (lot.amount && !lot.own.some(isNounTerm) && ARRIVED.test(behindCount?.word ?? '')) return 'have';
  if (negative) return null;
  if (isWanted(frame, lot)) return 'need';
  if (ON_ORDER.test(said)) return placed ? null : 'ordered';
  return predicate === 'past' && lemma === 'order' && behind && !placed ? 'ordered' : null;
}

/** "Make that thirteen on the casing", "make the hinges three": the one count of the clause is theirs. */
export function withCountMade({ chunks, predicate, lemma, verbAt }: Frame, lot: Lot): Lot {
  if (lemma !== 'make' || predicate !== 'imperative' || lot.amount || lot.from <= verbAt || !lot.own.some(isGoods))
    return lot;
  const counts = chunks.flatMap((c) => (c.quantity ? [c.quantity] : []));
  return counts.length === 1 && isCount(counts[0]!) ? { ...lot, amount: counts[0]! } : lot;
}

/**
 * "Boss wants 120 backer screws", "kitchen needs two base cabinets": counted goods right behind it, of which no work is told
 * and which go with nothing else.
 */
function isWanted({ chunks, lemma, verbAt, subject }: Frame, lot: Lot): boolean {
  // "The rail wants sixteen rivets" tells what it takes, whoever has them.
  if (
    !/^(?:want|need)$/.test(lemma ?? '') ||
    subject.some((c) => isNounTerm(c) && c.word !== 'boss' && c.term!.kind !== 'area') ||
    lot.amount === null ||
    !lot.own.some(isGoods)
  )
    return false;
  const between = chunks.slice(verbAt + 1, lot.from);
  const rest = chunks.slice(lot.until);
  return (
    lot.from > verbAt &&
    between.every((c) => c.kind === 'mark' || /^(?:us|me|about|another|like)$/.test(c.word)) &&
    !rest.some((c) => c.verb?.forms.has('participle') || EACH.test(c.word))
  );
}

/** "I've got two treads split right through": not what is on hand, but what is amiss. */
export function areAmiss({ chunks, lemma }: Frame, lot: Lot): boolean {
  const behind = [chunks[lot.until], lot.own.length > 1 ? lot.own.at(-1) : undefined];
  return /^(?:have|get)$/.test(lemma ?? '') && lot.named && behind.some((c) => c?.term?.kind === 'defect');
}

const EACH = /^(?:each|every|per|apiece)$/;

/** Words at a clause's end that tell that goods are in their place. */
const IN_PLACE = /^(?:in|on|up|down|set|hung|installed|laid|fitted|used|gone|done|through)$/;

/** True where a talk tells of something done, so that goods named without a verb may have gone into it. */
export const tellsOfWork = (talk: Talk): boolean =>
  talk.frames.some(
    ({ predicate, chunks }) =>
      predicate === 'past' ||
      IN_PLACE.test(chunks.at(-1)?.word ?? '') ||
      chunks.some((c) => /^(?:work|use)$/.test(c.verb?.use ?? '') && isTold(c)),
  );

/** A verb in a form that tells of what was: "swapped", "set". */
const isTold = ({ verb }: Chunk) => verb!.forms.has('past') || verb!.forms.has('participle');

/** The chances where goods cannot have been used, since nothing was done with them; they sum to 1. */
export function unused(chances: Record<Fate, number>): Record<Fate, number> {
  const rest = 1 - chances.used;
  return Object.fromEntries(FATES.map((f) => [f, f === 'used' ? 0 : chances[f] / rest])) as Record<Fate, number>;
}
