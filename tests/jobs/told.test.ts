import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import { at, END, told } from './days.ts';
import { JOB, material, note, problem } from './made.ts';

const order = (...texts: string[]) => told(...texts).order.map((l) => [l.item, l.quantity, l.unit]);

describe('goods told by words that point back', () => {
  const need = 'need two tubes of caulk and one hinge';

  it('fetched without a count', () => {
    expect(order(need, 'got the hinge and both tubes')).toEqual([]);
    expect(order(need, 'picked up one tube of the caulk and the hinge')).toEqual([['caulk', '1', 'tube']]);
  });

  it('ordered and come', () => {
    expect(order(need, 'they were out of caulk so I ordered it')).toEqual([['hinge', '1', 'each']]);
    const come = told(need, 'they were out of caulk so I ordered it', 'caulk showed up');
    expect(come.onHand).toEqual([{ item: 'caulk', size: null, quantity: '2', unit: 'tube' }]);
  });

  it('counted anew', () => {
    expect(order(need, 'make the hinges three not one')).toEqual([
      ['caulk', '2', 'tube'],
      ['hinge', '3', 'each'],
    ]);
  });

  it('still short is no new need, one more is', () => {
    expect(order(need, 'got one tube of caulk and the hinge', 'still need one tube of caulk')).toEqual([
      ['caulk', '1', 'tube'],
    ]);
    expect(order(need, 'got the hinge and both tubes', 'need one more tube of caulk')).toEqual([
      ['caulk', '1', 'tube'],
    ]);
  });

  it('every line has its because', () => {
    for (const line of told(need, 'make the hinges three not one').order) expect(line.because).toMatch(/2026-03-0\d/);
  });
});

describe('the position of goods', () => {
  const state = (...facts: Parameters<typeof material>[]) =>
    fold(
      JOB,
      facts.map((f, k) => note(`m${k}`, at(k + 1), material(...f))),
      END,
    );

  it('two rooms add up, a room said twice does not', () => {
    const rooms = state(
      ['hinge', 2, 'need', { area: 'kitchen' }],
      ['hinge', 3, 'need', { area: 'hall' }],
      ['hinge', 3, 'need', { area: 'hall' }],
    );
    expect(rooms.order.map((l) => l.quantity)).toEqual(['5']);
  });

  it('what was used without buying was there', () => {
    expect(state(['hinge', 3, 'need'], ['hinge', 1, 'used']).order.map((l) => l.quantity)).toEqual(['2']);
  });

  it('what went back is wanted again', () => {
    expect(
      state(['hinge', 1, 'need'], ['hinge', 1, 'bought'], ['hinge', 1, 'returned']).order.map((l) => l.quantity),
    ).toEqual(['1']);
  });
});

describe('work told in short', () => {
  it('closes what stands open', () => {
    const closed = (text: string) =>
      fold(
        JOB,
        [
          note('a', at(1), problem('handrail bracket', 'loose', 'hall')),
          { ...note('b', at(2)), what: { kind: 'noteRead', facts: [], text, parser: '1' } },
        ],
        END,
      ).items.map((i) => i.state);
    expect(closed('handrail bracket tightened with longer screws')).toEqual(['done']);
    expect(closed('handrail bracket is not tightened yet')).toEqual(['open']);
    expect(closed('bracket gets replaced tomorrow')).toEqual(['open']);
    expect(closed('shelf bracket is fine')).toEqual(['open']);
  });

  it('an inspection that is set for a day is still to come', () => {
    const [item] = told('rough inspection is set for friday').items;
    expect([item!.state, item!.readyOn]).toEqual(['open', '2026-03-06']);
  });

  it('what is skipped opens nothing', () => {
    expect(told('skip the hinges').items).toEqual([]);
  });
});
