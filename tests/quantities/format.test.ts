import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { lengthText, plain } from '../../parser/quantities/format.ts';

describe('lengths as the trade writes them', () => {
  it.each([
    ['11/8', 'in', '1-3/8 in'],
    ['161/2', 'in', '6 ft 8-1/2 in'],
    ['72', 'in', '6 ft'],
    ['60', 'in', '60 in'],
    ['1/3', 'in', '5/16 in'],
    ['5/2', 'bag', '2-1/2 bag'],
    ['600', 'mm', '600 mm'],
    ['1/2', null, '1/2'],
  ])('%s %s', (exact, unit, text) => {
    expect(lengthText(exact, unit)).toBe(text);
  });

  it('keeps decimals that no tape shows', () => {
    expect(plain(new Fraction('23/2'))).toBe('11-1/2');
    expect(plain(new Fraction('10/3'))).toBe('3.33');
  });
});
