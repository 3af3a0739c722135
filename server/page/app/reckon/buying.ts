import type { Field, Question } from './fields.ts';
import { choice, known, length, lengths, may, number, pair, rows } from './shorthand.ts';

const room: readonly Field[] = [length('length', 'Length, ft', '11 ft 6 in'), length('width', 'Width, ft', '8')];
const waste = may(number('waste', 'Waste, %', '10'));
const tile = pair('tile', 'Tile, in', '12', '24');
const coats = (example: string) => may(number('coats', 'Coats', example));
const bag = choice(
  'bagPounds',
  'Bag',
  [80, 60, 50, 40].map((pounds) => [pounds, `${pounds} lb`] as const),
);
const walls: readonly Field[] = [
  ...room,
  length('height', 'Height, ft', '8'),
  known('ceiling', 'Ceiling too'),
  may(
    rows('openings', 'Doors and windows, taken out', [
      number('count', 'How many', '1'),
      length('width', 'Width, ft', '3'),
      length('height', 'Height, ft', '6 ft 8 in'),
    ]),
  ),
];
const sold = (unit: string, holds: string): readonly Field[] => [
  { name: 'unit', label: 'Sold by the', as: 'words', example: unit },
  number('holds', 'One covers, sq ft', holds),
];

/** What can be counted up to buy. */
export const BUYING: readonly Question[] = [
  {
    key: 'cover',
    words: 'Floor or wall, by what a box covers',
    goods: 'tile',
    fields: [...room, ...sold('box', '11.5'), waste, coats('1'), may(tile)],
  },
  {
    key: 'walls',
    words: 'Walls of a room, such as paint',
    goods: 'paint',
    fields: [...walls, ...sold('gal', '350'), coats('2'), waste],
  },
  {
    key: 'board',
    words: 'Board for a room, with screws, tape and mud',
    goods: 'drywall',
    fields: [...walls, pair('sheet', 'Sheet, ft', '4', '12'), waste],
  },
  {
    key: 'mortar',
    words: 'Thinset by the notch',
    goods: 'thinset',
    fields: [
      ...room,
      pair('notch', 'Notch, in', '1/4', '3/8'),
      may(number('bagPounds', 'Bag, lb', '50')),
      known('backButtered', 'Back-buttered'),
      waste,
    ],
  },
  {
    key: 'grout',
    words: 'Grout by the joint',
    goods: 'grout',
    fields: [
      ...room,
      tile,
      length('thickness', 'Tile thickness, in', '3/8'),
      length('joint', 'Joint, in', '1/8'),
      number('bagPounds', 'Bag, lb', '10'),
      waste,
    ],
  },
  {
    key: 'sealant',
    words: 'Sealant along a joint',
    goods: 'sealant',
    fields: [
      length('run', 'Run, ft', '60'),
      pair('bead', 'Joint width and depth, in', '3/8', '1/4'),
      may(number('ounces', 'Tube, fl oz', '10.1')),
      waste,
    ],
  },
  {
    key: 'spacing',
    words: 'Studs, joists or posts on center',
    goods: 'studs',
    fields: [
      length('run', 'Run, ft', '12 ft 4 in'),
      length('spacing', 'On center, in', '16'),
      known('ends', 'One at each end'),
    ],
  },
  {
    key: 'boards',
    words: 'Boards side by side',
    goods: 'deck boards',
    fields: [
      length('run', 'Across, ft', '12'),
      length('width', 'Board width, in', '5-1/2'),
      length('gap', 'Gap, in', '1/8'),
    ],
  },
  {
    key: 'balusters',
    words: 'Balusters between posts',
    goods: 'balusters',
    fields: [
      length('clear', 'Clear between posts, ft', '13'),
      length('width', 'Baluster width, in', '1-1/2'),
      may(length('gap', 'Widest gap, in', '4')),
    ],
  },
  {
    key: 'cutList',
    words: 'Cut list on stock lengths',
    goods: 'boards',
    fields: [
      rows('pieces', 'Pieces', [number('count', 'How many', '6'), length('length', 'Length, in', '31 7/8')]),
      lengths('stock', 'Sold in lengths of, ft', '8', '12'),
      may(length('kerf', 'Blade, in', '1/8')),
    ],
  },
  {
    key: 'run',
    words: 'Wire, pipe or trim along a run',
    goods: 'pipe',
    fields: [
      length('run', 'Run, ft', '42'),
      may(number('ends', 'Boxes or fittings', '4')),
      may(length('makeUp', 'Left over at each, ft', '1')),
      may(length('stock', 'Sold in lengths of, ft', '10')),
      waste,
    ],
  },
  {
    key: 'batts',
    words: 'Batts in a wall',
    goods: 'insulation batts',
    fields: [
      length('wall', 'Wall, ft', '28'),
      length('spacing', 'Studs on center, in', '16'),
      length('height', 'Height, ft', '93 in'),
      length('batt', 'Batt length, in', '93'),
    ],
  },
  {
    key: 'holes',
    words: 'Concrete for post holes',
    goods: 'concrete mix',
    fields: [
      number('holes', 'Holes', '4'),
      length('diameter', 'Across, in', '10'),
      length('depth', 'Depth, in', '36'),
      bag,
    ],
  },
  {
    key: 'slab',
    words: 'Concrete for a slab',
    goods: 'concrete mix',
    fields: [...room, length('thick', 'Thickness, in', '4'), bag, waste],
  },
];
