import { expect, it } from 'vitest';
import { type Case, casesIn, missesOf, played } from './told.ts';

/** A "fits" where the answer worked out by hand is another. */
const unsafe = (given: Case): boolean =>
  (given.want.checks ?? []).some(
    (w) => w.result !== 'fits' && played(given).state.checks.some((c) => c.of.includes(w.of) && c.result === 'fits'),
  );

// Held out: which of them are missed is never looked at, only how many. `unseen-2` was met 11 of 16 at first
// sight, `unseen-3` 6 of 8.
it.each([
  ['unseen', 14],
  ['unseen-2', 11],
  ['unseen-3', 6],
])('%s notes: at least %d met, and no unsafe "fits"', (file, least) => {
  const cases = casesIn(`fixtures/trade/${file}.jsonl`);
  expect(cases.filter((given) => missesOf(given).length === 0).length).toBeGreaterThanOrEqual(least);
  expect(cases.filter(unsafe).length).toBe(0);
});
