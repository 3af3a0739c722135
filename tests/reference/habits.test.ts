import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { BAG_YIELD } from '../../server/takeoff/calculators/concrete.ts';
import { NO_BEDDING } from '../../server/takeoff/reading/bedding.ts';
import { habitOf, usualWaste } from '../../server/takeoff/reading/habits.ts';

/** What one `per` of the goods does, where nobody said. */
function usually(item: string, per: string): number | undefined {
  const habit = habitOf({ item, packSize: null, tile: null, bedding: NO_BEDDING });
  if (!habit || typeof habit === 'string') return undefined;
  return habit.ratios.find((r) => r.per === per)?.value.valueOf();
}

describe('how goods are sold where nobody said', () => {
  it.each<[string, string, number]>([
    // ask.com, how many square feet does a gallon of paint cover: 350, primer 200; engineerfix.com, how much area does a
    // gallon of primer cover: paint 350 to 400, primer 200 to 350. The low ends.
    ['wall paint', 'gal', 350],
    ['drywall primer', 'gal', 200],
    // reference.com, number of shingle bundles; bestaffordableroofing.com, how do roofers estimate: three to 100 sq ft.
    ['shingle', 'square', 3],
    // 16 CFR 500.19: 27 cu ft to the cubic yard, as is yards of anything loose.
    ['gravel', 'cu yd', 27],
  ])('%s by the %s: %d', (item, per, wanted) => {
    expect(usually(item, per)).toBe(wanted);
  });

  it.each<[string, number]>([
    // engineerfix.com, how many cubic feet in a 50 lb bag: about 0.375; civilsir.com, bags of concrete: 0.15 to 20 lb.
    ['printed', 0.375],
    ['0.15 to 20 lb', (0.15 * 50) / 20],
  ])('a 50 lb bag of concrete, %s: %f cu ft', (_, yields) => {
    expect(BAG_YIELD[50]!.valueOf()).toBeCloseTo(yields, 9);
  });
});

describe('waste where nobody said any lies within what is published', () => {
  it.each<[string, string, number, number]>([
    // houseinsiderwire.com ?p=597 and getfreedomatlas.com, tile waste factor by pattern: straight 10 %.
    ['floor tile', 'straight lay', 10, 10],
    // ehow.com/how_8321305: diagonal 15 %; houseinsiderwire.com: diagonal and herringbone 15 to 20 %.
    ['floor tile', 'laid on the diagonal', 15, 20],
    ['floor tile', 'herringbone', 15, 20],
  ])('%s, %s', (item, words, least, most) => {
    const percent = usualWaste(item, words)!.share.mul(new Fraction(100)).valueOf();
    expect(percent).toBeGreaterThanOrEqual(least);
    expect(percent).toBeLessThanOrEqual(most);
  });
});
