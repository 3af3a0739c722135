import { mkdtempSync, rmSync } from 'node:fs';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeApp } from '../../server/http/app.ts';
import { Site } from '../../server/site.ts';
import { openStore, type Store } from '../../server/store/index.ts';
import { Enclosures } from '../../server/voice/enclosures.ts';

let folder: string;
let store: Store;
let server: Server;
let url: string;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'reckon-test-'));
  store = await openStore(join(folder, 'data'));
  const site = new Site({
    store,
    enclosures: new Enclosures(join(folder, 'enclosures')),
    now: () => new Date('2026-05-13T20:30:00Z'),
    mail: { smtpUrl: null, from: 'test@example.org', folder: join(folder, 'mail') },
  });
  server = makeApp(site, folder, 10_000).listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/api/reckon`;
});
afterAll(async () => {
  server.close();
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

async function post(form: unknown): Promise<{ status: number; body: Record<string, unknown> }> {
  const headers = { 'Content-Type': 'application/json' };
  const res = await fetch(url, { method: 'POST', headers, body: JSON.stringify(form) });
  return { status: res.status, body: (await res.json()) as Record<string, unknown> };
}

describe('POST /api/reckon', () => {
  it('answers with what to buy and its working', async () => {
    const { status, body } = await post({ kind: 'spacing', run: '12 ft 4', spacing: '16' });
    expect(status).toBe(200);
    expect(body).toMatchObject({ buy: [{ quantity: 11, unit: 'each' }], working: expect.stringContaining('+ 1 = 11') });
  });

  it('refuses absurd sizes in words', async () => {
    const { status, body } = await post({ kind: 'cover', length: '400', width: '5', unit: 'box', holds: 20 });
    expect(status).toBe(422);
    expect(body).toMatchObject({ code: 'cannot-reckon', message: expect.stringContaining('400 ft: is that right?') });
  });

  it.each([[{ kind: 'guess' }], [{ kind: 'spacing', run: '12' }], [{ kind: 'cover', length: 5, width: 5 }], [[]]])(
    'refuses the shape of %j',
    async (form) => {
      const { status, body } = await post(form);
      expect(status).toBe(400);
      expect(body.code).toBe('body-wrong');
    },
  );
});
