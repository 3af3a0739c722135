import { likeness, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { headOf } from '../list/match.ts';
import { likeliest } from './found.ts';
import { openNeed, toBuy } from './left.ts';
import type { Goods, Position } from './position.ts';

/** The goods that some words mean: by name, or by the pack that they come in ("both tubes"); the latest wanted first. */
export function meant(
  goods: Goods,
  words: ReadonlySet<string>,
  fits: (p: Position) => boolean,
  pack: string | null = null,
  count: number | null = null,
): Position | null {
  if (!words.size) return null;
  // "6 bolts", where six of one kind and eight of another are wanted.
  const best = likeliest(goods, words, 0.74, (p) =>
    p.dropped || !fits(p)
      ? null
      : likeness(words, p.words) +
        (count !== null && toBuy(p)?.equals(count) ? 0.01 : 0) +
        // "Worktops" are the oak worktops, and not the worktop bolts.
        (words.has(headOf(p.item)) ? 0.02 : 0) -
        0.001 * Math.abs(p.words.size - words.size),
  );
  if (best) return best;
  // "The roll of 12/2", where one thing alone is wanted by the roll.
  const packed = pack === null ? [] : goods.all.filter((p) => !p.dropped && fits(p) && p.unit && stem(p.unit) === pack);
  if (packed.length === 1) return packed[0]!;
  const only = words.size === 1 ? [...words][0]! : null;
  const short = only === null ? null : shortFor(goods, only, fits);
  if (short) return short;
  return (
    goods.all.findLast(
      (p) => !p.dropped && fits(p) && only !== null && ((p.unit !== null && stem(p.unit) === only) || p.size === only),
    ) ?? null
  );
}

/** "Conc" is concrete, and "tubes" are sonotubes: the only goods whose name begins or ends so. */
export function shortFor(goods: Goods, word: string, fits: (p: Position) => boolean): Position | null {
  const short = goods.all.filter((p) => !p.dropped && fits(p) && isShortFor(word, p));
  return short.length === 1 ? short[0]! : null;
}

const isShortFor = (word: string, { words }: Position): boolean =>
  [...words].some(
    (own) =>
      own.length > word.length + 2 &&
      ((word.length > 3 && own.startsWith(word)) || (word.length > 2 && own.endsWith(word))),
  );

/** The goods named last before a place, in its own sentence or, failing that, in the one before. */
export function lastNamed(goods: Goods, own: string, before: string): Position | null {
  // Where the sentence names a thing of its own, that is what was ordered, on the list or not.
  const names = [...wordsOf(own)].some((word) => !/^(?:none|any|stor|yard|supply|hous|suppl|out|had)/.test(word));
  const sentence = before.split(/[.;!?\n]/).findLast((s) => s.trim()) ?? '';
  for (const text of names ? [own] : [own, sentence]) {
    const words = [...wordsOf(text)];
    for (let k = words.length; k > 0; k--) {
      const filed = [...(goods.byWord.get(words[k - 1]!) ?? [])].filter((p) => !p.dropped && openNeed(p));
      const fits = filed.filter((p) => likeness(new Set(words), p.words) >= 0.5);
      if (fits.length) return fits.at(-1)!;
    }
  }
  return null;
}
