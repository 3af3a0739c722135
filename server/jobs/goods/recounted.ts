import { likeness, stem, wordsOf } from '../../../parser/trade/likeness.ts';
import { lowered } from '../../../parser/trade/words.ts';
import { headOf } from '../list/match.ts';
import { NUMBER, numberOf } from '../said/numbers.ts';
import { likeliest } from './found.ts';
import { openNeed, toBuy } from './left.ts';
import { piecesOf } from './pieces.ts';
import type { Goods, Position } from './position.ts';

/** How many there were at the store, or are to be after all, of goods that stand on the order. */
export interface Recounted {
  position: Position;
  /** `bought`: so many were taken. `need`: so many are wanted in all. */
  status: 'bought' | 'need';
  count: number;
  start: number;
  end: number;
}

const NAME = "((?:(?!\\b(?:and|got|but|only)\\b)[a-z0-9 /'-]){2,31}?)";
/** No count, but a size: "only had the half inch", "two ten packs". */
const NO_SIZE = `(?! (?:${NUMBER}|inch|inches|in(?! the)|foot|feet|footers?|ft|by|gauge|gang|hundred)\\b)(?![-/.x"\\d])`;

/** "Tile they only had eight", "balances: the store had only one in the 30", "deck boards only three straight ones". */
const ALL_THEY_HAD = new RegExp(
  `(?:^|[.;!?,:\\n]|\\b(?:and|got|the)\\b) *${NAME}[:,]?(?: but)? (?:(?:they|he|she|(?:the )?[a-z]+) (?:only had|had only|just had)|only)(?: the)? (${NUMBER})\\b${NO_SIZE}`,
  'g',
);
/** What was there was not taken: "no good", "so no plates", "didn't buy it". */
const LEFT_THERE =
  /^[^.;!?\n]{0,40}\b(?:no good|so no|(?:left|leave) (?:it|them|those)|(?:didn't|did not|didnt|don't|dont) (?:buy|take|get|want)|wrong)\b/;

/** "Alarms make that five not four", "make it four brackets instead of three", "make them hooks six". */
const MADE = new RegExp(
  `(?:([a-z0-9][a-z0-9-]*(?: [a-z]+)?),? )?(?:no )?\\bmake (?:it|that|them|those|the)(?: ([a-z]+?s?))? (${NUMBER})\\b${NO_SIZE}(?:((?: [a-z]+){0,2}?) (?:not|instead of|rather than) (${NUMBER})\\b)?`,
  'g',
);

/**
 * "It's just the one sink we need", "ten knobs, not nine", "two of the alarms is plenty", "don't need four alarms, two is
 * enough": so many in all, with the count that no longer holds where it was said.
 */
const IN_ALL: readonly RegExp[] = [
  `\\bit'?s (?:just|only|really)(?: the)? (?<count>${NUMBER})\\b${NO_SIZE} (?<name>[a-z0-9 /'-]{2,31}?) (?:that )?(?:we|i|you|he|she|they) (?:need|want)\\b`,
  `\\b(?<count>${NUMBER})\\b${NO_SIZE} (?<name>[a-z][a-z0-9 /'-]{1,31}?),? (?:and )?not (?<was>${NUMBER})\\b${NO_SIZE}(?! (?:of|or|in|to|more)\\b)`,
  `\\b(?:don't|dont|do not|won't|no longer) need (?<was>${NUMBER})\\b${NO_SIZE} (?<name>[a-z][a-z0-9 /'-]{1,31}?)[,;.]? (?:just |only )?(?<count>${NUMBER})(?: (?:is|are|will be|should be|would be) (?:plenty|enough|fine|all we need))?(?=[.,;!?\\n]|$)`,
  `\\b(?<count>${NUMBER})(?: of the)?${NO_SIZE} (?<name>[a-z][a-z0-9 /'-]{1,31}?) (?:is|are|will be|should be|would be) (?:plenty|enough|all (?:we|i) need)\\b`,
].map((says) => new RegExp(says, 'g'));

