import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { likelyRanges, type Proposal } from '../../parser/facts/spans/likely.ts';
import { noteSignsIn } from '../../parser/facts/spans/noteSigns.ts';
import { readTable } from '../../parser/facts/spans/weights.ts';
import { readNote } from '../../parser/index.ts';
import { columns } from '../../parser/weights.ts';

const facts = (text: string) => readNote(text, { saidAt: '2026-05-12T15:20:00' }).facts;
const of = (kind: string, text: string) => facts(text).filter((f) => f.kind === kind);

describe('likeliest places of chunks', () => {
  const weights = {
    pulls: new Map([
      ['leak', { begin: 2, goOn: 0 }],
      ['more', { begin: -4, goOn: 2 }],
      ['else', { begin: -4, goOn: -4 }],
      ['rule', { begin: 0, goOn: 0 }],
    ]),
    steps: { 'goOn>goOn': 0.5 },
  };

  const ranges = (features: string[][], witness = '', trust = 0) =>
    likelyRanges(features, weights, witness, trust).map(({ from, until }) => ({ from, until }));

  it('begins where the pull is strong and goes on while it holds', () => {
    expect(ranges([['else'], ['leak'], ['more'], ['more'], ['else']])).toEqual([{ from: 1, until: 4 }]);
  });

  it('tells two that touch apart', () => {
    expect(ranges([['leak'], ['more'], ['leak'], ['more']])).toEqual([
      { from: 0, until: 2 },
      { from: 2, until: 4 },
    ]);
  });

  it('never goes on from nothing, and finds nothing in nothing', () => {
    expect(ranges([['more'], ['else']])).toEqual([]);
    expect(ranges([])).toEqual([]);
  });

  it('counts all ways to place the chunks', () => {
    // One chunk: out weighs 1, begin weighs e^2.
    const [leak] = likelyRanges([['leak']], weights, '', 0);
    expect(leak!.likely).toBeCloseTo(Math.E ** 2 / (1 + Math.E ** 2), 10);
    // Two: out-out 1, out-begin e^-4, begin-out e^2, begin-begin e^-2, begin-goOn e^4; the last three tell of the first chunk.
    const [all] = likelyRanges([['leak'], ['more']], weights, '', 0);
    const begun = Math.E ** 2 + Math.E ** -2 + Math.E ** 4;
    expect(all).toMatchObject({ from: 0, until: 2 });
    expect(all!.likely).toBeCloseTo(begun / (begun + 1 + Math.E ** -4), 10);
  });

  it('adds its trust where a rule is the witness', () => {
    const likely = (trust: number) => likelyRanges([['else', 'rule']], weights, 'rule', trust)[0]?.likely ?? 0;
    expect(likely(5)).toBeCloseTo(Math.E / (1 + Math.E), 10);
    expect(likely(3)).toBeCloseTo(1 / (1 + Math.E), 10);
  });
});

describe('what the rest of a note says of a span', () => {
  const leak: Proposal = { kind: 'problem', from: 4, until: 8, likely: 0.5 };
  const fixed: Proposal = { kind: 'done', from: 6, until: 10, likely: 0.9 };
  const painted: Proposal = { kind: 'done', from: 0, until: 4, likely: 0.7 };
  const doubted: Proposal = { kind: 'followUp', from: 10, until: 12, likely: 0.2 };
  const signs = noteSignsIn([painted, leak, fixed, doubted])(leak, 'copula');

  it('tells which other kinds may stand at the same words', () => {
    expect(signs.filter((s) => s.startsWith('beside='))).toEqual([
      'beside=followUp|none',
      'beside=followUp|none|3',
      'beside=done|5',
      'beside=done|5|3',
    ]);
  });

  it('tells its neighbours, but those that are hardly likely', () => {
    expect(signs).toEqual(expect.arrayContaining(['before gap=done|0', 'before likely=done|4', 'after none']));
  });

  it('tells how much of the note is of each kind, as a whole and up to here', () => {
    // 0.5 flaws and 1.6 finished work of 2.3 in all; before it finished work alone.
    expect(signs).toEqual(
      expect.arrayContaining(['share=problem|1', 'share=done|3', 'so far=done|4', 'so far=problem|0', 'expected=1']),
    );
  });
});

describe('tables of weights', () => {
  it('reads two hundredths a kind, and the steps', () => {
    const { problem, followUp, done } = readTable('>goOn>goOn\t50\t-10\t0\nw0=leak\t120\t\t\t-5\n');
    expect(problem.steps['goOn>goOn']).toBe(0.5);
    expect(followUp.steps['goOn>goOn']).toBe(-0.1);
    expect(problem.pulls.get('w0=leak')).toEqual({ begin: 1.2, goOn: 0 });
    expect(followUp.pulls.get('w0=leak')).toEqual({ begin: 0, goOn: -0.05 });
    expect(done.pulls.get('w0=leak')).toBeUndefined();
  });

  it('reads one hundredth a kind', () => {
    const { a, b } = columns('w=now\t25\nw=not\t\t-30\n', ['a', 'b']);
    expect(['w=now', 'w=not', 'w=no'].map((name) => a.get(name))).toEqual([0.25, undefined, undefined]);
    expect(['w=now', 'w=not', 'w=no'].map((name) => b.get(name))).toEqual([undefined, -0.3, undefined]);
  });
});

describe('a run-on note', () => {
  const note =
    'ok so the back steps are poured and broomed the third riser came out an inch tall I have to grind it thursday and ' +
    'the handrail post wobbles like a loose tooth so I lagged it to the stringer and it is solid now then somebody has to strip the forms';

  it('keeps each fact to its own words', () => {
    for (const fact of facts(note)) {
      expect(note.slice(fact.start, fact.end)).toBe(fact.quote);
      expect(fact.end - fact.start).toBeLessThan(130);
    }
  });

  it('tells what was put right from what was not', () => {
    const post = of('problem', note).find((f) => 'thing' in f && /post/.test(f.thing));
    expect(post).toMatchObject({ state: 'fixed' });
  });

  it('finds what is still to do', () => {
    const tasks = of('followUp', note).map((f) => ('task' in f ? f.task : ''));
    expect(tasks.some((t) => /grind/.test(t))).toBe(true);
    expect(tasks.some((t) => /strip.*forms?/.test(t))).toBe(true);
  });
});

it('reads any words, also those that a language keeps for itself', () => {
  const word = fc.constantFrom(
    'constructor',
    'toString',
    '__proto__',
    'valueOf',
    'the',
    'valve',
    'leaks',
    'two',
    'boxes',
    'and',
    'fix',
    'it',
    'friday',
    'not',
    '3/8',
    ',',
    '.',
    'gotta',
  );
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 25 }), (words) => {
      const text = words.join(' ');
      for (const fact of facts(text)) expect(text.slice(fact.start, fact.end)).toBe(fact.quote);
    }),
    { numRuns: 300 },
  );
});

it('says how sure it is: what was told in passing less than what was done', () => {
  const told = facts(
    'Hung the new storm door on the side porch and it closes fine. Neighbour was telling me his old dog came in again by the other gate, so that was the morning.',
  );
  const sure = (kind: string) => told.find((fact) => fact.kind === kind)!.confidence;
  expect(sure('done')).toBeGreaterThan(0.8);
  expect(sure('problem')).toBeLessThan(sure('done'));
  expect(sure('problem')).toBeGreaterThan(0.5);
});
