import { describe, expect, it } from 'vitest';
import { timesOf } from './read.ts';

/** A wednesday at noon. */
const NOON = '2026-07-29T12:10:00';
const daysOf = (text: string, now = NOON) =>
  timesOf(text, now).map(({ date, to }) => (to && to !== date ? `${date}..${to}` : date));

describe('a day that has been is known by what was done or came about on it', () => {
  it.each([
    ['the furnace died saturday', '2026-07-25'],
    ['the boards turned up monday wet through', '2026-07-27'],
    ['storm hit sunday', '2026-07-26'],
    ['passed inspection monday', '2026-07-27'],
    ['framer walked off the job monday', '2026-07-27'],
    ['the toilet got set friday', '2026-07-24'],
    ['got rained out monday', '2026-07-27'],
    ['he come by tuesday and never finished', '2026-07-28'],
    ['came by saturday and nobody was here', '2026-07-25'],
    ['I told you tuesday about that flashing', '2026-07-28'],
    ['sunday there was water in the pit', '2026-07-26'],
    ['wednesday never happened', '2026-07-22'],
    ['the rain tuesday washed out the footer', '2026-07-28'],
    ['that delivery monday was short six boards', '2026-07-27'],
    ['drywall guys friday left a mess', '2026-07-24'],
    ['that 7/20 shipment never came', '2026-07-20'],
    ['the invoice from the second of june is still open', '2026-06-02'],
    ['shipment left the 20th', '2026-07-20'],
    ['paper says 8 July', '2026-07-08'],
    ['still no answer from the city as of friday', '2026-07-24'],
    ['desde el lunes no hay agua', '2026-07-27'],
  ])('%s', (text, date) => {
    expect(daysOf(text)).toEqual([date]);
  });

  it.each([
    ['the tub gets set friday', '2026-07-31'],
    ['having it tested friday', '2026-07-31'],
    ['have the plumber set it friday', '2026-07-31'],
    ["y'all quit at noon friday", '2026-07-31'],
    ['got the crew back monday', '2026-08-03'],
    ['rostered off thurs', '2026-07-30'],
    ['walk it july 15th', '2027-07-15'],
    ['the meeting monday was moved', '2026-08-03'],
    ['as of monday we run two crews', '2026-08-03'],
    ['the warranty runs out june 30', '2027-06-30'],
  ])('but not in %s', (text, date) => {
    expect(daysOf(text)).toEqual([date]);
  });

  it.each([
    ['should have been here monday', '2026-07-27'],
    ['that was due monday', '2026-07-27'],
    ["supposed to come tuesday and didn't", '2026-07-28'],
    ['windows were promised for the 27th', '2026-07-27'],
  ])('what was not done then has its day behind it too: %s', (text, date) => {
    expect(daysOf(text)).toEqual([date]);
  });

  it('of two deeds each has its own day', () => {
    expect(daysOf('poured it tuesday stripping it friday')).toEqual(['2026-07-28', '2026-07-31']);
  });
});

describe('weeks and weekends that have been', () => {
  it.each([
    ['friday of last week', ['2026-07-24']],
    ['last week on thursday', ['2026-07-23']],
    ['thursday last week', ['2026-07-23']],
    ['friday two weeks ago', ['2026-07-17']],
    ['week ago monday', ['2026-07-20']],
    ['a week yesterday', ['2026-07-21']],
    ['this time last week', ['2026-07-22']],
    ['this past weekend', ['2026-07-25..2026-07-26']],
    ['the weekend just gone', ['2026-07-25..2026-07-26']],
    ['they robbed us at the weekend', ['2026-07-25..2026-07-26']],
    ['over the weekend somebody cut the lock', ['2026-07-25..2026-07-26']],
    ['keep the fans on over the weekend', ['2026-08-01..2026-08-02']],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });
});

describe('said on the days themselves', () => {
  it.each([
    ['2026-09-30T12:05:00', "it's the thirtieth", ['2026-09-30']],
    ['2026-07-31T08:00:00', 'the 31st, today', ['2026-07-31', '2026-07-31']],
    ['2026-07-31T08:00:00', 'the first is tomorrow', ['2026-08-01', '2026-08-01']],
    ['2026-08-02T19:00:00', 'this weekend was a washout', ['2026-08-02']],
    ['2026-08-02T19:00:00', 'last weekend the roof blew off', ['2026-07-25..2026-07-26']],
    ['2026-08-02T19:00:00', 'this week we tile', ['2026-08-03..2026-08-07']],
    ['2026-08-01T21:40:00', 'by the weekend it has to be shut in', ['2026-08-08..2026-08-09']],
    ['2026-12-31T10:00:00', 'they promised it before christmas', ['2026-12-25']],
    ['2026-12-31T10:00:00', 'on the first of the year they go to the new code', ['2027-01-01']],
    ['2027-03-01T07:00:00', 'over the weekend keep the door open', ['2027-03-06..2027-03-07']],
    ['2027-03-01T07:00:00', "it's monday and nobody's here", ['2027-03-01']],
    ['2027-05-15T09:00:00', "poured friday the 7th and it's cracked", ['2027-05-07']],
  ])('%s: %s', (now, text, days) => {
    expect(daysOf(text, now)).toEqual(days);
  });
});
