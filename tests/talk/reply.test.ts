import { expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { replyTo } from '../../server/talk/index.ts';
import { done, followUp, JOB, material, measurement, note, problem } from '../jobs/made.ts';

const END = '2026-03-31T18:00:00';
const first = note('a', '2026-03-01T08:00:00', followUp('replace shelf', 'hall'), material('hinge', 2, 'need'));
const second = note('b', '2026-03-02T08:00:00', done('swap shelves', 'hall'), material('hinge', 2, 'bought'));
const said = (before: Entry[], after: Entry[], noteId: string) => {
  const what = after.find((e) => e.id === noteId)!.what;
  const facts = what.kind === 'noteRead' ? what.facts : [];
  return replyTo(fold(JOB, before, END), fold(JOB, after, END), noteId, facts).lines.map((l) => [l.kind, l.text]);
};

it('says what a note opened and what to buy', () => {
  expect(said([], [first], 'a')).toEqual([
    ['opened', 'New, no. 1: replace shelf (hall)'],
    ['buy', 'To buy: 2 hinges'],
  ]);
});

it('says what a note closed and what is off the order', () => {
  expect(said([first], [first, second], 'b')).toEqual([
    ['closed', 'Done, no. 1: replace shelf (hall)'],
    ['buy', 'Bought, off the order: 2 hinges'],
  ]);
});

it('reads back what it measured and what is left in the van, so that a wrong number is seen', () => {
  const told = note(
    'a',
    '2026-03-01T08:00:00',
    measurement('opening', 138.5, 'in', 'hall'),
    material('flashing tape', 2, 'have', { unit: 'roll' }),
  );
  expect(said([], [told], 'a')).toEqual([
    ['changed', 'On hand now: 2 rolls flashing tape'],
    ['changed', 'Measured: opening 11 ft 6-1/2 in'],
  ]);
});

it('calls a flaw that was dealt with fixed', () => {
  const found = note('a', '2026-03-01T08:00:00', problem('rail post', 'out of plumb', 'hall'));
  const fixed = note(
    'b',
    '2026-03-02T08:00:00',
    problem('rail post', 'out of plumb', 'hall', { state: 'fixed', quote: 'rail post was out of plumb, shimmed it' }),
  );
  expect(said([], [found], 'a')).toEqual([['opened', 'New, no. 1: rail post, out of plumb (hall)']]);
  expect(said([found], [found, fixed], 'b')).toEqual([['closed', 'Fixed, no. 1: rail post, out of plumb (hall)']]);
});

it('says how to take it back where an item was only taken as done', () => {
  const found = note('a', '2026-03-01T08:00:00', problem('hall door', 'drags on floor', 'hall'));
  const told = note('b', '2026-03-02T08:00:00');
  const goes = {
    ...told,
    what: { kind: 'noteRead' as const, facts: [], text: 'hall door swings free now', parser: '1' },
  };
  expect(said([found], [found, goes], 'b')).toEqual([
    ['closed', 'Taken as done, no. 1: hall door, drags on floor. If not, say "reopen 1"'],
  ]);
});
