import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Served, serve } from './served.ts';

const CEILING = 'kiln room ceiling is 10 by 10, drywall it, ten percent waste';
const JOB = '/api/jobs/job-kiln-0001';
const LIST = `item,size,unit,pack,price,supplier
drywall,4x12,sheet,48 sq ft,21,Ridge Lumber
vinyl plank,,box,20 sq ft,55,Floor Hall
caulk,,tube,,6.50,Ridge Lumber
`;

let house: Served;

beforeEach(async () => {
  house = await serve();
  const job = {
    name: 'Kiln',
    zone: 'UTC',
    start: '2026-05-11',
    areas: ['kiln room'],
    builtYear: null,
    mailTo: [],
    mailAt: '17:30',
  };
  expect((await call('PUT', JOB, JSON.stringify(job))).status).toBe(201);
});

afterEach(() => house.stop());

async function call(method: string, path: string, body?: string | Buffer, type = 'application/json') {
  const res = await fetch(house.url + path, {
    method,
    headers: { 'Content-Type': type },
    ...(body !== undefined && { body: new Uint8Array(Buffer.from(body)) }),
  });
  const text = await res.text();
  return { status: res.status, body: res.headers.get('Content-Type')?.includes('json') ? JSON.parse(text) : text };
}

const send = (list: string | Buffer) => call('PUT', '/api/catalogue', list, 'text/csv');
const say = (id: string, text: string) =>
  call('PUT', `${JOB}/notes/${id}`, JSON.stringify({ saidAt: `2026-05-13T1${id.at(-1)}:00:00`, text }));
const view = async () => (await call('GET', JOB)).body;

describe('a price list', () => {
  it('is kept, shown and given back', async () => {
    expect((await call('GET', '/api/catalogue')).body).toEqual({ rows: 0, suppliers: [], keptAt: null, before: null });
    expect((await view()).prices).toBeNull();
    expect(await send(LIST)).toEqual({
      status: 200,
      body: { rows: 3, suppliers: ['Floor Hall', 'Ridge Lumber'], keptAt: '2026-05-13T20:30:00.000Z', before: null },
    });
    expect((await call('GET', '/api/catalogue/file.csv')).body).toBe(LIST);
  });

  it('that is taken away prices nothing more', async () => {
    await send(LIST);
    expect((await call('DELETE', '/api/catalogue')).body).toMatchObject({ rows: 0, suppliers: [], keptAt: null });
    expect((await view()).prices).toBeNull();
    expect((await call('GET', '/api/catalogue/file.csv')).status).toBe(404);
  });

  it('put in the place of another, or taken away, comes back whenever it is asked for', async () => {
    const before = async () => (await call('GET', '/api/catalogue')).body.before;
    const back = () => call('POST', '/api/catalogue/before');
    expect((await back()).status).toBe(404);
    await send(LIST);
    await send('item,price,supplier\ncaulk,6,Shop\n');
    // The same file sent again, as after a lost answer, is no other list.
    await send('item,price,supplier\ncaulk,6,Shop\n');
    expect(await before()).toEqual({ rows: 3, suppliers: ['Floor Hall', 'Ridge Lumber'] });
    expect((await back()).body).toMatchObject({ rows: 3, before: { rows: 1, suppliers: ['Shop'] } });
    expect((await call('GET', '/api/catalogue/file.csv')).body).toBe(LIST);
    await call('DELETE', '/api/catalogue');
    await call('DELETE', '/api/catalogue');
    expect(await before()).toEqual({ rows: 3, suppliers: ['Floor Hall', 'Ridge Lumber'] });
    expect((await back()).body).toMatchObject({ rows: 3, before: { rows: 3 } });
  });

  it('with a wrong line is refused whole, and the one before still stands', async () => {
    await send(LIST);
    const { status, body } = await send('item,price,supplier\ncaulk,6,Shop\ngrout,dear,Shop\n');
    expect(status).toBe(422);
    expect(body).toMatchObject({ code: 'catalogue-wrong', retry: false });
    expect(body.message).toMatch(/line 3: the price "dear" of grout is no amount/);
    expect((await call('GET', '/api/catalogue')).body.rows).toBe(3);
  });

  it.each([
    ['nothing', '', 422, 'catalogue-wrong'],
    ['far too much', `${LIST}${'#'.repeat(4_100_000)}`, 413, 'catalogue-too-big'],
  ])('%s is refused', async (_, list, status, code) => {
    expect(await send(list)).toMatchObject({ status, body: { code } });
  });

  it('is read in the alphabet of an office program too', async () => {
    await send(Buffer.from('item,price,supplier\ncaulk,4,Caf\xe9 Supply\n', 'latin1'));
    expect((await call('GET', '/api/catalogue')).body.suppliers).toEqual(['Café Supply']);
  });

  it('prices the order', async () => {
    await send(LIST);
    await say('note-0001', 'need 3 tubes of caulk for the kiln room');
    const { prices } = await view();
    expect(prices).toMatchObject({
      total: '19.50',
      lines: [{ item: 'caulk', quantity: '3', cost: '19.50', match: { supplier: 'Ridge Lumber' } }],
    });
  });

  it('sells in its own packs where nobody said how, and what was said stands before it', async () => {
    await say('note-0001', CEILING);
    expect((await view()).state.order[0]).toMatchObject({ quantity: '4', unit: 'sheet' });
    await send(LIST);
    const own = (await view()).state.order[0];
    expect(own).toMatchObject({ quantity: '3', unit: 'sheet' });
    expect(own.because).toMatch(/Ridge Lumber sells 48 sq ft a sheet, so 3$/);
    await say('note-0002', 'the drywall for the kiln room ceiling is 40 square foot a sheet');
    expect((await view()).state.order[0].because).toMatch(/40 sq ft a sheet/);
  });

  it('leaves on hand what stays over of whole packs once they are bought', async () => {
    await send(LIST);
    await say('note-0001', CEILING);
    const line = (await view()).state.order[0].key;
    const body = JSON.stringify({ at: '2026-05-13T19:00:00', what: { kind: 'setOrder', line, state: 'bought' } });
    await call('PUT', `${JOB}/entries/entry-0001`, body);
    expect((await view()).state.onHand).toEqual([{ item: 'drywall', size: null, quantity: '34', unit: 'sq ft' }]);
  });
});

it('tells what to bring for what can be worked on', async () => {
  await say(
    'note-0001',
    'caulk the window in the kiln room. patch the drywall by the door, cut it at 14 and a half by 20',
  );
  const { bring } = await view();
  expect(bring.tools).toContainEqual({ what: 'caulk gun', items: [1] });
  expect([...bring.tools, ...bring.parts].every((b: { items: number[] }) => b.items.length > 0)).toBe(true);
  await say('note-0002', 'caulked the window in the kiln room');
  expect((await view()).bring.tools.map((b: { what: string }) => b.what)).not.toContain('caulk gun');
});
