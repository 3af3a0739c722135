/** Whatever a job knows of one thing or one person: "is the hatch done", "how many sticks did I say", "when is Sal coming". */
import { lengthText } from '../../parser/quantities/format.ts';
import { stem, wordsOf } from '../../parser/trade/likeness.ts';
import type { Reply } from '../http/api.ts';
import { isLive } from '../jobs/live.ts';
import type { Item, JobState, OrderLine } from '../jobs/types.ts';
import { answerLine, itemText, orderText } from './lineText.ts';
import { closedTask } from './wording.ts';

type Line = Reply['lines'][number];

/** So many lines are read on a ladder. */
const MOST = 5;
/** So much of what was asked about must be in what is told. */
const ENOUGH = 0.5;

/** Words of a question that name nothing: what is done to a thing, and what it is sold in. */
const NOTHING = new Set(
  'call ring text do go get come finish order buy pick fetch say said need want have left like stick box bag roll tube sheet can pack piece pair gallon many much thing one time day ever supposed'
    .split(' ')
    .map(stem),
);

/** What is told of it, the likeliest first: open items and goods, sizes, then what is closed. */
export function toldOf(state: JobState, about: string): Line[] {
  const asked = wordsOf(about);
  const named = new Set([...asked].filter((word) => !NOTHING.has(word)));
  const sought = named.size ? named : asked;
  const today = state.asOf.slice(0, 10);
  const found = [
    ...state.items.filter(isLive).map((item) => ({ line: itemLine(item, today), words: wordsInItem(item) })),
    ...state.order.map((goods) => ({ line: answerLine(goodsLine(goods)), words: wordsInGoods(goods) })),
    ...state.onHand.map((goods) => ({ line: answerLine(`On hand: ${orderText(goods)}.`), words: wordsOf(goods.item) })),
    ...state.measurements.map((m) => ({
      line: answerLine(`${m.of}: ${lengthText(m.exact, m.unit)}`),
      words: wordsOf(`${m.of} ${m.area ?? ''}`),
    })),
    ...state.items
      .filter((item) => !isLive(item) && item.state !== 'unsure')
      .map((item) => ({ line: closedLine(item), words: wordsInItem(item) })),
  ].map(({ line, words }) => ({ line, part: [...sought].filter((word) => words.has(word)).length / sought.size }));
  const most = Math.max(ENOUGH, ...found.map(({ part }) => part));
  const lines = found.filter(({ part }) => part === most).map(({ line }) => line);
  if (!lines.length) return [answerLine(`Nothing is told of "${about}".`)];
  return lines.length > MOST ? [...lines.slice(0, MOST), answerLine(`and ${lines.length - MOST} more.`)] : lines;
}

const wordsInItem = ({ task, thing, problem, area, who }: Item) =>
  wordsOf([task, thing, problem, area, who].filter(Boolean).join(' '));
const wordsInGoods = ({ item, size, specs, uses = [] }: OrderLine) =>
  wordsOf([item, size, ...specs, ...uses].filter(Boolean).join(' '));

const itemLine = (item: Item, today: string): Line =>
  answerLine(`${item.number}. ${itemText(item, today)}: ${item.state}`, item.number);

const closedLine = (item: Item): Line =>
  answerLine(`${item.number}. ${closedTask(item)}: closed ${item.closedOn ?? ''}`.trim(), item.number);

const STANDS: Record<OrderLine['state'], string> = {
  'to buy': 'to buy',
  ordered: 'on order',
  bought: 'bought',
  have: 'on hand',
  unsure: 'not sure if still to buy',
};

const goodsLine = (goods: OrderLine): string => `${orderText(goods)}: ${STANDS[goods.state]} (${goods.because})`;
