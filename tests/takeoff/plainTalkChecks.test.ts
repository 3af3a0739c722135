import { expect, it } from 'vitest';
import { takeOffOf } from './order.ts';
import { checksOf } from './told.ts';

it.each<[string, string[]]>([
  // 6 x 2 + 2 + 4 = 18.
  [
    'single gang box 18 cubic inch, three 14 2 romex coming in with ground, one receptacle, no clamps, will that fit',
    ['box fill: fits: 18 cu in'],
  ],
  // (6 + 1 + 2 + 2) x 2.25 = 24.75.
  ['three 12/2s, two devices and grounds in an 18 cube box, is that ok', ['box fill: does not fit: 24.75 cu in']],
  // (8 + 1 + 1 + 2) x 2.25 = 27, against 12.5.
  ['four 12/2 in an old metal box 3x2x2 1/2 with a switch, clamps inside', ['box fill: does not fit: 27 cu in']],
  ['breaker in the panel is a thirty and the dryer line is ten three', ['wire size and breaker: fits: 30 A']],
  [
    'flange is flush with the old floor, adding quarter inch board and three eighths tile',
    ['flange height: does not fit: 0.625 in below the finished floor'],
  ],
  [
    'flange is level with the existing floor, adding an eighth of underlayment and 1/8 tile',
    ['flange height: cannot say: how thick the mortar under the tile is'],
  ],
  [
    'are the 2 1/4 closet bolts long enough on the bath toilet',
    ['closet bolts: cannot say: how the flange sits to the finished floor'],
  ],
  ['12 by 12 tile, sixteenth joint in a grid, tile vary a 32nd', ['tile joint: does not fit: 0.0625 in']],
  // 3.5 / 14.5 = 0.2414.
  ['1 1/2 drain is 14 foot 6 long, got 3 1/2 inches of fall on it', ['drain slope: does not fit: 0.2413 in/ft']],
  [
    'rise is seven and three quarter, run is nine and a half',
    ['riser height: fits: 7.75 in', 'tread depth: does not fit: 9.5 in'],
  ],
  ['rise is 6 and run is 12 on the porch roof', []],
  [
    "bedroom window opens 20 by 24 clear, sill's 40 inches off the floor",
    ['egress opening: does not fit: 3.3333 sq ft', 'egress sill: fits: 40 in'],
  ],
  [
    'basement window is 30 inches wide and 24 tall clear, sill at 46',
    [
      'egress opening: cannot say: whether the sill is within 44 in of the ground outside (5.0 sq ft is then enough)',
      'egress sill: does not fit: 46 in',
    ],
  ],
  ['bowl front to the vanity is twenty inches', ['toilet front clearance: does not fit: 20 in']],
  ['shower door swings onto 22 inches of clear floor', ['shower front clearance: does not fit: 22 in']],
  ['pressure gauge reads 92 at the hose bib', ['water pressure: does not fit: 92 psi']],
  ['tap runs 128 at the shower', ['water temperature: does not fit: 128 F']],
  ['5/4 deck boards on a 45, joists are 16 on center, is that ok', ['joists under deck boards: does not fit: 16 in']],
])('%s', (note, checks) => {
  expect(checksOf(['bath'], note)).toEqual(checks);
});

it('an angle is no length to run joists along, and what is asked about is not ordered', () => {
  expect(takeOffOf(['deck'], '5/4 deck boards on a 45, joists are 16 on center, is that ok')).toEqual([]);
});
