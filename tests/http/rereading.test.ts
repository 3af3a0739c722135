import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { type Served, serve } from './served.ts';

const PATH = '/api/jobs/job-barn-0001';
let house: Served;
/** The new parser reads "stall door hinge" as a gate hinge. */
let better = false;

beforeEach(async () => {
  better = false;
  house = await serve((text, options) => {
    const read = readNote(text, options);
    const facts = read.facts.map((f) => (better && f.kind === 'problem' ? { ...f, thing: 'gate hinge' } : f));
    return { ...read, facts };
  });
  await call('PUT', '', {
    name: 'Barn',
    zone: 'America/Chicago',
    start: '2026-05-11',
    areas: ['loft', 'stall'],
    builtYear: 1950,
    mailTo: [],
    mailAt: '17:30',
  });
});

afterEach(() => house.stop());

async function call(method: string, path: string, body?: unknown) {
  const res = await fetch(`${house.url}${PATH}${path}`, {
    method,
    headers: { 'Content-Type': 'application/json' },
    ...(body !== undefined && { body: JSON.stringify(body) }),
  });
  return res.json();
}
const items = async () =>
  ((await call('GET', '')).state.items as { task: string; state: string }[]).map((i) => [i.task, i.state]);

it('shows the difference first, changes the list when told to, and keeps what a hand put right', async () => {
  await call('PUT', '/notes/note-0001', { saidAt: '2026-05-13T10:00:00', text: 'Stall door hinge is cracked.' });
  await call('PUT', '/notes/note-0002', { saidAt: '2026-05-13T11:00:00', text: 'Loft ladder is loose.' });
  const tick = { kind: 'setState', item: 'note-0001/0', state: 'signed off' };
  await call('PUT', '/entries/tick-0001', { at: '2026-05-13T12:00:00', what: tick });
  const before = await items();
  better = true;
  const { difference } = await call('GET', '/rereading');
  expect(difference).toContainEqual(expect.stringMatching(/^\+ gate hinge: cracked.*signed off$/));
  expect(await items()).toEqual(before);
  expect(await call('POST', '/rereading')).toEqual({ difference, reading: expect.stringMatching(/^\d+$/) });
  expect(await items()).toEqual([
    ['gate hinge: cracked', 'signed off'],
    ['gate hinge: loose', 'open'],
  ]);
  expect(await call('GET', '/rereading')).toEqual({ difference: [], reading: null });
});

it('reads again after a second new version', async () => {
  await call('PUT', '/notes/note-0001', { saidAt: '2026-05-13T10:00:00', text: 'Stall door hinge is cracked.' });
  const before = await items();
  better = true;
  await call('POST', '/rereading');
  better = false;
  await call('POST', '/rereading');
  expect(await items()).toEqual(before);
});

describe('a reading taken back', () => {
  const facts = async () =>
    ((await call('GET', '/notes')) as { corrected?: { index: number; fact: { thing?: string } | null }[] }[]).map(
      (talk) => (talk.corrected ?? []).map(({ index, fact }) => [index, fact?.thing ?? null]),
    );

  it('leaves list and talk as they were, once, and is itself taken back alike', async () => {
    await call('PUT', '/notes/note-0001', { saidAt: '2026-05-13T10:00:00', text: 'Stall door hinge is cracked.' });
    await call('PUT', '/notes/note-0002', { saidAt: '2026-05-13T11:00:00', text: 'Need two tubes of caulk.' });
    const before = await items();
    better = true;
    const { reading } = await call('POST', '/rereading');
    const after = await items();
    expect(after).not.toEqual(before);
    const back = await call('DELETE', `/rereading/${reading}`);
    expect(await items()).toEqual(before);
    expect((await facts())[0]).toEqual([[0, 'stall door hinge']]);
    // An answer that was lost is asked for again.
    expect(await call('DELETE', `/rereading/${reading}`)).toEqual({ difference: [], reading: null });
    expect(await items()).toEqual(before);
    await call('DELETE', `/rereading/${back.reading}`);
    expect(await items()).toEqual(after);
  });

  it('keeps what a hand did between, on either reading of the fact', async () => {
    await call('PUT', '/notes/note-0001', { saidAt: '2026-05-13T10:00:00', text: 'Stall door hinge is cracked.' });
    better = true;
    const { reading } = await call('POST', '/rereading');
    const tick = { kind: 'setState', item: 'note-0001/0', state: 'done' };
    await call('PUT', '/entries/tick-0001', { at: '2026-05-13T12:00:00', what: tick });
    await call('DELETE', `/rereading/${reading}`);
    expect(await items()).toEqual([[expect.stringContaining('stall door hinge'), 'done']]);
  });

  it('leaves a note that has been read again since', async () => {
    await call('PUT', '/notes/note-0001', { saidAt: '2026-05-13T10:00:00', text: 'Stall door hinge is cracked.' });
    better = true;
    const { reading } = await call('POST', '/rereading');
    better = false;
    await call('POST', '/rereading');
    const stands = await items();
    expect((await call('DELETE', `/rereading/${reading}`)).reading).toBeNull();
    expect(await items()).toEqual(stands);
  });
});
