import { describe, expect, it } from 'vitest';
import { problemsIn } from './read.ts';

describe('what is amiss, and with what', () => {
  it.each([
    ['the register in the nursery has no air coming out of it', 'register'],
    ['sump pump never kicks on', 'sump pump'],
    ["ridge vent isn't nailed down", 'ridge vent'],
    ['stair rail wobbles at the top', 'stair rail'],
    ['the countertop overhang is only ten inches, drawing shows twelve', 'countertop overhang'],
    ['one of the pendants over the island hangs an inch lower than the other two', 'pendants'],
    ["Water's coming in around the chimney flashing again", 'chimney flashing'],
    ['the plumber drilled right through the bottom of the LVL', 'lvl'],
    ['they never caulked the tub', 'tub'],
    ['the grout in the mudroom never got sealed', 'grout'],
    ['Luis says the landing is not level', 'landing'],
    ['stove hood light out', 'stove hood light'],
    ['hit a clay pipe by the corner its cracked', 'clay pipe'],
  ])('%s', (text, thing) => {
    expect(
      problemsIn(text)
        .map((p) => p.thing)
        .join(' | '),
    ).toContain(thing);
  });

  it('tells two flaws of one run-on apart', () => {
    const found = problemsIn(
      "the stone base has two chips the light over the desk is out the restroom door doesn't latch",
    );
    expect(found.map((p) => p.thing)).toEqual(['stone base', 'desk light', 'restroom door']);
  });

  it.each([
    'checked every joint, no leaks',
    'my knees are shot',
    'Attic blown to fifteen inches',
    'ripped out the old vanity',
    'walls stripped',
    'its dead plumb now, all good',
    'the niche came out twelve and a quarter wide by fourteen tall',
    'traffic was bad all the way, see you in the morning',
  ])('%s: nothing wrong', (text) => {
    expect(problemsIn(text).filter((p) => p.state === 'open')).toEqual([]);
  });
});

describe('put right in the same breath', () => {
  it.each([
    'valve leaking at the packing - repacked',
    "window won't lock, adjusted the keeper",
    'kitchen drawer sticks so I waxed the slides',
    'flapper worn, new one in',
    'bifold off track (rehung)',
    'ridge cap lifted in the wind, nailed it down',
    'fixed the squeak in the hall',
  ])('%s', (text) => {
    expect(problemsIn(text).map((p) => p.state)).toEqual(['fixed']);
  });

  it.each([
    "drawer front is scratched and they're sending another",
    "toilet rocks, I'll shim it tomorrow",
    'breaker trips, I reset it and it tripped again',
    'faucet drips, told the owner',
    "the header's cracked. I put a jack post under it for now",
    'handrail bracket at the top is loose, pulled right out of the wall',
  ])('%s: still open', (text) => {
    expect(problemsIn(text).map((p) => p.state)).toEqual(['open']);
  });

  it('gives a repair to its own flaw in a list', () => {
    const found = problemsIn('tub stopper missing, both closet doors off track. I put the doors back on');
    expect(found.map((p) => p.state)).toEqual(['open', 'fixed']);
  });
});

describe('what is wrong with it', () => {
  it.each([
    ['the rail post is loose on the back porch', 'loose'],
    ["there's a stair step crack in the block", 'crack'],
    ["left stringer's split along the grain", 'split'],
    ["disposal won't come on", 'come on'],
  ])('ends before its place: %s', (text, defect) => {
    expect(problemsIn(text)[0]!.defect).toMatch(new RegExp(`${defect}$`));
  });
});
