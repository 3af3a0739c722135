import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fold, foldFrom } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { at, END } from './days.ts';
import { command, done, followUp, hand, JOB, material, note, problem } from './made.ts';

const things = fc.constantFrom('outlet', 'faucet', 'door', 'stop valve');
const rooms = fc.constantFrom(...JOB.areas, null);
const fact = fc.oneof(
  fc
    .tuple(things, fc.constantFrom('loose', 'cracked', 'drips'), rooms)
    .map(([thing, defect, room]) => problem(thing, defect, room)),
  fc
    .tuple(fc.constantFrom('replace', 'check', 'pick up'), things, rooms)
    .map(([verb, thing, room]) => followUp(`${verb} ${thing}`, room)),
  fc.tuple(things, rooms).map(([thing, room]) => done(`replace ${thing}`, room)),
  fc
    .tuple(things, fc.integer({ min: 1, max: 9 }), fc.constantFrom('need', 'bought', 'used', 'ordered', 'have'))
    .map(([item, n, status]) => material(item, n, status as 'need')),
  fc
    .tuple(fc.constantFrom('split', 'undo', 'done', 'reopen', 'drop'), fc.option(fc.integer({ min: 1, max: 5 })))
    .map(([verb, number]) => command(verb as 'split', number)),
);
const byHand = fc.oneof(
  fc.integer({ min: 0, max: 9 }).map((n) => ({ kind: 'setState', item: `n${n}/0`, state: 'signed off' }) as const),
  fc.integer({ min: 0, max: 9 }).map((n) => ({ kind: 'split', item: `n${n}/0` }) as const),
  fc.integer({ min: 0, max: 9 }).map((n) => ({ kind: 'undo', entry: `n${n}` }) as const),
  fc.integer({ min: 0, max: 9 }).map((n) => ({ kind: 'sameAs', item: `n${n}/0`, as: 'n0/0' }) as const),
  fc.integer({ min: 0, max: 9 }).map((n) => ({ kind: 'correctFact', noteId: `n${n}`, index: 0, fact: null }) as const),
);
const history = fc
  .array(
    fc.tuple(
      fc.integer({ min: 1, max: 28 }),
      fc.oneof({ weight: 4, arbitrary: fc.array(fact, { maxLength: 3 }) }, { weight: 1, arbitrary: byHand }),
    ),
    { minLength: 1, maxLength: 12 },
  )
  .map((told) =>
    told.map(
      ([day, what], k): Entry =>
        Array.isArray(what) ? note(`n${k}`, at(day), ...what) : hand(`n${k}`, at(day), what as Entry['what']),
    ),
  );

it('folding on from a snapshot is folding everything from nothing, however the entries came', () => {
  fc.assert(
    fc.property(
      history.chain((h) =>
        fc.tuple(
          fc.shuffledSubarray(h, { minLength: h.length }),
          fc.nat({ max: h.length }),
          fc.nat({ max: h.length }),
          fc.integer({ min: 1, max: 31 }),
        ),
      ),
      ([delivered, a, b, seenOn]) => {
        const [first, second] = [Math.min(a, b), Math.max(a, b)];
        const one = foldFrom(JOB, null, delivered.slice(0, first), at(seenOn));
        const before = JSON.stringify(fold(JOB, delivered.slice(0, first), at(seenOn)));
        const two = foldFrom(JOB, one.snapshot, delivered.slice(first, second), END);
        // A phone sends again what it is not sure of.
        const three = foldFrom(JOB, two.snapshot, delivered.slice(first), END);
        expect(three.state).toEqual(fold(JOB, delivered, END));
        // The snapshot stays as it was.
        expect(JSON.stringify(foldFrom(JOB, one.snapshot, [], at(seenOn)).state)).toBe(before);
      },
    ),
    { numRuns: 300 },
  );
});
