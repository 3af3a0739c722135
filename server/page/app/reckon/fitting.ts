import type { Question } from './fields.ts';
import { PLUMBING } from './fittingPlumbing.ts';
import { choice, known, length, lengths, may, number, pair, rows } from './shorthand.ts';

const gauge = choice(
  'gauge',
  'Gauge',
  [14, 12, 10, 8, 6, 18, 16].map((awg) => [awg, `${awg} AWG`] as const),
);
const count = number('count', 'How many', '2');
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
      may(
        rows('cables', 'Cables', [
          count,
          gauge,
          number('conductors', 'Wires in each, less ground', '2'),
          known('ground', 'With a ground'),
        ]),
      ),
      may(rows('loose', 'Single wires', [count, gauge])),
      may(number('devices', 'Switches and receptacles', '1')),
      known('clamps', 'Clamps inside the box'),
      may(number('volume', 'Stamped in the box, cu in', '18')),
    ],
  },
  {
    key: 'wire and breaker',
    words: 'Wire on a breaker',
    fields: [
      may(gauge),
      may(number('amps', 'Breaker, A', '20')),
      may(
        choice('metal', 'Metal', [
          ['copper', 'Copper'],
          ['aluminum', 'Aluminum'],
        ]),
      ),
    ],
  },
  {
    key: 'receptacle',
    words: 'Receptacle near water or along a counter',
    fields: [
      may(length('toBasin', 'From the basin’s edge, in', '30')),
      may(length('alongCounter', 'To the next along the counter, in', '48')),
      may(length('unprotected', 'No GFCI: from the water, in', '60')),
    ],
  },
  { key: 'hole in stud', words: 'Hole in a stud', fields: stud },
  { key: 'notch in stud', words: 'Notch in a stud', fields: stud },
  { key: 'hole in joist', words: 'Hole in a joist', fields: [cut, may(lumber), engineered] },
  {
    key: 'notch in joist',
    words: 'Notch in a joist',
    fields: [
      cut,
      may(lumber),
      engineered,
      may(
        choice('at', 'Where along it', [
          ['end', 'at its end'],
          ['outer', 'in an outer third'],
          ['middle', 'in the middle third'],
        ]),
      ),
    ],
  },
  ...PLUMBING,
  {
    key: 'stairs',
    words: 'Stairs',
    fields: [
      may(lengths('risers', 'Each riser, in', '7-1/2', '7-5/8')),
      may(lengths('treads', 'Each tread, in', '10', '10-1/8')),
      may(length('width', 'Width, in', '36')),
      may(length('headroom', 'Headroom, in', '80')),
      may(length('handrail', 'Handrail over the nosings, in', '36')),
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
      may(length('drop', 'Drop below it, in', '31')),
      may(length('height', 'Height, in', '36')),
      may(length('gap', 'Widest gap, in', '3-7/8')),
    ],
  },
  {
    key: 'egress window',
    words: 'Escape window',
    fields: [
      may(length('width', 'Clear width, in', '28')),
      may(length('height', 'Clear height, in', '30')),
      may(length('sill', 'Sill over the floor, in', '40')),
      known('gradeFloor', 'On the floor at grade'),
    ],
  },
  {
    key: 'door opening',
    words: 'Opening for a prehung door',
    fields: [
      length('width', 'Opening width, in', '34'),
      may(length('height', 'Opening height, in', '82-1/2')),
      pair('door', 'Door, in', '32', '80'),
    ],
  },
  {
    key: 'tile',
    words: 'Tile joint and offset',
    fields: [
      length('side', 'Longest side, in', '24'),
      may(length('joint', 'Joint, in', '3/16')),
      may(
        choice('layout', 'Layout', [
          ['grid', 'grid'],
          ['running bond', 'running bond'],
        ]),
      ),
      may(
        choice('edge', 'Edge', [
          ['rectified', 'rectified'],
          ['calibrated', 'calibrated'],
        ]),
      ),
      may(length('warpage', 'Warpage, in', '1/32')),
      may(length('variation', 'Difference in size, in', '1/32')),
      may(number('offset', 'Offset, %', '33')),
    ],
  },
  {
    key: 'wood floor',
    words: 'Moisture of a wood floor',
    fields: [
      number('flooring', 'Flooring, %', '8'),
      number('subfloor', 'Subfloor, %', '10'),
      known('wide', 'Plank of 3 in or wider'),
    ],
  },
  {
    key: 'concrete screw',
    words: 'Concrete screw',
    fields: [
      may(length('diameter', 'Screw, in', '1/4')),
      may(length('length', 'Its length, in', '2-1/4')),
      may(length('through', 'Through how much, in', '3/4')),
      may(length('hole', 'Bit, in', '3/16')),
      may(length('holeDepth', 'Hole depth, in', '2')),
    ],
  },
  {
    key: 'deck boards',
    words: 'Deck boards on their joists',
    fields: [
      length('spacing', 'Joists on center, in', '16'),
      may(
        choice('thick', 'Boards', [
          ['5/4', '5/4'],
          ['2', '2 in nominal'],
        ]),
      ),
      known('diagonal', 'Laid on the diagonal'),
      known('composite', 'Composite'),
    ],
  },
];
