import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { BAG_YIELD, holeVolume } from '../../server/takeoff/calculators/concrete.ts';
import { COMPOUND_GALLONS, SCREWS, TAPE_FEET } from '../../server/takeoff/calculators/drywall.ts';
import { groutPerFoot } from '../../server/takeoff/calculators/grout.ts';
import { mortarCoverage, usualNotch } from '../../server/takeoff/calculators/mortar.ts';
import { feetPerTube } from '../../server/takeoff/calculators/sealant.ts';

const f = (value: number | string) => new Fraction(value);
const MM = f('25.4');

describe('grout by the volume of its joints', () => {
  const pounds = (length: Fraction, width: Fraction, thickness: Fraction, joint: Fraction) => {
    const answer = groutPerFoot({ length, width, thickness }, joint);
    return answer.ok ? answer.value.valueOf() : answer.why;
  };
  it('300 x 300 x 10 mm, 4 mm joint: 0.426 kg a sq m (tilersforums.com, "How to calculate your grout requirements")', () => {
    const each = Number(pounds(f(300).div(MM), f(300).div(MM), f(10).div(MM), f(4).div(MM)));
    expect((each * 0.45359237) / 0.09290304).toBeCloseTo(0.426, 2);
  });
  it.each<[string, number, number, string, string, number]>([
    // Arithmetic by the same formula: 12 x 24 x 3/8 with 1/8 joints, 100 sq ft: 84.4 cu in, 4.88 lb.
    ['100 sq ft of 12x24', 12, 24, '3/8', '1/8', 4.88 / 100],
    // The same: 3 x 6 x 5/16 with 1/16 joints, 40 sq ft: 56.25 cu in, 3.25 lb.
    ['40 sq ft of 3x6', 3, 6, '5/16', '1/16', 3.25 / 40],
  ])('%s', (_, length, width, thickness, joint, wanted) => {
    expect(pounds(f(length), f(width), f(thickness), f(joint))).toBeCloseTo(wanted, 3);
  });
  it.each<[number, number, string]>([
    [12, 12, '0'],
    [12, 12, '-1/8'],
    [1, 1, '1'],
    [0, 12, '1/8'],
    [12, 12, '2'],
  ])('refuses %d x %d with a joint of %s', (length, width, joint) => {
    expect(pounds(f(length), f(width), f('3/8'), f(joint))).toBeTypeOf('string');
  });
});

describe('mortar by notch', () => {
  // engineerfix.com, "How much thinset do I need per square foot": 80 to 100, 60 to 80, 40 to 50 sq ft; the low end.
  it.each<[string, string, number]>([
    ['1/4', '1/4', 80],
    ['1/4', '3/8', 60],
    ['3/8', '1/4', 60],
    ['1/2', '1/2', 40],
  ])('%s x %s in: %d sq ft a 50 lb bag', (a, b, feet) => {
    expect(mortarCoverage([f(a), f(b)])?.valueOf()).toBe(feet);
  });
  it('a tenth more for back-buttering: 40 sq ft with a 1/2 notch takes 1.1 bags (arithmetic)', () => {
    expect(
      f(40)
        .div(mortarCoverage([f('1/2'), f('1/2')], f(50), true)!)
        .valueOf(),
    ).toBeCloseTo(1.1, 9);
  });
  it('half a bag covers half; a notch without a row has no figure; larger tile never has a finer notch', () => {
    expect(mortarCoverage([f('1/4'), f('1/4')], f(25))?.valueOf()).toBe(40);
    expect(mortarCoverage([f('3/4'), f('3/4')])).toBeNull();
    expect([4, 12, 24].map((side) => mortarCoverage(usualNotch(f(side)))?.valueOf())).toEqual([80, 60, 40]);
  });
});

describe('sealant by its bead', () => {
  const feet = (bead: Parameters<typeof feetPerTube>[0], ounces?: string) => {
    const answer = feetPerTube(bead, ounces ? f(ounces) : undefined);
    return answer.ok ? answer.feet.valueOf() : answer.why;
  };
  it.each<[string, string, number, number]>([
    // angi.com, sealant quantity chart for a 10 oz tube: 48, 16 and 12 ft (whole feet of 48.6, 16.2 and 12.15).
    ['1/4', '1/8', 48.6, 1],
    ['1/4', '3/8', 16.2, 1],
    ['1/4', '1/2', 12.15, 1],
    // engineerfix.com, "How much caulk do I need": 10 ft of 1/4 x 1/4 take 7.5 cu in, 0.41 of a cartridge: 24.3 ft.
    ['1/4', '1/4', 24.3, 1],
  ])('%s x %s in: %f ft', (width, depth, wanted, digits) => {
    expect(feet({ width: f(width), depth: f(depth) })).toBeCloseTo(wanted, digits);
  });
  it('a quarter fillet is half a quarter square (geometry), a 20 oz sausage goes 20 / 10.1 as far', () => {
    expect(feet({ leg: f('1/4') })).toBeCloseTo(48.6, 1);
    expect(Number(feet({ leg: f('1/4') }, '20')) / Number(feet({ leg: f('1/4') }))).toBeCloseTo(20 / 10.1, 6);
  });
  it.each<[string, string]>([
    ['0', '1/4'],
    ['-1/4', '1/4'],
    ['3', '1/4'],
  ])('refuses a bead of %s x %s in', (width, depth) => {
    expect(feet({ width: f(width), depth: f(depth) })).toBeTypeOf('string');
  });
});

