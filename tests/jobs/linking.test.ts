import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import { toldJobs } from '../learn/toldJobs.ts';
import { at, END } from './days.ts';
import { done, followUp, JOB, note, problem } from './made.ts';

const items = (...notes: Parameters<typeof note>[]) =>
  fold(
    JOB,
    notes.map((given) => note(...given)),
    END,
  ).items.map((i) => [i.task, i.state]);

describe('what a fact is told of', () => {
  const weighed = { rule: 'follow-up/weighed' };

  it('a plan that rules read is an item, whatever its words weigh', () => {
    expect(items(['a', at(1), followUp('put a fan on it', 'hall')])).toEqual([['put a fan on it', 'open']]);
  });

  it('the same weighed as no item is left out', () => {
    expect(items(['a', at(1), followUp('put a fan on it', 'hall', { ...weighed, quote: 'put a fan on it' })])).toEqual([]);
  });

  it('work for a flaw just told of is for that flaw', () => {
    expect(
      items([
        'a',
        at(1),
        problem('gate', 'drags', 'hall'),
        followUp('plane it', 'hall', { ...weighed, quote: 'plane it' }),
      ]),
    ).toHaveLength(1);
  });

  it('nothing joins over rooms, and a look ends nothing', () => {
    const flaw: Parameters<typeof note> = ['a', at(1), problem('gate', 'drags', 'hall')];
    expect(items(flaw, ['b', at(2), done('rehang gate', 'kitchen')])[0]).toEqual(['gate: drags', 'open']);
    expect(items(flaw, ['b', at(2), done('look at gate', 'hall')])[0]).toEqual(['gate: drags', 'open']);
  });
});

describe('jobs to learn from', () => {
  it('say where each item is spoken of, in words that stand there', () => {
    for (const { id, notes, end } of toldJobs())
      for (const { told } of [...end.open, ...end.closed])
        for (const { note: n, quote } of told) expect(notes[n]?.text, `${id} note ${n}`).toContain(quote);
  });
});
