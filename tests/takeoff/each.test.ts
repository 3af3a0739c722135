import { describe, expect, it } from 'vitest';
import { orderOf } from './order.ts';

describe('goods counted for each of something', () => {
  it.each<[string, string[]]>([
    ['need closet bolts, two to a toilet, three toilets', ['closet bolt: 6 each']],
    // The toilets are only counted: nobody asks for them.
    ['need two closet bolts per toilet for the four toilets', ['closet bolt: 8 each']],
    ['get hinges, three to a door, six doors', ['hinge: 18 each']],
    // These doors are asked for.
    ['need six doors, and three hinges to a door', ['hinge: 18 each', 'door: 6 each']],
    [
      'setting four toilets wednesday, wax ring and two closet bolts to a toilet',
      ['closet bolt: 8 each', 'wax ring: 4 each'],
    ],
    ['two shutoffs to a vanity and we have five vanities, pick up the shutoffs', ['shutoff valve: 10 each']],
  ])('%s', (note, order) => {
    expect(orderOf(['bath'], note).order.sort()).toEqual(order.sort());
  });
});
