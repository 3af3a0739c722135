import { describe, expect, it } from 'vitest';
import { told } from './days.ts';

const states = (...texts: string[]) => told(...texts).order.map(({ item, state }) => [item, state]);

describe('work told as done', () => {
  it.each([
    ['deck boards are rotten, get two boxes of deck screws', 'the rotten deck boards are replaced', 'deck screw'],
    ['fence pickets are loose, need a box of nails', 'fence pickets are tight again', 'nail'],
    ['cabinet door is loose, need four bolts', 'cabinet door is fixed', 'bolt'],
  ])('leaves what fastens on the order: %s', (need, done, item) => {
    expect(states(need, done)).toEqual([[item, 'to buy']]);
  });

  it.each([
    ['smoke alarm is chirping, need a battery', 'smoke alarm is fixed', 'battery'],
    ['holes in the kitchen wall, get two tubs of filler', 'kitchen wall holes are filled', 'filler'],
  ])('makes goods that it does not name no more than not sure: %s', (need, done, item) => {
    expect(states(need, done)).toEqual([[item, 'unsure']]);
  });

  it.each([
    ['hall dimmer is dead, need a dimmer', 'hall dimmer is fixed'],
    ['hall door stop is missing, need one door stop', 'hall door stop is on'],
    ['kitchen faucet is leaking, need a faucet', 'kitchen faucet is replaced'],
  ])('takes off what it names itself: %s', (need, done) => {
    expect(states(need, done)).toEqual([]);
  });

  it.each([
    ['hall door drags. kitchen door is missing, order a 32 inch door for the kitchen', 'hall door swings free now'],
    ['hall window is painted shut. need one window for the kitchen', 'hall window opens again'],
  ])('is about its own room: %s', (need, done) => {
    expect(told(need, done).order.map(({ state }) => state)).toEqual(['to buy']);
  });

  it('says why it is not sure', () => {
    const [line] = told('smoke alarm is chirping, need a battery', 'smoke alarm is fixed').order;
    expect(line!.because).toContain('not sure, no. 1 is done since');
  });
});
