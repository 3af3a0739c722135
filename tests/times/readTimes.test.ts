import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { readTimes } from '../../parser/times/index.ts';
import { NOW, timesOf } from './read.ts';

describe('a day, and how it bounds the work', () => {
  it.each([
    ['by friday', '2026-04-17', 'by'],
    ['handover is the last friday in may', '2026-05-29', 'on'],
    ['scaffold struck 31/5', '2026-05-31', 'on'],
    ['nothing till june', '2026-06-01', 'notBefore'],
    ['before easter monday', '2027-03-29', 'before'],
    ["nobody in on new year's day", '2027-01-01', 'on'],
    ['redo it before the phone guy comes thursday', '2026-04-16', 'before'],
    ['tarp stays on till saturday', '2026-04-18', 'notBefore'],
    ['painter not to start b4 tues', '2026-04-21', 'notBefore'],
    ['no stain until monday', '2026-04-20', 'notBefore'],
    ['pour it on thursday', '2026-04-16', 'on'],
    ['wednesday the tile guy is back', '2026-04-22', 'on'],
    ['first thing tomorrow', '2026-04-16', 'on'],
    ['by the end of the week', '2026-04-17', 'by'],
    ['eod', '2026-04-15', 'by'],
    ['end of day monday', '2026-04-20', 'by'],
    ['within three days', '2026-04-18', 'by'],
    ['next week', '2026-04-20', 'during'],
    ['over the weekend they primed', '2026-04-11', 'during'],
    ['camera it before the weekend', '2026-04-17', 'by'],
    ['no sooner than the 24th', '2026-04-24', 'notBefore'],
    ['tuesday at the earliest', '2026-04-21', 'notBefore'],
    ['three days nobody walks', '2026-04-18', 'notBefore'],
    ['leave it till morning then pull the vacuum', '2026-04-16', 'notBefore'],
    ['they go in after lunch', '2026-04-15', 'on'],
    ['I will paint the morn', '2026-04-16', 'on'],
    ['roofer back a week on friday', '2026-04-24', 'on'],
    ['recheck sat', '2026-04-18', 'on'],
    ['shut it down sat 6-10a', '2026-04-18', 'on'],
    ['final insp 7/22', '2026-07-22', 'on'],
    ['cert to landlord by 14/11', '2026-11-14', 'by'],
    ['I will be back on the nineteenth to put it in', '2026-04-19', 'on'],
  ])('%s', (text, date, relation) => {
    expect(timesOf(text)).toMatchObject([{ date, relation }]);
  });
});

it.each(['the tub just sat', 'where the drum sat, rust', 'cut 7/16 osb and 15/32 ply', 'pull a 5/15 amp breaker'])(
  'no day in: %s',
  (text) => {
    expect(timesOf(text)).toEqual([]);
  },
);

describe('a day told by another', () => {
  it.each([
    ['a week from this friday', '2026-04-24'],
    ['two weeks from tomorrow', '2026-04-30'],
    ['the day after labor day', '2026-09-08'],
    ['two days before thanksgiving', '2026-11-24'],
    ['the monday after labor day', '2026-09-14'],
    ['the friday before christmas', '2026-12-18'],
    ['a fortnight today', '2026-04-29'],
    ['two weeks monday', '2026-05-04'],
    ['tomorrow week', '2026-04-23'],
    ['monday fortnight', '2026-05-04'],
    ["in a week's time", '2026-04-22'],
    ['six weeks away', '2026-05-27'],
    ['inside of a week', '2026-04-22'],
    ['give it another day', '2026-04-16'],
    ['hold the backfill ten days', '2026-04-25'],
    ['by the end of the year', '2026-12-31'],
    ['the week of thanksgiving', '2026-11-23'],
    ['the week before christmas', '2026-12-14'],
    ['after the weekend', '2026-04-20'],
    ['due 2026-05-11', '2026-05-11'],
    ['thurs 16th', '2026-04-16'],
    ['set the door sat', '2026-04-18'],
  ])('%s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date }]);
  });

  it.each(['hold 60 psi for two hours', 'sunday best', 'the wed sign', 'where he sat', 'the monday crew'])(
    'none in "%s"',
    (text) => {
      expect(timesOf(text)).toEqual([]);
    },
  );
});

describe('a wait ends on a day and knows its hours', () => {
  it.each([
    ['let it cure 24 hours then grout', '2026-04-16', 24],
    ['let the mud dry overnight', '2026-04-16', 12],
    ['fans on 48 hrs', '2026-04-17', 48],
    ['keep cars off it for a week', '2026-04-22', 168],
    ['has to sit three days before tile', '2026-04-18', 72],
    ['let it set 24 to 48 hours', '2026-04-17', 48],
    ['wait eight hours then recoat', '2026-04-15', 8],
    ['wait nine hours then recoat', '2026-04-16', 9],
  ])('%s', (text, date, hours) => {
    expect(timesOf(text)).toMatchObject([{ date, hours, relation: 'notBefore' }]);
  });
});

