import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { done, followUp, hand, JOB, material, measurement, note, problem } from './made.ts';

const END = '2026-03-31T18:00:00';
const at = (day: number, hour = 8) => `2026-03-${String(day).padStart(2, '0')}T${String(hour).padStart(2, '0')}:00:00`;
const list = (entries: Entry[], asOf = END) => fold(JOB, entries, asOf).items.map((i) => [i.task, i.area, i.state]);

const someFact = fc.oneof(
  fc
    .tuple(
      fc.constantFrom('outlet', 'faucet', 'door'),
      fc.constantFrom('loose', 'cracked'),
      fc.constantFrom(...JOB.areas),
    )
    .map(([thing, defect, area]) => problem(thing, defect, area)),
  fc
    .tuple(
      fc.constantFrom('replace', 'check'),
      fc.constantFrom('outlet', 'faucet', 'door'),
      fc.constantFrom(...JOB.areas),
    )
    .map(([verb, thing, area]) => followUp(`${verb} ${thing}`, area)),
  fc.constantFrom('outlet', 'faucet', 'door').map((thing) => done(`replace ${thing}`, 'kitchen')),
  fc
    .tuple(
      fc.constantFrom('outlet', 'hinge'),
      fc.integer({ min: 1, max: 9 }),
      fc.constantFrom('need', 'bought', 'used'),
    )
    .map(([item, n, status]) => material(item, n, status as 'need')),
  fc.integer({ min: 1, max: 90 }).map((n) => measurement('door width', n, 'in', 'hall')),
);
const history = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 28 }), fc.array(someFact, { maxLength: 3 })), {
    minLength: 1,
    maxLength: 14,
  })
  .map((notes) => notes.map(([day, facts], k) => note(`n${k}`, at(day), ...facts)));

describe('a history folds to the same list', () => {
  it('in whatever order and however often it was delivered', () => {
    fc.assert(
      fc.property(
        history.chain((h) => fc.tuple(fc.constant(h), fc.shuffledSubarray([...h, ...h], { minLength: 2 * h.length }))),
        ([told, delivered]) => {
          expect(fold(JOB, delivered, END)).toEqual(fold(JOB, told, END));
        },
      ),
    );
  });

  it('after any entry is undone as if it had never been, and after the undoing is undone as before', () => {
    fc.assert(
      fc.property(history, fc.nat(), (told, k) => {
        const taken = told[k % told.length]!;
        const undo = hand('u1', at(29), { kind: 'undo', entry: taken.id });
        const redo = hand('u2', at(30), { kind: 'undo', entry: 'u1' });
        expect(fold(JOB, [...told, undo], END)).toEqual(
          fold(
            JOB,
            told.filter((e) => e !== taken),
            END,
          ),
        );
        expect(fold(JOB, [...told, undo, redo], END)).toEqual(fold(JOB, told, END));
      }),
    );
  });

  it('as it stood on any day', () => {
    const told = [note('a', at(1), problem('door', 'loose', 'hall')), note('b', at(3), done('fix loose door', 'hall'))];
    expect(list(told, at(2))).toEqual([['door: loose', 'hall', 'open']]);
    expect(list(told)).toEqual([['door: loose', 'hall', 'done']]);
  });
});

describe('items', () => {
  it('a problem and its repair are one, in the words of the trade', () => {
    const told = [
      note('a', at(1), problem('outlet', 'loose', 'hall'), followUp('replace outlet', 'hall')),
      note('b', at(2), followUp('swap the receptacle', 'hall')),
    ];
    expect(list(told)).toEqual([['replace outlet', 'hall', 'open']]);
  });

  it('the same words in two rooms are two, and finished work closes its own', () => {
    const told = [
      note('a', at(1), followUp('replace outlet', 'hall'), followUp('replace outlet', 'kitchen')),
      note('b', at(2), done('change outlet', 'kitchen')),
    ];
    expect(list(told)).toEqual([
      ['replace outlet', 'hall', 'open'],
      ['replace outlet', 'kitchen', 'done'],
    ]);
  });

  it('what still drips is open again', () => {
    const drip = problem('faucet', 'drips', 'kitchen', { quote: 'faucet still drips' });
    const told = [
      note('a', at(1), problem('faucet', 'drips', 'kitchen')),
      note('b', at(2), done('fix dripping faucet', 'kitchen')),
      note('c', at(3), drip),
    ];
    expect(list(told)).toEqual([['faucet: drips', 'kitchen', 'open']]);
  });

  it('a tick by hand outlives what is read later', () => {
    const told = [
      note('a', at(1), followUp('replace outlet', 'hall')),
      hand('h', at(2), { kind: 'setState', item: 'a/0', state: 'signed off' }),
    ];
    expect(list(told)).toEqual([['replace outlet', 'hall', 'signed off']]);
  });

  it('joined by hand are one, under either number', () => {
    const told = [
      note('a', at(1), followUp('replace outlet', 'hall')),
      note('b', at(1, 9), followUp('look at dead plug', 'kitchen')),
      hand('h', at(2), { kind: 'sameAs', item: 'b/0', as: 'a/0' }),
    ];
    expect(list(told)).toEqual([['replace outlet', 'hall', 'open']]);
  });
});

