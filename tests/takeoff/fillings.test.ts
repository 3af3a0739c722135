import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf, takeOffOf } from './order.ts';

describe('bare sizes that can only be millimetres', () => {
  it.each<[string, string, RegExp]>([
    // 0.6 x 0.6 x 0.4 m = 0.144 cu m = 5.09 cu ft; / 0.6 = 8.5.
    [
      'concrete: 9 bag',
      'Need concrete for the footing, 600 x 600 x 400 deep.',
      /^600 x 600 x 400 read as millimetres: /,
    ],
    // 3 x 5.09 = 15.26; / 0.6 = 25.4.
    ['concrete mix 80 lb: 26 bag', 'three pads 600 x 600 x 400 deep, 80 lb bags', /read as millimetres: 3 x 0\.6 m/],
    // 3.6 x 2.4 x 0.1 m = 0.864 cu m = 30.5 cu ft; / 0.6 = 50.9.
    ['concrete: 51 bag', 'Need concrete for the slab, 3600 by 2400, 100 thick', /^3600 x 2400 read as millimetres: /],
  ])('%s', (wanted, text, because) => {
    const { order, because: why } = orderOf(['garden'], text);
    expect(order).toEqual([wanted]);
    expect(why[0]).toMatch(because);
  });

  it('a bag of no published yield is asked about, and none is ordered by it', () => {
    const { order, questions } = orderOf(['garden'], 'three pads 600 x 600 x 400 deep, 20 kg bags');
    expect(order).toEqual([]);
    expect(questions).toContain('concrete mix: how much does a 20 kg bag make? The bag tells');
  });

  it('how goods are sold is no order of one pack', () => {
    expect(
      orderOf(['deck'], 'Six footing tubes for the deck, ten inch, forty two deep, sixty pound bags').order,
    ).toEqual(['concrete mix 60 lb: 26 bag']);
  });
});

describe('goods that go with others', () => {
  it.each<[string, string, string[]]>([
    // 42 + 9 + 12 = 63 ft; 5 ends in boxes x 1 ft + 3 ft = 71; x 1.1 = 78.1; / 50.
    [
      'basement',
      'twelve two: home run is 42, then 9 and 12 ft. a foot at every end and 3 ft at the panel, ten percent, 50 ft rolls',
      ['cable 12/2: 2 roll'],
    ],
    // 764 sq ft x 1.1 / 48; 764 x 1.1 / 1,000.
    [
      'den',
      'drywall for the den, walls and the lid. 14 by 18 with 8 foot walls. 4x12 sheets, ten percent. screws one per square foot, a thousand to the box',
      ['drywall 4x12: 18 sheet', 'drywall screw: 1 box'],
    ],
    // 144 x 36 / 288 x 1/8 x 3/8 x 0.0578 = 0.0488 lb; x 100 x 1.1 = 5.4 lb of 25.
    ['den', 'Grout: 12x24x3/8 tile, 1/8 joint, 100 sq ft, 10%', ['grout: 1 bag']],
    // 60 sq ft by a 1/4 x 3/8 notch.
    ['den', 'need thinset for 60 sq ft of tile, 1/4 x 3/8 notch', ['thinset: 1 bag']],
    // 9 x 15 ft x 12 x 3/32 x 1.1 / 18.23.
    [
      'den',
      'sealant round 9 windows, each 3 ft x 4 ft 6 all the way round, 3/8 by 1/4 bead, ten percent, 10.1 oz tubes',
      ['sealant 10.1 oz: 10 tube'],
    ],
  ])('%s: %s', (area, note, order) => {
    expect(takeOffOf([area], note).sort()).toEqual(order.sort());
  });

  it.each<[string, RegExp]>([
    ['bath tile 12x12, the room is 400 ft by 5 ft, ten percent, 10 to a box', /400 ft/],
    ['bath tile 24x48, the floor is 3 ft by 2 ft, ten percent, 2 to a box', /larger than/],
    ['bath laminate, 8 by 10, 80 percent waste, 20 sq ft a box', /80 % waste/],
  ])('asks instead of ordering: %s', (note, ask) => {
    const { order, questions } = orderOf(['bath'], note);
    expect(order).toEqual([]);
    expect(questions.join(' ')).toMatch(ask);
  });

  it.each<[string]>([
    ['set the last of the tile in the bath, 5 by 8 floor, 12x24 tile at 10 percent waste came out about right'],
    ['den is 12 by 14, eight foot ceilings, walls are drywall'],
    ['used 2 bags of thinset, half inch notch, 60 sq ft'],
  ])('orders nothing for what was done or merely measured: %s', (note) => {
    expect(orderOf(['bath', 'den'], note).order).toEqual([]);
  });

  it('more waste never buys less, and none buys the exact count', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 0, max: 40 }),
        (a, b, waste) => {
          const boxes = (percent: number) =>
            Number(
              /: (\d+) box/.exec(
                orderOf(['den'], `den laminate, ${a} ft by ${b} ft, ${percent}% waste, 20 sq ft per box`).order[0] ??
                  '',
              )?.[1],
            );
          expect(boxes(0)).toBe(Math.ceil((a * b) / 20));
          expect(boxes(waste)).toBeGreaterThanOrEqual(boxes(0));
        },
      ),
      { numRuns: 20 },
    );
  });
});
