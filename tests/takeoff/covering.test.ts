import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf } from './order.ts';

describe('goods that cover, run or fill', () => {
  // Areas, notes, the order. Answers by hand: extent x (1 + waste) / pack, up.
  it.each<[string[], string[], string[]]>([
    [
      ['bath'],
      ['bath floor tile 12x24, the floor is 5 ft x 8 ft, 10% waste, 10 sq ft per box'],
      ['floor tile 12x24: 5 box'],
    ],
    [
      ['laundry', 'bath'],
      [
        'laundry gets vinyl plank, six foot by nine, ten percent waste, twenty square foot to the box',
        'laundry is 7 ft x 8-4, not 6',
      ],
      ['vinyl plank: 4 box'],
    ],
    [['den'], ['den primer, 366 square feet of new board, one coat, 200 sq ft to the gallon'], ['primer: 2 gal']],
    [
      ['yard'],
      ['pad by the back door 8x4 4 in thick, concrete, 80 lb bags .6 cu ft each, add 5 pct'],
      ['concrete 80 lb: 19 bag'],
    ],
    [['yard'], ['the bed is 20 by 12 foot, mulch three inches deep, two cubic foot bags'], ['mulch 2 cu ft: 30 bag']],
    [
      ['bedroom'],
      ['bedroom baseboard, 12 by 14 room, less a 3 foot door. ten percent waste, twelve foot sticks'],
      ['baseboard 12 ft: 5 each'],
    ],
    [
      ['garage'],
      ['roof is two slopes at 30 ft by 22 ft, shingles, ten percent, 3 bundles to the square'],
      ['shingle: 44 bundle'],
    ],
    [
      ['bath'],
      ['bath tile 4x4, wall is 6 ft by 4 ft, 9 to the square foot, 10 percent', 'found 20 of the same 4x4 in the van'],
      ['tile 4x4: 218 each'],
    ],
  ])('%j %j', (areas, notes, order) => {
    expect(orderOf(areas, ...notes).order).toEqual(order);
  });

  it.each<[string]>([
    ['the den is 12 by 14 ft'],
    ['vinyl plank hall is 4 by 18 feet'],
    ['the plate is at 13 percent, wall board hung 4 ft by 9 ft'],
  ])('a size alone orders nothing: %s', (note) => {
    expect(orderOf(['den', 'hall'], note).order).toEqual([]);
  });

  it.each<[string]>([
    ['den carpet, it is 12 by 14 or 12 by 16 ft, not sure which, 10 percent waste, 12 sq ft a box'],
    ['den laminate, forget how long it is, 12 wide by 15 ft maybe, ten percent, twenty sq ft a box'],
  ])('an unsure size asks instead: %s', (note) => {
    const { order, questions } = orderOf(['den'], note);
    expect(order).toEqual([]);
    expect(questions.length).toBeGreaterThan(0);
  });

  it('buys enough and less than a box too much, whatever the room', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 40 }),
        fc.integer({ min: 3, max: 40 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 5, max: 30 }),
        (a, b, waste, box) => {
          const { order } = orderOf(['den'], `den laminate, ${a} ft by ${b} ft, ${waste}% waste, ${box} sq ft per box`);
          const bought = Number(/: (\d+) box/.exec(order[0] ?? '')?.[1]) * box;
          const needed = (a * b * (100 + waste)) / 100;
          expect(bought).toBeGreaterThanOrEqual(needed - 1e-9);
          expect(bought - box).toBeLessThan(needed);
        },
      ),
      { numRuns: 60 },
    );
  });
});
