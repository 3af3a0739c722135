import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf, takeOffOf } from './order.ts';

/** A note that cannot be reckoned: nothing on the order, and a question that says why. */
const refused = (areas: string[], note: string) => {
  const { order, questions } = orderOf(areas, note);
  expect(order, note).toEqual([]);
  expect(questions, note).toHaveLength(1);
  return questions[0]!;
};
const side = fc.integer({ min: 2, max: 6 });

describe('what cannot be is asked about, never reckoned', () => {
  it('a tile longer than the place', () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: 1, max: 12 }), (a, b, over) => {
        const tile = Math.max(a, b) * 12 + over;
        fc.pre(tile <= 60);
        const ask = refused(['bath'], `bath floor tile ${tile}x${tile}, the floor is ${a} ft by ${b} ft, 4 to a box`);
        expect(ask).toContain('larger than');
      }),
      { numRuns: 25 },
    );
  });

  it('a small room longer than 40 ft', () => {
    fc.assert(
      fc.property(fc.integer({ min: 41, max: 4000 }), side, (long, wide) => {
        const ask = refused(['bathroom'], `bathroom floor tile 12x12, it is ${long} ft by ${wide} ft, 10 to a box`);
        expect(ask).toContain(`${long} ft`);
      }),
      { numRuns: 25 },
    );
  });

  it('a side of nothing or less', () => {
    fc.assert(
      fc.property(fc.integer({ min: -30, max: -1 }), side, fc.boolean(), (long, wide, spelt) => {
        const said = spelt ? `${wide} ft by minus ${-long} ft` : `${long} ft by ${wide} ft`;
        expect(refused(['den'], `den laminate, it is ${said}, 20 sq ft a box`)).toContain(`${long} ft`);
      }),
      { numRuns: 25 },
    );
  });

  it('a unit that is none', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('smoots', 'cubits', 'paces', 'spans', 'furlongs', 'hands'),
        side,
        side,
        (unit, a, b) => {
          const ask = refused(['den'], `den laminate, ${a} ${unit} by ${b} ${unit}, 20 sq ft a box`);
          expect(ask).toContain('feet, inches or metres');
        },
      ),
      { numRuns: 25 },
    );
  });

  it.each<[string]>([
    ['den laminate, 12 ft by 14 ft, 400 percent waste, 20 sq ft a box'],
    ['den paint, walls 9 by 7 with 8 ft walls, negative two coats, 350 a gallon'],
    ['den laminate, 12 ft by 0 ft, 20 sq ft a box'],
  ])('%s', (note) => {
    refused(['den'], note);
  });
});

