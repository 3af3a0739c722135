import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { BAG_YIELD } from '../../server/takeoff/calculators/concrete.ts';
import { cover } from '../../server/takeoff/calculators/cover.ts';

const packs = (extent: number | Fraction, waste: string, unit: string, holds: number | string | Fraction) => {
  const pack = { unit: 'pack', holds: new Fraction(holds) };
  const answer = cover({ extent: new Fraction(extent), unit, waste: new Fraction(waste), pack });
  return answer.ok ? answer.amount.div(pack.holds).ceil().valueOf() : answer.why;
};

describe('packs by extent', () => {
  it.each<[string, number, string, string, number | string | Fraction, number]>([
    // Construction estimating textbook p. 203, example 16-3: 1,200 sq ft of 5/8 board, 4x8 sheets, 5 %: 38 sheets, so 40.
    ['board', 1200, '0.05', 'sq ft', 32, 40],
    // The same page: 1,184 + 2,384 sq ft of 1/2 board, 5 %: 118 sheets (117.075, up).
    ['board', 1184 + 2384, '0.05', 'sq ft', 32, 118],
    // The same page: 7,000 sq ft take 2,660 ft of tape; + 10 %, 50 ft rolls: 59.
    ['tape', 2660, '0.1', 'ft', 50, 59],
    // Bag yield page: a cubic yard takes 45 bags of 80 lb.
    ['concrete', 27, '0', 'cu ft', BAG_YIELD[80]!, 45],
    // By the same yields, 4 x 4 ft x 4 in: 12 bags of 60 lb, 9 of 80 lb (arithmetic).
    ['concrete', 16 / 3, '0', 'cu ft', BAG_YIELD[60]!, 12],
    ['concrete', 16 / 3, '0', 'cu ft', BAG_YIELD[80]!, 9],
  ])('%s: %d + %s, %s a pack', (_, extent, waste, unit, holds, wanted) => {
    expect(packs(extent, waste, unit, holds)).toBe(wanted);
  });

  it.each<[number, string, number]>([
    [0, '0.1', 10],
    [-5, '0.1', 10],
    [50, '-0.1', 10],
    [50, '0.9', 10],
    [50, '0.1', 0],
    [50_000, '0', 10],
  ])('refuses %d sq ft, waste %s, %d a pack', (extent, waste, holds) => {
    expect(packs(extent, waste, 'sq ft', holds)).toBeTypeOf('string');
  });
});
