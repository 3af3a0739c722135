import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { concreteScrew } from '../../server/takeoff/checks/anchor.ts';
import { deckBoards } from '../../server/takeoff/checks/deckBoards.ts';
import { roughOpening } from '../../server/takeoff/checks/doorOpening.ts';

const f = (n: number | string) => new Fraction(n);
const results = (verdicts: { of: string; result: string }[]) => verdicts.map((v) => `${v.of}: ${v.result}`);

describe('joists under deck boards, IRC Table R507.7', () => {
  it.each([
    // Everett's copy of the table (lfportal.everettwa.gov doc/1467330 p. 24): 5/4 16 and 12 in, 2 in 24 and 16 in.
    [deckBoards({ spacing: f(16), thick: f('5/4'), diagonal: false }), 'fits'],
    [deckBoards({ spacing: f('16.5'), thick: f('5/4'), diagonal: false }), 'does not fit'],
    [deckBoards({ spacing: f(12), thick: f('5/4'), diagonal: true }), 'fits'],
    [deckBoards({ spacing: f(16), thick: f('5/4'), diagonal: true }), 'does not fit'],
    [deckBoards({ spacing: f(24), thick: f(2), diagonal: false }), 'fits'],
    [deckBoards({ spacing: f(16), thick: f(2), diagonal: true }), 'fits'],
    [deckBoards({ spacing: f('19.2'), thick: f(2), diagonal: true }), 'does not fit'],
    [deckBoards({ spacing: f(16), thick: f('5/4'), diagonal: null }), 'cannot say'],
    [deckBoards({ spacing: f(12), thick: f('5/4'), diagonal: null }), 'fits'],
    [deckBoards({ spacing: f(12), thick: null, diagonal: true }), 'cannot say'],
    [deckBoards({ spacing: f(12), thick: f('5/4'), diagonal: true, composite: true }), 'cannot say'],
    [deckBoards({ spacing: f(12), thick: f(1), diagonal: false }), 'cannot say'],
  ])('%o', (verdict, result) => {
    expect(verdict.result).toBe(result);
  });
});

describe('concrete screws', () => {
  const screw = { diameter: f('1/4'), length: null, through: null, hole: null, holeDepth: null };
  it.each<[string, Parameters<typeof concreteScrew>[0], string[]]>([
    // "Self-tapping screws for masonry" (fastener trade press): 3/16 bit for 1/4, 5/32 for 3/16, 1-3/4 in embedment at most.
    [
      '3/4 board, 2-3/4 screw: 2 in is too deep',
      { ...screw, length: f('2.75'), through: f('0.75') },
      ['anchor embedment: does not fit'],
    ],
    ['3/4 furring, 2-1/4 screw', { ...screw, length: f('2.25'), through: f('0.75') }, ['anchor embedment: fits']],
    // confast.com/articles/rules-for-fastening-to-concrete.aspx: 1 in at least, hole 1/2 in deeper than the anchor.
    [
      '1-1/2 plate, 2-1/4 screw: 3/4 in',
      { ...screw, length: f('2.25'), through: f('1.5') },
      ['anchor embedment: does not fit'],
    ],
    [
      'hole 2 in deep for 1-1/2 in of screw',
      { ...screw, length: f('2.25'), through: f('0.75'), holeDepth: f(2) },
      ['anchor embedment: fits', 'anchor hole depth: fits'],
    ],
    [
      'hole 1-3/4 in deep',
      { ...screw, length: f('2.25'), through: f('0.75'), holeDepth: f('1.75') },
      ['anchor embedment: fits', 'anchor hole depth: does not fit'],
    ],
    ['its own bit', { ...screw, hole: f('3/16') }, ['anchor hole: fits']],
    ['a bit too wide', { ...screw, hole: f('7/32') }, ['anchor hole: does not fit']],
    ['the thin screw', { ...screw, diameter: f('3/16'), hole: f('5/32') }, ['anchor hole: fits']],
    ['diameter not said', { ...screw, diameter: null, hole: f('3/16') }, ['anchor hole: cannot say']],
    ['no thickness said', { ...screw, length: f('2.75') }, ['anchor embedment: cannot say']],
    ['no length said', { ...screw, through: f('0.75') }, ['anchor embedment: cannot say']],
  ])('%s', (_, given, expected) => {
    expect(results(concreteScrew(given))).toEqual(expected);
  });
});

describe('rough opening of a prehung door', () => {
  // richardraffan.com, "What is a 3 0 door": 2/8 asks 34 x 82-1/2, 2/6 asks 32, 3/0 asks 38.
  it.each<[string, number, number | string, string | null, string[]]>([
    ['2/8 in 34', 32, 34, '82.5', ['rough opening width: fits', 'rough opening height: fits']],
    ['2/8 in 33', 32, 33, '82.5', ['rough opening width: does not fit', 'rough opening height: fits']],
    // thequickdoorhanger.com, learnframing.com/rough-openings-vs-door-size: 2 in wider, 2-1/2 in taller.
    ['2/6 in 32', 30, 32, '82.5', ['rough opening width: fits', 'rough opening height: fits']],
    ['2/4 in 29-1/2', 28, '29.5', null, ['rough opening width: does not fit']],
    ['2/6 in 33', 30, 33, null, ['rough opening width: fits']],
    ['3/0 in 38, low', 36, 38, '82', ['rough opening width: fits', 'rough opening height: does not fit']],
  ])('%s', (_, slab, width, height, expected) => {
    const opening = { width: f(width), height: height === null ? null : f(height) };
    expect(results(roughOpening(opening, { width: f(slab), height: f(80) }))).toEqual(expected);
  });
});
