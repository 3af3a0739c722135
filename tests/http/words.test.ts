import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Fact } from '../../parser/types.ts';
import { type Served, serve } from './served.ts';

const JOB = {
  name: 'Barn loft',
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas: ['loft', 'stall'],
  builtYear: 1950,
  mailTo: [],
  mailAt: '17:30',
};
const WORD = 'word-0000-0001';

let house: Served;

beforeEach(async () => {
  house = await serve();
  await call('PUT', 'jobs/job-barn-0001', JOB);
});
afterEach(() => house.stop());

async function call(method: string, path: string, body?: object) {
  const answer = await fetch(`${house.url}/api/${path}`, {
    method,
    ...(body && { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
  });
  return { status: answer.status, body: await answer.json() };
}

let notes = 0;
async function factsOf(text: string, more: object = {}): Promise<Fact[]> {
  const path = `jobs/job-barn-0001/notes/note-${String(notes++).padStart(8, '0')}`;
  return (await call('PUT', path, { saidAt: '2026-05-13T10:00:00', text, ...more })).body.facts;
}

describe('words of the firm', () => {
  const said = 'Need 2 of the green stuff.';

  it('are read from the next note on, and no more once they are forgotten', async () => {
    expect(await factsOf(said)).not.toContainEqual(expect.objectContaining({ item: 'zip panel' }));
    const word = { name: 'Zip panel', kind: 'material', also: ['green stuff'], counter: 'lumber', soldBy: ['sheet'] };
    const taught = await call('PUT', `words/${WORD}`, word);
    expect(taught).toMatchObject({ status: 201, body: [{ id: WORD, name: 'zip panel' }] });
    expect(await factsOf(said)).toContainEqual(expect.objectContaining({ kind: 'material', item: 'zip panel' }));
    expect((await call('GET', 'jobs/job-barn-0001')).body.state.order).toContainEqual(
      expect.objectContaining({ item: 'zip panel', counter: 'lumber' }),
    );
    expect((await call('PUT', `words/${WORD}`, { ...word, also: ['grey stuff'] })).status).toBe(200);
    expect((await call('GET', 'words')).body).toHaveLength(1);
    expect((await call('DELETE', `words/${WORD}`)).body).toEqual([]);
    expect(await factsOf('Need 2 of the grey stuff.')).not.toContainEqual(
      expect.objectContaining({ item: 'zip panel' }),
    );
  });

  it('say what a box holds, and the order is counted by it', async () => {
    await factsOf('Need 120 square feet of vinyl plank.');
    const planks = async () =>
      (await call('GET', 'jobs/job-barn-0001')).body.state.order.find(
        (l: { item: string }) => l.item === 'vinyl plank',
      );
    const before = await planks();
    const word = { name: 'vinyl plank', kind: 'material', soldBy: ['carton'], holds: '30.5 sq ft' };
    expect((await call('PUT', `words/${WORD}`, word)).body).toMatchObject([{ holds: '30.5 sq ft' }]);
    expect(await planks()).toMatchObject({ quantity: '4', unit: 'carton' });
    expect((await planks()).because).toContain('30 1/2 sq ft a carton');
    await call('DELETE', `words/${WORD}`);
    expect(await planks()).toEqual(before);
  });

  it.each([
    ['a pack that is no amount', { name: 'zip panel', kind: 'material', soldBy: ['box'], holds: 'plenty' }],
    ['a pack of nobody knows what', { name: 'zip panel', kind: 'material', holds: '12 sq ft' }],
    ['no name', { name: ' ', kind: 'material' }],
    ['marks of the vocabulary', { name: 'a; b', kind: 'material' }],
    ['no such kind', { name: 'widget', kind: 'verb' }],
  ])('are refused with %s', async (_what, word) => {
    expect(await call('PUT', `words/${WORD}`, word)).toMatchObject({ status: 400, body: { code: 'body-wrong' } });
  });
});

it('gives work to the crew by name, as the name is written; saving a job without a crew keeps it', async () => {
  await call('PUT', 'jobs/job-barn-0001', { ...JOB, crew: ['Zebulon Marsh'] });
  await call('PUT', 'jobs/job-barn-0001', JOB);
  expect((await call('GET', 'jobs')).body[0].crew).toEqual(['Zebulon Marsh']);
  expect(await factsOf('Zebulon will call the inspector tomorrow.')).toContainEqual(
    expect.objectContaining({ kind: 'followUp', who: 'Zebulon Marsh' }),
  );
});

describe('the area that a note was said in', () => {
  it('holds for what the words place nowhere else, and leaves the words as they were said', async () => {
    const text = 'Hinge is cracked. In the stall the latch is missing.';
    const facts = await factsOf(text, { area: 'loft' });
    expect(facts.map((f) => f.area)).toEqual(['loft', 'stall']);
    expect((await call('GET', 'jobs/job-barn-0001/notes')).body).toMatchObject([{ text, area: 'loft' }]);
    expect((await call('GET', 'jobs/job-barn-0001')).body.state.items[0].area).toBe('loft');
  });

  it('is not laid upon an instruction about the whole job', async () => {
    expect(await factsOf("What's left?", { area: 'loft' })).toMatchObject([{ kind: 'command', area: null }]);
  });
});

it.each(['walk-through', 'shopping'])('gives the %s as a PDF to open or keep', async (paper) => {
  const answer = await fetch(`${house.url}/api/jobs/job-barn-0001/${paper}.pdf`);
  expect(answer.headers.get('content-type')).toBe('application/pdf');
  expect(answer.headers.get('content-disposition')).toBe(`inline; filename="${paper} 2026-05-13.pdf"`);
  expect(
    Buffer.from(await answer.arrayBuffer())
      .subarray(0, 5)
      .toString(),
  ).toBe('%PDF-');
  expect((await fetch(`${house.url}/api/jobs/no-such-job/${paper}.pdf`)).status).toBe(404);
});
