import { describe, expect, it } from 'vitest';
import type { Fact } from '../../parser/types.ts';
import type { JobView, Talk } from '../../server/http/api.ts';
import { daysBetween, dayWords, wallTime } from '../../server/page/app/kit/clock.ts';
import { talksShown, withPending } from '../../server/page/app/kit/pending.ts';
import type { Parcel } from '../../server/page/app/kit/phoneStore.ts';
import { spoken } from '../../server/page/app/kit/spoken.ts';
import { decimalOf, exactOf } from '../../server/page/app/kit/typedNumber.ts';
import { fractionWords, quantityWords } from '../../server/page/app/kit/words.ts';
import { answerIn } from '../../server/page/app/list/ReadThrough.tsx';
import { heardIn } from '../../server/page/app/talk/liveWords.ts';
import { byArea } from '../../server/talk/groups.ts';

describe('numbers by hand', () => {
  it.each([
    ['3', '3'],
    ['2.5', '5/2'],
    ['.75', '3/4'],
    ['1 3/8', '11/8'],
    ['1-3/8', '11/8'],
    [' 10/16 ', '5/8'],
    ['', null],
    ['1/0', null],
    ['two', null],
    ['-1', null],
  ])('%j is %j', (typed, exact) => expect(exactOf(typed)).toBe(exact));

  it.each(['3', '11/8', '5/2', '333/8', '5/64'])('%s reads back as the same number', (exact) => {
    expect(exactOf(fractionWords(exact))).toBe(exact);
    expect(decimalOf(exact)).toBeGreaterThan(0);
  });

  it('writes what no tape shows as a decimal, and containers in the plural', () => {
    expect(fractionWords('157/50')).toBe('3.14');
    expect(fractionWords('-1/2')).toBe('-1/2');
    expect([
      quantityWords('2', 'box'),
      quantityWords('1/2', 'bag'),
      quantityWords('4', 'each'),
      quantityWords('40', 'sq ft'),
    ]).toEqual(['2 boxes', '1/2 bag', '4', '40 sq ft']);
  });
});

describe('read aloud', () => {
  it.each([
    ['Fixed, no. 10: rail post. No. 4', 'Fixed, number 10: rail post. number 4'],
    ['opening 32-3/8 in x 18 in', 'opening 32 and 3/8 inches by 18 inches'],
    ['18 ft x 22 ft = 396 sq ft; + 10 %', '18 feet by 22 feet = 396 square feet; plus 10 percent'],
    ['1/2 in drywall, 1 ft strip', '1/2 inch drywall, 1 foot strip'],
    ['hang door 5 in the hall', 'hang door 5 in the hall'],
    ['No such thing', 'No such thing'],
  ])('%s', (line, said) => expect(spoken(line)).toBe(said));
});

describe('heard', () => {
  it('live words are told once where each partial hearing comes as a result of its own', () => {
    const partial = (transcript: string) => ({ transcript, confidence: 0 });
    const final = (transcript: string) => ({ transcript, confidence: 0.9 });
    expect(heardIn([partial('need'), partial('need four'), final('need four hinges'), final('need four hinges')])).toBe(
      'need four hinges',
    );
    expect(heardIn([final('need two'), final(' need two more boxes')])).toBe('need two need two more boxes');
  });

  it.each([
    ['well that one is done', 'done'],
    ['Skip.', 'next'],
    ['next', 'next'],
    ['that one is not done', null],
    ['it isn’t quite done', null],
    ['not done, skip', 'next'],
    ['done with the sanding', null],
  ] as const)('%j answers %j', (words, answer) => expect(answerIn(words)).toBe(answer));
});

describe('days', () => {
  it('counts over a change of the clock and names the near ones', () => {
    expect(daysBetween('2026-03-07', '2026-03-09')).toBe(2);
    expect(['2026-05-12', '2026-05-13', '2026-05-14', '2026-05-20'].map((d) => dayWords(d, '2026-05-13'))).toEqual([
      'yesterday',
      'today',
      'tomorrow',
      'Wed May 20',
    ]);
  });

  it('gives wall time in the zone of the job', () => {
    expect(wallTime('Pacific/Auckland')).toMatch(/^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):\d\d:\d\d$/);
  });
});

describe('what waits on the phone', () => {
  const item = { key: 'a', number: 1, task: 'sand', state: 'open', area: 'hall' };
  const view = { job: { id: 'job' }, today: '2026-05-13', state: { items: [item], order: [] } } as unknown as JobView;
  const entry = (id: string, what: object, jobId = 'job') =>
    ({ id, jobId, parked: null, kind: 'entry', entry: { at: '2026-05-13T10:00:00', what } }) as Parcel;
  const tick = entry('1', { kind: 'setState', item: 'a', state: 'done' });

  it('shows changes of this job and leaves the kept view as it was', () => {
    const moved = entry('2', { kind: 'editItem', item: 'a', change: { area: 'attic' } });
    expect(withPending(view, [tick, moved]).state.items[0]).toMatchObject({ state: 'done', area: 'attic' });
    expect(
      withPending(view, [entry('3', { kind: 'setState', item: 'a', state: 'done' }, 'other')]).state.items[0],
    ).toMatchObject({ state: 'open' });
    expect(view.state.items[0]).toMatchObject({ state: 'open', area: 'hall' });
  });

  it('shows nothing of a change that was taken back or refused', () => {
    expect(withPending(view, [tick, entry('4', { kind: 'undo', entry: '1' })]).state.items[0]!.state).toBe('open');
    expect(withPending(view, [{ ...tick, parked: 'no' }]).state.items[0]!.state).toBe('open');
  });

  const fact = (quote: string) => ({ kind: 'done', task: quote, quote, start: 0, end: quote.length }) as Fact;
  const talk = {
    id: 'n1',
    saidAt: '2026-05-13T09:00:00',
    text: 'one two',
    photoIds: [],
    reply: { facts: [fact('one'), fact('two')], lines: [] },
  } as unknown as Talk;
  const note: Parcel = {
    id: 'n2',
    jobId: 'job',
    parked: null,
    kind: 'note',
    note: { saidAt: '2026-05-13T08:00:00', text: 'three' },
  };

  it('puts waiting notes among the others by the time they were said, with the phone’s reading', () => {
    const shown = talksShown([talk], [note], 'job', new Map([['n2', [fact('three')]]]));
    expect(shown.map((s) => [s.id, s.unsent?.id ?? null, s.facts.length])).toEqual([
      ['n2', 'n2', 1],
      ['n1', null, 2],
    ]);
  });

  it('shows a note once when the server has it already', () => {
    expect(talksShown([talk], [{ ...note, id: 'n1' }], 'job', new Map())).toHaveLength(1);
  });

  it('puts corrections in their fact’s place, the server’s first and then this phone’s', () => {
    const corrected = { ...talk, corrected: [{ index: 0, fact: null }] };
    const mine = entry('5', { kind: 'correctFact', noteId: 'n1', index: 1, fact: fact('deux') });
    expect(talksShown([corrected], [mine], 'job', new Map())[0]!.facts.map((f) => f?.quote ?? null)).toEqual([
      null,
      'deux',
    ]);
  });
});

it('areas stand as the job names them, then as first met, and what has none comes last', () => {
  const items = [null, 'attic', 'hall', 'laundry', 'hall'].map((area) => ({ area }));
  const groups = byArea(['laundry', 'back porch', 'hall'], items).map(([name, here]) => [name, here.length]);
  expect(groups).toEqual([
    ['laundry', 1],
    ['hall', 2],
    ['attic', 1],
    ['No area', 1],
  ]);
});
