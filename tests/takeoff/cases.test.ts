import { describe, expect, it } from 'vitest';
import { casesIn, missesOf } from './told.ts';

// Notes in many voices with what the trade makes of them, worked out by hand. Of the fresh ones 14 of 26 were met when
// they were first read and of the later ones 12 of 16, none of the rest with an unsafe "fits"; the rules were put right
// afterwards.
describe.each(['seen', 'unseen', 'fresh', 'later'])('%s notes', (file) => {
  it.each(casesIn(`fixtures/takeoff/${file}.jsonl`).map((given) => [given.id, given] as const))('%s', (_, given) => {
    expect(missesOf(given)).toEqual([]);
  });
});