describe('what board takes beside it is never less than published', () => {
  it.each<[string, Fraction, number, number]>([
    // Construction estimating textbook p. 203, example 16-3, and reference.com, how many drywall screws per sheet: one a
    // square foot, 32 to a 4x8 sheet.
    ['7,000 screws', SCREWS, 7000, 7000],
    ['32 screws', SCREWS, 32, 32],
    // thebalancesmb.com, drywall take-offs: 16 ft of tape to a 4x8 sheet; vbhomerepair.com, calculating wall studs and
    // drywall: 0.48 ft a square foot; the textbook 2,660 ft for 7,000.
    ['16 ft of tape a sheet', TAPE_FEET, 32, 16],
    ['0.48 ft of tape', TAPE_FEET, 1, 0.48],
    ['2,660 ft of tape', TAPE_FEET, 7000, 2660],
    // westimating.com, rules of thumb for drywall: a gallon for 100 sq ft; howtobuildplans.com ?p=40: 12 to 14 lb for 100,
    // about a gallon; the textbook 35 gal for 7,000.
    ['a gallon of compound', COMPOUND_GALLONS, 100, 1],
    ['35 gal of compound', COMPOUND_GALLONS, 7000, 35],
  ])('%s', (_, each, area, published) => {
    expect(each.mul(area).valueOf()).toBeGreaterThanOrEqual(published);
  });

  it('and no more than twice a published one', () => {
    expect([SCREWS.mul(32), TAPE_FEET.mul(32), COMPOUND_GALLONS.mul(100)].map((x) => x.valueOf())).toEqual([32, 16, 1]);
  });
});

describe('concrete', () => {
  const cubicFeet = (answer: ReturnType<typeof holeVolume>) => (answer.ok ? answer.cubicFeet.valueOf() : answer.why);
  // Arithmetic: (pi x 5 x 5 - 3.5 x 3.5) x 36 / 1,728 = 1.381; without a post pi x 5 x 5 x 36 / 1,728 = 1.636.
  it('a 10 in hole 36 in deep, with and without a 4x4', () => {
    expect(cubicFeet(holeVolume({ diameter: f(10), depth: f(36), inside: f('12.25') }))).toBeCloseTo(1.381, 3);
    expect(cubicFeet(holeVolume({ diameter: f(10), depth: f(36) }))).toBeCloseTo(1.636, 3);
  });
  it.each<[string, number, number, number]>([
    // constructionwork.com/resource/columnsposts: radius 6 in, 2 ft 9 in: 2.15 cu ft with pi cut to 3.14.
    ['pier', 12, 33, 2.15],
    // gardenguides.com/how_5597665: 6 in across, 36 deep: 0.59 cu ft.
    ['post hole', 6, 36, 0.59],
    // novacalculator.com, concrete pier: 12 in, 48 deep 3.14; 18 in, 60 deep 8.84.
    ['deck footing', 12, 48, 3.14],
    ['porch footing', 18, 60, 8.84],
  ])('%s %d in across, %d deep: %d cu ft as printed', (_, diameter, depth, printed) => {
    const ours = Number(cubicFeet(holeVolume({ diameter: f(diameter), depth: f(depth) })));
    expect(ours).toBeGreaterThanOrEqual(printed - 0.005);
    expect(ours).toBeLessThan(printed + 0.012);
  });
  it.each<[number, number]>([
    // Bag yield page: 90 bags of 40 lb, 60 of 60 lb, 45 of 80 lb to the cubic yard.
    [40, 90],
    [60, 60],
    [80, 45],
  ])('%d lb bags: %d to the cubic yard', (pounds, bags) => {
    expect(f(27).div(BAG_YIELD[pounds]!).valueOf()).toBe(bags);
  });
  it.each<[number, number, number | undefined]>([
    [0, 36, undefined],
    [10, -1, undefined],
    [60, 36, undefined],
    [10, 400, undefined],
    [3, 36, 12.25],
  ])('refuses a hole %d in across, %d deep', (diameter, depth, inside) => {
    const hole = { diameter: f(diameter), depth: f(depth), ...(inside && { inside: f(inside) }) };
    expect(cubicFeet(holeVolume(hole))).toBeTypeOf('string');
  });
});
