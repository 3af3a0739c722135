import { describe, expect, it } from 'vitest';
import { compute } from '../../server/takeoff/index.ts';

const SITE = { areas: ['mud room'], builtYear: null };

/** What the notes have to buy, and what is asked. */
function told(...texts: string[]) {
  const notes = texts.map((text, k) => ({ noteId: `n${k}`, saidAt: `2026-04-27T1${k}:00:00`, text, facts: [] }));
  const { lines, questions } = compute(notes, SITE);
  return {
    buy: lines.map((l) => `${l.amount.toFraction()} ${l.item} ${l.size}`),
    asks: questions.map((q) => q.ask),
    lines,
  };
}

describe('cut lists in notes', () => {
  it.each([
    [
      'spoken numbers, stock by the footer, an eighth a cut',
      'cutting coat cleats out of 1x4 ten footers. need six at 31 and a quarter, three at 22 and two at 47-3/4. count an eighth for each cut',
      ['3 1x4 10 ft'],
    ],
    [
      'a size with its length',
      'studs come out of 2x4 x 10s. cut me 4 at 54 and 4 at 62, blade takes an eighth',
      ['4 2x4 10 ft'],
    ],
    [
      'two stock lengths, the fewest feet',
      "cut list for the baseboard, 8 footers or 12s. one at 7 foot 2, two at 41 1/4, 1 at 133, blade's an eighth",
      ['2 baseboard 8 ft', '1 baseboard 12 ft'],
    ],
    [
      'millimetres',
      'battens, 38 x 63 timber in 2.4 m lengths. 8 at 750 mm, 6 at 1100, 3 mm kerf',
      ['6 38x63 batten 2.4 m'],
    ],
  ])('%s', (_, text, buy) => {
    expect(told(text).buy).toEqual(buy);
  });

  it('a later note tells of stock to use first, or changes a count', () => {
    const list =
      'Cut list, bench: 2x6, four legs at 17, six rails at 44 1/2, five slats at 60. kerf 1/8. Buy 12 ft lengths.';
    expect(told(list).buy).toEqual(['5 2x6 12 ft']);
    expect(told(list, "there's two 12 footers of 2x6 on the rack, use them first").buy).toEqual(['3 2x6 12 ft']);
    expect(told(list, 'on that 2x6 make it one at 60').buy).toEqual(['3 2x6 12 ft']);
  });

  it('stock was used in the reckoning, and a blade nobody named is an assumption', () => {
    const { lines } = told('cut list, 2x4 eight footers, two at 48. got one full eight footer, use it first');
    expect(lines).toMatchObject([{ stockUsed: true, assumptions: ['1/8 in for the blade, common practice'] }]);
  });

  it('asks where the stock length was not said or is too short', () => {
    expect(told('cut list for the shelf, 1x10, three at 40')).toMatchObject({
      buy: [],
      asks: [expect.stringMatching(/what length/)],
    });
    expect(told('cut list, 2x4 eight footers, one at 100')).toMatchObject({
      buy: [],
      asks: [expect.stringMatching(/does not come out/)],
    });
  });

  it('reads no list into other talk', () => {
    expect(told('got two 2x4 at 49 in the truck, hung six doors at 80')).toMatchObject({ buy: [], asks: [] });
    expect(told('changed the blade on the saw and cut the counter at 25 and a half')).toMatchObject({
      buy: [],
      asks: [],
    });
  });
});
