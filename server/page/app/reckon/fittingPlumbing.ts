import type { Field, Question } from './fields.ts';
import { choice, group, known, length, may, number, pair } from './shorthand.ts';

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
      may(length('pipe', 'Pipe, in', '2')),
      may(length('run', 'Run, ft', '10')),
      may(length('fall', 'Fall over it, in', '2-1/2')),
    ],
  },
  {
    key: 'trap arm',
    words: 'Trap to its vent',
    fields: [length('length', 'Trap arm, ft', '3'), may(length('pipe', 'Pipe, in', '1-1/2'))],
  },
  {
    key: 'closet flange',
    words: 'Closet flange and its bolts',
    fields: [
      may(length('below', 'Below the finished floor, in', '1/4')),
      known('thickRing', 'Extra-thick ring'),
      may(length('bolts', 'Bolts, in', '2-1/4')),
      may(length('foot', 'Foot of the bowl, in', '3/4')),
    ],
  },
  {
    key: 'clearances',
    words: 'Room around toilet, sink and shower',
    fields: [
      may(length('toiletSide', 'Toilet center to the side, in', '15')),
      may(length('toiletFront', 'Before the toilet, in', '24')),
      may(length('toiletCenters', 'Toilet center to the next, in', '30')),
      may(length('sinkFront', 'Before the sink, in', '21')),
      may(pair('showerInside', 'Shower inside, in', '32', '36')),
      may(length('showerFront', 'Before the shower, in', '24')),
    ],
  },
  {
    key: 'pipe through',
    words: 'Pipe through a hole or a larger pipe',
    fields: [
      group('pipe', 'The pipe', pipe),
      may(length('hole', 'Hole, in', '2')),
      may(group('outer', 'Or through this pipe', pipe)),
    ],
  },
  {
    key: 'part through',
    words: 'Part through a hole',
    fields: [
      length('hole', 'Hole, in', '1-3/8'),
      may(length('part', 'The part across, in', '1-1/4')),
      may(length('asked', 'Hole that it asks for, in', '1-3/8')),
    ],
  },
  {
    key: 'water',
    words: 'Water pressure and heat',
    fields: [
      may(number('psi', 'Standing pressure, psi', '72')),
      may(number('fahrenheit', 'Hot water, °F', '118')),
      may(number('celsius', 'Or °C', '48')),
    ],
  },
  {
    key: 'dryer vent',
    words: 'Dryer duct',
    fields: [
      may(length('run', 'Duct, ft', '20')),
      may(number('nineties', 'Elbows of 90°', '2')),
      may(number('fortyFives', 'Of 45°', '1')),
    ],
  },
];
