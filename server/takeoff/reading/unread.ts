import { COUNTED_FITTINGS } from '../each/fittings.ts';
import type { Goods } from './goods.ts';
import { feet } from './lengths.ts';
import { type Figure, figureIds, type Said, saying, sentencesOf } from './said.ts';

/** Figures that a note's readers took: those of how goods are sold, and beside them those of places, by each measure. */
export interface Taken {
  sold: ReadonlySet<number>;
  all: readonly ReadonlySet<number>[];
}

const isRead = ({ all }: Taken, id: number) => all.some((ids) => ids.has(id));

/** What is no size of a place though it stands beside one. */
const OF_OTHERS = /\b(?:every|each|spaced|apart|within|about|from|same) (?:the )?$/;
const OF_OTHERS_BEHIND =
  /^ ?(?:apart|on cent|o\.?c\b|cent(?:er|re)s|spacing|off\b|from\b|pipe|pvc|copper|pex|conduit|emt|of (?:slack|waste|pitch|fall)|thick|wide boards?|boards?\b|sticks?\b|lengths?\b|rolls?\b|coils?\b|spools?\b|way\b|joints?|gap|trowel|notch|bead)/;

/**
 * Sizes and counts told in the same breath as a place's size that no reader took, in words: `7 ft`, `two`. Goods reckoned
 * without them may run short.
 *
 * @param places how many were read: "three rooms, 44, 51 and 38 around" counts those
 */
export function unreadSizes(said: Said, taken: Taken, places: readonly number[]): string[] {
  return sentencesOf(said.words).flatMap((sentence) => {
    const sized = figureIds(sentence).some((id) => isRead(taken, id) && !taken.sold.has(id));
    if (!sized) return [];
    return [...sentence.matchAll(saying('<LAN>', 'g'))].flatMap((m) => {
      const id = Number(m[1]);
      const [before, behind] = [sentence.slice(0, m.index), sentence.slice(m.index + m[0].length)];
      const figure = said.figures[id]!;
      if (isRead(taken, id) || figure.per || figure.onCenter || OF_OTHERS.test(before) || OF_OTHERS_BEHIND.test(behind))
        return [];
      // "Three rooms, 44, 51 and 38 around": told before them.
      const first = [...sentence.matchAll(saying('<LAN>', 'g'))].find(
        (f) => isRead(taken, Number(f[1])) && !taken.sold.has(Number(f[1])),
      );
      if (figure.unit === null && places.some((n) => figure.value.equals(n)) && m.index < (first?.index ?? 0))
        return [];
      return (figure.unit === null ? isCount(figure, before, sentence.slice(m.index)) : isSize(said, figure, behind))
        ? [figure.quote]
        : [];
    });
  });
}

function isSize(said: Said, figure: Figure, behind: string): boolean {
  const long = figure.kind === 'area' ? null : feet(said, figure, null);
  // Fifteen inches wide are goods.
  if (!figure.sure || (long && /^ wide\b/.test(behind) && long.compare(2) < 0)) return false;
  return long === null || long.compare(1) >= 0;
}

/** Two and more of something, or a side whose unit was not said; a pair of them is the size of goods. */
const isCount = ({ value }: Figure, before: string, from: string): boolean =>
  value.compare(2) >= 0 &&
  !/(?:\} ?(?:x|by) ?|\b(?:bedroom|room|unit|number|lot|phase|bath|no|all|all the|all of the) )$/.test(before) &&
  !/^\{[A-Z]\d+\} ?(?:x|by)\b/.test(from) &&
  // Every room has them.
  !(value.equals(4) && /^\{[A-Z]\d+\} (?:walls|corners|sides)\b/.test(from)) &&
  !new RegExp(`^(?:${COUNTED_FITTINGS.source})`).test(from);

const PACK =
  /\b(?:box|cartons?|cases?|bags?|sacks?|bundles?|rolls?|cans?|tins?|pails?|buckets?|tubs?|tubes?|cartridges?|pallets?|packs?|gallons?)\b|\{[KV]\d+\}/;
const FASTENS = /\b(?:screws?|nails?|bolts?|clips?|staples?|hangers?|brackets?|anchors?|ties)\b/;
const KEEPS = /\b(?:left|leftover|used|unopened|have|has|got|found|there's|theres)\b/;

/**
 * Figures in a sentence of packs, naming no other goods, that no reader took: what the pack holds, perhaps. The usual
 * pack is not taken in their stead.
 */
export function unreadPacks(said: Said, taken: Taken, goods: readonly Goods[], of: Goods): string[] {
  const others = goods.filter((g) => g !== of).flatMap((g) => g.item.split(' ').at(-1)!);
  return sentencesOf(said.words).flatMap((sentence) => {
    if (!PACK.test(sentence) || FASTENS.test(sentence) || KEEPS.test(sentence)) return [];
    if (others.some((word) => new RegExp(`\\b${word}`).test(sentence))) return [];
    return [...sentence.matchAll(saying('<AN>', 'g'))].flatMap((m) => {
      const figure = said.figures[Number(m[1])]!;
      const plain = figure.value.compare(2) >= 0 && !/^ ?(?:x|by)\b/.test(sentence.slice(m.index + m[0].length));
      return isRead(taken, Number(m[1])) || figure.per || !plain ? [] : [figure.quote];
    });
  });
}
