import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import type { Token } from '../../parser/types.ts';
import { read } from './read.ts';

const PIECES =
  `one two twenty thirty hundred thousand and a an half quarter quarters eighths seconds oh point dozen couple inch inches foot feet ' " ' - / x by to or no wait make
   that each of the four windows ( ) $ # : . , 3 12 1/2 2868 ½ ⅝ ° % mm bags box pounds per square minus plus scratch one's 6' x4 qty degrees at past`
    .split(/\s+/)
    .concat(['\n', ' ', '  ']);

const talk = fc
  .array(fc.tuple(fc.constantFrom(...PIECES), fc.constantFrom('', ' ')), { maxLength: 40 })
  .map((pieces) => pieces.flat().join(''));

describe('any text at all', () => {
  it.each([
    ['trade talk', talk],
    ['unicode', fc.string({ unit: 'binary', maxLength: 80 })],
  ])('%s: spans lie in the text, in order, apart, and are their quotes', (_name, texts) => {
    fc.assert(
      fc.property(texts, (text) => {
        const { quantities, notQuantities } = read(text);
        for (const found of [quantities, notQuantities]) {
          let end = 0;
          for (const one of found) {
            expect(one.start).toBeGreaterThanOrEqual(end);
            expect(one.end).toBeGreaterThan(one.start);
            expect(one.end).toBeLessThanOrEqual(text.length);
            expect(one.quote).toBe(text.slice(one.start, one.end));
            end = one.end;
          }
        }
        for (const q of quantities) expect(notQuantities.some((n) => n.start < q.end && n.end > q.start)).toBe(false);
      }),
      { numRuns: 2000 },
    );
  });

  it('a number said with a unit is read exactly, however it is written', () => {
    const fraction = fc
      .constantFrom(2, 4, 8, 16, 32)
      .chain((d) => fc.integer({ min: 0, max: d / 2 - 1 }).map((k) => [2 * k + 1, d] as const));
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 300 }),
        fraction,
        fc.constantFrom(' ', '-'),
        fc.constantFrom('"', ' in', ' inches'),
        (whole, [n, d], joint, unit) => {
          const [q, ...more] = read(`cut ${whole}${joint}${n}/${d}${unit}`).quantities;
          expect(more).toEqual([]);
          expect([q?.value.toFraction(), q?.unit]).toEqual([`${whole * d + n}/${d}`, 'in']);
        },
      ),
    );
  });
});

const metric = fc.constantFrom('m', 'kg', 'litres', '%', 'mm');

describe('laws of the grammar', () => {
  const values = (text: string) => read(text).quantities.map((q) => [q.value.toFraction(), q.unit]);

  it('a comma before one or two figures and a metric unit is a point', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 1, max: 99 }), metric, (whole, part, unit) => {
        const found = values(`it is ${whole},${part} ${unit} of it`);
        expect(found).toHaveLength(1);
        expect(found).toEqual(values(`it is ${whole}.${part} ${unit} of it`));
      }),
    );
  });

  it('three figures behind a comma are thousands', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 100, max: 999 }), (thousands, rest) => {
        expect(values(`${thousands},${rest} bricks`)).toEqual([[String(thousands * 1000 + rest), null]]);
      }),
    );
  });

  it('a size and its sheets count no sheets, whatever the size', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 3000 }), fc.integer({ min: 2, max: 3000 }), (a, b) => {
        expect(values(`${a} x ${b} sheets`)).toEqual([
          [String(a), null],
          [String(b), null],
        ]);
      }),
    );
  });

  it('an age is none of anything, but what somebody is short is', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 13, max: 99 }),
        fc.constantFrom("he's", "she's", 'the dog is', 'dad turned'),
        (n, who) => {
          expect(values(`${who} ${n} and still at it`)).toEqual([]);
        },
      ),
    );
    expect(values("he's 12 sheets short")).toEqual([['12', 'sheet']]);
  });

  it('a score is none, whichever way it is written', () => {
    const goals = fc.integer({ min: 0, max: 40 });
    fc.assert(
      fc.property(goals, goals, fc.constantFrom('-', ' to ', ' - '), (a, b, joint) => {
        expect(values(`they lost ${a}${joint}${b} on saturday`)).toEqual([]);
      }),
    );
  });
});

/** Tokens that count how often anything looks at them. */
function watched(text: string): { tokens: Token[]; looks: () => number } {
  let looks = 0;
  const tokens = tokenise(text).map(
    (token) =>
      new Proxy(token, {
        get(target, key) {
          looks++;
          return Reflect.get(target, key);
        },
      }),
  );
  return { tokens, looks: () => looks };
}

describe('work grows with the text and no faster', () => {
  it.each([
    'one ',
    'two by ',
    '1x',
    'one no two ',
    "6'-",
    '3/4-',
    'twenty ',
    'and a half ',
    '555-',
    'a ',
    'x 4 ',
    'six no wait ',
  ])('%j over and over', (piece) => {
    const looksAt = (times: number) => {
      const text = piece.repeat(times);
      const { tokens, looks } = watched(text);
      readQuantities(tokens, text);
      return looks() / tokens.length;
    };
    expect(looksAt(2000)).toBeLessThan(1.5 * looksAt(250) + 1);
  });
});
