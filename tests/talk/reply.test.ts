import { expect, it } from 'vitest';
import type { Command } from '../../parser/types.ts';
import { fold } from '../../server/jobs/index.ts';
import type { Entry } from '../../server/jobs/types.ts';
import { replyTo } from '../../server/talk/index.ts';
import { command, done, followUp, JOB, material, measurement, note, problem } from '../jobs/made.ts';

const END = '2026-03-31T18:00:00';
const first = note('a', '2026-03-01T08:00:00', followUp('replace shelf', 'hall'), material('hinge', 2, 'need'));
const second = note('b', '2026-03-02T08:00:00', done('swap shelves', 'hall'), material('hinge', 2, 'bought'));
const said = (before: Entry[], after: Entry[], noteId: string) => {
  const what = after.find((e) => e.id === noteId)!.what;
  const facts = what.kind === 'noteRead' ? what.facts : [];
  return replyTo(fold(JOB, before, END), fold(JOB, after, END), noteId, facts).lines.map((l) => [l.kind, l.text]);
};

it('says what a note opened and what to buy', () => {
  expect(said([], [first], 'a')).toEqual([
    ['opened', 'New, no. 1: replace shelf (hall)'],
    ['buy', 'To buy: 2 hinges'],
  ]);
});

it('says what a note closed and what is off the order', () => {
  expect(said([first], [first, second], 'b')).toEqual([
    ['closed', 'Done, no. 1: replace shelf (hall)'],
    ['buy', 'Bought, off the order: 2 hinges'],
  ]);
});

it('reads back what it measured and what is left in the van, so that a wrong number is seen', () => {
  const told = note(
    'a',
    '2026-03-01T08:00:00',
    measurement('opening', 138.5, 'in', 'hall'),
    material('flashing tape', 2, 'have', { unit: 'roll' }),
  );
  expect(said([], [told], 'a')).toEqual([
    ['changed', 'On hand now: 2 rolls flashing tape'],
    ['changed', 'Measured: opening 11 ft 6-1/2 in'],
  ]);
});

it('calls a flaw that was dealt with fixed', () => {
  const found = note('a', '2026-03-01T08:00:00', problem('rail post', 'out of plumb', 'hall'));
  const fixed = note(
    'b',
    '2026-03-02T08:00:00',
    problem('rail post', 'out of plumb', 'hall', { state: 'fixed', quote: 'rail post was out of plumb, shimmed it' }),
  );
  expect(said([], [found], 'a')).toEqual([['opened', 'New, no. 1: rail post, out of plumb (hall)']]);
  expect(said([found], [found, fixed], 'b')).toEqual([['closed', 'Fixed, no. 1: rail post, out of plumb (hall)']]);
});

it('says how to take it back where an item was only taken as done', () => {
  const found = note('a', '2026-03-01T08:00:00', problem('hall door', 'drags on floor', 'hall'));
  const told = note('b', '2026-03-02T08:00:00');
  const goes = {
    ...told,
    what: { kind: 'noteRead' as const, facts: [], text: 'hall door swings free now', parser: '1' },
  };
  expect(said([found], [found, goes], 'b')).toEqual([
    ['closed', 'Taken as done, no. 1: hall door, drags on floor. If not, say "reopen 1"'],
  ]);
});

const asks = (question: Command['question'], about: string | null = null) => command('ask', null, { question, about });
const answered = (question: Command['question'], about: string | null = null) =>
  said([first, shed], [first, shed, note('q', '2026-03-05T08:00:00', asks(question, about))], 'q').map(
    ([, text]) => text,
  );
const shed = note('s', '2026-03-03T08:00:00', followUp('dig footing', null), material('caulk', 1, 'need'));

it('answers what is to buy, for a shop that no line names with all of it', () => {
  expect(answered('order')).toEqual(['2 hinges', '1 caulk']);
  expect(answered('order', 'hinge')).toEqual(['2 hinges']);
  expect(answered('order', 'lumber yard')).toEqual([
    'No goods are told for "lumber yard" by name. The whole order:',
    '2 hinges',
    '1 caulk',
  ]);
});

it('answers what is left in a room, and how many stand without one', () => {
  expect(answered('left')).toEqual(['1. replace shelf (hall)', '2. dig footing']);
  expect(answered('left', 'hall')).toEqual(['1. replace shelf (hall)', '1 more without a room: no. 2.']);
  expect(answered('left', 'deck')).toEqual(['Nothing told for the deck by name.', '1 more without a room: no. 2.']);
});

it('answers all that is told of one thing, by its words', () => {
  expect(answered('told', 'how many of the hinges')).toEqual(['2 hinges: to buy (2 needed, said 2026-03-01)']);
  expect(answered('told', 'shelf')).toEqual(['1. replace shelf (hall): open']);
  expect(answered('told', 'chimney')).toEqual(['Nothing is told of "chimney".']);
  expect(answered('left', 'upstairs')).toEqual([
    'Nothing is told for "upstairs" by name. All that is left:',
    '1. replace shelf (hall)',
    '2. dig footing',
  ]);
});

it('answers who and what is set for a day, by its name or as it is seen from today', () => {
  const visit = note('c', '2026-03-30T08:00:00', { ...followUp('rekey door', 'hall'), who: 'Gil', due: '2026-04-02' });
  const on = (about: string) => {
    const question = note('d', '2026-03-31T08:00:00', { ...asks('told'), about });
    return said([visit], [visit, question], 'd').map(([, text]) => text);
  };
  expect(on('thursday')).toEqual(['1. rekey door (hall), Gil, set for 2026-04-02: open']);
  expect(on('tomorrow')).toEqual(['Nothing is set for Wed Apr 1.']);
});

it('says with a thing that is asked about what of it can hurt', () => {
  const lead = note('c', '2026-03-30T08:00:00', problem('barn door paint', 'is lead', 'hall'));
  lead.what = { ...lead.what, text: 'Barn door paint is lead.' } as typeof lead.what;
  const question = note('d', '2026-03-31T08:00:00', { ...asks('told'), about: 'barn door' });
  const texts = said([lead], [lead, question], 'd').map(([, text]) => text);
  expect(texts).toHaveLength(2);
  expect(texts[1]).toMatch(/^Lead paint/);
});

it('says what a note changed before it answers what the note asks', () => {
  const both = note('b', '2026-03-02T08:00:00', material('caulk', 3, 'need'), asks('order'));
  expect(said([first], [first, both], 'b').map(([, text]) => text)).toEqual(['To buy: 3 caulk', '2 hinges', '3 caulk']);
});

it('says why a count changes', () => {
  const more = note('b', '2026-03-02T08:00:00', material('hinge', 5, 'need', { counts: 'total' }));
  expect(said([first], [first, more], 'b')).toEqual([['buy', 'To buy is now 5 hinges (was 2): 2 made 5 2026-03-02']]);
  const some = note('b', '2026-03-02T08:00:00', material('hinge', 1, 'bought'));
  expect(said([first], [first, some], 'b')).toEqual([['buy', 'To buy is now 1 hinge (was 2): 1 bought 2026-03-02']]);
});
