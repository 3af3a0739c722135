import type { Field, Question } from './fields.ts';

const room: readonly Field[] = [
  { name: 'length', label: 'Length, ft', as: 'length', example: '11 ft 6 in' },
  { name: 'width', label: 'Width, ft', as: 'length', example: '8' },
];
const waste: Field = { name: 'waste', label: 'Waste, %', as: 'number', example: '10', may: true };
const tile: Field = { name: 'tile', label: 'Tile, in', as: 'pair', example: ['12', '24'] };
const coats: Field = { name: 'coats', label: 'Coats', as: 'number', example: '2', may: true };
const bag: Field = {
  name: 'bagPounds',
  label: 'Bag',
  as: 'choice',
  of: [80, 60, 50, 40].map((pounds) => [pounds, `${pounds} lb`] as const),
};
const walls: readonly Field[] = [
  ...room,
  { name: 'height', label: 'Height, ft', as: 'length', example: '8' },
  { name: 'ceiling', label: 'Ceiling too', as: 'known', may: true },
  {
    name: 'openings',
    label: 'Doors and windows, taken out',
    as: 'rows',
    may: true,
    of: [
      { name: 'count', label: 'How many', as: 'number', example: '1' },
      { name: 'width', label: 'Width, ft', as: 'length', example: '3' },
      { name: 'height', label: 'Height, ft', as: 'length', example: '6 ft 8 in' },
    ],
  },
];
const sold = (unit: string, holds: string): readonly Field[] => [
  { name: 'unit', label: 'Sold by the', as: 'words', example: unit },
  { name: 'holds', label: 'One covers, sq ft', as: 'number', example: holds },
];

/** What can be counted up to buy. */
export const BUYING: readonly Question[] = [
  {
    key: 'cover',
    words: 'Floor or wall, by what a box covers',
    goods: 'tile',
    fields: [...room, ...sold('box', '11.5'), waste, { ...coats, example: '1' }, { ...tile, may: true }],
  },
  {
    key: 'walls',
    words: 'Walls of a room, such as paint',
    goods: 'paint',
    fields: [...walls, ...sold('gal', '350'), coats, waste],
  },
  {
    key: 'board',
    words: 'Board for a room, with screws, tape and mud',
    goods: 'drywall',
    fields: [...walls, { name: 'sheet', label: 'Sheet, ft', as: 'pair', example: ['4', '12'] }, waste],
  },
  {
    key: 'mortar',
    words: 'Thinset by the notch',
    goods: 'thinset',
    fields: [
      ...room,
      { name: 'notch', label: 'Notch, in', as: 'pair', example: ['1/4', '3/8'] },
      { name: 'bagPounds', label: 'Bag, lb', as: 'number', example: '50', may: true },
      { name: 'backButtered', label: 'Back-buttered', as: 'known', may: true },
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
      { name: 'thickness', label: 'Tile thickness, in', as: 'length', example: '3/8' },
      { name: 'joint', label: 'Joint, in', as: 'length', example: '1/8' },
      { name: 'bagPounds', label: 'Bag, lb', as: 'number', example: '10' },
      waste,
    ],
  },
  {
    key: 'sealant',
    words: 'Sealant along a joint',
    goods: 'sealant',
    fields: [
      { name: 'run', label: 'Run, ft', as: 'length', example: '60' },
      { name: 'bead', label: 'Joint width and depth, in', as: 'pair', example: ['3/8', '1/4'] },
      { name: 'ounces', label: 'Tube, fl oz', as: 'number', example: '10.1', may: true },
      waste,
    ],
  },
  {
    key: 'spacing',
    words: 'Studs, joists or posts on center',
    goods: 'studs',
    fields: [
      { name: 'run', label: 'Run, ft', as: 'length', example: '12 ft 4 in' },
      { name: 'spacing', label: 'On center, in', as: 'length', example: '16' },
      { name: 'ends', label: 'One at each end', as: 'known', may: true },
    ],
  },
  {
    key: 'boards',
    words: 'Boards side by side',
    goods: 'deck boards',
    fields: [
      { name: 'run', label: 'Across, ft', as: 'length', example: '12' },
      { name: 'width', label: 'Board width, in', as: 'length', example: '5-1/2' },
      { name: 'gap', label: 'Gap, in', as: 'length', example: '1/8' },
    ],
  },
  {
    key: 'balusters',
    words: 'Balusters between posts',
    goods: 'balusters',
    fields: [
      { name: 'clear', label: 'Clear between posts, ft', as: 'length', example: '13' },
      { name: 'width', label: 'Baluster width, in', as: 'length', example: '1-1/2' },
      { name: 'gap', label: 'Widest gap, in', as: 'length', example: '4', may: true },
    ],
  },
  {
    key: 'cutList',
    words: 'Cut list on stock lengths',
    goods: 'boards',
    fields: [
      {
        name: 'pieces',
        label: 'Pieces',
        as: 'rows',
        of: [
          { name: 'count', label: 'How many', as: 'number', example: '6' },
          { name: 'length', label: 'Length, in', as: 'length', example: '31 7/8' },
        ],
      },
      { name: 'stock', label: 'Sold in lengths of, ft', as: 'lengths', example: ['8', '12'] },
      { name: 'kerf', label: 'Blade, in', as: 'length', example: '1/8', may: true },
    ],
  },
  {
    key: 'run',
    words: 'Wire, pipe or trim along a run',
    goods: 'pipe',
    fields: [
      { name: 'run', label: 'Run, ft', as: 'length', example: '42' },
      { name: 'ends', label: 'Boxes or fittings', as: 'number', example: '4', may: true },
      { name: 'makeUp', label: 'Left over at each, ft', as: 'length', example: '1', may: true },
      { name: 'stock', label: 'Sold in lengths of, ft', as: 'length', example: '10', may: true },
      waste,
    ],
  },
  {
    key: 'batts',
    words: 'Batts in a wall',
    goods: 'insulation batts',
    fields: [
      { name: 'wall', label: 'Wall, ft', as: 'length', example: '28' },
      { name: 'spacing', label: 'Studs on center, in', as: 'length', example: '16' },
      { name: 'height', label: 'Height, ft', as: 'length', example: '93 in' },
      { name: 'batt', label: 'Batt length, in', as: 'length', example: '93' },
    ],
  },
  {
    key: 'holes',
    words: 'Concrete for post holes',
    goods: 'concrete mix',
    fields: [
      { name: 'holes', label: 'Holes', as: 'number', example: '4' },
      { name: 'diameter', label: 'Across, in', as: 'length', example: '10' },
      { name: 'depth', label: 'Depth, in', as: 'length', example: '36' },
      bag,
    ],
  },
  {
    key: 'slab',
    words: 'Concrete for a slab',
    goods: 'concrete mix',
    fields: [...room, { name: 'thick', label: 'Thickness, in', as: 'length', example: '4' }, bag, waste],
  },
];
