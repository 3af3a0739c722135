import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const TILE = 'Found old nine by nine tile with black glue in the hall.';
const tile = (...later: string[]) => told(TILE, ...later).items.find(({ task }) => /tile/.test(task))!;

describe('what can hurt', () => {
  it('is not ended by work on something like it', () => {
    expect(tile('swapped the tiles').state).toBe('open');
    expect(tile("last tile's in").state).toBe('open');
  });

  it('is, by a word to the list', () => {
    const { number } = tile();
    expect(tile(`${number} is done`).state).toBe('done');
  });
});
