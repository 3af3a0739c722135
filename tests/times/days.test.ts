import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addHours,
  addMonths,
  daysBetween,
  lastWeekday,
  localTime,
  nextWeekday,
  weekdayOf,
} from '../../parser/times/days.ts';

describe('months of unequal length', () => {
  it.each([
    ['2026-01-31', 1, '2026-02-28'],
    ['2028-01-31', 1, '2028-02-29'],
    ['2026-12-15', 1, '2027-01-15'],
    ['2026-03-31', -1, '2026-02-28'],
  ])('%s and %i months', (day, months, want) => {
    expect(addMonths(day, months)).toBe(want);
  });
});

it('carries hours over midnight, month and year', () => {
  expect(addHours('2026-12-31T20:30:00', 4)).toBe('2027-01-01T00:30');
});

describe('the wall clock of a zone', () => {
  // US rule (15 U.S.C. 260a): clocks go forward on the second Sunday of March and back on the first Sunday of November.
  it.each([
    ['2026-03-08T09:59:59Z', 'America/Los_Angeles', '2026-03-08T01:59:59'],
    ['2026-03-08T10:00:00Z', 'America/Los_Angeles', '2026-03-08T03:00:00'],
    ['2026-11-01T08:30:00Z', 'America/Los_Angeles', '2026-11-01T01:30:00'],
    ['2026-11-01T09:30:00Z', 'America/Los_Angeles', '2026-11-01T01:30:00'],
    ['2026-06-01T03:00:00Z', 'America/New_York', '2026-05-31T23:00:00'],
    ['2026-01-01T00:00:00Z', 'Australia/Sydney', '2026-01-01T11:00:00'],
    ['2026-07-01T00:00:00Z', 'America/Phoenix', '2026-06-30T17:00:00'],
  ])('%s in %s', (utc, zone, want) => {
    expect(localTime(new Date(utc), zone)).toBe(want);
  });

  it('knows no zone that is none', () => {
    expect(() => localTime(new Date(0), 'Moon/Tranquility')).toThrow(RangeError);
  });

  it('leaves days alone where the clocks change: they are counted by the calendar', () => {
    expect(addDays('2026-03-07', 1)).toBe('2026-03-08');
    expect(addDays('2026-10-31', 2)).toBe('2026-11-02');
  });
});

const day = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((d) => d.toISOString().slice(0, 10));

it('counts back what it counted on', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: -4000, max: 4000 }), (from, n) => {
      expect(daysBetween(from, addDays(from, n))).toBe(n);
    }),
  );
});

it('finds the weekday within the seven days after and before, never the day itself', () => {
  fc.assert(
    fc.property(day, fc.integer({ min: 0, max: 6 }), (from, weekday) => {
      const [next, last] = [nextWeekday(from, weekday), lastWeekday(from, weekday)];
      expect([weekdayOf(next), weekdayOf(last)]).toEqual([weekday, weekday]);
      expect(daysBetween(from, next)).toBeGreaterThan(0);
      expect(daysBetween(from, next)).toBeLessThanOrEqual(7);
      expect(daysBetween(last, from)).toBeGreaterThan(0);
      expect(daysBetween(last, from)).toBeLessThanOrEqual(7);
    }),
  );
});
