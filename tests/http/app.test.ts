import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { makeApp } from '../../server/http/app.ts';
import type { Site } from '../../server/site.ts';
import { openStore } from '../../server/store/index.ts';
import { type Served, serve } from './served.ts';

const JOB = {
  name: 'Barn loft',
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas: ['loft', 'stall'],
  builtYear: 1950,
  mailTo: ['office@example.org'],
  mailAt: '17:30',
};
const ID = 'job-barn-0001';
const NOTE = {
  saidAt: '2026-05-13T10:00:00',
  by: 'Ada',
  text: 'Stall door hinge is cracked. Need two bags of mortar.',
};

let house: Served;
let failing = false;

beforeEach(async () => {
  failing = false;
  house = await serve((text, options) => {
    if (failing) throw new Error('reading broke');
    return readNote(text, options);
  });
  expect((await call('PUT', `/api/jobs/${ID}`, JOB)).status).toBe(201);
});

afterEach(() => house.stop());

async function call(method: string, path: string, body?: unknown, headers: Record<string, string> = {}) {
  const res = await fetch(house.url + path, {
    method,
    headers: { 'Content-Type': 'application/json', ...headers },
    body: body === undefined ? undefined : typeof body === 'string' ? body : JSON.stringify(body),
  });
  return { status: res.status, body: await res.json() };
}

const notes = (id: string) => `/api/jobs/${ID}/notes/${id}`;

describe('a note', () => {
  it('is read and changes the list and the order', async () => {
    const { status, body } = await call('PUT', notes('note-0001'), NOTE);
    expect(status).toBe(201);
    expect(body.facts.map((f: { kind: string }) => f.kind)).toEqual(['problem', 'material']);
    for (const f of body.facts) expect(NOTE.text.slice(f.start, f.end)).toBe(f.quote);
    const { body: view } = await call('GET', `/api/jobs/${ID}`);
    expect(view.state.items[0]).toMatchObject({ number: 1, state: 'open', area: 'stall' });
    expect(view.state.order[0]).toMatchObject({ item: 'mortar', quantity: '2', unit: 'bag' });
  });

  it('sent twice is kept once', async () => {
    const first = await call('PUT', notes('note-0001'), NOTE);
    const again = await call('PUT', notes('note-0001'), NOTE);
    expect(again.status).toBe(200);
    expect(again.body).toEqual(first.body);
    expect((await call('GET', `/api/jobs/${ID}/notes`)).body).toHaveLength(1);
  });

  it('with a used id and other words is kept beside the first', async () => {
    await call('PUT', notes('note-0001'), NOTE);
    const other = await call('PUT', notes('note-0001'), { ...NOTE, text: 'Loft ladder is loose.' });
    expect(other.status).toBe(409);
    expect((await call('GET', `/api/jobs/${ID}/notes`)).body.map((n: { text: string }) => n.text).sort()).toEqual([
      'Loft ladder is loose.',
      NOTE.text,
    ]);
  });

  it('with a used id is kept once, however often it is sent again', async () => {
    await call('PUT', notes('note-0001'), NOTE);
    for (let k = 0; k < 3; k++) await call('PUT', notes('note-0001'), { ...NOTE, text: 'Loft ladder is loose.' });
    expect((await call('GET', `/api/jobs/${ID}/notes`)).body).toHaveLength(2);
  });

  it('that cannot be read is kept, and read later', async () => {
    failing = true;
    const { status, body } = await call('PUT', notes('note-0001'), NOTE);
    expect(status).toBe(201);
    expect(body.unread).toBe(true);
    failing = false;
    const again = await call('PUT', notes('note-0001'), NOTE);
    expect(again.body.facts).toHaveLength(2);
  });

  it.each([
    ['empty', { ...NOTE, text: '  ' }, 400, 'note-empty'],
    ['of 1 MB', { ...NOTE, text: 'tile '.repeat(200_000) }, 413, 'note-too-long'],
    ['of 300,000 characters', { ...NOTE, text: 'tile '.repeat(60_000) }, 413, 'note-too-long'],
    ['binary', { ...NOTE, text: 'PK\u0003\u0004\u0000' }, 400, 'note-not-text'],
    ['that is no JSON', '{"text":', 400, 'body-not-json'],
    ['without a time', { text: 'hello' }, 400, 'body-wrong'],
    ['on a day that no calendar has', { ...NOTE, saidAt: '2026-02-30T10:00:00' }, 400, 'body-wrong'],
  ])('%s is refused with what to do', async (_name, body, status, code) => {
    const answer = await call('PUT', notes('note-0002'), body);
    expect(answer).toMatchObject({ status, body: { code, retry: false } });
    expect(answer.body.message.length).toBeGreaterThan(20);
    expect((await call('GET', `/api/jobs/${ID}/notes`)).body).toEqual([]);
  });

  it('for a job that does not exist is refused', async () => {
    expect(await call('PUT', '/api/jobs/job-none-0000/notes/note-0001', NOTE)).toMatchObject({
      status: 404,
      body: { code: 'no-such-job' },
    });
  });

  it('from another site is refused', async () => {
    expect((await call('PUT', notes('note-0001'), NOTE, { 'Sec-Fetch-Site': 'cross-site' })).body.code).toBe(
      'other-site',
    );
  });

  it('for a store that cannot be written says so and may be tried again', async () => {
    await house.store.close();
    const { status, body } = await call('PUT', notes('note-0001'), NOTE);
    expect({ status, code: body.code, retry: body.retry }).toEqual({ status: 503, code: 'store-failed', retry: true });
    house.store = await openStore(join(house.folder, 'data'));
  });
});

