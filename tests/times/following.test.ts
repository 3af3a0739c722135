import { describe, expect, it } from 'vitest';
import { timesOf } from './read.ts';

/** A wednesday at three. */
const daysOf = (text: string) =>
  timesOf(text, '2026-10-14T15:00:00').map(({ date, to }) => (to ? `${date}..${to}` : date));

describe('a day counted from the one named before it', () => {
  it.each([
    ['demo on the 19th and the dumpster goes the friday after', ['2026-10-19', '2026-10-23']],
    ["framing starts monday and the inspection's the following friday", ['2026-10-19', '2026-10-23']],
    ['template wednesday, install the wednesday after', ['2026-10-21', '2026-10-28']],
    ['not tomorrow, the day after', ['2026-10-15', '2026-10-16']],
    ['poured it monday and stripped it the next day', ['2026-10-12', '2026-10-13']],
    ['floors monday, paint the following weekend', ['2026-10-19', '2026-10-24..2026-10-25']],
    ['floors monday, paint the week after', ['2026-10-19', '2026-10-26..2026-11-01']],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });

  it('is none where no day was named', () => {
    expect(daysOf('the day after we pour it rains')).toEqual([]);
  });
});

describe('a day and the week or month it is of', () => {
  it.each([
    ['owner meeting moves from monday to friday this week', ['2026-10-19', '2026-10-16']],
    ['el martes de la semana que viene', ['2026-10-20']],
    ['la próxima semana el martes', ['2026-10-20']],
    ['el día 20 vienen por la basura', ['2026-10-20']],
    ['a finales de octubre', ['2026-10-31']],
    ['june 3rd or 4th', ['2027-06-03', '2027-06-04']],
    ['3rd or 4th of june', ['2027-06-03', '2027-06-04']],
    ['by the 25th of this month', ['2026-10-25']],
    ['two fridays from now', ['2026-10-23']],
    ['first day of november', ['2026-11-01']],
    ['on november three we pour', ['2026-11-03']],
    ["third of november's the closing", ['2026-11-03']],
    ['august bank holiday monday', ['2027-08-30']],
    ['sat 10/17 open house', ['2026-10-17']],
    ['mtg 20th 9am', ['2026-10-20']],
    ['no later than 11/2', ['2026-11-02']],
    ["the ninth's booked solid", ['2026-11-09']],
    ['windows ship the third', ['2026-11-03']],
    ['do it the 5th', ['2026-11-05']],
    ['the morning of the 5th', ['2026-11-05']],
    ["how's the 12th look", ['2026-11-12']],
    ['could you make the 6th', ['2026-11-06']],
    ["month's end", ['2026-10-31']],
    ['the weekend before thanksgiving', ['2026-11-21..2026-11-22']],
    ['hand me the 3rd', []],
    ['pull the tenth nail', []],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });
});

describe('holidays at the head or the end of what is said', () => {
  it.each([
    ['veterans day post office shut so no check', ['2026-11-11']],
    ['closed thanksgiving', ['2026-11-26']],
    ['lit up like halloween', []],
    ['merry christmas', []],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });
});

describe('waits and what one has time for', () => {
  it.each([
    ['that epoxy takes 72 hours to cure', ['2026-10-17']],
    ['give it two nights', ['2026-10-16']],
    ['they have ten days to respond', ['2026-10-24']],
    ['in the next two weeks', ['2026-10-28']],
    ['for two days now it drips', []],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });
});
