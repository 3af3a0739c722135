import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askCheck, type CheckForm } from '../../server/takeoff/form/index.ts';

/** `drain slope: fits: 0.25 in/ft`, each with what is missing where it cannot say; or why not. */
const answer = (form: CheckForm): string[] | string => {
  const found = askCheck(form);
  return found.ok
    ? found.checks.map((c) => [c.of, c.result, c.result === 'cannot say' ? c.missing : c.figure].join(': '))
    : found.why;
};

describe('fit checks by form', () => {
  it.each<[CheckForm, string[]]>([
    [
      {
        of: 'box fill',
        cables: [{ count: 3, gauge: 14, conductors: 2 }],
        devices: 1,
        clamps: false,
        volume: 18,
      },
      ['box fill: fits: 18 cu in'],
    ],
    [
      { of: 'box fill', cables: [{ count: 2, gauge: 12, conductors: 2 }], devices: 1 },
      ['box fill: cannot say: the box volume (the stamp in the box)'],
    ],
    [{ of: 'wire and breaker', gauge: 14, amps: 20 }, ['wire size and breaker: does not fit: 20 A']],
    [{ of: 'wire and breaker', amps: 20 }, ['wire size and breaker: cannot say: the wire size']],
    [
      { of: 'receptacle', toBasin: '3 ft', alongCounter: '50', unprotected: '6 ft' },
      [
        'receptacle at basin: fits: 36 in',
        'counter receptacles: does not fit: 50 in',
        'receptacle without GFCI: fits: 72 in',
      ],
    ],
    [{ of: 'hole in stud', cut: '2', nominal: 4 }, ['hole in stud: cannot say: whether the wall bears load']],
    [{ of: 'hole in stud', cut: '2', nominal: 4, bearing: false }, ['hole in stud: fits: 2 in']],
    [{ of: 'notch in joist', cut: '1-1/2', nominal: 10, at: 'middle' }, ['notch in joist: does not fit: 1.5 in']],
    [
      { of: 'hole in joist', cut: '2', engineered: true },
      ["hole in joist: cannot say: the maker's hole chart: no cut in an engineered member without it"],
    ],
    [
      { of: 'concrete screw', diameter: '1/4', length: '2-3/4', through: '3/4', hole: '3/16' },
      ['anchor embedment: does not fit: 2 in', 'anchor hole: fits: 0.1875 in'],
    ],
    [
      { of: 'deck boards', spacing: '16', thick: '5/4', diagonal: true },
      ['joists under deck boards: does not fit: 16 in'],
    ],
    [
      { of: 'stairs', risers: ['7-1/2', '7-1/2', '7-15/16'], treads: ['10'], headroom: '6 ft 8 in', handrail: '36' },
      [
        'riser height: does not fit: 7.9375 in',
        'riser variation: does not fit: 0.4375 in',
        'tread depth: fits: 10 in',
        'stair headroom: fits: 80 in',
        'handrail height: fits: 36 in',
      ],
    ],
    [
      { of: 'guard', on: 'floor', drop: '31', height: '34', gap: '4' },
      ['guard height: does not fit: 34 in', 'baluster gap: does not fit: 4 in'],
    ],
    [
      { of: 'egress window', width: '30', height: '24', sill: '44' },
      [
        'egress opening: cannot say: whether the sill is within 44 in of the ground outside (5.0 sq ft is then enough)',
        'egress sill: fits: 44 in',
      ],
    ],
    [{ of: 'door opening', width: '33', door: ['32', '80'] }, ['rough opening width: does not fit: 33 in']],
    [
      { of: 'tile', side: '24', joint: '1/8', layout: 'running bond', edge: 'rectified', offset: 50 },
      ['tile joint: fits: 0.125 in', 'tile offset: does not fit: 50 %'],
    ],
    [{ of: 'wood floor', flooring: 8, subfloor: 12, wide: true }, ['wood floor moisture: does not fit: 4 points']],
    [{ of: 'drain slope', pipe: '2', run: '10', fall: '2-1/2' }, ['drain slope: fits: 0.25 in/ft']],
    [{ of: 'drain slope', pipe: '2', run: '10' }, ['drain slope: cannot say: how much it falls over the run']],
    [{ of: 'trap arm', length: '7', pipe: '1-1/2' }, ['trap to vent: does not fit: 7 ft']],
    [{ of: 'dryer vent', run: '20' }, ['dryer vent length: cannot say: how many elbows']],
    [
      { of: 'closet flange', below: '-1/4', bolts: '2-1/4', foot: '3/4' },
      ['flange height: fits: 0.25 in above the finished floor', 'closet bolts: fits: 2.25 in'],
    ],
    [
      { of: 'clearances', toiletSide: '14-3/4', toiletFront: '22', showerInside: ['60', '29'] },
      [
        'toilet side clearance: does not fit: 14.75 in',
        'toilet front clearance: cannot say: which plumbing code is adopted: 21 in or 24 in',
        'shower inside: does not fit: 29 in',
      ],
    ],
    [
      { of: 'pipe through', pipe: { kind: 'copper', size: '1/2' }, hole: '5/8', outer: { kind: 'pvc', size: '1-1/4' } },
      ['hole and part: does not fit: 0.625 in', 'pipe through pipe: fits: 0.625 in'],
    ],
    [{ of: 'part through', hole: '1-3/8', asked: '1-1/4' }, ['hole and part: fits: 1.375 in']],
    [
      { of: 'water', psi: 92, celsius: 49 },
      ['water pressure: does not fit: 92 psi', 'water temperature: does not fit: 120.2 F'],
    ],
  ])('%j', (form, wanted) => {
    expect(answer(form)).toEqual(wanted);
  });

  it('gives limit, source and who decides with each', () => {
    expect(askCheck({ of: 'wire and breaker', gauge: 12, amps: 20 })).toMatchObject({
      ok: true,
      checks: [{ limit: '20 A', source: 'NEC 240.4(D); local code and the licensed trade decide', missing: null }],
    });
  });

  it.each<[string, CheckForm, RegExp]>([
    ['nothing to check', { of: 'water' }, /no size was given/],
    ['a size below nothing', { of: 'stairs', risers: ['-7'] }, /a riser must be more than 0/],
    ['a size of nothing', { of: 'guard', on: 'floor', height: '0' }, /the rail must be more than 0/],
    ['a riser of feet', { of: 'stairs', risers: ['7 ft'] }, /a riser of 84 in: is that right/],
    ['no length at all', { of: 'trap arm', length: 'long' }, /write one length/],
    ['a weight', { of: 'trap arm', length: '5 lb' }, /write one length/],
    ['lumber of no yard', { of: 'hole in stud', cut: '1', nominal: 5 }, /a 2x5: is that right/],
    ['a joist of no size', { of: 'hole in joist', cut: '1' }, /the size of the lumber/],
    ['half a window', { of: 'egress window', width: '24' }, /both/],
    ['half a cable', { of: 'box fill', cables: [{ count: 1.5, gauge: 14, conductors: 2 }] }, /1.5 cables/],
    ['a box of 900 cu in', { of: 'box fill', devices: 1, volume: 900 }, /900 cu in: is that right/],
    ['a breaker of 2,000 A', { of: 'wire and breaker', gauge: 14, amps: 2000 }, /2000 A: is that right/],
    ['water over the boil', { of: 'water', fahrenheit: 400 }, /400 F: is that right/],
    ['a fall longer than its run', { of: 'drain slope', run: '2', fall: '40' }, /longer than the run/],
    ['a joint as wide as the tile', { of: 'tile', side: '1', joint: '1' }, /as wide as the tile/],
    ['part of an elbow', { of: 'dryer vent', run: '10', nineties: 1.5 }, /1.5 elbows/],
    ['a flange a yard up', { of: 'closet flange', below: '36' }, /is that right/],
  ])('refuses %s', (_, form, why) => {
    expect(answer(form)).toMatch(why);
  });

  it('a deeper notch, a wider gap or a longer duct never turns to fits', () => {
    const fits = (form: CheckForm) => String(answer(form)).includes(': fits');
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 0, max: 40 }), (sixteenths, more) => {
        const [less, grown] = [`${sixteenths / 16}`, `${(sixteenths + more) / 16}`];
        for (const of of [
          (cut: string): CheckForm => ({ of: 'notch in joist', cut, nominal: 10 }),
          (gap: string): CheckForm => ({ of: 'guard', on: 'stair', gap }),
          (run: string): CheckForm => ({ of: 'dryer vent', run: `${run} ft`, nineties: 1 }),
        ])
          expect(fits(of(grown)) && !fits(of(less))).toBe(false);
      }),
    );
  });
});
