import { describe, expect, it } from 'vitest';
import { fold } from '../../server/jobs/index.ts';
import { replyTo } from '../../server/talk/index.ts';
import { at, END, told } from './days.ts';
import { JOB } from './made.ts';

const CHATTER =
  'Hung the new storm door on the side porch and it closes fine. Neighbour was telling me his old dog came in again by the other gate, so that was the morning.';

const stateOf = (number: number, ...texts: string[]) =>
  told(...texts).items.find((item) => item.number === number)?.state;

describe('what was told in passing', () => {
  it('is kept apart, and is neither open nor closed', () => {
    expect(stateOf(2, CHATTER)).toBe('unsure');
  });

  it('comes on the list when somebody keeps it', () => {
    expect(stateOf(2, CHATTER, 'keep 2')).toBe('open');
    expect(told(CHATTER, 'keep 2').items[1]!.history.map(({ what }) => what)).toEqual(['opened', 'kept']);
  });

  it('comes on the list when it is told of again on another day', () => {
    expect(stateOf(2, CHATTER, 'the other gate is loose, old dog gets in')).toBe('open');
  });

  it('is off for good when somebody drops it', () => {
    expect(stateOf(2, CHATTER, 'drop 2')).toBe('dropped');
  });

  it('is named in one line of the reply, with what to say to keep it', () => {
    const after = told(CHATTER);
    const lines = replyTo(fold(JOB, [], at(1)), after, 'n0', []).lines.map(({ text }) => text);
    expect(lines.filter((text) => text.includes('old dog'))).toEqual([
      'Not sure, so kept apart: 2. his old dog came in again by the other gate. To list it, say "keep 2"',
    ]);
    expect(after.asOf).toBe(END);
  });
});

it('doubts nothing of a note that says one thing', () => {
  expect(stateOf(1, 'the old gate sags again')).toBe('open');
});

it('never doubts an inspection', () => {
  const items = told(
    'Set the new storm door on the side porch and it closes fine, radio was on all morning. City comes out tuesday to look at the heater again but that is all I know.',
  ).items.filter((item) => item.task.includes('inspection'));
  expect(items.map((item) => item.state)).toEqual(['open']);
});
