import { expect, it } from 'vitest';
import { factsOtherwise, fold, reread } from '../../server/jobs/index.ts';
import { at, END } from './days.ts';
import { followUp, hand, JOB, note } from './made.ts';

const door = followUp('fix door', 'hall', { start: 0, end: 8 });
const shelf = followUp('hang shelf', 'kitchen', { start: 10, end: 20 });
const told = note('a', at(1), door, shelf);
/** The better reading: finds a window first, and reads the door in other words; the shelf is lost. */
const better = () => [
  followUp('wash window', 'hall', { start: 30, end: 40 }),
  followUp('plane door', 'hall', { start: 0, end: 8 }),
];
const list = (entries: Parameters<typeof fold>[1]) => fold(JOB, entries, END).items.map((i) => [i.task, i.state]);

it('shows what would change before anything does', () => {
  const { entries, difference } = reread(JOB, [told], better, END);
  expect(difference).toEqual([
    '- fix door (hall): open',
    '- hang shelf (kitchen): open',
    '+ plane door (hall): open',
    '+ wash window (hall): open',
  ]);
  expect(list([told, ...entries])).toEqual([
    ['plane door', 'open'],
    ['wash window', 'open'],
  ]);
});

it('keeps every correction by hand, by tick and by fact', () => {
  const tick = hand('h', at(2), { kind: 'setState', item: 'a/0', state: 'signed off' });
  const put = hand('c', at(3), {
    kind: 'correctFact',
    noteId: 'a',
    index: 1,
    fact: followUp('hang two shelves', 'kitchen'),
  });
  const { entries } = reread(JOB, [told, tick, put], better, END);
  expect(list([told, tick, put, ...entries])).toEqual([
    ['plane door', 'signed off'],
    ['hang two shelves', 'open'],
    ['wash window', 'open'],
  ]);
});

it('changes nothing where the reading is the same', () => {
  expect(reread(JOB, [told], () => [door, shelf], END)).toEqual({ entries: [], difference: [] });
});

it('gives each note its facts as they stand: read anew, with a hand’s word last', () => {
  const put = hand('c', at(2), { kind: 'correctFact', noteId: 'a', index: 0, fact: followUp('hang door', 'hall') });
  const read = reread(JOB, [told], better, END).entries;
  const facts = (entries: Parameters<typeof factsOtherwise>[0]) =>
    [...(factsOtherwise(entries).get('a') ?? [])].map(([place, fact]) => [
      place,
      fact?.kind === 'followUp' ? fact.task : null,
    ]);
  expect(facts([told])).toEqual([]);
  expect(facts([told, ...read])).toEqual([
    [0, 'plane door'],
    [1, null],
    [2, 'wash window'],
  ]);
  expect(facts([told, put, ...read])[0]).toEqual([0, 'hang door']);
});
