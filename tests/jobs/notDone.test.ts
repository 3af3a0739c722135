import { describe, expect, it } from 'vitest';
import { isOnlyArranged, isOnlyWished } from '../../server/jobs/said/arranged.ts';
import { asSaid } from '../../server/jobs/said/asSaid.ts';
import { isStillAmiss } from '../../server/jobs/said/stillAmiss.ts';
import { told } from './days.ts';
import { problem } from './made.ts';

const SAID_AT = '2026-05-12T08:00:00';

const states = (...texts: string[]) => told(...texts).items.map(({ state }) => state);
const amiss = (said: string) => {
  const end = said.search(/[.,]|$/);
  return isStillAmiss(said, { start: 0, end });
};

describe('what only arranges closes nothing', () => {
  it.each([
    'tagged it',
    'I flagged it off',
    'took it straight back',
    'ordered',
    'closer arm came in',
    'latch turned up',
  ])('%s', (said) => {
    expect(isOnlyArranged(said)).toBe(true);
  });

  it.each(['closer arm came in and is on', 'tagged and rehung it', 'picked up the latch and fitted it'])(
    'but what was done does: %s',
    (said) => {
      expect(isOnlyArranged(said)).toBe(false);
    },
  );

  it('is told of an item that stands', () => {
    expect(states('hall closer is broken', 'hall closer turned up')[0]).toBe('open');
  });

  it('nor does what is wished for', () => {
    expect(isOnlyWished('and she wants')).toBe(true);
    expect(isOnlyWished('the owner would like')).toBe(true);
    expect(isOnlyWished('I have')).toBe(false);
  });
});

describe('a flaw told with no repair', () => {
  it.each([
    "boiler room door seal's perished all round, that wants a new one",
    "bench slat's split, need one",
    'gate latch snapped',
  ])('stands: %s', (said) => {
    expect(amiss(said)).toBe(true);
  });

  it.each([
    'gate latch snapped, put a new one on',
    'hose slipped off, clamped it',
    'outlet was loose',
    'hinge screws too short, refixed with brass',
    'tap leaked, dry now',
  ])('was put right: %s', (said) => {
    expect(amiss(said)).toBe(false);
  });
});

describe('what is no finished work', () => {
  it.each(['putty dropped out in the hall', 'hall slate slipped down', "the kitchen seal's perished"])(
    'a thing that gave out by itself: %s',
    (said) => {
      expect(states(said)).toEqual(['open']);
    },
  );

  it('a plan by its heading', () => {
    expect(states('Plan. hall: vinyl in')).not.toContain('done');
    expect(states('hall vinyl is in')).toEqual(['done']);
  });

  it('what is done once the goods come', () => {
    const said =
      "got the hall blind. kitchen hose is bulging, braided one, get one of those, I'll put it on when it comes";
    expect(told(said).items.find(({ problem }) => problem === 'bulging')).toMatchObject({ state: 'open' });
  });
});

describe('what was fetched, or tells how bad a flaw is, is no finished work', () => {
  const tasks = (...texts: string[]) => told(...texts).items.map(({ task }) => task);

  it('goods of the order', () => {
    const [asked, got] = ['need 6 tubes of caulk and a box of trim nails', 'Got the caulk and the trim nails.'];
    expect(tasks(asked, got)).toEqual([]);
    expect(told(asked, got).order).toEqual([]);
  });

  it('how a thing came away', () => {
    const { items } = told('Rail bracket at the top is loose, pulled right out of the plaster.');
    expect(items.map(({ state }) => state)).toEqual(['open']);
  });

  it('nor is a size a flaw, nor what a room will be a plan', () => {
    expect(tasks('The long wall is eighteen foot four. The den is going to be two bedrooms.')).toEqual([]);
  });
});

describe('what must not be done, what nobody knows and a visit are no work', () => {
  it('a ban is told as decided', () => {
    const { items, decisions } = told(
      'So nobody scrapes or sands in there until the plastic is up. Nobody drills that.',
    );
    expect(items).toEqual([]);
    expect(decisions.map(({ what }) => what)).toEqual([
      'nobody scrapes or sands in there until the plastic is up',
      'nobody drills that',
    ]);
  });

  it('nor is a tool that must stay away missing; what is wanted there is', () => {
    const { items, decisions } = told(
      'No grinder, no torch near that oil tank. No sanding on the new boards till Friday.',
    );
    expect(items).toEqual([]);
    expect(decisions).toHaveLength(2);
    expect(told('No water at the hall sink.').items).toHaveLength(1);
  });

  it('a thing that nobody knows stays', () => {
    expect(amiss("old sheet floor in the mudroom. I don't know what that is, so I taped it")).toBe(true);
    expect(amiss('old sheet floor in the mudroom. I know what that is, so I taped it')).toBe(false);
  });

  it('who came for a look has mended nothing', () => {
    const visit = {
      ...problem('board', 'look', null, { state: 'fixed' }),
      quote: 'the electrician came for a look round',
    };
    expect(asSaid(visit, visit.quote, [visit], SAID_AT)).toBeNull();
    const mended = { ...visit, quote: 'the electrician came and took the board out' };
    expect(asSaid(mended, mended.quote, [mended], SAID_AT)).not.toBeNull();
  });
});
