import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { type BoxFill, boxFill } from '../../server/takeoff/checks/boxFill.ts';
import { boxVolume } from '../../server/takeoff/checks/boxVolume.ts';
import { breaker } from '../../server/takeoff/checks/breaker.ts';
import {
  basinReceptacle,
  counterSpacing,
  unprotected,
  wallNeeds,
  wallReceptacles,
  wallSpacing,
} from '../../server/takeoff/checks/receptacle.ts';

const f = (n: number | string) => new Fraction(n);
const cable = (count: number, gauge: number, conductors = 2) => ({ count, gauge, conductors, ground: true });
const device = { gauge: null };

describe('box fill, NEC 314.16(B)', () => {
  it.each<[string, BoxFill, string, string]>([
    [
      // diychatroom.com/threads/box-fill-calculations.102858: three 14/2 and one receptacle in an 18.0 box just fit.
      'three 14/2, a receptacle, no clamps, 18 cu in',
      { cables: [cable(3, 14)], devices: [device], clamps: false, volume: f(18) },
      '18 cu in',
      'fits',
    ],
    [
      // codestandardspracticeslevel1.passetra.com, "outlet box contains a receptacle and four 12-2 NM cables": 24.75.
      'four 12-2, a receptacle, no clamps',
      { cables: [cable(4, 12)], devices: [device], clamps: false, volume: f('24.75') },
      '24.75 cu in',
      'fits',
    ],
    [
      // tradelicenseprep.com/nc-sp-ph-prep/calc-box-fill, example 1: two 12-2, clamps, a receptacle: 18.0.
      'two 12-2, a receptacle, clamps',
      { cables: [cable(2, 12)], devices: [device], clamps: true, volume: f(21) },
      '18 cu in',
      'fits',
    ],
    [
      // electricianprep.co/tools/box-fill-calculator: two 14/2 and a 12/2, clamps, a receptacle in 21: 21.5, too small.
      'two 14/2 and a 12/2, a receptacle, clamps, 21 cu in',
      { cables: [cable(2, 14), cable(1, 12)], devices: [device], clamps: true, volume: f(21) },
      '21.5 cu in',
      'does not fit',
    ],
    [
      // mikeholt.com, "Outlet box sizing" (2002-12-11): nine 12 AWG take 20.25, a 4 x 1-1/2 square box holds 21.
      'nine 12 AWG alone',
      { cables: [], loose: [{ gauge: 12, count: 9 }], devices: [], clamps: false, volume: f(21) },
      '20.25 cu in',
      'fits',
    ],
  ])('%s', (_, box, figure, result) => {
    expect(boxFill(box)).toMatchObject({ figure, result, missing: null });
  });

  // forums.mikeholt.com/threads/2568132 (2020 change): each ground over four adds a quarter; of 10 AWG that is 0.625.
  it('grounds over four', () => {
    const fill = (n: number) =>
      Number.parseFloat(boxFill({ cables: [cable(n, 10)], devices: [], clamps: false, volume: f(99) }).figure);
    expect(fill(4)).toBe(22.5);
    expect(fill(5) - fill(4) - 5).toBe(0.625);
  });

  it('clamps nobody spoke of: says so only where they decide', () => {
    const box = { cables: [cable(3, 14)], devices: [device], clamps: null };
    expect(boxFill({ ...box, volume: f(18) })).toMatchObject({
      result: 'cannot say',
      missing: expect.stringMatching(/clamps/),
    });
    expect(boxFill({ ...box, volume: f(21) }).result).toBe('fits');
    expect(boxFill({ ...box, volume: f(16) }).result).toBe('does not fit');
  });

  it('the box was not named, or a wire is not in the table: no guess', () => {
    expect(boxFill({ cables: [cable(2, 14)], devices: [device], clamps: false, volume: null })).toMatchObject({
      result: 'cannot say',
      figure: '14 cu in',
      missing: expect.stringMatching(/box volume/),
    });
    expect(boxFill({ cables: [cable(1, 11)], devices: [], clamps: false, volume: f(30) })).toMatchObject({
      result: 'cannot say',
      missing: expect.stringMatching(/11 AWG/),
    });
    expect(boxFill({ cables: [], devices: [device], clamps: false, volume: f(30) }).result).toBe('cannot say');
  });
});

