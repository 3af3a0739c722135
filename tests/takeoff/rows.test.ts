import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderOf, takeOffOf } from './order.ts';

describe('pieces counted along a run', () => {
  // Areas, notes, the order. Answers by hand.
  it.each<[string, string[], string[]]>([
    [
      'closet',
      ['studs for the closet, sixteen on center over twelve foot four, 2x4 eight footers'],
      ['stud 2x4 8 ft: 11 each'],
    ],
    // 4.2 / 0.4 = 10.5, so 11, + 1; 3.6 / 0.6 + 1; 18 / 1.8 + 1.
    ['den', ['need studs for the den, 400 centres over 4.2 metres'], ['stud: 12 each']],
    ['den', ['need studs for the den at six hundred centres over 3.6 metres, 2.4 m lengths'], ['stud 2.4 m: 7 each']],
    ['garden', ['garden fence, eighteen metres, posts at one point eight centres'], ['fence post: 11 each']],
    [
      'yard',
      [
        'fence is 64 ft, a post every 8, three rails a section, 5-1/2 wide pickets no gap. need posts, rails and pickets',
      ],
      ['fence post: 9 each', 'fence rail: 24 each', 'picket: 140 each'],
    ],
    [
      'deck',
      ['12 by 20 deck, 2x10 joists sixteen on center, hangers at both ends'],
      ['joist 2x10: 16 each', 'joist hanger 2x10: 32 each'],
    ],
    ['deck', ['need concrete for 4 piers, 12 inch round, 48 deep, 80 lb bags'], ['concrete mix 80 lb: 21 bag']],
    [
      'porch',
      ['need spindles for ten foot of rail, 1-1/2 square spindles, gap no more than 4 inches'],
      ['spindle: 22 each'],
    ],
    // Two walls have an end each; runs of a fence that turn share their corner.
    ['shop', ['how many studs for two walls, 12 ft and 8 ft, 16 on center'], ['stud: 17 each']],
    ['yard', ['fence goes 40 ft then a corner and 24 ft, posts every 8 ft, how many posts'], ['fence post: 9 each']],
  ])('%s: %j', (area, notes, order) => {
    expect(takeOffOf([area], ...notes).sort()).toEqual(order.sort());
  });

  it('a run measured again replaces the first', () => {
    const first = 'need studs in the attic, 16 on center over 14 ft, 2x4 eight footers';
    expect(orderOf(['attic'], first).order).toEqual(['stud 2x4 8 ft: 12 each']);
    expect(orderOf(['attic'], first, 'the stud wall is 18 ft, not 14').order).toEqual(['stud 2x4 8 ft: 15 each']);
  });

  it.each<[string]>([
    ['framed the closet wall today, studs sixteen on center over nine foot, all in'],
    ['set the fence posts every 8 ft along the 80 ft side'],
    ['joists are 2x8'],
    ['floor joists read sixteen on center'],
  ])('orders nothing for work done or merely told: %s', (note) => {
    expect(orderOf(['closet'], note).order).toEqual([]);
  });

  it('a longer run never takes fewer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 60 }), fc.integer({ min: 0, max: 20 }), (feet, more) => {
        const studs = (run: number) =>
          Number(/stud: (\d+)/.exec(orderOf(['shop'], `need studs, 16 on center over ${run} ft`).order[0] ?? '')?.[1]);
        expect(studs(feet + more)).toBeGreaterThanOrEqual(studs(feet));
        expect(studs(feet)).toBe(Math.ceil((feet * 12) / 16) + 1);
      }),
      { numRuns: 25 },
    );
  });
});
