import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const states = (...texts: string[]) => told(...texts).items.map(({ state }) => state);
const leak = ['kitchen tap drips', 'fixed the kitchen tap, no drip'] as const;
const squeak = ['hall floor squeaks', 'screwed the hall floor down, quiet now'] as const;

describe('a flaw told back', () => {
  it('was put right before', () => {
    expect(states(...leak)).toEqual(['done']);
    expect(states(...squeak)).toEqual(['done']);
  });

  it.each(['kitchen tap is dripping again', "the drip's back", 'that drip came back', 'that tap she drips again'])(
    'opens its item again: %s',
    (back) => {
      expect(states(...leak, back)).toEqual(['open']);
    },
  );

  it.each(['the squeak has returned', 'hall floor started up squeaking again'])('opens its item again: %s', (back) => {
    expect(states(...squeak, back)).toEqual(['open']);
  });

  it('by another name for the noise', () => {
    expect(
      states('hall smoke alarm chirps', 'put a battery in the hall alarm, quiet', 'that beeping started up again')[0],
    ).toBe('open');
  });

  it('keeps its history', () => {
    const [tap] = told(...leak, "the drip's back").items;
    expect(tap!.history.map(({ what }) => what)).toContain('reopened');
  });

  it.each(['kitchen tap works again', 'kitchen tap is back on', 'kitchen tap drips again, leave it till the remodel'])(
    'says no such thing: %s',
    (said) => {
      expect(states(...leak, said)[0]).toBe('done');
    },
  );
});
