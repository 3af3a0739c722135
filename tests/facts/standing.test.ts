import { describe, expect, it } from 'vitest';
import { followUpsIn } from './read.ts';

const tasks = (text: string) => followUpsIn(text).map((f) => f.task);

describe('orders to leave something be', () => {
  it.each([
    ["don't paint the trim", "don't paint trim"],
    ['do not close up that wall', "don't close up wall"],
    ['nobody touches the panel', "don't touch panel"],
    ['keep the kids off the stairs till we know', 'keep kids off stairs'],
    ['keep everybody out of the bathroom until the gas is checked', 'keep everybody out of bathroom'],
    ['leave the breaker off till Ray comes', 'leave breaker off'],
  ])('%s', (text, task) => expect(tasks(text)).toEqual([task]));

  it('is about what was just found', () =>
    expect(tasks("found an old splice behind the paneling. Shut the breaker off. Don't cover it.")).toContain(
      "don't cover paneling old splice",
    ));

  it.each(["don't worry about the trim", "don't judge me", "don't go looking for the ladder"])('%s: none', (text) =>
    expect(tasks(text)).toEqual([]),
  );
});

describe('work that nobody will do', () => {
  it.each([
    "there's paint under the stringer, that's probably lead, house is old. I'm not sanding it. Get a test kit.",
    "we won't tile the niche",
    "I'm not painting the closet",
    "nobody's cutting that beam",
    "he won't drywall the ceiling",
  ])('%s', (text) => expect(tasks(text)).toEqual([]));
});
