import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Form, reckonForm } from '../../server/takeoff/form/index.ts';

/** `3 box`, or why not. */
const answer = (form: Form) => {
  const found = reckonForm(form);
  return found.ok ? found.buy.map(({ quantity, unit }) => `${quantity} ${unit}`).join(', ') : found.why;
};
const ROOM = { length: '11 ft 6 in', width: '8', waste: 10 };

describe('the calculators by form', () => {
  it.each<[Form, string]>([
    // 11.5 x 8 = 92 sq ft, + 10 % = 101.2; / 11.5 = 8.8.
    [{ kind: 'cover', ...ROOM, unit: 'box', holds: 11.5, tile: ['12', '24'] }, '9 box'],
    [{ kind: 'cover', length: '13', width: '17.5', coats: 2, unit: 'gal', holds: 400 }, '2 gal'],
    [{ kind: 'cover', length: '2.7 m', width: '1.85 m', unit: 'sheet', holds: 32 }, '2 sheet'],
    // 101.2 / 40 = 2.53; back-buttered / 36.4 = 2.78.
    [{ kind: 'mortar', ...ROOM, notch: ['1/2', '1/2'] }, '3 bag'],
    // 100 sq ft of 12x24 by 3/8 with 1/8 joints: 4.88 lb, + 10 % = 5.36.
    [
      {
        kind: 'grout',
        length: '10',
        width: '10',
        waste: 10,
        tile: ['12', '24'],
        thickness: '3/8',
        joint: '1/8',
        bagPounds: 5,
      },
      '2 bag',
    ],
    // 60 ft, 3/8 x 1/4: 16.2 ft a tube, 3.7.
    [{ kind: 'sealant', run: '60', bead: ['3/8', '1/4'] }, '4 tube'],
    [{ kind: 'spacing', run: '14 ft 6 in', spacing: '16' }, '12 each'],
    [{ kind: 'boards', run: '12', width: '5-1/2', gap: '1/8' }, '26 each'],
    [{ kind: 'balusters', clear: '13 ft', width: '1-1/2' }, '28 each'],
    // pi x 25 x 36 / 1,728 = 1.636 cu ft x 4 = 6.55; / 0.6 = 10.9.
    [{ kind: 'holes', holes: 4, diameter: '10', depth: '36', bagPounds: 80 }, '11 bag'],
    // 4 x 4 ft x 4 in: 5.33 cu ft, 8.9 bags of 80 lb.
    [{ kind: 'slab', length: '4', width: '4', thick: '4', bagPounds: 80 }, '9 bag'],
    // 2 x (12 + 14) x 8 = 416, less a door of 20 and two windows of 15 = 366; two coats 732; / 350 = 2.09.
    [
      {
        kind: 'walls',
        length: '12',
        width: '14',
        height: '8',
        openings: [
          { width: '3', height: '6 ft 8 in', count: 1 },
          { width: '3', height: '5', count: 2 },
        ],
        unit: 'gal',
        holds: 350,
        coats: 2,
      },
      '3 gal',
    ],
    // 2 x 32 x 8 = 512 + 252 = 764; / 48 = 15.9; 764 screws; x 0.5 = 382 ft; x 0.01 = 7.64 gal.
    [
      { kind: 'board', length: '14', width: '18', height: '8', ceiling: true, sheet: ['4', '12'] },
      '16 sheet, 764 screw, 382 ft of tape, 8 gal of compound',
    ],
    // 42 + 4 x 1 = 46 ft.
    [{ kind: 'run', run: '42', ends: 4, makeUp: '1' }, '46 ft'],
    // 46 x 1.1 = 50.6 ft in sticks of 10.
    [{ kind: 'run', run: '42', ends: 4, makeUp: '12 in', stock: '10', waste: 10 }, '6 length of 10 ft'],
    [{ kind: 'batts', wall: '28', spacing: '16', height: '93 in', batt: '93' }, '21 each'],
    [
      {
        kind: 'cutList',
        pieces: [
          { length: '31 7/8', count: 6 },
          { length: '24', count: 4 },
        ],
        stock: ['8'],
      },
      '4 stick of 8 ft',
    ],
  ])('%j', (form, wanted) => {
    expect(answer(form)).toBe(wanted);
  });

  it('shows its working, what it took for granted, and its source', () => {
    expect(reckonForm({ kind: 'mortar', ...ROOM, notch: ['1/4', '3/8'] })).toMatchObject({
      working: '11.5 ft x 8 ft = 92 sq ft; + 10 % = 101.2 sq ft; 60 sq ft a bag: 1.69, so 2',
      assumptions: [expect.stringContaining('60 sq ft a bag of 50 lb')],
      source: 'published charts by notch',
    });
  });

  it.each<[string, Form, RegExp]>([
    [
      'a unit that is none',
      { kind: 'cover', length: '6 smoots', width: '4', unit: 'box', holds: 20 },
      /write one length/,
    ],
    ['no number', { kind: 'spacing', run: 'long', spacing: '16' }, /the run "long"/],
    ['two numbers', { kind: 'spacing', run: '12 14', spacing: '16' }, /write one length/],
    ['a weight', { kind: 'spacing', run: '12 lb', spacing: '16' }, /write one length/],
    ['a room of 400 ft', { kind: 'cover', length: '400', width: '5', unit: 'box', holds: 20 }, /400 ft: is that right/],
    ['a side below nothing', { kind: 'cover', length: '-5', width: '8', unit: 'box', holds: 20 }, /more than 0/],
    ['an empty box', { kind: 'cover', length: '5', width: '8', unit: 'box', holds: 0 }, /how much does a box cover/],
    ['a box below nothing', { kind: 'cover', length: '5', width: '8', unit: 'box', holds: -3 }, /how much/],
    ['runaway waste', { kind: 'cover', length: '5', width: '8', waste: 400, unit: 'box', holds: 20 }, /400 % waste/],
    ['waste below nothing', { kind: 'cover', length: '5', width: '8', waste: -10, unit: 'box', holds: 20 }, /negative/],
    [
      'a tile larger than the place',
      { kind: 'cover', length: '2', width: '2', unit: 'box', holds: 20, tile: ['36', '36'] },
      /larger than the place/,
    ],
    ['a notch of no chart', { kind: 'mortar', ...ROOM, notch: ['3/4', '3/4'] }, /The bag tells/],
    ['a slab 4 ft thick', { kind: 'slab', length: '4', width: '4', thick: '48', bagPounds: 80 }, /48 in thick/],
    [
      'walls of nothing but doors',
      {
        kind: 'walls',
        length: '8',
        width: '8',
        height: '8',
        openings: [{ width: '3', height: '7', count: 20 }],
        unit: 'gal',
        holds: 350,
      },
      /nothing left to cover/,
    ],
    [
      'a door higher than its wall',
      {
        kind: 'board',
        length: '8',
        width: '8',
        height: '7',
        openings: [{ width: '3', height: '8', count: 1 }],
        sheet: ['4', '8'],
      },
      /in a wall of 7 ft/,
    ],
    ['a sheet of inches', { kind: 'board', length: '8', width: '8', height: '8', sheet: ['48', '96'] }, /48 x 96 ft/],
    ['boxes with no make-up', { kind: 'run', run: '20', ends: 3 }, /how much is left over/],
    ['half a hole', { kind: 'holes', holes: 2.5, diameter: '10', depth: '36', bagPounds: 80 }, /2.5 holes/],
    ['a piece longer than the stock', { kind: 'cutList', pieces: [{ length: '102', count: 4 }], stock: ['8'] }, /102/],
    ['a board wider than its run', { kind: 'boards', run: '1', width: '20', gap: '0' }, /wider/],
  ])('refuses %s', (_, form, why) => {
    expect(answer(form)).toMatch(why);
  });

  it('buys enough, and with a longer room never less', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 290 }),
        fc.integer({ min: 1, max: 290 }),
        fc.integer({ min: 0, max: 10 }),
        (a, b, more) => {
          const of = (length: number): Form => ({
            kind: 'cover',
            length: `${length}`,
            width: `${b}`,
            unit: 'box',
            holds: 20,
          });
          const [less, grown] = [Number.parseInt(answer(of(a)), 10), Number.parseInt(answer(of(a + more)), 10)];
          expect(less * 20).toBeGreaterThanOrEqual(a * b);
          expect(grown).toBeGreaterThanOrEqual(less);
        },
      ),
    );
  });
});
