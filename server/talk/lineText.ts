/** Items, goods and checks, each told in one line. */
import Fraction from 'fraction.js';
import { unitWord } from '../../parser/quantities/containers.ts';
import { plain } from '../../parser/quantities/format.ts';
import type { Reply } from '../http/api.ts';
import { perhapsDoneBy } from '../jobs/list/perhapsDone.ts';
import { isLive } from '../jobs/live.ts';
import type { Check, Item, OrderLine } from '../jobs/types.ts';
import { areaOf, goodsWord, whenWords } from './wording.ts';

/** A line that tells what was asked, of no one item unless it is given. */
export const answerLine = (text: string, item: number | null = null): Reply['lines'][number] => ({
  kind: 'answer',
  text,
  item,
});

/** The line begins with that word already. */
export const decided = (what: string): string =>
  what.replace(/^(?:(?:they|she|he|owner) )?decided (?:on |to |that )?/, '');

/** `guard height: does not fit. 34 in against 36 in (IRC R312.1.2)`; what must be known where it cannot be said. */
export const checkText = ({ of, result, figure, limit, source, missing }: Check): string =>
  result === 'cannot say'
    ? `${of}: cannot say without ${missing}${figure && ` (${figure} so far${limit && `, limit ${limit}`})`} (${source})`
    : `${of}: ${result}. ${figure} against ${limit} (${source})`;

/**
 * `plane door (hall), Luis, by 2026-05-15`; days that are past are not told, but for one that was missed. What may be done
 * says by which words: `plane door (hall), perhaps done: "shuts sweet"`.
 */
export const itemText = (item: Item, today: string): string =>
  [
    `${item.task}${areaOf(item) ? ` (${item.area})` : ''}`,
    ...(item.who ? [item.who] : []),
    ...(isLive(item) ? whenWords(item, today) : []),
    ...perhapsWords(item),
  ].join(', ');

const perhapsWords = (item: Item): string[] => {
  const words = perhapsDoneBy(item);
  return words === null ? [] : [`perhaps done: "${words.trim()}"`];
};

type Goods = Pick<OrderLine, 'item' | 'size' | 'quantity' | 'unit'>;

const overOne = (goods: Pick<Goods, 'quantity'>) => new Fraction(goods.quantity ?? 1).compare(1) > 0;

/** `2 bags`, `3`, `some` where nobody said how many. */
export const amount = (goods: Pick<Goods, 'quantity' | 'unit'>): string =>
  goods.quantity === null
    ? 'some'
    : `${plain(new Fraction(goods.quantity))} ${goods.unit === null || goods.unit === 'each' ? '' : unitWord(goods.unit, overOne(goods))}`.trim();

/** `deck boards, 12 ft` for four of them. */
export const thingText = (goods: Goods): string =>
  `${goodsWord(goods.item, goods.unit, overOne(goods))}${goods.size && !goods.item.includes(goods.size) ? `, ${goods.size}` : ''}`;

/** `3 bags thinset`, `4 deck boards, 12 ft`. */
export const orderText = (goods: Goods): string => `${amount(goods)} ${thingText(goods)}`;
