import { expect, it } from 'vitest';
import { summaryOf } from '../../server/mail/summary.ts';
import { at, told } from '../jobs/days.ts';
import { JOB } from '../jobs/made.ts';

const job = {
  ...JOB,
  id: 'porch',
  name: 'Porch',
  zone: 'America/New_York',
  start: at(1),
  mailTo: [],
  mailAt: '18:00',
};

it('tells of what was not sure with the words, and does not count it as open', () => {
  const state = told(
    'Hung the new storm door on the side porch and it closes fine. Neighbour was telling me his old dog came in again by the other gate, so that was the morning.',
  );
  const { text } = summaryOf(job, state, at(1).slice(0, 10));
  expect(text).toContain('1 done, 0 open, 0 to buy');
  expect(text).toMatch(/NOT SURE OF\n- 2\. [^\n]*\n {4}his old dog came in again by the other gate\n/);
});

it('puts goods of which nobody told for days by themselves, and does not count them as to buy', () => {
  const quiet = Array.from({ length: 8 }, (_, k) => `swept the hall, load ${k + 1}`);
  const { text } = summaryOf(job, told('need 2 tubes of caulk', ...quiet, 'need one hinge'), at(10).slice(0, 10));
  expect(text).toContain('1 to buy');
  expect(text).toMatch(/NOT SURE IF STILL TO BUY\n- 2 tubes caulk\n[^\n]*not sure, last asked for [^\n]*\n/);
});
