import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { actualSide } from '../../server/takeoff/calculators/lumber.ts';
import { atSpacing, type Counted, gapsUnder, sideBySide } from '../../server/takeoff/calculators/spacing.ts';

const f = (value: number | string) => new Fraction(value);
const count = (answer: Counted | { ok: false; why: string }) => (answer.ok ? answer.count : answer.why);

describe('pieces at a spacing', () => {
  it.each<[string, number | string, number | string, number]>([
    // vbhomerepair.com, "Calculating wall studs and drywall": a wall of 14 ft 6 in, 16 on center: 10.875, so 11, + 1.
    ['studs, 14 ft 6 in', 174, 16, 12],
    // lemurzone.com, "Tape measure secrets 2": marks at 16, 32, 48, 64, 80, 96 in: seven members in 8 ft, one at 0.
    ['members in 8 ft at 16', 96, 16, 7],
    // Arithmetic: 96 / 5 = 19.2 in, the black diamond of tapes: five spaces in 8 ft, so six members.
    ['members in 8 ft at 19.2', 96, '19.2', 6],
    // Arithmetic: a deck of 16 ft, joists 16 on center.
    ['joists over 16 ft', 192, 16, 13],
  ])('%s', (_, run, spacing, wanted) => {
    expect(count(atSpacing(f(run), f(spacing)))).toBe(wanted);
  });

  it.each<[number, number | string, string, number]>([
    // ehow.co.uk/how_5593147: 24 ft of 5-1/2 boards 1/4 apart: 288 / 5-3/4 = 50.09, a hair over 50.
    [288, '5.5', '0.25', 51],
    // theprimecalculator.com, deck board formula: 12 ft of 5-1/2 boards 1/8 apart: 25.6, so 26.
    [144, '5.5', '0.125', 26],
    // Arithmetic: boards that touch: 96 / 5-1/2 = 17.5.
    [96, '5.5', '0', 18],
  ])('boards over %d in, %s wide, %s apart', (run, width, gap, wanted) => {
    expect(count(sideBySide(f(run), f(width), f(gap)))).toBe(wanted);
  });

  it('balusters leave no 4 in gap (IRC R312.1.3), and one fewer would', () => {
    const clear = f(168);
    const width = f('1.5');
    const n = Number(count(gapsUnder(clear, width, f(4))));
    const gap = (pieces: number) => clear.sub(width.mul(pieces)).div(pieces + 1);
    expect(gap(n).compare(4)).toBeLessThanOrEqual(0);
    expect(gap(n - 1).compare(4)).toBeGreaterThan(0);
  });

  it.each<[string, string]>([
    // US PS 20 by the tables of hartfordlumber.com/lumber_dimensions.html and vterrain.org lumber page.
    ['1', '3/4'],
    ['5/4', '1'],
    ['2', '3/2'],
    ['4', '7/2'],
    ['6', '11/2'],
    ['8', '29/4'],
    ['10', '37/4'],
    ['12', '45/4'],
  ])('nominal %s is %s', (nominal, actual) => {
    expect(actualSide(f(nominal)).toFraction()).toBe(actual);
  });

  it.each<[number, number]>([
    [0, 16],
    [-12, 16],
    [144, 0],
    [144, -16],
    [12 * 5000, 16],
  ])('refuses a run of %d in at %d in', (run, spacing) => {
    expect(count(atSpacing(f(run), f(spacing)))).toBeTypeOf('string');
  });

  it.each<[number, number, number]>([
    [144, 0, 1],
    [144, 5, -1],
    [4, 5, 0],
  ])('refuses boards over %d in, %d wide, %d apart', (run, width, gap) => {
    expect(count(sideBySide(f(run), f(width), f(gap)))).toBeTypeOf('string');
  });
});
