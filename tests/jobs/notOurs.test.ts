import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const items = (...texts: string[]) => told(...texts).items.map((i) => [i.task, i.state]);
const order = (...texts: string[]) => told(...texts).order.map((l) => [l.item, l.quantity]);

describe('what is no item of ours', () => {
  it('a flaw that another sees to, or that stays', () => {
    expect(items('hall heater is dead but her electrician is already booked for that')).toEqual([]);
    expect(items('hall door sticks, leave it')).toEqual([]);
    expect(items('hall heater is dead')).toHaveLength(1);
  });

  it('what stood before is not taken off by a word about who looks at it', () => {
    expect(items('hall heater is dead', 'hall heater is dead, her electrician looks at it')[0]![1]).toBe('open');
  });

  it('a small part told beside a flaw is its cause, a thing of its own is not', () => {
    expect(items('hall drawer sticks, one slide is bent')).toHaveLength(1);
    expect(items('hall drawer sticks, outlet is loose')).toHaveLength(2);
  });

  it('a remedy without a thing of its own is of the flaw told before it', () => {
    expect(items('kitchen outlet is cracked. Needs to be replaced tomorrow')).toHaveLength(1);
  });

  it('a day for work that stands opens nothing', () => {
    const moved = told('grout the kitchen floor tomorrow', 'the grout moves to friday').items;
    expect(moved.map((i) => i.readyOn)).toEqual(['2026-03-06']);
  });
});

describe('goods that nobody has to buy', () => {
  const need = 'need two tubes of caulk and one hinge';

  it('what a supplier had, and all but what was left out', () => {
    expect(order(need, 'lumber yard had the hinge')).toEqual([['caulk', '2']]);
    expect(order(need, 'got everything except the hinge')).toEqual([['hinge', '1']]);
    expect(order(need, 'hinge bought')).toEqual([['caulk', '2']]);
  });

  it.each([
    'got them hinges and both tubes of caulk',
    'got both tubes of caulk + the hinge this am',
    'bought today: the hinge, both tubes of caulk',
    'supply stop. In hand: the hinge, caulk 2 tubes',
    'bought both tubes and the hinge as well so that is the list',
    'i have the hinge and both tubes of caulk',
    'both tubes of caulk came and the hinge they had at the hardware store',
    'found a hinge at the hardware store, and got both tubes of caulk too',
  ])('fetched or there, however it is told: %s', (fetched) => {
    expect(order(need, fetched)).toEqual([]);
  });

  it('what is in the truck or a bucket', () => {
    expect(order(need, 'had a hinge in my odds bucket')).toEqual([['caulk', '2']]);
    expect(order(need, 'glued it down, had caulk in truck')).toEqual([['hinge', '1']]);
  });

  it('what has to come first is not there yet', () => {
    expect(order(need, 'no trim until i have the caulk')).toHaveLength(2);
  });

  it('what the owner calls off', () => {
    expect(order(need, 'she doesnt want the hinge now')).toEqual([['caulk', '2']]);
    expect(order(need, 'he says no caulk after all')).toEqual([['hinge', '1']]);
    expect(order(need, 'they called off the hinge')).toEqual([['caulk', '2']]);
  });

  it('a count tells which of two goods of one name was found', () => {
    const bolts = 'need 6 ledger bolts and 8 carriage bolts';
    expect(order(bolts, 'found 6 bolts at the other store')).toEqual([['carriage bolt', '8']]);
  });

  it('what is unwanted, or brought by another', () => {
    expect(order(need, "don't buy the hinge")).toEqual([['caulk', '2']]);
    expect(order(need, 'leave the caulk off the list')).toEqual([['hinge', '1']]);
    expect(order(need, "he's bringing the hinge with him")).toEqual([['caulk', '2']]);
  });

  it('what a store did not have stays', () => {
    expect(order(need, 'the store had no hinge')).toHaveLength(2);
  });

  it('goods of work that is done were there', () => {
    expect(order('hall door hinge is bent, need one hinge', 'replaced the hall door hinge')).toEqual([]);
    expect(order('hall door hinge is bent, need one hinge')).toHaveLength(1);
  });
});

describe('goods counted anew', () => {
  const need = 'need 3 shelf brackets and 1 pivot bracket';

  it.each([
    [
      'shelf brackets they only had two',
      [
        ['shelf bracket', '1'],
        ['pivot bracket', '1'],
      ],
    ],
    [
      'shelf brackets: the store had only two, took them',
      [
        ['shelf bracket', '1'],
        ['pivot bracket', '1'],
      ],
    ],
    [
      'shelf brackets only two on the rack so one left to get',
      [
        ['shelf bracket', '1'],
        ['pivot bracket', '1'],
      ],
    ],
    [
      'make it four brackets instead of three',
      [
        ['shelf bracket', '4'],
        ['pivot bracket', '1'],
      ],
    ],
    [
      'shelf brackets make that five not three',
      [
        ['shelf bracket', '5'],
        ['pivot bracket', '1'],
      ],
    ],
  ])('%s', (said, left) => {
    expect(order(need, said)).toEqual(left);
  });

  it.each(['shelf brackets they only had two inch', 'shelf brackets they only had two and both wrong, left them'])(
    'what was not taken is still to get: %s',
    (said) => {
      expect(order(need, said)).toHaveLength(2);
      expect(order(need, said)[0]![1]).toBe('3');
    },
  );
});

it('the order says what goods are for, where their name does not', () => {
  const [line] = told('hall exit sign is dead, need one battery').order;
  expect(line).toMatchObject({ item: 'battery', uses: ['exit sign'] });
  expect(told('hall door hinge is bent, need one door hinge').order[0]!.uses).toBeUndefined();
});

describe('counted goods with no word of using are wanted', () => {
  it.each([
    'hall door hinges are rusted out so two strap hinges',
    'she asked for hooks in the hall, two hooks',
    'hall door sealer: two tins of sealer, we have none',
  ])('%s', (said) => {
    expect(order(said).map(([, count]) => count)).toEqual(['2']);
  });

  it('and those that were put in are not', () => {
    expect(order('hall door sags so I put on two strap hinges')).toEqual([]);
  });
});

describe('goods named first and counted behind', () => {
  it.each([
    ['dr rao asks for a peephole in the back door, 1.', 'peephole'],
    ['the bowl is split so a new seat one of them', 'seat'],
    ['it gets a new porcelain lampholder, just the one', 'porcelain lampholder'],
  ])('%s', (said, item) => {
    expect(order(said)).toEqual([[item, '1']]);
  });

  it('a number that counts something else is no count of them', () => {
    expect(order('can we put a mirror in there, 1.2 m wide')).toEqual([]);
    expect(order('i put a tag on washer 1')).toEqual([]);
  });
});
