/** Whatever a job knows of one thing or one person: "is the hatch done", "how many sticks did I say", "when is Sal coming". */
import { tokenise } from '../../parser/hearing/tokens.ts';
import { lengthText } from '../../parser/quantities/format.ts';
import { readTimes } from '../../parser/times/index.ts';
import { stem, wordsOf } from '../../parser/trade/likeness.ts';
import type { Reply } from '../http/api.ts';
import { isLive } from '../jobs/live.ts';
import type { Item, JobState, OrderLine } from '../jobs/types.ts';
import { answerLine, itemText, orderText } from './lineText.ts';
import { closedTask, shortDay } from './wording.ts';

type Line = Reply['lines'][number];

/** So many lines are read on a ladder. */
const MOST = 5;
/** So much of what was asked about must be in what is told. */
const ENOUGH = 0.5;

/** Words of a question that name nothing: what is done to a thing, and what it is sold in. */
const NOTHING = new Set(
  'hold call ring text do go get come finish order buy pick fetch say said need want have left like stick box bag roll tube sheet can pack piece pair gallon many much thing one time day ever supposed'
    .split(' ')
    .map(stem),
);

/** What is told of it, the likeliest first: open items and goods, sizes, then what is closed. */
export function toldOf(state: JobState, about: string): Line[] {
  const day = dayNamed(about, state.asOf);
  if (day) return onDay(state, day);
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
  const shown = lines.slice(0, MOST);
  const numbers = shown.flatMap(({ item }) => item ?? []);
  return [
    ...shown,
    ...(lines.length > MOST ? [answerLine(`and ${lines.length - MOST} more.`)] : []),
    // What can hurt is said with whatever is asked about it.
    ...state.cautions
      .filter(({ items }) => items.some((number) => numbers.includes(number)))
      .map(({ text }) => answerLine(text)),
  ];
}

/** The day that all of the words name, local ISO; null where they name something else. */
function dayNamed(about: string, asOf: string): string | null {
  const [day] = readTimes(tokenise(about), about, { now: asOf, quantities: [] });
  return day && day.end - day.start >= about.length - ARTICLE ? day.date : null;
}
/** "The weekend": so many letters may stand before a day. */
const ARTICLE = 4;

/** What is set for a day, or due on it. */
function onDay({ items, asOf }: JobState, day: string): Line[] {
  const set = items.filter((item) => isLive(item) && (item.due === day || item.readyOn === day));
  return set.length
    ? set.map((item) => itemLine(item, asOf.slice(0, 10)))
    : [answerLine(`Nothing is set for ${shortDay(day)}.`)];
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
