import fc from 'fast-check';
import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { type CutJob, type CutList, cutList } from '../../server/takeoff/cutlist/cutList.ts';

const inches = (...values: (number | string)[]) => values.map((v) => new Fraction(v));
const job = (over: Partial<CutJob>): CutJob => ({
  pieces: [],
  onHand: [],
  stock: inches(96),
  kerf: new Fraction(0),
  ...over,
});
const cuts = (...rows: [number, number | string][]) =>
  rows.map(([count, length]) => ({ count, length: new Fraction(length) }));

function solved(of: CutJob): CutList {
  const answer = cutList(of);
  if (!answer.ok) throw new Error(answer.why);
  return answer;
}

const bought = (answer: CutList) => answer.buy.map((b) => [b.count, b.length.valueOf()]);

describe('cut list', () => {
  it('beats longest-first where that wastes a stick', () => {
    // 44 + 28 + 24 = 96 and 40 + 32 + 24 = 96 fill two sticks; longest-first pairs 44 with 40 and needs three.
    const answer = solved(job({ pieces: cuts([1, 44], [1, 40], [1, 32], [1, 28], [2, 24]) }));
    expect(bought(answer)).toEqual([[2, 96]]);
    expect(answer.proved).toBe(true);
  });

  it('the kerf stands between cuts and not after the last', () => {
    expect(bought(solved(job({ pieces: cuts([2, 48]) })))).toEqual([[1, 96]]);
    expect(bought(solved(job({ pieces: cuts([2, 48]), kerf: new Fraction(1, 8) })))).toEqual([[2, 96]]);
    expect(bought(solved(job({ pieces: cuts([2, '47.9375']), kerf: new Fraction(1, 8) })))).toEqual([[1, 96]]);
  });

  it('uses what is on hand first, also a drop', () => {
    const pieces = cuts([3, 40]);
    expect(bought(solved(job({ pieces, onHand: inches(41) })))).toEqual([[1, 96]]);
    expect(bought(solved(job({ pieces, onHand: inches(41, 96) })))).toEqual([]);
  });

  it('mixes stock lengths for the fewest feet', () => {
    expect(bought(solved(job({ pieces: cuts([4, 90]), stock: inches(96, 144) })))).toEqual([[4, 96]]);
    expect(bought(solved(job({ pieces: cuts([3, 48]), stock: inches(96, 144) })))).toEqual([[1, 144]]);
  });

  it.each([
    [job({ pieces: cuts([1, 97]) }), /97 in does not come out of 96/],
    [job({}), /nothing to cut/],
    [job({ pieces: cuts([1, 20]), stock: [] }), /what length/],
    [job({ pieces: cuts([900, 20]) }), /900 pieces/],
  ])('refuses what cannot be cut', (of, why) => {
    expect(cutList(of)).toMatchObject({ ok: false, why: expect.stringMatching(why) });
  });

  const anyJob = fc
    .record({
      pieces: fc.array(fc.record({ length: fc.integer({ min: 8, max: 380 }), count: fc.integer({ min: 1, max: 4 }) }), {
        minLength: 1,
        maxLength: 6,
      }),
      onHand: fc.array(fc.integer({ min: 40, max: 400 }), { maxLength: 3 }),
      stock: fc.constantFrom([384], [384, 480], [576]),
      kerf: fc.constantFrom(0, 1),
    })
    .map(({ pieces, onHand, stock, kerf }): CutJob => {
      const quarter = (n: number) => new Fraction(n, 4);
      return {
        pieces: pieces.map((p) => ({ length: quarter(p.length), count: p.count })),
        onHand: onHand.map(quarter),
        stock: stock.map(quarter),
        kerf: new Fraction(kerf, 8),
      };
    });

  const sum = (lengths: readonly Fraction[]) => lengths.reduce((a, b) => a.add(b), new Fraction(0));

  it('covers every piece, overfills no stick, invents no stick', () => {
    fc.assert(
      fc.property(anyJob, (of) => {
        const answer = solved(of);
        const wanted = of.pieces.flatMap((p) => Array<string>(p.count).fill(p.length.toFraction())).sort();
        expect(answer.sticks.flatMap((s) => s.cuts.map((c) => c.toFraction())).sort()).toEqual(wanted);
        for (const { length, cuts: cut } of answer.sticks)
          expect(
            sum(cut)
              .add(of.kerf.mul(cut.length - 1))
              .compare(length),
          ).toBeLessThanOrEqual(0);
        expect(answer.sticks.filter((s) => s.onHand).length).toBeLessThanOrEqual(of.onHand.length);
        const count = answer.buy.reduce((n, b) => n + b.count, 0);
        expect(answer.sticks.filter((s) => !s.onHand).length).toBeLessThanOrEqual(count);
      }),
      { numRuns: 150 },
    );
  });

  it('buys at or above the length of the pieces, and never more than one stick a piece', () => {
    fc.assert(
      fc.property(anyJob, (of) => {
        const answer = solved(of);
        const feet = sum(answer.buy.map((b) => b.length.mul(b.count)));
        const pieces = sum(of.pieces.map((p) => p.length.mul(p.count)));
        expect(feet.add(sum(of.onHand)).compare(pieces)).toBeGreaterThanOrEqual(0);
        expect(answer.buy.reduce((n, b) => n + b.count, 0)).toBeLessThanOrEqual(
          of.pieces.reduce((n, p) => n + p.count, 0),
        );
      }),
      { numRuns: 150 },
    );
  });

  /** Inches of stock that the pieces take at least, by trying every way to share them out: another way to the answer. */
  function leastInches({ pieces, onHand, stock, kerf }: CutJob): number {
    const cut = pieces.flatMap((p) => Array<number>(p.count).fill(p.length.add(kerf).valueOf()));
    const all = 2 ** cut.length;
    const long = Array.from({ length: all }, (_, set) => cut.reduce((s, c, i) => s + (set & (1 << i) ? c : 0), 0));
    const holds = (stick: Fraction, set: number) => long[set]! <= stick.add(kerf).valueOf() + 1e-9;
    /** Sets that stay uncut once the sticks on hand are used up. */
    let left = new Set([all - 1]);
    for (const stick of onHand)
      left = new Set(
        [...left].flatMap((set) => subsets(set).flatMap((part) => (holds(stick, part) ? [set - part] : []))),
      );
    const cost = Array<number>(all).fill(Number.POSITIVE_INFINITY);
    cost[0] = 0;
    for (let set = 1; set < all; set++)
      for (const part of subsets(set))
        for (const stick of stock)
          if (part > 0 && holds(stick, part)) cost[set] = Math.min(cost[set]!, cost[set - part]! + stick.valueOf());
    return Math.min(...[...left].map((set) => cost[set]!));
  }

  /** Every part of a set of bits, the whole and nothing among them. */
  function subsets(set: number): number[] {
    const out = [0];
    for (let part = set; part > 0; part = (part - 1) & set) out.push(part);
    return out;
  }

  it('buys just what trying every way to share out the pieces comes to, and says so', () => {
    const fewPieces = anyJob.filter(({ pieces }) => pieces.reduce((n, p) => n + p.count, 0) <= 8);
    fc.assert(
      fc.property(fewPieces, (of) => {
        const answer = solved(of);
        expect(sum(answer.buy.map((b) => b.length.mul(b.count))).valueOf()).toBeCloseTo(leastInches(of), 6);
        expect(answer.proved).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  it('more on hand never costs more', () => {
    fc.assert(
      fc.property(anyJob, (of) => {
        const feet = (j: CutJob) => sum(solved(j).buy.map((b) => b.length.mul(b.count)));
        expect(feet({ ...of, onHand: [...of.onHand, new Fraction(90)] }).compare(feet(of))).toBeLessThanOrEqual(0);
      }),
      { numRuns: 80 },
    );
  });

  it('ends on a list too wide to prove', () => {
    const pieces = Array.from({ length: 40 }, (_, k) => ({ length: new Fraction(161 + 7 * k, 16), count: 2 }));
    const answer = solved(job({ pieces, kerf: new Fraction(1, 8) }));
    expect(answer.sticks.flatMap((s) => s.cuts)).toHaveLength(80);
    // No answer is under the bound of the pieces' own length, each with its cut.
    const bound = sum(pieces.map((p) => p.length.add(new Fraction(1, 8)).mul(p.count))).div(new Fraction(769, 8));
    const sticks = answer.buy.reduce((n, b) => n + b.count, 0);
    expect(sticks).toBeGreaterThanOrEqual(bound.ceil().valueOf());
  });
});
