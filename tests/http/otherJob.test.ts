import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Job } from '../../server/jobs/types.ts';
import { type Served, serve } from './served.ts';

const job = (id: string, name: string, areas: string[]): Job => ({
  id,
  name,
  zone: 'America/Chicago',
  start: '2026-05-11',
  areas,
  crew: [],
  builtYear: null,
  mailTo: [],
  mailAt: '17:30',
});
const BARN = job('job-barn', 'Barn loft', ['loft', 'stall']);
const MAPLE = job('job-maple', 'Maple St kitchen', ['kitchen', 'pantry']);
const DECK = job('job-deck', 'Henderson deck', []);

let house: Served;
let count = 0;

beforeEach(async () => {
  house = await serve();
  await house.store.putJob(BARN);
  await house.store.putJob(MAPLE);
  count = 0;
});

afterEach(() => house.stop());

const say = async (text: string) => {
  const saidAt = `2026-05-13T10:0${count}:00`;
  return (await house.site.take(BARN, `note-000${count++}`, { saidAt, text })).reply;
};
const lists = async (one: Job) => {
  const { items, order } = await house.site.state(one);
  return [...items.map((i) => i.task), ...order.map((l) => `buy ${l.quantity} ${l.item}`)];
};

it('what a note tells of the other job is filed there, and said so with its name', async () => {
  const reply = await say(
    'The stall hinge is bent. At the other job the disposal is leaking and I need two gfcis for it.',
  );
  expect(await lists(BARN)).toEqual(['stall hinge: bent']);
  expect(await lists(MAPLE)).toEqual(['disposal: leaking', 'buy 2 gfci']);
  expect(reply.lines.map((l) => l.text)).toEqual([
    'New, no. 1: stall hinge, bent',
    'Maple St kitchen: New, no. 1: disposal, leaking',
    'Maple St kitchen: To buy: 2 gfci',
  ]);
});

it('a job named by its own word is meant, whichever room it has', async () => {
  await house.store.putJob(DECK);
  await say("Henderson's place needs two posts. Back here the loft ladder is loose.");
  expect(await lists(BARN)).toEqual(['loft ladder: loose']);
  expect(await lists(DECK)).toEqual(['buy 2 post']);
  await say('need two sheets of maple plywood');
  expect(await lists(MAPLE)).toEqual([]);
});

it('with several others, "the other job" is asked about, kept here meanwhile, and moved on the answer', async () => {
  await house.store.putJob(DECK);
  const { ask } = await say('Loft ladder is loose. At the other job the faucet drips.');
  expect(ask).toMatch(/^Which job is "At the other job the faucet drips" for: .*Henderson deck.*\?/);
  expect(await lists(BARN)).toEqual(['loft ladder: loose', 'faucet: drips']);
  const moved = await say('that was for Maple');
  expect(moved.lines.map((l) => l.text)).toEqual(['Maple St kitchen: New, no. 1: faucet, drips']);
  expect(await lists(BARN)).toEqual(['loft ladder: loose']);
  expect(await lists(MAPLE)).toEqual(['faucet: drips']);
  // All of it holds when the notes are read again.
  expect((await house.site.rereading(BARN)).difference).toEqual([]);
  expect((await house.site.rereading(MAPLE)).difference).toEqual([]);
});

it('an item filed wrong is moved by its number, the rest of its note stays', async () => {
  await say('Loft ladder is loose. Pantry shelf is cracked.');
  await say('number two is for the Maple job');
  expect(await lists(BARN)).toEqual(['loft ladder: loose']);
  expect(await lists(MAPLE)).toEqual(['pantry shelf: cracked']);
});