// NEC Table 314.16(A), as at synthmind.com/Electrical_Box_Sizing_Guide.htm.
it.each<[string, number[], string | null]>([
  ['{N0} square box {L1} deep', [4, 1.5], '21'],
  ['{N0} square box {L1} deep', [4, 2.125], '30.3'],
  ['{L0} octagon {L1} deep', [4, 1.5], '15.5'],
  ['{L0} square {L1} deep', [4.6875, 2.125], '42'],
  ['{L0} round pancake {L1}', [4, 0.5], null],
  ['plastic box {L0} square {L1} deep', [4, 1.5], null],
  // The same table, device boxes; without its metal named a box may be plastic.
  ['metal box {L0} x {L1} x {L2}', [3, 2, 2.5], '12.5'],
  ['steel device box {L0} by {L1} by {L2}', [3, 2, 1.5], '7.5'],
  ['box {L0} x {L1} x {L2}', [3, 2, 2.5], null],
  ['{L0} octagon', [4], null],
])('volume of %s, %j', (words, sizes, volume) => {
  expect(boxVolume(words, sizes.map(f))?.toString() ?? null).toBe(volume);
});

describe('conductor and breaker', () => {
  it.each<[string, Parameters<typeof breaker>[0], string, string]>([
    // NEC 240.4(D), as at diy.stackexchange.com/questions/169297.
    ['240.4(D)(3)', { gauge: 14, breaker: 15 }, 'fits', '15 A'],
    ['240.4(D)(3)', { gauge: 14, breaker: 20 }, 'does not fit', '15 A'],
    ['240.4(D)(5)', { gauge: 12, breaker: 20 }, 'fits', '20 A'],
    ['240.4(D)(5)', { gauge: 12, breaker: 30 }, 'does not fit', '20 A'],
    ['240.4(D)(7)', { gauge: 10, breaker: 30 }, 'fits', '30 A'],
    ['240.4(D)(4)', { gauge: 12, breaker: 20, metal: 'aluminum' }, 'does not fit', '15 A'],
    ['240.4(D)(6)', { gauge: 10, breaker: 25, metal: 'aluminum' }, 'fits', '25 A'],
    // NEC Table 310.16, 60 C column, as at wiresizes.com/guides/nec-table-310-16.
    ['310.16', { gauge: 8, breaker: 40 }, 'fits', '40 A'],
    ['310.16, between the columns', { gauge: 6, breaker: 60 }, 'cannot say', '55 A'],
    ['310.16', { gauge: 6, breaker: 70 }, 'does not fit', '55 A'],
    ['310.16', { gauge: 8, breaker: 60 }, 'does not fit', '40 A'],
  ])('%s %j', (_, circuit, result, limit) => {
    expect(breaker(circuit)).toMatchObject({ result, limit });
  });

  it('no wire, no breaker, or a wire that is not in the table: no guess', () => {
    expect(breaker({ gauge: null, breaker: 20 })).toMatchObject({ result: 'cannot say', missing: 'the wire size' });
    expect(breaker({ gauge: 14, breaker: null })).toMatchObject({ result: 'cannot say', limit: '15 A' });
    expect(breaker({ gauge: 8, breaker: 40, metal: 'aluminum' }).result).toBe('cannot say');
  });
});

describe('receptacles', () => {
  it.each<[string, number, number]>([
    // forums.mikeholt.com/threads/210-52-1-receptacle-spacing.32172: a wall of 11 ft 10 in needs one, of 25 ft three.
    ['11 ft 10 in', 142, 1],
    ['25 ft', 300, 3],
    // pilars.ai/nec-210-52-receptacle-spacing: any wall of 2 ft or wider needs one.
    ['2 ft', 24, 1],
    ['under 2 ft', 23, 0],
  ])('a wall of %s', (_, wall, wanted) => {
    expect(wallNeeds(new Fraction(wall))).toBe(wanted);
  });

  it('along a wall: too few fail, enough depend on where they stand, and 12 ft lie between two at most', () => {
    expect(wallReceptacles(new Fraction(300), 2).result).toBe('does not fit');
    expect(wallReceptacles(new Fraction(300), 3).result).toBe('cannot say');
    expect(wallSpacing(new Fraction(144)).result).toBe('fits');
    expect(wallSpacing(new Fraction(145)).result).toBe('does not fit');
  });

  // NEC 210.52(D), at advice.thisoldhouse.com and ecmweb.com (code Q&A 81): 3 ft from the outside edge of each basin.
  // 210.52(C)(1), at electrical-contractor.net and smartsolve.ai (kitchen wall question 11): no point over 24 in away.
  // 210.8(A), at thesitesheet.com: 6 ft; electricallicenserenewal.com (210.8(A)(9)): bathrooms at any distance.
  it.each([
    [basinReceptacle(f(36)), 'fits'],
    [basinReceptacle(f(37)), 'does not fit'],
    [counterSpacing(f(48)), 'fits'],
    [counterSpacing(f(49)), 'does not fit'],
    [unprotected(f(71)), 'does not fit'],
    [unprotected(f(72)), 'cannot say'],
  ])('%o', (verdict, result) => {
    expect(verdict.result).toBe(result);
    expect(verdict.source).toMatch(/NEC 210.*local code and the licensed trade decide/);
  });
});
