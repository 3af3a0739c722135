import { expect, it } from 'vitest';
import { Histories } from '../server/histories.ts';
import { fold } from '../server/jobs/index.ts';
import type { Entry, Job } from '../server/jobs/types.ts';
import { done, followUp, hand, note, problem } from './jobs/made.ts';

const JOB: Job = {
  id: 'j',
  name: 'Barn',
  zone: 'America/Chicago',
  start: '2026-03-01',
  areas: ['kitchen', 'hall'],
  builtYear: null,
  mailTo: [],
  mailAt: '17:30',
};
const at = (day: number) => `2026-03-${String(day).padStart(2, '0')}T08:00:00`;
const END = '2026-03-31T23:59:59';
const TOLD = [
  note('a', at(1), problem('outlet', 'loose', 'hall')),
  note('b', at(2), followUp('hang shelf', 'kitchen')),
  note('c', at(3), done('hang shelf', 'kitchen')),
  hand('d', at(4), { kind: 'undo', entry: 'c' }),
];

/** A store of one job, and how many entries were read from it. */
function storeOf(entries: Entry[]) {
  const read: string[] = [];
  return {
    read,
    store: {
      entriesAfter: async (_job: string, place: number) => {
        const since = entries.slice(place);
        read.push(...since.map((entry) => entry.id));
        return { entries: since, place: entries.length };
      },
    },
  };
}

it('reads each entry once, and shows what folding all of them shows', async () => {
  const kept: Entry[] = [];
  const { store, read } = storeOf(kept);
  const histories = new Histories(store);
  for (const entry of TOLD) {
    const { before, after } = await histories.withMore({ ...JOB, areas: [...JOB.areas] }, [entry], END);
    expect(before).toEqual(fold(JOB, kept, END));
    kept.push(entry);
    expect(after).toEqual(fold(JOB, kept, END));
    expect(await histories.state(JOB, END)).toEqual(after);
  }
  expect(read).toEqual(['a', 'b', 'c', 'd']);
});

it('shows an earlier day as it stood, and the latest again after it', async () => {
  const { store } = storeOf(TOLD);
  const histories = new Histories(store);
  const last = await histories.state(JOB, END);
  expect(await histories.state(JOB, at(2))).toEqual(fold(JOB, TOLD, at(2)));
  expect(await histories.state(JOB, END)).toEqual(last);
});

it('folds anew where the rooms of the job are others', async () => {
  const both = { ...followUp('sweep', null), quote: 'sweep the attic and the hall' };
  const { store } = storeOf([note('a', at(1), both)]);
  const histories = new Histories(store);
  expect((await histories.state(JOB, END)).items).toHaveLength(1);
  expect((await histories.state({ ...JOB, areas: ['attic', 'hall'] }, END)).items).toHaveLength(2);
});
