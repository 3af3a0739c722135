import type { Spending } from '../types.ts';
import { base } from './make.ts';
import { lastGoods, phrase, type Talk } from './talk.ts';

/** "Ran me sixty two bucks", "dumpster is $385": money, kept apart from quantities, with what it went on. */
export function readSpending(talk: Talk): Spending[] {
  return talk.frames.flatMap((frame, at) =>
    frame.chunks
      .filter((c) => c.notQuantity?.kind === 'money' && c.notQuantity.value !== undefined)
      .map((c): Spending => {
        const goods = lastGoods(talk, at, c.start);
        return {
          ...base(talk, frame, 'spending/money', { start: c.start, end: c.end }),
          kind: 'spending',
          amount: c.notQuantity!.value!.valueOf(),
          currency: /£|quid|pound/.test(c.word) ? 'GBP' : /€|euro/.test(c.word) ? 'EUR' : 'USD',
          on: goods.length ? phrase(goods) : null,
        };
      }),
  );
}
