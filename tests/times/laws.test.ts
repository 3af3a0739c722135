import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays } from '../../parser/times/days.ts';
import { timesOf } from './read.ts';

const MONTHS = 'january february march april may june july august september october november december'.split(' ');
const ONES = 'first second third fourth fifth sixth seventh eighth ninth'.split(' ');
const REST =
  'tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );
const inWords = (day: number) =>
  day < 10
    ? ONES[day - 1]!
    : day <= 20
      ? REST[day - 10]!
      : day === 30
        ? 'thirtieth'
        : `${day < 30 ? 'twenty' : 'thirty'} ${ONES[(day % 10) - 1]}`;
const inFigures = (day: number) =>
  `${day}${day > 3 && day < 21 ? 'th' : ({ 1: 'st', 2: 'nd', 3: 'rd' }[day % 10] ?? 'th')}`;

const days = fc.integer({ min: 1, max: 360 }).map((ahead) => addDays('2026-04-15', ahead));

it('is one day however it is said: the month first or the day, in words or figures, with a year or none', () => {
  fc.assert(
    fc.property(days, (date) => {
      const [year, month, day] = date.split('-').map(Number) as [number, number, number];
      const name = MONTHS[month - 1]!;
      const ways = [
        `${name} ${inFigures(day)}`,
        `${inFigures(day)} of ${name}`,
        `the ${inFigures(day)} of ${name}`,
        `${name} ${inWords(day)}`,
        `the ${inWords(day)} of ${name}`,
        `${inWords(day)} of ${name}`,
        `${day} ${name}`,
        `${name} ${day}, ${year}`,
        `${inFigures(day)} ${name} ${year}`,
        `${String(day).padStart(2, '0')}.${String(month).padStart(2, '0')}.${year}`,
        date,
      ];
      for (const way of ways) expect([way, timesOf(`walk it ${way}`).map((time) => time.date)]).toEqual([way, [date]]);
    }),
  );
});

it('a span opens and closes on the days that are named, the second never before the first', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 28 }), fc.integer({ min: 1, max: 28 }), (first, last) => {
      const found = timesOf(`from the ${inFigures(first)} to the ${inFigures(last)} we are away`);
      expect(found).toHaveLength(1);
      expect(Number(found[0]!.date.slice(8))).toBe(first);
      expect(Number(found[0]!.to!.slice(8))).toBe(last);
      expect(found[0]!.to! >= found[0]!.date).toBe(true);
      expect(found[0]!.quote).toBe(`from the ${inFigures(first)} to the ${inFigures(last)}`);
    }),
  );
});

it('what somebody did on a weekday lies in the week behind, what is to come in the week ahead', () => {
  const weekdays = fc.constantFrom(...'monday tuesday wednesday thursday friday saturday sunday'.split(' '));
  fc.assert(
    fc.property(days, weekdays, (today, weekday) => {
      const at = (text: string) => timesOf(text, `${today}T09:00:00`)[0]!;
      const was = at(`we poured it ${weekday}`);
      const comes = at(`we pour it ${weekday}`);
      expect(addDays(was.date, 7)).toBe(comes.date === addDays(today, 7) ? today : comes.date);
      expect([was.past, comes.past]).toEqual([true, false]);
      expect(was.date < today && comes.date > today).toBe(true);
    }),
  );
});

describe('told of the past with no word for it', () => {
  it.each([
    ['I was up there saturday and found the leak', '2026-04-11'],
    ['they sat there friday afternoon doing nothing', '2026-04-10'],
    ['he was supposed to be here monday', '2026-04-13'],
    ['the plumber showed up tuesday', '2026-04-14'],
    ['we never got to it friday', '2026-04-10'],
    ['friday just gone we lost the pump', '2026-04-10'],
    ['sealed that a month back', '2026-03-15'],
    ['changed a week ago', '2026-04-08'],
  ])('%s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date, past: true }]);
  });

  it.each([
    ['he said friday', '2026-04-17'],
    ['I told him they were coming monday', '2026-04-20'],
    ['get it finished friday', '2026-04-17'],
    ['inspection was moved to friday', '2026-04-17'],
    ['back on the 4th of may', '2026-05-04'],
  ])('still to come: %s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date, past: false }]);
  });
});

describe('days that crews plan around, named at the head of what is said', () => {
  it.each([
    ['memorial day we are shut', '2026-05-25'],
    ["boxing day I'll pop in", '2026-12-26'],
    ['halloween they want the lights on', '2026-10-31'],
    ['victoria day', '2026-05-18'],
    ['bank holiday monday', '2026-05-04'],
    ['melbourne cup day', '2026-11-03'],
    ['labour day', '2026-09-07'],
    ['easter monday', '2027-03-29'],
  ])('%s', (text, date) => {
    expect(timesOf(text)).toMatchObject([{ date }]);
  });
});

describe('stretches and lengths', () => {
  it.each([
    ['mid november', '2026-11-15', null],
    ['last month', '2026-03-01', '2026-03-31'],
    ['this month', '2026-04-15', '2026-04-30'],
    ['back end of next week', '2026-04-23', '2026-04-24'],
    ['week commencing 20th april', '2026-04-20', '2026-04-26'],
    ['before june', '2026-06-01', null],
    ['in a few days', '2026-04-18', null],
    ['give it a few days', '2026-04-18', null],
    ['a fortnight from now', '2026-04-29', null],
    ['two more days on the mud', '2026-04-17', null],
    ['the glue is twelve hours and after walk', '2026-04-16', null],
    ['close of play friday', '2026-04-17', null],
  ])('%s', (text, date, to) => {
    expect(timesOf(text)).toMatchObject([{ date, to }]);
  });

  it.each(["the sun's been on it", "that's yesterday's news", '14/3 between the switches'])('none in "%s"', (text) => {
    expect(timesOf(text)).toEqual([]);
  });
});
