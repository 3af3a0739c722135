import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const WANTED =
  'order 2 lengths of oak worktop, 24 bags of concrete, 8 post bases, 8 sonotubes, 5 boxes of tiles, 1 bag of grout, 6 worktop bolts';
/** What is still to buy of some goods after a note; null where they are off the order. */
const left = (item: string, ...texts: string[]) => {
  const line = told(WANTED, ...texts).order.find((l) => l.item.includes(item));
  return line ? Number(line.quantity) : null;
};

describe('goods told as come', () => {
  it.each([
    ['tile', 2, 'tiles here only 4 boxes of 5, 1 box wrong color takin it back tmrw'],
    ['tile', 2, 'tiles came, 3 boxes'],
    ['base', null, 'the lorry dropped off all eight post bases and the sonotubes'],
    ['sonotube', null, 'the lorry dropped off all eight post bases and the sonotubes'],
    ['bolt', null, "another load's come, we've got all the worktop bolts and both lengths of oak worktop"],
    ['concrete', 4, 'the yard brought twenty bags of concrete'],
    ['concrete', 2, 'conc deliverd 24 bags, 2 split, took back'],
    ['concrete', 3, 'the concrete turned up but 3 bags were wet, sent them back'],
    ['concrete', null, 'concrete arrived, 2 bags split'],
    ['post base', null, 'post bases all here'],
    ['post base', 1, 'post bases are here, one bent, going back'],
    ['sonotube', 2, 'only 6 of the sonotubes came. sonotubes came, 6 of them'],
    ['oak worktop', null, 'worktops came, 1 is damaged on the corner, sent bk, replacement mon'],
    ['worktop bolt', 6, 'worktops came, 1 is damaged on the corner, sent bk, replacement mon'],
    ['post base', 1, 'post bases came but one is broken so the deck still waits, need one post base more'],
    ['grout', null, 'tiles here. grout ok'],
    ['grout', null, 'tiles here. grout ok, no spacers'],
    ['grout', 1, 'kitchen grout ok'],
  ])('%s, %s left: %s', (item, count, text) => {
    expect(left(item, text)).toBe(count);
  });

  it('and not wanted after all, by a short name', () => {
    const texts = ['got six of the sonotubes', "the other two tubes turned up don't need them now so they can go back"];
    expect(left('sonotube', texts[0]!)).toBe(2);
    expect(left('sonotube', ...texts)).toBe(null);
    expect(left('turned', ...texts)).toBe(null);
  });
});

it.each(["don't need the 6 bolts, got some in the van", 'scratch getting the six bolts', 'no need to buy six bolts'])(
  'counted goods that nobody has to buy: %s',
  (text) => {
    expect(left('worktop bolt', text)).toBe(null);
    expect(left('oak worktop', text)).toBe(2);
  },
);

describe('goods told of once more', () => {
  const order = (...texts: string[]) => told(...texts).order.map((l) => [l.item, l.quantity]);

  it.each([
    [
      'I need one gfi and a cover plate. Actually there are two so make it two gfis and two plates',
      'gfi',
      'cover plate',
    ],
    ['need 1 hinge and 1 latch. no wait make that two hinges and two latches', 'hinge', 'latch'],
  ])('by a count for each: %s', (text, one, other) => {
    expect(order(text)).toEqual([
      [one, '2'],
      [other, '2'],
    ]);
  });

  it.each([
    'actually make that five hangers',
    'make it five hangers not three',
    'no make that five hangers I bent two',
  ])('by a count of the next note: %s', (text) => {
    expect(order('get 3 joist hangers', text)).toEqual([['joist hanger', '5']]);
  });

  it.each([
    "I only need five sticks of base, not six, there's one stick left over",
    'only need five sticks of base, got one stick left over from the last job',
    "there's one stick of base in the van so I only need five sticks of base",
  ])('with the reason for fewer, which takes nothing off besides: %s', (text) => {
    expect(order(text)).toEqual([['base', '5']]);
  });

  it('fetched on the way, and what was fetched too', () => {
    const need = 'need two buckets of mud, a roll of paper tape, two pieces of poplar and one bracket';
    expect(
      order(need, 'Grabbed both buckets of mud and the tape on the way in. Poplar too. Forgot the bracket.'),
    ).toEqual([['bracket', '1']]);
    expect(order(need, 'picked up the mud. Bracket as well.').map(([item]) => item)).toEqual(['paper tape', 'poplar']);
    expect(order(need, 'got the mud. Bracket needs paint too.').map(([item]) => item)).toContain('bracket');
    expect(order(need, 'hall is swept. Bracket too.').map(([item]) => item)).toContain('bracket');
    expect(
      order(need, 'got the mud, the tape and the bracket and the poplar they only had one so one is coming'),
    ).toEqual([['poplar', '1']]);
  });

  it.each(["purple board's used up", 'purple board is all used up now', 'the purple board is used'])(
    'used up, so that nothing of it is to buy: %s',
    (text) => {
      expect(order('need one sheet of purple board', text)).toEqual([]);
    },
  );
});

describe('goods that somebody did not get', () => {
  it.each([
    "got the hinges. didn't get the strike plate, forgot",
    'picked up the hinges, never got the strike plate',
    "got the hinges but didn't find the strike plate",
  ])('stay on the order: %s', (said) => {
    const { order } = told('Need a strike plate and two hinges.', said);
    expect(order.map(({ item, state }) => [item, state])).toEqual([['strike plate', 'to buy']]);
  });
});

describe('goods that are to come', () => {
  it.each([
    ['hang two doors, need two doors', 'doors are in, delivery is Thursday'],
    ['hang two doors, need two doors', 'the doors come Friday'],
    ['hang two doors, need two doors', 'doors come in Friday'],
    ['hang two doors, need two doors', 'the doors are arriving on Monday'],
  ])('are on order, and nothing is done with them: %s; %s', (first, then) => {
    const { order, items } = told(first, then);
    expect(order).toEqual([]);
    expect(items.map((i) => [i.task, i.state])).toEqual([['hang two doors', 'open']]);
  });

  it('are still to fetch where they are only in at the shop', () => {
    const { order, items } = told('need one vanity', "the vanity's in at the shop, picking it up Monday");
    expect(order.map((l) => l.quantity)).toEqual(['1']);
    expect(items).toEqual([]);
  });

  it('in packs are not come', () =>
    expect(told('need 30 wire nuts', 'the wire nuts come in packs of 20').order).toHaveLength(1));
});