describe('what is told of the past stays there', () => {
  it.each([
    ['it was dry yesterday', '2026-04-14'],
    ['last friday he poured', '2026-04-10'],
    ["it's been damp since monday", '2026-04-13'],
    ['two days ago', '2026-04-13'],
    ['I checked it this morning', '2026-04-15'],
  ])('%s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date, past: true }]);
  });
});

describe('a time of day is kept with its day', () => {
  it.each([
    ['recheck it tomorrow around seven thirty', '07:30'],
    ['thursday noon', '12:00'],
    ['friday at 2', '14:00'],
    ['monday by 8 am', '08:00'],
  ])('%s', (text, clock) => {
    expect(timesOf(text)).toMatchObject([{ clock }]);
  });

  it('takes no size for an hour', () => {
    expect(timesOf('tomorrow at 4 corners')[0]?.clock).toBeUndefined();
  });
});

describe('words that only look like a day', () => {
  it.each([
    'the door sat in the garage',
    'the sun side of the house',
    'we may need another sheet',
    'march the layout across',
    'the second coat is on',
    'that took two seconds',
    'a half inch gap, 1/2 to be exact',
    'hang it on 5/8 board',
    'pull it on 12/2 wire',
    'held 60 psi for twenty minutes',
    'eight hours of labor in that',
    'two hour fire door',
    'it is the holiday weekend',
    'the first floor bath',
    'closed every monday',
    'overnight shipping on the faucet',
  ])('%s', (text) => {
    expect(timesOf(text)).toEqual([]);
  });
});

describe('days counted from another, and days that crews plan around', () => {
  it.each([
    ['two days after monday', '2026-04-22'],
    ['a week from tuesday', '2026-04-28'],
    ['this coming friday', '2026-04-17'],
    ['monday after next', '2026-04-27'],
    ['in about two weeks', '2026-04-29'],
    ['week of june 8th', '2026-06-08'],
    ['done by memorial day', '2026-05-25'],
    ['before labor day', '2026-09-07'],
    ['by thanksgiving', '2026-11-26'],
    ["not until after new year's", '2027-01-01'],
  ])('%s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date }]);
  });

  it('leaves a holiday alone that is only a word', () => {
    expect(timesOf('string of christmas lights for christmas lights')).toEqual([]);
  });
});

it('reads the days of any month: a month without the day is passed over', () => {
  expect(timesOf('due on the 31st', '2026-04-15T08:00:00')[0]?.date).toBe('2026-05-31');
  expect(timesOf('due on the 30th', '2027-01-31T08:00:00')[0]?.date).toBe('2027-03-30');
  expect(timesOf('on feb 30')).toEqual([]);
});

it('takes a day of the month without its article, and no street or floor', () => {
  const day = (text: string) => timesOf(text, '2026-03-03T10:00:00').map(({ date }) => date);
  expect(day('frames done by 7th')).toEqual(['2026-03-07']);
  expect(day('glass comes on 22nd, then trim')).toEqual(['2026-03-22']);
  expect(day('the shop on 5th')).toEqual([]);
  expect(day('unit on 14th floor')).toEqual([]);
  expect(day('back in the mornin')).toEqual(['2026-03-04']);
});

it('steps over fillers and keeps the words of the talk in its quote', () => {
  const text = 'a week from uh monday';
  const tokens = tokenise(text).map((t) => (t.word === 'uh' ? { ...t, skip: 'filler' as const } : t));
  const [time] = readTimes(tokens, text, { now: NOW, quantities: readQuantities(tokens, text).quantities });
  expect(time).toMatchObject({ date: '2026-04-27', quote: text, from: 0, until: 5 });
});

interface Phrase {
  id: string;
  now: string;
  text: string;
  gold: { date: string; to?: string; accept?: string[]; quote: string }[];
}

const phrases: Phrase[] = readFileSync(new URL('../../fixtures/dates/seen.jsonl', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .map((line) => JSON.parse(line) as Phrase);

it.each(phrases)('$text', ({ text, now, gold }) => {
  const found = timesOf(text, now);
  expect(found).toHaveLength(gold.length);
  for (const [k, want] of gold.entries()) expect([want.date, ...(want.accept ?? [])]).toContain(found[k]?.date);
});

const PIECES =
  'monday friday the 14th fourteenth 6 / 1 in a couple days week from next last overnight 24 hours may sat , . of by before end tomorrow morning eod weekend ago out — ½ \n'.split(
    ' ',
  );

it('points inside the text, in order, without overlap, whatever is said', () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(fc.constantFrom(...PIECES), fc.string()), { maxLength: 30 }), (pieces) => {
      const text = pieces.join(' ');
      let last = 0;
      for (const time of timesOf(text)) {
        expect(text.slice(time.start, time.end)).toBe(time.quote);
        expect(time.start).toBeGreaterThanOrEqual(last);
        expect(time.date).toMatch(/^\d{4}-\d\d-\d\d$/);
        last = time.end;
      }
    }),
    { numRuns: 500 },
  );
});
