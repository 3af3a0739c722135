import { describe, expect, it } from 'vitest';
import { timesOf } from './read.ts';

/** The days found, a span with both its ends; the moment at which it is said stands first in each row. */
const daysOf = (now: string, text: string) => timesOf(text, now).map(({ date, to }) => (to ? `${date}..${to}` : date));

describe('parts of a week, of a month', () => {
  it.each([
    ['2026-04-15T15:20:00', "scaffold hire's up the last day of may", ['2026-05-31']],
    ['2026-04-15T15:20:00', 'meter swap is last friday of the month', ['2026-04-24']],
    ['2026-04-15T15:20:00', 'first monday in june they start the street', ['2026-06-01']],
    ['2026-04-15T15:20:00', 'mid week next week for the tiler', ['2026-04-22']],
    ['2026-04-15T15:20:00', 'late next week the stairs land', ['2026-04-23..2026-04-24']],
    ['2026-04-15T15:20:00', "back end of the week he'll be in to second fix", ['2026-04-16..2026-04-17']],
    ['2026-04-15T15:20:00', 'beginning of the week we get the digger', ['2026-04-20..2026-04-21']],
    ['2026-07-14T10:30:00', 'the last week in july is shutdown', ['2026-07-25..2026-07-31']],
    ['2026-04-15T15:20:00', 'wk of the 4th for cabinets', ['2026-05-04..2026-05-10']],
    ['2026-04-15T15:20:00', 'plasterers in w/c 27th', ['2026-04-27..2026-05-03']],
    ['2026-04-15T15:20:00', 'snags done w/e 24th', ['2026-04-24']],
    ['2026-09-25T16:20:00', 'this wknd we sand', ['2026-09-26..2026-09-27']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('pairs of figures, by what happens then', () => {
  it.each([
    ['2026-04-15T15:20:00', '5/3 for the final', ['2026-05-03']],
    ['2026-04-15T15:20:00', '6/2 inspection on the rough', ['2026-06-02']],
    ['2026-09-25T16:20:00', '10/2 inspection, 10/5 delivery', ['2026-10-02', '2026-10-05']],
    ['2027-01-01T09:15:00', '1/10 and 1/11 are the site closures', ['2027-01-10', '2027-01-11']],
    ['2026-10-20T17:05:00', '11/6 is drop dead', ['2026-11-06']],
    ['2026-07-14T10:30:00', 'start 7/20, finish 8/1', ['2026-07-20', '2026-08-01']],
    ['2026-10-20T17:05:00', 'out of town 10/29 thru 11/2', ['2026-10-29..2026-11-02']],
    ['2026-10-20T17:05:00', 'off nov 25-27 for the holiday', ['2026-11-25..2026-11-27']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('days by their number', () => {
  it.each([
    ['2026-04-15T15:20:00', 'the 6th or the 7th works for the slab guy', ['2026-05-06', '2026-05-07']],
    ['2026-04-15T15:20:00', "the 18th, 19th and 20th we're flat out", ['2026-04-18', '2026-04-19', '2026-04-20']],
    ['2026-04-15T15:20:00', 'sixth they hang the doors', ['2026-05-06']],
    ['2026-04-15T15:20:00', "come the second we're out of there", ['2026-05-02']],
    ['2026-10-20T17:05:00', 'aiming for the tenth', ['2026-11-10']],
    ['2026-10-20T17:05:00', "can't do the 28th but the 29th's wide open", ['2026-10-28', '2026-10-29']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('what has been', () => {
  it.each([
    ['2026-04-15T15:20:00', 'fortnight ago we had it signed off', ['2026-04-01']],
    ['2026-04-15T15:20:00', 'few days ago it was fine', ['2026-04-12']],
    ['2026-04-15T15:20:00', 'we did that friday and it failed', ['2026-04-10']],
    ['2026-04-15T15:20:00', "I told him in march don't buy it", ['2026-03-01..2026-03-31']],
    ['2026-04-15T15:20:00', 'friday past they had the street up', ['2026-04-10']],
    ['2027-01-01T09:15:00', 'ordered the doors nov 30 and not a word', ['2026-11-30']],
    ['2027-01-01T09:15:00', 'countertops were templated 12/18 and still no install date', ['2026-12-18']],
    ['2027-01-01T09:15:00', 'boiler packed in christmas day', ['2026-12-25']],
    ['2027-01-01T09:15:00', "nobody's been in since christmas", ['2026-12-25']],
    ['2026-07-14T10:30:00', 'monday he never showed', ['2026-07-13']],
    ['2026-04-15T15:20:00', "wednesday night's pour went fine", ['2026-04-08']],
    ['2026-10-20T17:05:00', 'poured sunday so strip wednesday', ['2026-10-18', '2026-10-21']],
    ['2026-07-14T10:30:00', 'he rang sunday about the noise', ['2026-07-12']],
    ['2027-03-05T06:30:00', 'it rained tuesday and wednesday', ['2027-03-02', '2027-03-03']],
    ['2026-07-14T10:30:00', 'had that in since the first of the month', ['2026-07-01']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('days told by others, and waits', () => {
  it.each([
    ['2026-10-20T17:05:00', 'week from tomorrow the dumpster swaps', ['2026-10-28']],
    ['2026-09-25T16:20:00', 'a wk from thurs', ['2026-10-08']],
    ['2026-09-25T16:20:00', 'this day week we pour', ['2026-10-02']],
    ['2026-04-15T15:20:00', '72 hrs on that membrane before tile', ['2026-04-18']],
    ['2026-10-20T17:05:00', 'wait a week to seal it', ['2026-10-27']],
    ['2026-04-15T15:20:00', 'need the numbers by lunch', ['2026-04-15']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('said in Spanish, or half of it', () => {
  it.each([
    ['2026-04-15T15:20:00', 'nos vemos mañana por la mañana', ['2026-04-16']],
    ['2026-04-15T15:20:00', 'el quince de mayo entregamos', ['2026-05-15']],
    ['2026-04-15T15:20:00', 'la inspección es el veinte', ['2026-04-20']],
    ['2026-04-15T15:20:00', 'en dos días quitamos la forma', ['2026-04-17']],
    ['2026-04-15T15:20:00', 'el lunes pasado llovió todo', ['2026-04-13']],
    ['2026-04-15T15:20:00', 'la semana que viene pintamos', ['2026-04-20..2026-04-26']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});

describe('words and figures that are no day', () => {
  it.each([
    ['2026-04-15T15:20:00', 'friday ate the sandwiches again, whose dog is that', []],
    ['2026-04-15T15:20:00', 'black friday pricing on the saw', []],
    ['2026-04-15T15:20:00', 'they run the pumps 24/7', []],
    ['2026-04-15T15:20:00', 'get me 12/3 for the three way', []],
    ['2026-04-15T15:20:00', '12/2 rate is ninety bucks a roll', []],
    ['2026-04-15T15:20:00', 'start at 7 de la mañana', []],
    ['2026-04-15T15:20:00', 'five day cure stuff', []],
    ['2026-07-14T10:30:00', 'every other friday is payday', []],
    ['2026-10-20T17:05:00', 'happy friday', []],
    ['2026-07-14T10:30:00', "I need two weeks' notice", []],
    ['2026-07-14T10:30:00', 'wed need a bigger saw', []],
    ['2026-04-15T15:20:00', 'open the second gallon when the first is out', []],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(now, text)).toEqual(days);
  });
});
