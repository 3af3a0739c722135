import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { followUpsIn } from './read.ts';

const tasks = (text: string) => followUpsIn(text).map((f) => f.task);

describe('nothing to do', () => {
  it.each([
    'mud needs overnight',
    'thinset needs 24 hours',
    "mud's gotta sit the weekend",
    'the slab needs at least 3 days to cure',
    "the grout is done. what's left before I go home?",
    'holes filled and sanded. what do i need to get for monday',
    'base is on. what else is open in the kitchen?',
  ])('%s', (text) => expect(tasks(text)).toEqual([]));

  const onMonday = (text: string) =>
    readNote(text, { saidAt: '2026-05-11T07:40:00', areas: ['basement'] }).facts.filter((f) => f.kind === 'followUp');

  it('in the round that is being made', () => {
    expect(onMonday('Okay walking the basement Monday morning. Front wall is framed.')).toEqual([]);
    expect(onMonday('Walking the basement Tuesday morning with the inspector.')).toHaveLength(1);
  });
});

describe('a coat to come', () => {
  it.each([
    ['the ceiling needs another coat', 'another coat ceiling'],
    ['drywall patch needs one more coat', 'another coat drywall patch'],
    ['the door needs a second coat', 'second coat door'],
    ['fence wants a final coat', 'final coat fence'],
    ["Opened the wall, put the block in, patched it. It's got one coat on it. Needs another coat.", 'another coat'],
  ])('%s', (text, task) => expect(tasks(text).join(' | ')).toContain(task));
});
