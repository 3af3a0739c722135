import { describe, expect, it } from 'vitest';
import { played } from './told.ts';

const ordered = (...texts: string[]) =>
  played({
    id: 'sizes',
    rooms: ['kitchen', 'front bedroom', 'store room'],
    notes: texts.map((text, k) => ({ saidAt: `2026-06-0${k + 1}T09:00:00`, text })),
    asOf: '2026-06-12T18:00:00',
  }).state.order.map(({ item, quantity, unit }) => `${item}: ${quantity} ${unit}`);

const JOISTS = "deck's 12 by 16, joists at 16 centers, how many joists and how many joist hangers";

describe('sizes of something else change nothing that was reckoned', () => {
  it.each([
    'counter run 3650 long x 620 deep, need 2 lengths 40 mm oak worktop 3 m',
    'frame up, joists in. blocking 2x8, 4 off at 14 1/2',
    'stringers are eight foot, three of them',
    'window in the store room is 36 by 48',
  ])('%s', (later) => {
    expect(ordered(JOISTS, later)).toEqual(expect.arrayContaining(['joist: 13 each', 'joist hanger: 13 each']));
  });

  it('but what is said of them does', () => {
    expect(ordered(JOISTS, "she wants it bigger, it's 12 by 20 now")).toContain('joist: 16 each');
    expect(ordered(JOISTS, 'joists at 12 centers instead')).toContain('joist: 17 each');
  });

  it('a door that is hung is no wall to be boarded', () => {
    const room = 'front bedroom: drywall the walls, 10 by 12, 8 high, need sheets and mesh tape';
    const door = 'front bedroom door, thirty by eighty, hung it and it binds at the head';
    expect(ordered(room, door)).toEqual(ordered(room));
  });
});

describe('goods asked for by the count', () => {
  it.each([
    ['Drywall in the kitchen is short. Need two sheets of half inch drywall, four by eight.', 'drywall: 2 sheet'],
    ['I need one sheet of three quarter ply, eight by four.', 'ply: 1 sheet'],
    ['Get three sheets of 5/8 4x10 drywall for the lid.', 'drywall: 3 sheet'],
  ])('are no extent: %s', (text, line) => {
    expect(ordered(text)).toEqual([line]);
  });

  it('stand before what was reckoned earlier', () => {
    const reckoned = 'kitchen floor is 10 by 12, need vinyl plank, 24 square feet to the box, ten percent';
    expect(ordered(reckoned)).toEqual(['vinyl plank: 6 box']);
    expect(ordered(reckoned, 'order 8 boxes of vinyl plank')).toEqual(['vinyl plank: 8 box']);
  });
});
