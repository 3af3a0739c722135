import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { replyTo } from '../../server/talk/index.ts';
import { at, END } from './days.ts';
import { done, hand, note, problem } from './made.ts';

const JOB = { areas: ['laundry room', 'kitchen'], builtYear: null, crew: ['Luis Ortega', 'Dana'] };
const LIST = [
  note(
    'a',
    at(1),
    problem('shutoff', 'seized', 'laundry room'),
    problem('outlet', 'dead', 'laundry room'),
    problem('drawer', 'sticking', 'kitchen'),
    problem('casing', 'split', 'kitchen'),
  ),
  note('b', at(2), done('replace shutoff', 'laundry room'), done('replace outlet', 'laundry room')),
  note('c', at(3), done('repair drawer', 'kitchen')),
];
const says = (text: string): Entry => ({
  ...hand('z', at(9), { kind: 'noteRead', facts: [], text, parser: '1' }),
  source: { noteId: 'z', start: 0, end: 0 },
});
const after = (text: string) => fold(JOB, [...LIST, says(text)], END);
const accepted = (text: string) =>
  after(text)
    .items.filter((i) => i.state === 'signed off')
    .map((i) => i.number);

describe('signing off at the walk-through', () => {
  it.each([
    ['walk-through is done, she signed off on one and three', [1, 3]],
    ["owner's happy with the laundry", [1, 2]],
    ['walked it with Karen, she is good with everything', [1, 2, 3]],
    ["they're happy with everything but number two", [1, 3]],
    ['all signed off except the drawer', [1, 2]],
    ['owner signed off on the drawer', [3]],
    ['she signed off on number four too', [4]],
  ])('%s', (text, numbers) => {
    expect(accepted(text)).toEqual(numbers);
  });

  it.each([
    "she hasn't signed off on one",
    'need her to sign off on one and two',
    'once they signed off on everything we get paid',
    "owner's happy with the price",
    'owner signed off on the casing',
  ])('not by: %s', (text) => {
    expect(accepted(text)).toEqual([]);
  });

  it('keeps the day on which the work was done, and says so in the reply', () => {
    const signed = after('she signed off on three');
    expect(signed.items[2]).toMatchObject({ state: 'signed off', closedOn: '2026-03-03' });
    const { lines } = replyTo(fold(JOB, LIST, END), signed, 'z', []);
    expect(lines).toEqual([{ kind: 'closed', text: 'Signed off, no. 3: drawer, sticking (kitchen)', item: 3 }]);
  });
});

describe('handing over', () => {
  const people = (text: string) => after(text).items.map((i) => i.who);

  it.each([
    ['give number four to Luis', 'Luis Ortega'],
    ['Luis can take the casing', 'Luis Ortega'],
    ['have dana do the split casing', 'Dana'],
    ['ok put Pete on number four', 'Pete'],
    ['number four goes to the painter', 'painter'],
    ["number four is Dana's", 'Dana'],
    ['let luis handle number four, rain all day', 'Luis Ortega'],
  ])('%s', (text, who) => {
    expect(people(text)).toEqual([null, null, null, who]);
  });

  it.each([
    'give the casing to them',
    'give number four to me',
    'he can take the casing',
    'Luis can take the trash out',
    'give number nine to Luis',
  ])('not by: %s', (text) => {
    expect(people(text)).toEqual([null, null, null, null]);
  });

  it('says so in the reply', () => {
    const { lines } = replyTo(fold(JOB, LIST, END), after('give number four to Dana'), 'z', []);
    expect(lines).toEqual([{ kind: 'changed', text: 'Given to Dana, no. 4: casing, split (kitchen), Dana', item: 4 }]);
  });
});
