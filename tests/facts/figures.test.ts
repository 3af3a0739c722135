import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const readingsIn = (text: string) =>
  readNote(text, { saidAt: SAID_AT, areas: ['kitchen', 'bedroom'] }).facts.flatMap((f) =>
    f.kind === 'measurement' ? [`${f.of} ${f.value} ${f.unit}`] : [],
  );

describe("a house's year or age", () => {
  it.each([
    "house is sixty four so that's probably lead",
    'the place is eighty, old wiring',
    'this building is fifty five, no insulation',
  ])('%s: no reading', (text) => expect(readingsIn(text)).toEqual([]));

  it.each(['house is sixty four degrees', "it's cold, the house is fifty eight"])('%s: its warmth', (text) =>
    expect(readingsIn(text)).toHaveLength(1),
  );
});

describe('a figure put right', () => {
  it.each([
    ["the blocking's fourteen and three eighths not fourteen and a half", ['blocking 14.375 in']],
    ["rafter's eleven and a quarter, not eleven and a half", ['rafter 11.25 in']],
    ['the opening is 36 not 34', ['opening 36 in']],
    [
      'bedroom closet opening is forty eight and a half by eighty two. No wait, opening is fifty and a half, I read the tape wrong',
      ['bedroom closet opening 82 in', 'bedroom closet opening 50.5 in'],
    ],
    ['the window is thirty six by forty eight. wait no the window is thirty eight', ['window 48 in', 'window 38 in']],
    ['window opening is thirty six wide. opening is thirty eight, I misread it', ['window opening width 38 in']],
  ])('%s', (text, readings) => expect(readingsIn(text)).toEqual(readings));

  it('leaves two openings two', () =>
    expect(readingsIn('left opening is thirty six wide. right opening is thirty eight wide')).toHaveLength(2));
});

it('feet and inches before a thing with a size of its own', () =>
  expect(
    readingsIn('the kitchen is twelve foot four by ten foot two ceilings eight foot nine').map((r) =>
      r.replace(/^.* (?=\d)/, ''),
    ),
  ).toEqual(['148 in', '122 in', '105 in']));
