import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { orderOf } from './order.ts';

/** A job's notes told by hand, with the order that they come to: `fixtures/trade/seen.jsonl`, one case a line. */
interface Case {
  id: string;
  rooms: string[];
  notes: { text: string }[];
  want: { order?: { item: string; quantity: number }[]; noOrder?: string[] };
  because: string;
}

const cases = readFileSync(new URL('../../fixtures/trade/seen.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line): Case => JSON.parse(line));

describe('notes told in several voices', () => {
  it.each(cases.map((c): [string, Case] => [c.id, c]))('%s', (_, { rooms, notes, want, because }) => {
    const { order } = orderOf(rooms, ...notes.map((n) => n.text));
    for (const { item, quantity } of want.order ?? []) {
      const head = item.split(' ').at(-1)!.replace(/s$/, '');
      const line = order.find((l) => l.includes(head) && l.includes(`: ${quantity} `));
      expect(line, `${item} ${quantity}: ${because}; got ${order.join(', ')}`).toBeDefined();
    }
    for (const item of want.noOrder ?? []) expect(order.filter((l) => l.includes(item))).toEqual([]);
  });
});