describe('every reckoning asks where a size cannot be, and orders no number', () => {
  it.each<[string, string, RegExp]>([
    ['studs', 'need studs for the den, 16 on center over 40000 ft, 2x4 8 footers', /40000 ft/],
    ['no spacing', 'need studs for the den wall, 0 inches on center over 12 ft', /more than 0/],
    ['a wide hole', 'six holes in the den 90 inches across and 36 deep, 80 lb bags', /90 in across/],
    ['a deep hole', 'six holes in the den 10 inches across and 400 deep, 80 lb bags', /400 in deep/],
    ['a thick pad', 'den pad 12 by 10, 40 feet thick, concrete, 80 lb bags', /40 ft thick/],
    ['bays', 'den wall, 9000 bays, one batt to a bay, R-13, 11 to a bag', /9000 bays/],
    ['a joint', 'grout for the den floor 40 square feet of 12x12, joint is 14 inches, 10 lb bags', /a joint of 14 in/],
    [
      'a tile',
      'grout for the den floor 40 square feet of 12x12, 8 in thick, 1/8 joint, 10 lb bags',
      /a tile 8 in thick/,
    ],
    [
      'tile of 2 in',
      'grout for the den floor, 40 sq ft of 12x12 tile two inches thick, 1/8 joint, 10 lb bags',
      /a tile 2 in thick/,
    ],
    ['a third side', 'grout for the den floor, 12x12x2 tile, 80 sq ft, 1/8 joint, ten pound bags', /a tile 2 in thick/],
    ['a thickness', 'grout, 40 sq ft of 12x12 in the den, thickness is three inches, 10 lb bags', /a tile 3 in thick/],
    ['a bead', 'need silicone for 40 feet in the den, 9 inch bead', /a bead of 9 in/],
    ['a notch', 'need thinset for 100 sq ft of 12x24 in the den, 3 by 3 notch', /a notch of 3 in/],
    ['walls', 'den paint, walls, 12 by 14 room with 900 foot walls, two coats, 350 a gallon', /walls 900 ft high/],
    ['coats', 'den paint, walls, 12 by 14 room with 8 foot walls, 40 coats, 350 a gallon', /40 coats/],
    ['an odd unit on one side', 'den laminate, 12 furlongs by 14, 20 sq ft a box', /feet, inches or metres/],
    ['waste below nothing', 'den laminate, 12 ft by 14 ft, minus ten percent waste, 20 sq ft a box', /negative/],
    ['an empty box', 'den laminate, 12 ft by 14 ft, 10 percent, 0 sq ft a box', /0 sq ft a box/],
    ['a long cable', 'need 12/2 for the den, 90000 feet from the panel, ten percent over', /90000 ft/],
    ['a long room', 'den baseboard, 14 by 900 room, 16 footers, ten percent', /900 ft/],
    ['area in a den', 'need primer for 90000 square feet in the den, 200 to the gallon', /90000 sq ft for the primer/],
    ['a yard of bags', 'pour a slab in the den, 400 by 400, 4 thick, 80 lb bags', /88889 by the bag/],
    [
      'a run below nothing',
      'need studs for the den at 16 on center over minus twelve feet',
      /a run must be more than 0/,
    ],
    ['a run of nothing', 'need deck boards for the den over zero feet, 5/4x6, eighth gap', /a run must be more than 0/],
    ['a run of no measure', 'need studs for the den, 16 on center over 12 cubits', /"12 cubits" for the stud/],
    ['pipe of no measure', 'half inch pex to the den, 40 parsecs, 20 foot sticks', /"40 parsecs"/],
    ['cable below nothing', 'pull 12/2 to the den, minus forty feet, ten percent', /-40 ft/],
    ['goods below nothing', 'need thinset for the den, minus forty square feet, quarter notch', /-40 sq ft/],
    ['a hole of nothing', 'six holes in the den, ten inch across zero deep, 80 lb bags', /depth must be more than 0/],
    ['cuts below nothing', 'cut list out of 2x4 8 footers for the den, minus four at 22', /-4 pieces/],
    ['cuts of nothing', 'cut list for the den, 2x4 8 footers: three at 0 inches', /longer than 0/],
    ['R-values', 'need R-13 batts for the den, 9000 bays, one batt to a bay', /9000 bays/],
    ['a long piece', 'cut list for the den out of 2x4 8 footers: four at 102 inches', /102/],
    ['too many cuts', 'cut list for the den out of 2x4 8 footers: 900 pieces at 14', /900 pieces/],
  ])('%s', (_, note, why) => {
    expect(takeOffOf(['den'], note)).toEqual([]);
    expect(orderOf(['den'], note).questions.join(' ')).toMatch(why);
  });
});

describe('a cut list that cannot be', () => {
  it.each([
    'cut list for the den out of 2x4 8 footers: 900 pieces at 14',
    'need a cut list, 900 blocks at 14 inches out of 2x4 8 footers, den',
    'cut list for the den out of 2x4 8 footers: four at 102 inches',
  ])('orders neither pieces nor list, and says why: %s', (note) => {
    expect(refused(['den'], note)).toMatch(/^Cut list of 2x4: (?:900 pieces: is that right|102 in does not come out)/);
  });
});

describe('more never needs less', () => {
  const GOODS: readonly [string, (long: number, wide: number) => string][] = [
    ['flooring', (a, b) => `den laminate, ${a} ft by ${b} ft, 10% waste, 20 sq ft per box`],
    ['tile by the piece', (a, b) => `den floor tile 12x12, the floor is ${a} ft by ${b} ft, 10 to a box`],
    ['drywall', (a, b) => `den drywall, ${a} by ${b} room with 8 foot walls, 4x8 sheets, 10 percent`],
    ['paint', (a, b) => `den paint, walls only, ${a} by ${b} room with 8 foot walls, two coats, 350 a gallon`],
    ['concrete', (a, b) => `pad in the den ${a} ft x ${b} ft, 4 in thick, concrete, 80 lb bags`],
    ['thinset', (a, b) => `need thinset for the den, 12x24 tile, floor is ${a} ft by ${b} ft, 1/2 by 1/2 notch`],
    ['insulation', (a, b) => `den ceiling ${a} ft by ${b} ft, R-30 insulation, 58 sq ft a bag`],
    ['trim', (a, b) => `den baseboard, ${a} by ${b} room, ten percent, 12 foot sticks`],
    ['studs', (a) => `need studs for the den, 16 on center over ${a} ft, 2x4 8 footers`],
  ];
  const quantity = (note: string) => Number(/: (\d+) /.exec(orderOf(['den'], note).order[0] ?? '')?.[1]);

  it.each(GOODS)('%s', (_, note) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 4, max: 30 }),
        fc.integer({ min: 1, max: 12 }),
        (a, b, more) => {
          const [less, grown] = [quantity(note(a, b)), quantity(note(a + more, b))];
          expect(less).toBeGreaterThan(0);
          expect(grown).toBeGreaterThanOrEqual(less);
        },
      ),
      { numRuns: 15 },
    );
  });
});
