import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Decision } from '../../parser/types.ts';
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

/** Folded from a snapshot after the first few entries, and from nothing. */
const bothWays = (entries: readonly Entry[], first: number) => {
  const { snapshot } = foldFrom(JOB, null, entries.slice(0, first), END);
  return [foldFrom(JOB, snapshot, entries.slice(first), END).state, fold(JOB, entries, END)];
};

it('folds on where an item was joined into another and then told of again in the same note', () => {
  const joined = note(
    'n2',
    at(2),
    problem('faucet', 'drips', 'kitchen'),
    command('same', 2, { to: '1' }),
    material('gasket', 1, 'need'),
  );
  const [on, anew] = bothWays(
    [note('n1', at(1), problem('outlet', 'loose', 'kitchen')), joined, note('n3', at(3), done('replace gasket', null))],
    2,
  );
  expect(on).toEqual(anew);
});

it('folds on with no question about an item that was joined into another', () => {
  const drops = { ...command('drop', null), kind: 'decision', what: 'drop the faucet lever', drops: 'faucet lever' };
  const entries = [
    note('n1', at(1), problem('faucet', 'cracked', 'kitchen')),
    note('n2', at(2), problem('door', 'loose', 'hall')),
    note('n3', at(3), drops as Decision),
    hand('n4', at(4), { kind: 'sameAs', item: 'n1/0', as: 'n2/0' }),
    note('n5', at(5)),
  ];
  expect(fold(JOB, entries.slice(0, 3), END).questions).toHaveLength(1);
  const [on, anew] = bothWays(entries, 4);
  expect(anew!.questions).toEqual([]);
  expect(on).toEqual(anew);
});

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
    { numRuns: 150 },
  );
});
