import fc from 'fast-check';
import Fraction from 'fraction.js';
import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { convert } from '../../parser/quantities/units.ts';

describe('published factors', () => {
  // 16 CFR 500.19, "Conversion of SI metric quantities to inch/pound quantities and vice versa"; exact ones as there.
  it.each([
    ['in', 'mm', '254/10'],
    ['in', 'cm', '254/100'],
    ['ft', 'in', '12'],
    ['ft', 'mm', '3048/10'],
    ['yd', 'ft', '3'],
    ['yd', 'm', '9144/10000'],
    ['sq ft', 'sq in', '144'],
    ['sq yd', 'sq ft', '9'],
    ['cu ft', 'cu in', '1728'],
    ['cu yd', 'cu ft', '27'],
  ])('1 %s = %3$s %s, exactly', (from, to, factor) => {
    expect(convert(new Fraction(1), from, to)?.toFraction()).toBe(new Fraction(factor).toFraction());
  });

  // Rounded as printed in 16 CFR 500.19.
  it.each([
    ['sq yd', 'sq m', 0.836127],
    ['cu yd', 'cu m', 0.764555],
    ['gal', 'L', 3.78541],
    ['fl oz', 'ml', 29.5735],
    ['lb', 'g', 453.592],
  ])('1 %s = %3$s %s, as printed', (from, to, printed) => {
    expect(convert(new Fraction(1), from, to)!.valueOf()).toBeCloseTo(printed, String(printed).split('.')[1]!.length);
  });

  // NIST Handbook 44, Appendix C: the gallon is 231 cubic inches; NIST SP 811, Appendix B: the pound is 0.45359237 kg, the tonne 1000 kg.
  it.each([
    ['gal', 'cu in', '231'],
    ['gal', 'qt', '4'],
    ['gal', 'fl oz', '128'],
    ['lb', 'kg', '45359237/100000000'],
    ['lb', 'oz', '16'],
    ['tonne', 'kg', '1000'],
  ])('1 %s = %3$s %s, by definition', (from, to, factor) => {
    expect(convert(new Fraction(1), from, to)?.toFraction()).toBe(new Fraction(factor).toFraction());
  });

  it('refuses what does not convert', () => {
    expect(convert(new Fraction(1), 'in', 'lb')).toBeNull();
    expect(convert(new Fraction(1), 'F', 'C')).toBeNull();
    expect(convert(new Fraction(1), 'bag', 'in')).toBeNull();
  });
});

// js-quantities is a general unit library, independent of our table. Its name for each of our units, by kind.
const KINDS = [
  { in: 'in', ft: 'ft', yd: 'yd', mm: 'mm', cm: 'cm', m: 'm' },
  { 'sq in': 'in2', 'sq ft': 'ft2', 'sq yd': 'yd2', 'sq m': 'm2' },
  {
    'cu in': 'in3',
    'cu ft': 'ft3',
    'cu yd': 'yd3',
    'cu m': 'm3',
    gal: 'gal',
    qt: 'qt',
    pt: 'pt',
    'fl oz': 'floz',
    L: 'l',
    ml: 'ml',
  },
  { lb: 'lb', oz: 'oz', kg: 'kg', g: 'g', ton: 'ton', tonne: 'tonne' },
  { sec: 's', min: 'min', hr: 'h', day: 'day', week: 'week' },
] as const;

describe('against a general unit library', () => {
  it('agrees on every pair of units and any amount', () => {
    const pairs = KINDS.flatMap((kind) =>
      Object.entries(kind).flatMap((a) => Object.entries(kind).map((b) => [a, b] as const)),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.integer({ min: 1, max: 1_000_000 }),
        fc.integer({ min: 1, max: 64 }),
        ([a, b], n, d) => {
          const ours = convert(new Fraction(n, d), a[0], b[0])!.valueOf();
          const theirs = new Qty(n / d, a[1]).to(b[1]).scalar;
          expect(Math.abs(ours - theirs) / theirs).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('goes there and back to the very same fraction', () => {
    const pairs = KINDS.flatMap((kind) =>
      Object.keys(kind).flatMap((a) => Object.keys(kind).map((b) => [a, b] as const)),
    );
    fc.assert(
      fc.property(
        fc.constantFrom(...pairs),
        fc.integer({ min: -5000, max: 5000 }),
        fc.integer({ min: 1, max: 64 }),
        ([a, b], n, d) => {
          const value = new Fraction(n, d);
          expect(convert(convert(value, a, b)!, b, a)!.equals(value)).toBe(true);
        },
      ),
    );
  });
});
