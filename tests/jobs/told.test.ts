import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import { at, END, told } from './days.ts';
import { followUp, hand, JOB, material, note, problem } from './made.ts';

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

  it('reasons come to what is needed, or say why not', () => {
    const bricks = (quantity: number, more = {}) => material('brick', quantity, 'need', more);
    const because = (...facts: ReturnType<typeof bricks>[]) =>
      fold(
        JOB,
        facts.map((fact, k) => note(`n${k}`, at(2 + k), fact)),
        END,
      ).order.map((l) => [l.quantity, l.because.replace(/ 2026-03-0\d/g, '')]);
    expect(because(bricks(19), bricks(9))).toEqual([['9', '19 needed, said; 19 made 9']]);
    expect(because(bricks(19), bricks(19))).toEqual([['19', '19 needed, said; said again']]);
    expect(because(bricks(19), bricks(9, { counts: 'more' }))).toEqual([
      ['28', '19 needed, said; 9 more needed, said'],
    ]);
    expect(because(bricks(19, { area: 'hall' }), bricks(9, { area: 'kitchen' }))).toEqual([
      ['28', '19 needed, said; 9 more needed, said'],
    ]);
    expect(because(bricks(19), bricks(9, { area: 'kitchen' }))).toEqual([
      ['19', '19 needed, said; 9 of them said again'],
    ]);
    const said = note('n0', at(2), bricks(19));
    const { key } = fold(JOB, [said], END).order[0]!;
    const what = { kind: 'setOrder', line: key, quantity: '3' } as const;
    const [line] = fold(JOB, [said, hand('h', at(3), what)], END).order;
    expect([line!.quantity, line!.because]).toEqual(['3', '19 needed, said 2026-03-02; put at 3 by hand']);
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

describe('what the words mean for the list', () => {
  const need = 'need two tubes of caulk and one hinge';
  const read = (text: string, ...facts: Parameters<typeof note>[2][]) => ({
    ...note('b', at(2), ...facts),
    what: { kind: 'noteRead' as const, facts, text, parser: '1' },
  });
  const after = (text: string, first: Parameters<typeof note>[2], ...facts: Parameters<typeof note>[2][]) =>
    fold(JOB, [note('a', at(1), first), read(text, ...facts)], END);
  const weighed = { rule: 'follow-up/weighed' };

  it('goods in a list of what was fetched are bought, whatever they were read as', () => {
    const text = 'picked up the hinge and both tubes';
    const wrong = material('hinge', 2, 'need', { quote: 'both tubes', start: 24, end: 34, unit: 'tube' });
    const goods = fold(
      JOB,
      [
        note('a', at(1), material('caulk', 2, 'need', { unit: 'tube' }), material('hinge', 1, 'need')),
        read(text, wrong),
      ],
      END,
    );
    expect(goods.order).toEqual([]);
  });

  it('what stands in the van is not bought', () => {
    expect(order(need, 'I had a hinge on the truck')).toEqual([['caulk', '2', 'tube']]);
  });

  it('goods on their way are no item, and no wait of another one', () => {
    const plan = followUp('be hinge', null, { ...weighed, quote: 'should be here thursday', due: '2026-03-05' });
    const { items } = after('should be here thursday', problem('gate', 'sagging', 'hall'), plan);
    expect(items.map((i) => [i.state, i.readyOn])).toEqual([['open', null]]);
  });

  it('what is asked for right behind a flaw is its repair, and its day is the day of that', () => {
    const flaw = problem('outlet', 'dead', 'kitchen', { quote: 'outlet is dead', start: 0, end: 14 });
    const asks = (more: object) =>
      followUp('want gfci', 'kitchen', { quote: 'that wants a gfci', start: 16, end: 33, ...more });
    const items = (more: object) =>
      fold(JOB, [{ ...read('outlet is dead, that wants a gfci', flaw, asks(more)) }], END).items.map((i) => i.readyOn);
    expect(items({})).toEqual([null]);
    expect(items({ due: '2026-03-05' })).toEqual(['2026-03-05']);
  });

  it('a thing goes by its own name, not by where it stands', () => {
    const flaw = problem('outlet washer', 'corroded', 'hall', { quote: 'outlet behind the washer is corroded' });
    expect(told('hall outlet behind the washer is corroded', 'outlet in the hall is replaced').items[0]).toMatchObject({
      state: 'done',
    });
    expect(after('washer is replaced', flaw).items.map((i) => i.state)).toEqual(['open']);
  });

  it('what the owner says to leave is dropped', () => {
    const flaw = problem('register', 'painted shut', 'hall');
    expect(after('homeowner says leave the register', flaw).items.map((i) => i.state)).toEqual(['dropped']);
  });

  it('what was counted again is used up, not wanted again', () => {
    const goods = fold(
      JOB,
      [
        note('a', at(1), material('mortar', 8, 'need', { unit: 'bag' })),
        note('b', at(2), material('mortar', 8, 'bought', { unit: 'bag' })),
        note('c', at(3), material('mortar', 3, 'have', { unit: 'bag' })),
      ],
      END,
    );
    expect([goods.order, goods.onHand.map((h) => h.quantity)]).toEqual([[], ['3']]);
  });
});
