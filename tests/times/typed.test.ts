import { describe, expect, it } from 'vitest';
import { dayWord } from '../../parser/times/typed.ts';
import { timesOf } from './read.ts';

/** A saturday morning. */
const daysOf = (text: string) =>
  timesOf(text, '2027-05-15T09:00:00').map(({ date, to }) => (to ? `${date}..${to}` : date));

describe('days as thumbs and dictation write them', () => {
  it.each([
    ['2day we hang the doors', ['2027-05-15']],
    ['cant make it 2nite', ['2027-05-15']],
    ['2moro then', ['2027-05-16']],
    ['to morrow we pour', ['2027-05-16']],
    ['tomarrow first thing', ['2027-05-16']],
    ['tom morning', ['2027-05-16']],
    ['been leakin sence friday', ['2027-05-14']],
    ['wenesday', ['2027-05-19']],
    ['teusday', ['2027-05-18']],
    ['fridya works', ['2027-05-21']],
    ['ocotber 3rd', ['2027-10-03']],
    ['the 22 nd', ['2027-05-22']],
    ['this w/end', ['2027-05-15..2027-05-16']],
    ['this week end', ['2027-05-15..2027-05-16']],
    ['mondays delivery is late', ['2027-05-17']],
    ['sat ok for u', ['2027-05-22']],
    ['is sat free', ['2027-05-22']],
    ['Sat - demo the bath', ['2027-05-22']],
    ["mon's no good", ['2027-05-17']],
    ['swing past monday with the keys', ['2027-05-17']],
  ])('%s', (text, days) => {
    expect(daysOf(text)).toEqual(days);
  });

  it.each([
    'sundry parts',
    'sundae on the porch',
    'christian has the saw',
    'he works mondays',
    'monday mornings the tip is closed',
    "sun's beating on that wall",
    'Friday is the cat',
    'casual friday my foot',
    'unit 12/14 needs paint',
    'the bathroom on the second',
    '2day cure stuff',
  ])('no day: %s', (text) => {
    expect(daysOf(text)).toEqual([]);
  });

  it('leaves other words alone', () => {
    const words = 'money weaken thirsty christian saturated sorrow mondays weekends fridge tonic'.split(' ');
    expect(words.map(dayWord)).toEqual(words);
  });
});