describe('the order', () => {
  const order = (...entries: Entry[]) => fold(JOB, entries, END).order.map((l) => [l.item, l.quantity, l.state]);
  const hinges = (n: number, counts: 'plain' | 'more' | 'total') => material('hinge', n, 'need', { counts });

  it('a need said twice is one; more adds; a total replaces', () => {
    expect(order(note('a', at(1), hinges(2, 'plain')), note('b', at(2), hinges(2, 'plain')))[0]![1]).toBe('2');
    expect(order(note('a', at(1), hinges(2, 'plain')), note('b', at(2), hinges(1, 'more')))[0]![1]).toBe('3');
    expect(order(note('a', at(1), hinges(3, 'plain')), note('b', at(2), hinges(2, 'total')))[0]![1]).toBe('2');
  });

  it('what is bought or on order is off it; what is left over is on hand', () => {
    const state = fold(
      JOB,
      [
        note('a', at(1), hinges(2, 'plain'), material('valve', 1, 'need')),
        note('b', at(2), material('hinges', 3, 'bought'), material('valve', 1, 'ordered')),
        note('c', at(3), material('hinge', 2, 'used')),
      ],
      END,
    );
    expect(state.order).toEqual([]);
    expect(state.onHand).toEqual([{ item: 'hinge', size: null, quantity: '1', unit: 'each' }]);
  });

  it('a count or a tick by hand stands', () => {
    const told = note('a', at(1), hinges(2, 'plain'));
    expect(order(told, hand('h', at(2), { kind: 'setOrder', line: 'a/0', quantity: '5' }))).toEqual([
      ['hinge', '5', 'to buy'],
    ]);
    expect(order(told, hand('h', at(2), { kind: 'setOrder', line: 'a/0', state: 'bought' }))).toEqual([
      ['hinge', '2', 'bought'],
    ]);
  });

  it.each(['bought', 'have', 'ordered'] as const)(
    'a tick as %s meets what was wanted then, and not what is wanted later',
    (state) => {
      const tick = hand('h', at(2), { kind: 'setOrder', line: 'a/0', state });
      const more = note('b', at(3), hinges(3, 'more'));
      expect(order(note('a', at(1), hinges(2, 'plain')), tick, more)).toEqual([['hinge', '3', 'to buy']]);
      expect(order(note('a', at(1), hinges(2, 'plain')), tick, note('b', at(3), hinges(2, 'plain')))).toEqual([
        ['hinge', '2', state],
      ]);
      // Nobody had said how many: the tick was for what there was, a count said later is a new wish.
      expect(order(note('a', at(1), material('hinge', null, 'need')), tick)).toEqual([['hinge', null, state]]);
      expect(order(note('a', at(1), material('hinge', null, 'need')), tick, more)).toEqual([['hinge', '3', 'to buy']]);
    },
  );
});

describe('measurements', () => {
  it('the latest stands, the earlier ones are kept', () => {
    const told = [
      note('a', at(1), measurement('door width', 30, 'in', 'hall')),
      note('b', at(2), measurement('door width', 32, 'in', 'hall')),
      note('c', at(3), measurement('door width', 32, 'in', 'hall')),
    ];
    const [kept, ...others] = fold(JOB, told, END).measurements;
    expect(others).toEqual([]);
    expect([kept!.value, kept!.earlier.map((e) => e.value)]).toEqual([32, [30]]);
  });
});
