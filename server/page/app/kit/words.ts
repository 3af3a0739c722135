import { unitWord } from '../../../../parser/quantities/containers.ts';
import { shownOf } from '../../../../parser/shown.ts';
import type { Fact } from '../../../../parser/types.ts';
import { perhapsDoneBy } from '../../../jobs/list/perhapsDone.ts';
import { isLive } from '../../../jobs/live.ts';
import type { Item, OrderLine } from '../../../jobs/types.ts';
import { goodsWord, isReady, moneyWords, usesText, waitWords, whenWords } from '../../../talk/wording.ts';
import { daysSpelt, dayWords } from './clock.ts';
import { decimalOf } from './typedNumber.ts';

/** `11/8` as a tape reads it: `1-3/8`. Denominators that no tape has are given as decimals. */
export function fractionWords(exact: string): string {
  const [top = 0, bottom = 1] = exact.split('/').map(Number);
  if (bottom === 1) return String(top);
  if (![2, 3, 4, 8, 16, 32, 64].includes(bottom)) return String(Math.round((top / bottom) * 1000) / 1000);
  const whole = Math.trunc(top / bottom);
  const rest = `${Math.abs(top % bottom)}/${bottom}`;
  return whole ? `${whole}-${rest}` : `${top < 0 ? '-' : ''}${rest}`;
}

/** `2 bags`, `1 box`, `41-5/8 in`; a count of single things has no unit. */
export function quantityWords(exact: string, unit: string | null): string {
  // From six feet up a tape is read in feet.
  if (unit === 'in' && decimalOf(exact) >= 72) return feetWords(exact);
  const amount = fractionWords(exact);
  if (unit === null || unit === 'each') return amount;
  return `${amount} ${unitWord(unit, decimalOf(exact) > 1)}`;
}

function feetWords(inches: string): string {
  const [top = 0, bottom = 1] = inches.split('/').map(Number);
  const feet = Math.floor(top / bottom / 12);
  const rest = top - feet * 12 * bottom;
  return rest ? `${feet} ft ${fractionWords(bottom === 1 ? String(rest) : `${rest}/${bottom}`)} in` : `${feet} ft`;
}

/** One word for the kind of fact, shown on its chip. */
export function kindWord(fact: Fact): string {
  switch (fact.kind) {
    case 'material':
      return {
        need: 'to buy',
        have: 'on hand',
        used: 'used',
        bought: 'bought',
        returned: 'returned',
        ordered: 'ordered',
        mentioned: 'named',
      }[fact.status];
    case 'measurement':
      return fact.role === 'wanted' ? 'cut to' : 'size';
    case 'problem':
      return fact.state === 'fixed' ? 'fixed' : 'problem';
    case 'followUp':
      return 'to do';
    case 'done':
      return 'done';
    case 'decision':
      return 'decided';
    case 'spending':
      return 'spent';
    case 'command':
      return 'list';
  }
}

/** What the fact says, without its kind. */
export function factWords(fact: Fact, today: string): string {
  switch (fact.kind) {
    case 'material': {
      const amount = fact.exact === null ? '' : quantityWords(fact.exact, fact.unit);
      return [
        amount,
        goodsOf({ item: fact.item, unit: fact.unit, quantity: fact.exact }),
        fact.size && !fact.item.includes(fact.size) ? fact.size : '',
        ...fact.specs,
      ]
        .filter(Boolean)
        .join(' ');
    }
    case 'measurement':
      return `${fact.of} ${quantityWords(fact.exact, fact.unit)}`;
    case 'problem':
      return fact.wording ?? `${fact.thing}: ${fact.defect}`;
    case 'followUp': {
      const day = fact.notBefore
        ? `from ${dayWords(fact.notBefore, today)}`
        : fact.due
          ? `by ${dayWords(fact.due, today)}`
          : '';
      return [shownOf(fact), fact.who ? `(${fact.who})` : '', day].filter(Boolean).join(' ');
    }
    case 'done':
      return shownOf(fact);
    case 'decision':
      return fact.what;
    case 'spending':
      return `${moneyWords(fact.amount, fact.currency)}${fact.on ? `, ${fact.on}` : ''}`;
    case 'command':
      return fact.verb === 'ask'
        ? fact.question === 'told'
          ? `asked about: ${fact.about}`
          : `asked: ${fact.question ?? 'list'}`
        : [fact.verb, fact.number && `no. ${fact.number}`, fact.to && `to ${fact.to}`].filter(Boolean).join(' ');
  }
}

export function amountWords(line: Pick<OrderLine, 'quantity' | 'unit'>): string {
  return line.quantity === null ? 'how many?' : quantityWords(line.quantity, line.unit);
}

/** How an order line stands, in words. */
export const stateWords = ({ state }: Pick<OrderLine, 'state'>): string =>
  state === 'have' ? 'on hand' : state === 'unsure' ? 'not sure' : state;

/** `deck boards` for four of them. */
export const goodsOf = ({ item, unit, quantity }: Pick<OrderLine, 'item' | 'unit' | 'quantity'>): string =>
  goodsWord(item, unit, quantity !== null && decimalOf(quantity) > 1);

export const lineWords = (line: OrderLine) =>
  [
    amountWords(line),
    goodsOf(line),
    line.size && !line.item.includes(line.size) ? line.size : '',
    line.specs.join(', '),
    usesText(line.uses),
  ]
    .filter(Boolean)
    .join(' ');

/** What stands under an item's task: whose, when, what it waits for. */
export function itemNotes(item: Item, today: string): string[] {
  const notes: string[] = [];
  if (item.state === 'unsure' && item.history[0]?.words) notes.push(`heard: ${item.history[0].words}`);
  const doneBy = perhapsDoneBy(item);
  if (doneBy) notes.push(`perhaps done: ${doneBy}`);
  if (item.who) notes.push(item.who);
  const waits = item.state === 'waiting' && waitWords(item.waitingFor);
  if (waits) notes.push(waits);
  return isLive(item) ? [...notes, ...whenWords(item, today).map((when) => daysSpelt(when, today))] : notes;
}

/** Ready is what can be worked on now; what is set for a later day is not. */
export const stateWord = (item: Item, today: string): string =>
  item.state === 'unsure' ? 'not sure' : item.state !== 'open' ? item.state : isReady(item, today) ? 'ready' : 'later';

export const isClosed = (item: Pick<Item, 'state'>) => !isLive(item) && item.state !== 'unsure';

export const capital = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** Ready first, what is due soonest before the rest; then by the day from which it can be worked on; then by number. */
export const readyFirst = (today: string) => (a: Item, b: Item) => {
  const rank = (item: Item) => (isReady(item, today) ? 0 : isLive(item) ? 1 : 2);
  const day = (item: Item) => (isReady(item, today) ? null : item.readyOn) ?? item.due ?? '9';
  return rank(a) - rank(b) || day(a).localeCompare(day(b)) || a.number - b.number;
};
