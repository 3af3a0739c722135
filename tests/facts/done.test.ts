import { describe, expect, it } from 'vitest';
import { doneIn } from './read.ts';

describe('work that is finished', () => {
  it.each([
    ['Attic blown to fifteen inches', 'blow attic'],
    ['walls stripped', 'strip walls'],
    ['ripped out the old vanity', 'rip out old vanity'],
    ['Heat pump is charged and running', 'charge heat pump'],
    ['all the drawer fronts have one coat', 'coat drawer fronts'],
    ["Railing's on along the west side", 'install railing'],
    ["the bath's out", 'take out bath'],
    ['we finish to tape the hall', 'tape hall'],
    ['touch up behind reception done', 'finish touch up behind reception'],
  ])('%s', (text, task) => {
    expect(
      doneIn(text)
        .map((d) => d.task)
        .join(' | '),
    ).toContain(task);
  });

  it('is one entry where more of the same is told without its name', () => {
    expect(doneIn('ceiling patch is hung, taped and sanded')).toHaveLength(1);
    expect(doneIn('base is on, nailed and filled')[0]?.quote).toBe('base is on, nailed and filled');
  });

  it.each([
    'ran out of underlayment at the closet',
    'the valve was closed',
    'the outlet covers are in a bag on the sill',
    "trim kit's on backorder",
    'ridge cap lifted in the wind',
    'the pump is running',
    'it has to be ground and patched',
  ])('%s: none', (text) => expect(doneIn(text)).toEqual([]));
});

describe('work told by how many of how many, or by its sides', () => {
  it.each([
    ['22 boards down, 6 to go', 'install boards'],
    ['fourteen sheets up, ten left', 'install sheets'],
    ['walls I got the north and east done, south and west after lunch', 'finish north east walls'],
    ['set 4 of 10 posts', 'posts'],
    ['cut six of the nine rafters', 'rafters'],
  ])('%s', (text, task) =>
    expect(
      doneIn(text)
        .map((d) => d.task)
        .join(' | '),
    ).toContain(task),
  );

  it.each(['22 boards up, need six more', 'six boards left'])('%s: none', (text) => expect(doneIn(text)).toEqual([]));
});
