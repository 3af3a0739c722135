import { expect, it } from 'vitest';
import { orderOf } from './order.ts';

const AREAS = ['bath', 'kitchen', 'hall', 'den'];

// Answers by hand: every place counted is paid for, every place listed once.
it.each<[string, string[]]>([
  // 3 x 80 / 32 = 7.5.
  ['drywall for three walls 10 by 8, 4x8 sheets, need the sheets', ['drywall 4x8: 8 sheet']],
  // 80 + 96 = 176; / 32 = 5.5.
  ['drywall for two walls, 10 by 8 and 12 by 8, 4x8 sheets, need the sheets', ['drywall 4x8: 6 sheet']],
  // 40 + 24 = 64; / 15 = 4.3.
  [
    'backer board on the bath walls, two of them, 5 foot by 8 and 3 foot by 8, 3x5 sheets',
    ['backer board 3x5: 5 sheet'],
  ],
  // 4 x 2 x 22 x 8 x 2 / 350 = 8.05.
  ['paint four bedrooms 10 by 12, 8 foot walls, walls only, two coats, 350 a gallon', ['paint: 9 gal']],
  // 4 x 2 x 9 x 8 x 2 / 350 = 3.3.
  ['four closets 3 by 6, 8 foot high, paint walls two coats, 350 a gallon', ['paint: 4 gal']],
  // 3 x 44 x 1.1 / 8 = 18.2.
  ['baseboard in three bedrooms 10 by 12, 8 foot sticks, ten percent', ['baseboard 8 ft: 19 each']],
  // 4 x 143 x 1.1 / 48 = 13.1.
  ['drywall ceilings in four rooms 11 by 13, 4x12 sheets, ten percent', ['drywall 4x12: 14 sheet']],
  // 3 x 10 x 12 / 3 / 0.6 = 200.
  ['three slabs in the back yard 10 by 12, 4 inches, 80 lb bags, how many', ['concrete mix 80 lb: 200 bag']],
  // (2 x 16 + 36) / 3 / 0.45 = 50.4.
  ['two pads 4 by 4 and one 6 by 6, four inches, 60 lb bags at .45, need concrete', ['concrete mix 60 lb: 51 bag']],
  // (2 x 96 + 32) x 8 x 1.1 = 1,971.2.
  [
    'tile two walls 12 by 8 and a closet 4 by 8 with 3x6 subway, ten percent, need the tile',
    ['subway tile 3x6: 1972 each'],
  ],
])('%s', (note, order) => {
  expect(orderOf(AREAS, note)).toMatchObject({ order, questions: [] });
});

it.each<[string[], string[]]>([
  [['boss wants 120 backer screws'], ['backer screw: 120 each']],
  [['nine cartons of 8x8'], ['tile 8x8: 9 carton']],
  [['need ten sticks of casing', 'make that thirteen on the casing'], ['casing: 13 stick']],
  [['need ten sticks of casing', 'make it thirteen sticks of casing'], ['casing: 13 stick']],
  [["six boxes of deck screws'll do it"], ['deck screw: 6 box']],
])('%s', (notes, order) => {
  expect(orderOf(AREAS, ...notes).order).toEqual(order);
});
