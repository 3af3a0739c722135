import { likeness, wordsOf } from '../../parser/trade/likeness.ts';
import type { Fact, Material, MaterialStatus } from '../../parser/types.ts';
import type { Reply } from '../http/api.ts';
import type { JobState, OrderLine } from '../jobs/types.ts';
import { amount, answerLine, orderText } from './lineText.ts';
import { perhapsToBuy } from './wording.ts';

type Line = Reply['lines'][number];

/** Why goods left the order, as the note told it. */
const offOrder: Partial<Record<MaterialStatus, string>> = {
  bought: 'Bought, off the order',
  ordered: 'On order',
  have: 'On hand, off the order',
};

const buy = (text: string): Line => ({ kind: 'buy', text, item: null });

/** What a note changed on the order; a count that changes says why. */
export function orderLines(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  const had = new Map(before.order.map((l) => [l.key, l]));
  const kept = new Set(after.order.map((l) => l.key));
  const off = (line: OrderLine) => {
    const words = wordsOf(line.item);
    const told = facts.find(
      (f): f is Material => f.kind === 'material' && f.status in offOrder && likeness(wordsOf(f.item), words) >= 0.75,
    );
    return (told && offOrder[told.status]) ?? 'Off the order';
  };
  return [
    ...after.order.flatMap((line) => {
      const old = had.get(line.key);
      if (line.state === 'unsure') return [];
      // What was not sure and is to buy again with no word said of it is no news.
      if (old?.state === 'unsure' && old.history.length === line.history.length) return [];
      if (!old || old.state === 'unsure') return buy(`To buy: ${orderText(line)}`);
      if (old.quantity === line.quantity) return [];
      return buy(`To buy is now ${orderText(line)} (was ${amount(old)}): ${changedBecause(old, line)}`);
    }),
    ...before.order.filter((line) => !kept.has(line.key)).map((line) => buy(`${off(line)}: ${orderText(line)}`)),
  ];
}

/** What the order tells of a line that it did not tell before; all of it where only the stock of it changed. */
function changedBecause(old: OrderLine, line: OrderLine): string {
  const known = new Set(old.because.split('; '));
  const fresh = line.because.split('; ').filter((reason) => !known.has(reason));
  return fresh.join('; ') || line.because;
}

/**
 * Goods likelier got by now than still to buy: in one line, and only where the note speaks of goods. The order itself tells
 * of them at any time.
 */
export function unsureGoods(before: JobState, after: JobState, facts: readonly Fact[]): Line[] {
  if (!facts.some((f) => f.kind === 'material' && f.status !== 'mentioned')) return [];
  const known = new Set(before.order.flatMap((l) => (l.state === 'unsure' ? l.key : [])));
  const goods = after.order.filter((l) => l.state === 'unsure' && !known.has(l.key));
  if (!goods.length) return [];
  const text = `${perhapsToBuy}: ${goods.map(orderText).join('; ')}. If so, say "still need the ${goods[0]!.item}"`;
  return [answerLine(text)];
}
