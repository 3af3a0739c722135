import type { MaterialStatus } from '../../types.ts';
import { isGoods, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';
import { FATES, type Fate } from './fates.ts';
import type { Lot } from './lots.ts';

const ON_ORDER = /\b(?:on order|back-?ordered|on back-?order)\b/;

/**
 * What a clause states of its goods outright, which no weighing overrules: that they are on order, or how many there
 * shall be ("make the hinges three"); null where it states nothing.
 */
export function statedOf(frame: Frame, lot: Lot): MaterialStatus | null {
  const { chunks, predicate, lemma, negative, verbAt } = frame;
  if (negative || !(lot.amount || lot.own.some(isGoods))) return null;
  const before = chunks[lot.from - 1];
  const placed = isPreposition(before) && before!.word !== 'of';
  const behind = lot.from > verbAt;
  const said = chunks.map((c) => c.word).join(' ');
  if (ON_ORDER.test(said)) return placed ? null : 'ordered';
  if (predicate === 'past' && lemma === 'order' && behind && !placed) return 'ordered';
  if (predicate === 'imperative' && lemma === 'make' && behind && lot.own.some(isGoods))
    return chunks.slice(verbAt + 1).some((c) => c.quantity) ? 'need' : null;
  return null;
}

/** Words behind goods that tell that they are in their place. */
const IN_PLACE = /^(?:in|on|up|down|set|hung|installed|laid|fitted|used|gone)$/;

/** True where a talk tells of something done, so that goods named without a verb may have gone into it. */
export const tellsOfWork = (talk: Talk): boolean =>
  talk.frames.some(
    (f) =>
      f.predicate === 'past' ||
      f.chunks.some((c) => IN_PLACE.test(c.word) || (c.verb && !c.verb.forms.has('base') && !c.verb.forms.has('ing'))),
  );

/** The chances where goods cannot have been used, since nothing was done with them; they sum to 1. */
export function unused(chances: Record<Fate, number>): Record<Fate, number> {
  const rest = 1 - chances.used;
  return Object.fromEntries(FATES.map((f) => [f, f === 'used' ? 0 : chances[f] / rest])) as Record<Fate, number>;
}
