import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { cutList } from '../../server/takeoff/cutlist/cutList.ts';

describe('cut lists against published cutting-stock examples, the blade counted as nothing', () => {
  it.each<[string, number[], [count: number, length: number][], number]>([
    // J. Kantor, University of Notre Dame, CBE 40455 course notebook "Stock Cutting": out of 15 m and 10 m stock, no waste.
    [
      'three of 7, two of 6, six of 4, one of 3',
      [15, 10],
      [
        [3, 7],
        [2, 6],
        [6, 4],
        [1, 3],
      ],
      60,
    ],
    // github.com/emadehsan/csp, README, "OPTIMAL": five sticks of 120.
    [
      'nine of 33, three of 30, ten of 18',
      [120],
      [
        [9, 33],
        [3, 30],
        [10, 18],
      ],
      5 * 120,
    ],
    // The paper mill of en.wikipedia.org/wiki/Cutting_stock_problem, as solved in the samples of google/or-tools
    // (cutting_stock.cc): 73 rolls of 5,600 mm, more than any job has.
    [
      '219 pieces of thirteen lengths',
      [5600],
      [
        [22, 1380],
        [25, 1520],
        [12, 1560],
        [14, 1710],
        [18, 1820],
        [18, 1880],
        [20, 1930],
        [10, 2000],
        [12, 2050],
        [14, 2100],
        [16, 2140],
        [18, 2150],
        [20, 2200],
      ],
      73 * 5600,
    ],
  ])('%s', (_, stock, rows, best) => {
    const answer = cutList({
      pieces: rows.map(([count, length]) => ({ count, length: new Fraction(length) })),
      onHand: [],
      stock: stock.map((length) => new Fraction(length)),
      kerf: new Fraction(0),
    });
    if (!answer.ok) throw new Error(answer.why);
    expect(answer.buy.reduce((sum, b) => sum + b.count * b.length.valueOf(), 0)).toBe(best);
    expect(answer.proved).toBe(true);
  });
});
