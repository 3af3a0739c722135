import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { at, END } from './days.ts';
import { done, followUp, hand, JOB, note, problem } from './made.ts';

const list = (...entries: Entry[]) =>
  fold(JOB, entries, END).items.map((i) => [i.number, i.task, i.state, i.history.length]);
/** A note as it is said to the list. */
const said = (id: string, day: number, text: string): Entry =>
  note(id, at(day), ...readNote(text, { saidAt: at(day), areas: JOB.areas }).facts);

const told = [
  note('a', at(1), problem('faucet', 'drips', 'kitchen')),
  note('b', at(2), problem('faucet', 'leaks', 'kitchen')),
];

describe('two that were taken for one', () => {
  it('are one until somebody says otherwise', () => {
    expect(list(...told)).toEqual([[1, 'faucet: drips', 'open', 2]]);
  });

  it.each(['those are two different things', 'split 1', "that's a different one"])('"%s" parts them', (text) => {
    expect(list(...told, said('c', 3, text)).map((i) => i.slice(0, 3))).toEqual([
      [1, 'faucet: drips', 'open'],
      [2, 'faucet: leaks', 'open'],
    ]);
  });

  it('a tap parts them, and undoing the tap joins them again', () => {
    const tap = hand('h', at(3), { kind: 'split', item: 'a/0' });
    expect(list(...told, tap)).toHaveLength(2);
    expect(list(...told, tap, hand('u', at(4), { kind: 'undo', entry: 'h' }))).toEqual(list(...told));
  });

  it('an item that nothing joined is not parted', () => {
    expect(list(told[0]!, said('c', 3, 'split 1'))).toEqual([[1, 'faucet: drips', 'open', 1]]);
  });
});

describe('two that were taken for two', () => {
  const two = [
    note('a', at(1), followUp('replace outlet', 'hall')),
    note('b', at(1), followUp('look at plug', 'kitchen')),
  ];

  it.each(['2 is the same as 1', "that's the same as number 1", 'join 2 with 1'])(
    '"%s" makes them one, under the older number',
    (text) => {
      const items = fold(JOB, [...two, said('c', 3, text)], END).items;
      expect(items.map((i) => [i.number, i.task])).toEqual([[1, 'replace outlet']]);
    },
  );

  it('either number is answered to', () => {
    const items = fold(
      JOB,
      [...two, said('c', 3, '2 is the same as 1'), said('d', 4, 'number two is done')],
      END,
    ).items;
    expect(items.map((i) => i.state)).toEqual(['done']);
  });
});

describe('taking back', () => {
  it('"undo 1" takes back what was done to it last, and nothing else of that note', () => {
    const both = note('b', at(2), done('replace outlet', 'hall'), done('replace door', 'kitchen'));
    const entries = [note('a', at(1), followUp('replace outlet', 'hall'), followUp('replace door', 'kitchen')), both];
    expect(list(...entries).map((i) => i[2])).toEqual(['done', 'done']);
    expect(list(...entries, said('c', 3, 'undo 1')).map((i) => i[2])).toEqual(['open', 'done']);
  });

  it('a wrong number changes nothing', () => {
    expect(list(...told, said('c', 3, 'undo 9'))).toEqual(list(...told));
  });
});

describe('a match that is not sure', () => {
  const entries = [
    note('a', at(1), followUp('replace outlet by sink', 'kitchen'), followUp('replace outlet by fridge', 'kitchen')),
    note('b', at(2), done('replace outlet', 'kitchen')),
  ];

  it('closes nothing and asks', () => {
    const state = fold(JOB, entries, END);
    expect(state.items.slice(0, 2).map((i) => i.state)).toEqual(['open', 'open']);
    expect(state.questions.map((q) => q.ask)).toEqual([expect.stringMatching(/^Does that finish no\. \d/)]);
  });

  it('is asked no more once the item is closed', () => {
    const tick = [0, 1].map((k) => hand(`h${k}`, at(3), { kind: 'setState', item: `a/${k}`, state: 'done' }));
    expect(fold(JOB, [...entries, ...tick], END).questions).toEqual([]);
  });
});
