import type { Field, Question } from './fields.ts';
import { choice, figure, known, length, may, perhaps } from './shorthand.ts';

const pipe: readonly Field[] = [
  choice('kind', 'Pipe', [
    ['pvc', 'PVC or ABS drain'],
    ['copper', 'Copper'],
    ['pex', 'PEX'],
    ['cpvc', 'CPVC'],
    ['steel', 'Steel'],
  ]),
  length('size', 'Nominal size, in', '1-1/2'),
];

/** What plumbing can be checked for. */
export const PLUMBING: readonly Question[] = [
  {
    key: 'drain slope',
    words: 'Fall of a drain',
    fields: [
      perhaps('pipe', 'Pipe, in', '2'),
      perhaps('run', 'Run, ft', '10'),
      perhaps('fall', 'Fall over it, in', '2-1/2'),
    ],
  },
  {
    key: 'trap arm',
    words: 'Trap to its vent',
    fields: [length('length', 'Trap arm, ft', '3'), perhaps('pipe', 'Pipe, in', '1-1/2')],
  },
  {
    key: 'closet flange',
    words: 'Closet flange and its bolts',
    fields: [
      perhaps('below', 'Below the finished floor, in', '1/4'),
      known('thickRing', 'Extra-thick ring'),
      perhaps('bolts', 'Bolts, in', '2-1/4'),
      perhaps('foot', 'Foot of the bowl, in', '3/4'),
    ],
  },
  {
    key: 'clearances',
    words: 'Room around toilet, sink and shower',
    fields: [
      perhaps('toiletSide', 'Toilet center to the side, in', '15'),
      perhaps('toiletFront', 'Before the toilet, in', '24'),
      perhaps('toiletCenters', 'Toilet center to the next, in', '30'),
      perhaps('sinkFront', 'Before the sink, in', '21'),
      { name: 'showerInside', label: 'Shower inside, in', as: 'pair', example: ['32', '36'], may },
      perhaps('showerFront', 'Before the shower, in', '24'),
    ],
  },
  {
    key: 'pipe through',
    words: 'Pipe through a hole or a larger pipe',
    fields: [
      { name: 'pipe', label: 'The pipe', as: 'group', of: pipe },
      perhaps('hole', 'Hole, in', '2'),
      { name: 'outer', label: 'Or through this pipe', as: 'group', of: pipe, may },
    ],
  },
  {
    key: 'part through',
    words: 'Part through a hole',
    fields: [
      length('hole', 'Hole, in', '1-3/8'),
      perhaps('part', 'The part across, in', '1-1/4'),
      perhaps('asked', 'Hole that it asks for, in', '1-3/8'),
    ],
  },
  {
    key: 'water',
    words: 'Water pressure and heat',
    fields: [
      figure('psi', 'Standing pressure, psi', '72'),
      figure('fahrenheit', 'Hot water, °F', '118'),
      figure('celsius', 'Or °C', '48'),
    ],
  },
  {
    key: 'dryer vent',
    words: 'Dryer duct',
    fields: [
      perhaps('run', 'Duct, ft', '20'),
      figure('nineties', 'Elbows of 90°', '2'),
      figure('fortyFives', 'Of 45°', '1'),
    ],
  },
];
