import { describe, expect, it } from 'vitest';
import { played } from './told.ts';

const at = (time: string, text: string) => ({ saidAt: `2026-06-${time}:00`, text });
const play = (...notes: ReturnType<typeof at>[]) =>
  played({ id: 'w', rooms: ['shed'], notes, asOf: '2026-06-09T20:00:00' });
const early = (lines: readonly string[]) => lines.filter((l) => l.startsWith('Too early'));

describe('work planned before it is ready', () => {
  it.each([
    [
      'tonight',
      at('09T14:00', 'set the shed floor tile with modified, done at 2. gonna grout tonight'),
      /grout .*2026-06-09.*thinset, 24 h.*ready 2026-06-10/,
    ],
    [
      'in an hour',
      at('09T09:00', 'primed the shed with oil primer, topcoat it in an hour'),
      /2026-06-09.*oil primer, 24 h.*ready 2026-06-10/,
    ],
    [
      'tomorrow, by somebody else',
      at('09T14:00', 'grouted the shower floor, owner wants to use the shower tomorrow'),
      /2026-06-10.*grout, 72 h.*ready 2026-06-12/,
    ],
    [
      'a weekday',
      at('09T08:00', 'poured the footings at 8. posts are next, set posts tomorrow'),
      /2026-06-10.*concrete, 72 h.*ready 2026-06-12/,
    ],
  ])('%s: the reply warns', (_, note, warning) => {
    const { lines } = play(note);
    expect(early(lines)).toEqual([expect.stringMatching(warning)]);
  });

  it('a later note plans it', () => {
    const first = at('09T09:00', 'thinset is down and the floor tile is set, then grout');
    expect(early(play(first).lines)).toEqual([]);
    expect(early(play(first, at('09T13:00', 'grout it this afternoon')).lines)).toHaveLength(1);
  });

  it('says it once, and not of a day that is late enough', () => {
    const first = at('09T09:00', 'floor tile is set with thinset, grout tonight');
    expect(early(play(first, at('09T11:00', 'two boxes of screws left')).lines)).toEqual([]);
    expect(early(play(at('09T09:00', 'floor tile is set with thinset, grout it friday')).lines)).toEqual([]);
  });
});

describe('goods that come later than the work is planned for', () => {
  // Told on a Tuesday, 9 June.
  it.each<[string, string, string]>([
    ['vanity comes thursday, install it wednesday', 'install', '2026-06-11'],
    ['the tile is being delivered friday, set the shed floor thursday', 'set', '2026-06-12'],
    ["windows won't be here till the 15th, hang the shed windows thursday", 'hang', '2026-06-15'],
    ['waiting on the cabinets till friday, hang the shed cabinets thursday', 'hang', '2026-06-12'],
    ['countertop arrives monday, fix the faucet tomorrow, install the countertop saturday', 'install', '2026-06-15'],
  ])('%s', (text, verb, day) => {
    const { state, lines } = play(at('09T09:00', text));
    expect(state.items.filter((i) => /to arrive$/.test(i.waitingFor ?? ''))).toMatchObject([
      { task: expect.stringMatching(new RegExp(`^${verb}\\b`)), readyOn: day, state: 'waiting' },
    ]);
    expect(early(lines)).toEqual([expect.stringContaining(`to arrive: ready ${day}`)]);
  });

  it.each([
    'the plumber comes thursday, set the toilet wednesday',
    "toilet's coming friday, pull the old toilet wednesday",
    'door gets here monday, hang the shed door on the 16th',
    'tile came in, set the shed floor tomorrow',
    'order the vanity wednesday',
  ])('nothing is too early: %s', (text) => {
    expect(early(play(at('09T09:00', text)).lines)).toEqual([]);
  });

  it('waits no more once they are here', () => {
    const { state } = play(at('09T09:00', 'tub arrives the 20th, install the tub'), at('09T10:00', 'the tub arrived'));
    expect(state.items.filter((i) => /to arrive$/.test(i.waitingFor ?? ''))).toEqual([]);
  });
});

describe('no wait where nothing was laid yet', () => {
  it.each([
    'gonna set the floor tile tomorrow then grout',
    'need to get the slab poured before framing',
    'grout comes in on thursday',
    'the tile guy is setting up his saw',
  ])('%s', (text) => {
    expect(play(at('09T09:00', text)).state.items.filter((i) => /, \d+ h/.test(i.waitingFor ?? ''))).toEqual([]);
  });
});

it('the wait sits on its item as a ready day', () => {
  const { state } = play(at('09T09:00', 'second coat of mud on the shed ceiling, sand it next'));
  expect(state.items.filter((i) => i.state !== 'done')).toMatchObject([
    { task: expect.stringMatching(/^sand/), state: 'waiting', readyOn: '2026-06-10' },
  ]);
});

it('a step told after the wait is over opens nothing', () => {
  const { state } = play(at('01T09:00', 'grouted the shower floor'), at('09T09:00', 'they can use the shower now'));
  expect(state.items.filter((i) => /grout, \d+ h/.test(i.waitingFor ?? ''))).toEqual([]);
});

describe('a wait shorter than a day says until what hour', () => {
  it.each([
    ['second coat is on in the bath, give it three hours before we tape', 'three hours, until 12:00'],
    ['let the primer dry two hours then roll the ceiling', 'two hours, until 11:00'],
    ['Let the caulk sit 6 hours from 9 am before anyone paints the trim', '6 hours from 9 am, until 15:00'],
    ["it's 24 hours from 4 pm on the thinset, then grout the hall", '24 hours from 4 pm, until 16:00'],
    // Nobody said morning or afternoon: a crew's day runs from seven to six.
    ["it's 24 hours from four on the thinset, then grout the hall", '24 hours from four, until 16:00'],
    ['Let the caulk sit 6 hours from nine before anyone paints the trim', '6 hours from nine, until 15:00'],
    ["primer's on the den walls. leave it two hours then first coat", 'primer, 2 h on the label, until 11:00'],
  ])('%s', (text, waits) => {
    expect(play(at('09T09:00', text)).state.items.map((i) => i.waitingFor)).toContain(waits);
  });
});

describe('planned for the day itself, before its hour', () => {
  const told = 'tile in the hall is set, done at four. thinset says 24 hours, grouting it tomorrow';
  it.each([
    ['at two', true],
    ['at 2 pm', true],
    ['at nine', true],
    ['at four', false],
    ['at five', false],
    ['', false],
  ])('%s', (hour, warned) => {
    const { lines } = play(at('09T17:10', `${told} ${hour}`.trim()));
    expect(lines.some((l) => /^Too early: .* ready 2026-06-10 at 16:00\.$/.test(l))).toBe(warned);
  });
});
