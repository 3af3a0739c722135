import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const measured = (text: string) =>
  readNote(text, { saidAt: SAID_AT })
    .facts.filter((f) => f.kind === 'measurement')
    .map((m) => m.of);

describe('what a figure is of', () => {
  it('gives both figures of a pair one name', () => {
    const [first, second, ...more] = measured('the closet opening is 30 1/4 by 80 5/8');
    expect(more).toEqual([]);
    expect(second).toBe(first);
    expect(first).toContain('opening');
  });

  it.each([
    ["the ceiling's low by the stair wall, the stair wall's sixteen foot", 'stair wall'],
    ['bathtub water is at 118 degrees', 'temperature'],
    ['the handrail sits 36 in above the floor', 'height'],
    ['the anchor bolts are 48 in apart', 'spacing'],
  ])('%s', (text, word) => {
    expect(measured(text).at(-1)).toContain(word);
  });

  it('is not called by goods told beside it', () => {
    expect(measured('Hall door sticks. Need 3 hinges. Opening is 32-3/8 inches.')).toEqual(['opening']);
    const [cut] = measured(
      'Cut the porch skirt at 41 and five eighths. Need a box of deck screws and one tube of glue.',
    );
    expect(cut).toContain('porch');
  });

  it('says no word of a name twice', () => {
    for (const of of measured('the niche: niche shelf sits at 48 in, niche is 14 in wide'))
      expect(new Set(of.split(' ')).size).toBe(of.split(' ').length);
  });
});
