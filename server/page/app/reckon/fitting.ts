import type { Field, Question } from './fields.ts';
import { PLUMBING } from './fittingPlumbing.ts';
import { choice, figure, known, length, may, perhaps } from './shorthand.ts';

const gauge = choice(
  'gauge',
  'Gauge',
  [14, 12, 10, 8, 6, 18, 16].map((awg) => [awg, `${awg} AWG`] as const),
);
const count: Field = { name: 'count', label: 'How many', as: 'number', example: '2' };
const lumber = choice(
  'nominal',
  'Lumber',
  [4, 6, 8, 10, 12].map((inches) => [inches, `2x${inches}`] as const),
);
const cut = length('cut', 'Hole or notch, in', '1-3/8');
const stud = [cut, lumber, known('bearing', 'Bearing or outside wall'), known('doubled', 'Doubled')];
const engineered = known('engineered', 'I-joist, truss or other made member');

/** What can be checked to fit. */
export const FITTING: readonly Question[] = [
  {
    key: 'box fill',
    words: 'Wires in a box',
    fields: [
      {
        name: 'cables',
        label: 'Cables',
        as: 'rows',
        may,
        of: [
          count,
          gauge,
          { name: 'conductors', label: 'Wires in each, less ground', as: 'number', example: '2' },
          known('ground', 'With a ground'),
        ],
      },
      { name: 'loose', label: 'Single wires', as: 'rows', may, of: [count, gauge] },
      figure('devices', 'Switches and receptacles', '1'),
      known('clamps', 'Clamps inside the box'),
      figure('volume', 'Stamped in the box, cu in', '18'),
    ],
  },
  {
    key: 'wire and breaker',
    words: 'Wire on a breaker',
    fields: [
      { ...gauge, may },
      figure('amps', 'Breaker, A', '20'),
      {
        ...choice('metal', 'Metal', [
          ['copper', 'Copper'],
          ['aluminum', 'Aluminum'],
        ]),
        may,
      },
    ],
  },
  {
    key: 'receptacle',
    words: 'Receptacle near water or along a counter',
    fields: [
      perhaps('toBasin', 'From the basin’s edge, in', '30'),
      perhaps('alongCounter', 'To the next along the counter, in', '48'),
      perhaps('unprotected', 'No GFCI: from the water, in', '60'),
    ],
  },
  { key: 'hole in stud', words: 'Hole in a stud', fields: stud },
  { key: 'notch in stud', words: 'Notch in a stud', fields: stud },
  { key: 'hole in joist', words: 'Hole in a joist', fields: [cut, { ...lumber, may }, engineered] },
  {
    key: 'notch in joist',
    words: 'Notch in a joist',
    fields: [
      cut,
      { ...lumber, may },
      engineered,
      {
        ...choice('at', 'Where along it', [
          ['end', 'at its end'],
          ['outer', 'in an outer third'],
          ['middle', 'in the middle third'],
        ]),
        may,
      },
    ],
  },
  ...PLUMBING,
  {
    key: 'stairs',
    words: 'Stairs',
    fields: [
      { name: 'risers', label: 'Each riser, in', as: 'lengths', example: ['7-1/2', '7-5/8'], may },
      { name: 'treads', label: 'Each tread, in', as: 'lengths', example: ['10', '10-1/8'], may },
      perhaps('width', 'Width, in', '36'),
      perhaps('headroom', 'Headroom, in', '80'),
      perhaps('handrail', 'Handrail over the nosings, in', '36'),
    ],
  },
  {
    key: 'guard',
    words: 'Guard or railing',
    fields: [
      choice('on', 'It stands on', [
        ['floor', 'a deck, landing or floor'],
        ['stair', 'a stair'],
      ]),
      perhaps('drop', 'Drop below it, in', '31'),
      perhaps('height', 'Height, in', '36'),
      perhaps('gap', 'Widest gap, in', '3-7/8'),
    ],
  },
  {
    key: 'egress window',
    words: 'Escape window',
    fields: [
      perhaps('width', 'Clear width, in', '28'),
      perhaps('height', 'Clear height, in', '30'),
      perhaps('sill', 'Sill over the floor, in', '40'),
      known('gradeFloor', 'On the floor at grade'),
    ],
  },
  {
    key: 'door opening',
    words: 'Opening for a prehung door',
    fields: [
      length('width', 'Opening width, in', '34'),
      perhaps('height', 'Opening height, in', '82-1/2'),
      { name: 'door', label: 'Door, in', as: 'pair', example: ['32', '80'] },
    ],
  },
  {
    key: 'tile',
    words: 'Tile joint and offset',
    fields: [
      length('side', 'Longest side, in', '24'),
      perhaps('joint', 'Joint, in', '3/16'),
      {
        ...choice('layout', 'Layout', [
          ['grid', 'grid'],
          ['running bond', 'running bond'],
        ]),
        may,
      },
      {
        ...choice('edge', 'Edge', [
          ['rectified', 'rectified'],
          ['calibrated', 'calibrated'],
        ]),
        may,
      },
      perhaps('warpage', 'Warpage, in', '1/32'),
      perhaps('variation', 'Difference in size, in', '1/32'),
      figure('offset', 'Offset, %', '33'),
    ],
  },
  {
    key: 'wood floor',
    words: 'Moisture of a wood floor',
    fields: [
      { name: 'flooring', label: 'Flooring, %', as: 'number', example: '8' },
      { name: 'subfloor', label: 'Subfloor, %', as: 'number', example: '10' },
      known('wide', 'Plank of 3 in or wider'),
    ],
  },
  {
    key: 'concrete screw',
    words: 'Concrete screw',
    fields: [
      perhaps('diameter', 'Screw, in', '1/4'),
      perhaps('length', 'Its length, in', '2-1/4'),
      perhaps('through', 'Through how much, in', '3/4'),
      perhaps('hole', 'Bit, in', '3/16'),
      perhaps('holeDepth', 'Hole depth, in', '2'),
    ],
  },
  {
    key: 'deck boards',
    words: 'Deck boards on their joists',
    fields: [
      length('spacing', 'Joists on center, in', '16'),
      {
        ...choice('thick', 'Boards', [
          ['5/4', '5/4'],
          ['2', '2 in nominal'],
        ]),
        may,
      },
      known('diagonal', 'Laid on the diagonal'),
      known('composite', 'Composite'),
    ],
  },
];
