import { mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { makeApp } from '../../server/http/app.ts';
import { Site } from '../../server/site.ts';
import { openStore, type Store } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';

const PATH = '/api/jobs/job-barn-0001';
let folder: string;
let store: Store;
let server: Server;
/** The new parser reads "stall door hinge" as a gate hinge. */
let better = false;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rereading-test-'));
  store = await openStore(join(folder, 'data'));
  better = false;
  const site = new Site({
    store,
    enclosures: new Enclosures(join(folder, 'enclosures')),
    now: () => new Date('2026-05-13T20:30:00Z'),
    mail: { smtpUrl: null, from: 'test@example.org', folder: join(folder, 'mail') },
    read: (text, options) => {
      const read = readNote(text, options);
      const facts = read.facts.map((f) => (better && f.kind === 'problem' ? { ...f, thing: 'gate hinge' } : f));
      return { ...read, facts };
    },
  });
  server = makeApp(site, folder, 10_000).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
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

afterEach(async () => {
  await new Promise((resolve) => server.close(resolve));
  await store.close();
  rmSync(folder, { recursive: true });
});

async function call(method: string, path: string, body?: unknown) {
  const { port } = server.address() as AddressInfo;
  const res = await fetch(`http://127.0.0.1:${port}${PATH}${path}`, {
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
  expect(await call('POST', '/rereading')).toEqual({ difference });
  expect(await items()).toEqual([
    ['gate hinge: cracked', 'signed off'],
    ['gate hinge: loose', 'open'],
  ]);
  expect(await call('GET', '/rereading')).toEqual({ difference: [] });
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
