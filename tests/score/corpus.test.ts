import { describe, expect, it } from 'vitest';
import { sameAmount } from './lib/amounts.ts';
import { HALVES, LISTS, readHalf } from './lib/corpus.ts';
import { share } from './lib/wording.ts';

describe.each(HALVES)('the %s notes', (half) => {
  const notes = readHalf(half);

  it('quote the note exactly', () => {
    const strangers = notes.flatMap((note) =>
      LISTS.flatMap((list) =>
        note.gold[list].filter(({ quote }) => !note.text.includes(quote)).map((f) => [note.id, f]),
      ),
    );
    expect(notes.length).toBeGreaterThan(20);
    expect(strangers).toEqual([]);
  });

  it('set no wait that ends, and no day due, before the note', () => {
    const early = notes.flatMap((note) =>
      note.gold.followUps.filter(({ due, notBefore }) =>
        [due, notBefore].some((date) => date !== null && date < note.saidAt.slice(0, 10)),
      ),
    );
    expect(early).toEqual([]);
  });
});

it('no note stands in both halves, or twice', () => {
  const notes = HALVES.flatMap(readHalf);
  expect(new Set(notes.map(({ id }) => id)).size).toBe(notes.length);
  expect(new Set(notes.map(({ text }) => text)).size).toBe(notes.length);
});

describe('the matching', () => {
  it('takes other words for the same work', () => {
    expect(share('replace the cracked tiles', 'swap out cracked tile')).toBe(1);
    expect(share('backsplash', 'back splash')).toBe(1);
    expect(share('grout the floor', 'paint the ceiling')).toBe(0);
  });

  it('takes an amount in other units, never one of another kind', () => {
    expect(sameAmount(2, 'ft', 24, 'in')).toBe(true);
    expect(sameAmount(3, 'sheet', 3, null)).toBe(true);
    expect(sameAmount(3, 'box', 3, 'bag')).toBe(false);
    expect(sameAmount(3, 'ft', 3, 'sq ft')).toBe(false);
  });
});