/** "Cancel two of the pendants", "two fewer hinges": so many less than were wanted. */
const FEWER: readonly RegExp[] = [
  `\\b(?:cancel|drop|lose|scratch|skip|take off|knock off) (?<less>${NUMBER})\\b${NO_SIZE}(?: of (?:the|those|them|our))? (?<name>[a-z][a-z0-9 /'-]{1,31}?)(?=[.,;!?\\n]|$| (?:off|from|and|so|because|cause|for|in)\\b)`,
  `\\b(?<less>${NUMBER}) (?:fewer|less) (?<name>[a-z][a-z0-9 /'-]{1,31}?)(?=[.,;!?\\n]|$| (?:than|and|so|because|cause|for|in|now)\\b)`,
].map((says) => new RegExp(says, 'g'));

/** Every place in a text that says how many are wanted in all, or how many fewer. */
const wantedInAll = (said: string, goods: Goods): Recounted[] =>
  [...IN_ALL, ...FEWER].flatMap((says) =>
    [...said.matchAll(says)].flatMap(({ 0: whole, index, groups }): Recounted[] => {
      const { name, count, was, less } = groups!;
      const old = was === undefined ? null : numberOf(was);
      const position = wanted(
        goods,
        wordsOf(name!),
        (p) => old === null || toBuy(p)?.equals(old) === true || p.need?.equals(old) === true,
      );
      const left = less === undefined ? numberOf(count!) : position?.need?.sub(numberOf(less)!).valueOf();
      return position && left && left > 0
        ? [{ position, status: 'need', count: left, start: index, end: index + whole.length }]
        : [];
    }),
  );

/** Every place in a text, lower case, that counts goods of the order anew. */
export function recounted(said: string, goods: Goods): Recounted[] {
  const out: Recounted[] = wantedInAll(said, goods);
  for (const match of said.matchAll(ALL_THEY_HAD)) {
    const [whole, name, count] = match;
    const end = match.index + whole.length;
    if (LEFT_THERE.test(said.slice(end))) continue;
    const position = wanted(goods, wordsOf(name!), () => true);
    if (position) out.push({ position, status: 'bought', count: numberOf(count!)!, start: match.index, end });
  }
  for (const match of said.matchAll(MADE)) {
    const [whole, before = '', between = '', count, after = '', was] = match;
    const old = was === undefined ? null : numberOf(was);
    const fits = (p: Position) => old === null || toBuy(p)?.equals(old) === true || p.need?.equals(old) === true;
    const position = wanted(goods, wordsOf(`${between} ${after}`), fits) ?? wanted(goods, wordsOf(before), fits);
    const only = goods.all.filter((p) => openNeed(p) && fits(p));
    const found = position ?? (old !== null && only.length === 1 ? only[0]! : null);
    if (found)
      out.push({
        position: found,
        status: 'need',
        count: numberOf(count!)!,
        start: match.index + whole.indexOf('make'),
        end: match.index + whole.length,
      });
  }
  return out;
}

/** "Make it two gfis and two plates", told of goods that the same note or an earlier one asked for. */
const MADE_EACH = new RegExp(
  `\\bmake (?:it|that|them|those) ((?:${NUMBER}) [^.;!?\\n]+?)(?=[.;!?\\n]|$| (?:i|we|he|she|they|it|because|cause|since|so|for|but|that's)\\b)`,
  'g',
);

/** Whether words may tell such a list. */
export const countsAnew = (text: string): boolean => /\bmake (?:it|that|them|those) /.test(lowered(text));

/** Every count of such a list, once the note's own words have been met: so many are wanted in all. */
export const countsMade = (said: string, goods: Goods): Recounted[] =>
  [...said.matchAll(MADE_EACH)].flatMap(({ 0: whole, 1: list, index }) =>
    piecesOf(list!, index + whole.indexOf(list!)).flatMap(({ words, count, pack, start, end }): Recounted[] => {
      if (count === null) return [];
      const position = likeliest(goods, words, 0.75, (p) =>
        p.need === null || p.dropped || !words.has(headOf(p.item)) || (pack && p.unit && stem(p.unit) !== pack)
          ? null
          : [...words].filter((word) => p.words.has(word)).length / words.size,
      );
      return position && position.need?.equals(count) === false
        ? [{ position, status: 'need', count, start, end }]
        : [];
    }),
  );

/** Goods still wanted that go by one of some words and fit; the best named, then the latest. */
const wanted = (goods: Goods, words: ReadonlySet<string>, fits: (p: Position) => boolean): Position | null =>
  likeliest(goods, words, 0.5, (p) => (openNeed(p) && p.need !== null && fits(p) ? likeness(words, p.words) : null));
