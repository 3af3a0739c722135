import { describe, expect, it } from 'vitest';
import { casesIn, missesOf } from './told.ts';

describe.each(['seen', 'later'])('%s notes of take-offs, cut lists, checks, waits and cautions', (file) => {
  it.each(casesIn(`fixtures/trade/${file}.jsonl`).map((given) => [given.id, given] as const))('%s', (_, given) => {
    expect(missesOf(given), given.because).toEqual([]);
  });
});