describe('a tick by hand', () => {
  it('closes the item, and undo opens it again', async () => {
    await call('PUT', notes('note-0001'), NOTE);
    const item = (await call('GET', `/api/jobs/${ID}`)).body.state.items[0].key;
    const done = await call('PUT', `/api/jobs/${ID}/entries/entry-0001`, {
      at: '2026-05-13T11:00:00',
      what: { kind: 'setState', item, state: 'done' },
    });
    expect(done.body.state.items[0].state).toBe('done');
    const undone = await call('PUT', `/api/jobs/${ID}/entries/entry-0002`, {
      at: '2026-05-13T11:01:00',
      what: { kind: 'undo', entry: 'entry-0001' },
    });
    expect(undone.body.state.items[0].state).toBe('open');
  });
});

describe('a recording and a photo', () => {
  const send = (path: string, type: string, bytes: string) =>
    fetch(house.url + path, { method: 'PUT', headers: { 'Content-Type': type }, body: bytes });

  it('are kept once, as they came, and named by their note', async () => {
    const path = `/api/jobs/${ID}/recordings/sound-0001`;
    expect((await send(path, 'audio/webm;codecs=opus', 'first')).status).toBe(201);
    expect((await send(path, 'audio/webm;codecs=opus', 'second')).status).toBe(200);
    expect(await (await fetch(house.url + path)).text()).toBe('first');
    await call('PUT', notes('note-0001'), { ...NOTE, recordingId: 'sound-0001', photoIds: ['photo-0001'] });
    expect((await call('GET', `/api/jobs/${ID}/notes`)).body[0]).toMatchObject({
      recordingId: 'sound-0001',
      photoIds: ['photo-0001'],
    });
  });

  it('of another kind are refused', async () => {
    const answer = await send(`/api/jobs/${ID}/photos/photo-0002`, 'image/svg+xml', '<svg/>');
    expect(answer.status).toBe(415);
    expect((await answer.json()).code).toBe('enclosure-kind');
  });
});

describe('a correction by hand', () => {
  it('that is no whole fact is refused, and the job stays', async () => {
    await call('PUT', notes('note-0001'), NOTE);
    const partial = await call('PUT', `/api/jobs/${ID}/entries/entry-0001`, {
      at: '2026-05-13T11:00:00',
      what: { kind: 'correctFact', noteId: 'note-0001', index: 1, fact: { kind: 'material' } },
    });
    expect(partial).toMatchObject({ status: 400, body: { code: 'body-wrong' } });
    expect((await call('GET', `/api/jobs/${ID}`)).status).toBe(200);
  });

  it('from an origin that is no address is refused as another site', async () => {
    expect((await call('PUT', notes('note-0001'), NOTE, { Origin: 'null' })).body.code).toBe('other-site');
  });
});

describe('the day’s summary', () => {
  it('is previewed, and written as a file where no mail server is set', async () => {
    await call('PUT', notes('note-0001'), NOTE);
    const { body } = await call('GET', `/api/jobs/${ID}/summary?day=2026-05-13`);
    expect(body.subject).toBe('Barn loft, Wed May 13: 0 done, 1 open, 1 to buy');
    expect(body.delivery.way).toBe('file');
    const sent = await call('POST', `/api/jobs/${ID}/summary/send`, { day: '2026-05-13' });
    expect(existsSync(sent.body.path)).toBe(true);
    expect(readFileSync(sent.body.path, 'utf8')).toContain('Subject: Barn loft, Wed May 13');
  });
});

describe('a data folder that cannot be written', () => {
  it('stops the opening with an error', async () => {
    const file = join(house.folder, 'a-file');
    writeFileSync(file, 'where the folder should be');
    await expect(openStore(file)).rejects.toThrow();
  });
});

describe('what comes to the phone', () => {
  it('may load and run nothing from elsewhere', async () => {
    const policy = (await fetch(`${house.url}/healthz`)).headers.get('content-security-policy') ?? '';
    const rules = new Map(policy.split(';').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]));
    expect(rules.get('default-src')).toBe("'self'");
    expect(rules.get('script-src')).toBe("'self'");
    expect(rules.get('object-src')).toBe("'none'");
    expect(policy).not.toMatch(/unsafe|https:|http:|\*/);
  });

  it('is packed where the browser takes that, and the same either way', async () => {
    for (let k = 0; k < 9; k++) await call('PUT', notes(`note-000${k}`), NOTE);
    writeFileSync(join(house.folder, 'app.js'), 'const a = 1;');
    writeFileSync(join(house.folder, 'app.js.gz'), gzipSync('const a = 1;'));
    const site = makeApp({} as Site, house.folder);
    const other = site.listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as AddressInfo;
    for (const address of [`http://127.0.0.1:${port}/app.js`, `${house.url}/api/jobs/${ID}/notes`]) {
      const [packed, plain] = await Promise.all(
        ['gzip', 'identity'].map((encoding) => fetch(address, { headers: { 'Accept-Encoding': encoding } })),
      );
      expect([packed!.headers.get('content-encoding'), plain!.headers.get('content-encoding')]).toEqual(['gzip', null]);
      expect(packed!.headers.get('content-type')).toBe(plain!.headers.get('content-type'));
      expect(await packed!.text()).toBe(await plain!.text());
    }
    await new Promise((resolve) => other.close(resolve));
  });
});
