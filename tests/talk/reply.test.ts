import { expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { replyTo } from '../../server/talk/index.ts';
import { done, followUp, JOB, material, note } from '../jobs/made.ts';

const END = '2026-03-31T18:00:00';
const first = note('a', '2026-03-01T08:00:00', followUp('replace shelf', 'hall'), material('hinge', 2, 'need'));
const second = note('b', '2026-03-02T08:00:00', done('swap shelves', 'hall'), material('hinge', 2, 'bought'));
const said = (before: Entry[], after: Entry[], noteId: string) =>
  replyTo(fold(JOB, before, END), fold(JOB, after, END), noteId, []).lines.map((l) => [l.kind, l.text]);

it('says what a note opened and what to buy', () => {
  expect(said([], [first], 'a')).toEqual([
    ['opened', 'New: replace shelf (hall)'],
    ['buy', 'To buy: 2 hinge'],
  ]);
});

it('says what a note closed and what is off the order', () => {
  expect(said([first], [first, second], 'b')).toEqual([
    ['closed', 'Done: replace shelf (hall)'],
    ['buy', 'Off the order: hinge'],
  ]);
});
