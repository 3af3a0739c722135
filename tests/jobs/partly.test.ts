import { describe, expect, it } from 'vitest';
import { partIn } from '../../server/jobs/said/partly.ts';
import { told } from './days.ts';

const list = (...texts: string[]) => told(...texts).items.map(({ task, state }) => ({ task, state }));
const live = (...texts: string[]) => told(...texts).items.filter(({ state }) => state === 'open');
const left = (said: string) => partIn(said, { start: 0, end: said.length })?.left ?? null;

describe('how words say what is left', () => {
  it.each([
    ['hung the two on the stairs, three to go', 'three to go'],
    ['shutters painted, rest of them thursday', 'rest of them thursday'],
    ['fence is stained bar the gate', 'the gate left'],
    ['every socket is wired except for the one by the boiler', 'the one by the boiler left'],
    ['decking all but the bottom step', 'the bottom step left'],
    ['drywall is half taped', 'half taped'],
    ['gutters up on the north side only', 'north side only'],
    ['skirting on, ran short six inches by the door', 'ran short six inches by the door'],
    ['first sash is in, the other one waits for cord', 'the other one waits for cord'],
    ['latch is on but nothing on the hinge side yet', 'nothing on the hinge side yet'],
    ['post is set. two to do', 'two to do'],
  ])('%s', (said, what) => {
    expect(left(said)).toContain(what);
  });

  it.each([
    'hung the doors, two weeks to go before the party',
    'laid half inch ply in the loft',
    'put in the towel bar by the door',
    'took out half the afternoon but the sink is in',
    'all six are in and work fine',
    'drain was half blocked, cleared it',
    'screwed it down, took two boxes, one left over',
  ])('nothing is left of it: %s', (said) => {
    expect(left(said)).toBeNull();
  });
});

describe('work done in part', () => {
  it('stays on the list with what is left, until the rest is done', () => {
    const flaw = 'five fence pickets are rotten';
    expect(list(flaw, 'four pickets replaced and one to do')).toEqual([
      { task: expect.stringContaining('one to do'), state: 'open' },
    ]);
    const [item] = told(flaw, 'four pickets replaced and one to do').items;
    expect(item!.history.at(-1)).toMatchObject({ what: 'done in part', words: expect.stringContaining('four') });
    const [over] = told(flaw, 'four pickets replaced and one to do', 'last picket is replaced').items;
    expect(over).toMatchObject({ state: 'done', task: expect.not.stringContaining('to do') });
  });

  it('is told of the day as it was told', () => {
    const { days } = told('five fence pickets are rotten', 'four pickets replaced and one to do');
    expect(days.at(-1)!.done).toEqual([expect.stringContaining('picket')]);
  });

  it('is counted against what was wanted', () => {
    expect(list('six hall balusters are loose', 'four of the balusters are in')[0]).toEqual({
      task: expect.stringContaining('2 left'),
      state: 'open',
    });
    expect(list('six hall balusters are loose', 'all six balusters are in')[0]).toMatchObject({ state: 'done' });
  });

  it('opens an item where none stood', () => {
    expect(live('kitchen siding is up bar the gable')).toHaveLength(1);
    expect(live('kitchen siding is up')).toEqual([]);
  });

  it.each([
    ['hall window is cracked', 'taped the hall window for now'],
    ['hall light is dead', 'hall light: put a bulb in, still nothing'],
    ['kitchen pipe leaks at the elbow', 'put the new elbow on the kitchen pipe but no solder yet'],
    ['hall door closer is broken', "the closer came in but it's for the other hand"],
  ])('is not over: %s, %s', (flaw, work) => {
    expect(list(flaw, work)[0]).toMatchObject({ state: 'open' });
  });

  it('is over where it holds', () => {
    expect(list('hall door drags', 'planed the hall door, took an hour but it closes now')[0]).toMatchObject({
      state: 'done',
    });
  });
});

it('gives the day of what is left to the item that it is left of', () => {
  const { items } = told(
    'Kitchen deck boards are rotten.',
    'Kitchen: got eight deck boards on and four to go, rest friday. Hall faucet is dry now.',
  );
  expect(items.map(({ task, due }) => [task, due])).toEqual([['kitchen deck boards: rotten', '2026-03-06']]);
});

describe('told by how many of how many, or by its sides', () => {
  it.each([
    ['dug six of the eight footings out the back', '2 of eight left'],
    ['set 4 of 10 posts', '6 of 10 left'],
    ['hung nine out of twelve doors', '3 of twelve left'],
  ])('%s', (said, rest) => expect(left(said)).toBe(rest));

  it('names the sides that are to come', () => {
    const text = 'Walls I got the north and east done, south and west after lunch.';
    expect(partIn(text, { start: 0, end: text.indexOf(',') })?.left).toBe('south and west after lunch');
  });

  it.each(['hung eight of the eight doors', 'painted two of the bedrooms'])('%s: no part', (said) =>
    expect(left(said)).toBeNull(),
  );
});
