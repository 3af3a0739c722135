import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Served, serve } from './served.ts';

let house: Served;

beforeAll(async () => {
  house = await serve();
});
afterAll(() => house.stop());

async function post(form: unknown, path = ''): Promise<{ status: number; body: Record<string, unknown> }> {
  const headers = { 'Content-Type': 'application/json' };
  const res = await fetch(`${house.url}/api/reckon${path}`, { method: 'POST', headers, body: JSON.stringify(form) });
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

describe('POST /api/reckon/check', () => {
  it('answers with figure, limit and source', async () => {
    const { status, body } = await post({ of: 'drain slope', pipe: '2', run: '10', fall: '2' }, '/check');
    expect(status).toBe(200);
    expect(body).toMatchObject({
      checks: [{ result: 'does not fit', figure: '0.2 in/ft', limit: '0.25 in/ft', source: expect.any(String) }],
    });
  });

  it('names what is missing, and refuses what cannot be', async () => {
    const missing = await post(
      { of: 'box fill', devices: 1, cables: [{ count: 2, gauge: 14, conductors: 2 }] },
      '/check',
    );
    expect(missing.body).toMatchObject({ checks: [{ result: 'cannot say', missing: expect.stringMatching(/stamp/) }] });
    const absurd = await post({ of: 'stairs', risers: ['7 ft'] }, '/check');
    expect(absurd.status).toBe(422);
    expect(absurd.body).toMatchObject({ code: 'cannot-reckon', message: expect.stringContaining('is that right?') });
  });

  it.each([[{ of: 'luck' }], [{ of: 'trap arm' }], [{ of: 'tile', side: 12 }], [null]])(
    'refuses the shape of %j',
    async (form) => {
      expect((await post(form, '/check')).status).toBe(400);
    },
  );
});
