import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Served, serve } from './served.ts';

let house: Served;

beforeAll(async () => {
  house = await serve();
});
afterAll(() => house.stop());

async function post(form: unknown): Promise<{ status: number; body: Record<string, unknown> }> {
  const headers = { 'Content-Type': 'application/json' };
  const res = await fetch(`${house.url}/api/reckon`, { method: 'POST', headers, body: JSON.stringify(form) });
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
