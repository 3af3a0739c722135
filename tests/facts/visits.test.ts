import { describe, expect, it } from 'vitest';
import { told } from '../jobs/days.ts';
import { followUpsIn } from './read.ts';

describe('somebody comes on a day', () => {
  it.each([
    ["The roofer's coming Wednesday.", 'roofer', '2026-05-13'],
    ["Roofer's coming Thursday to see about a ridge vent", 'roofer', '2026-05-14'],
    ["Gil's back Monday", 'Gil', '2026-05-18'],
    ["the plumber can't make it tomorrow, he's coming Friday instead", 'plumber', '2026-05-15'],
  ])('%s', (text, who, due) => expect(followUpsIn(text)).toMatchObject([{ who, due }]));

  it.each([
    'drywall comes thursday',
    "Rain's coming Thursday",
    "the painter isn't coming tomorrow",
    "she's coming friday",
  ])('none of the trade does: %s', (text) => expect(followUpsIn(text)).toEqual([]));

  it('and then on another, for the same work', () => {
    const { items } = told(
      "Gil's here Thursday to rekey the front door",
      "Gil can't Thursday after all, he's Friday now.",
    );
    expect(items.map(({ who, due }) => [who, due])).toEqual([['Gil', '2026-03-06']]);
  });
});
