import type { Material } from '../../types.ts';
import { isGoods, isNounTerm } from '../chunks.ts';
import { base } from '../make.ts';
import { phrase, type Talk } from '../talk.ts';

const GOT =
  /^(?:(?:i|we|i've|we've) )?(?:already )?(?:got|have) (?:that|those|them|it|some|these|enough)(?: already| covered| here)?$/;

/** True where a clause says that what was just named is there: "got that already". */
export const isGot = (said: string): boolean => GOT.test(said) && /\b(?:already|covered|here)\b/.test(said);

/** "Ceilings flat white, got that already": goods that are only named, and are there. */
export function onHandIn(talk: Talk, facts: readonly Material[]): Material[] {
  return talk.frames.flatMap((frame, at): Material[] => {
    const last = talk.frames[at - 1];
    if (!last || !isGot(frame.chunks.map((c) => c.word).join(' ')) || last.predicate !== 'none') return [];
    const goods = last.chunks.findLast(isGoods);
    if (!goods || facts.some((f) => f.start <= goods.start && goods.end <= f.end)) return [];
    const first = last.chunks.findIndex((c) => isNounTerm(c) && c !== goods);
    const own = last.chunks.slice(last.chunks.indexOf(goods));
    return [
      {
        ...base(talk, frame, 'material/have', { start: (first === 0 ? last : goods).start, end: frame.end }),
        kind: 'material',
        item: phrase(first === 0 ? last.chunks : own),
        size: null,
        specs: [],
        quantity: null,
        exact: null,
        atLeast: null,
        unit: null,
        status: 'have',
        counts: 'plain',
      },
    ];
  });
}
