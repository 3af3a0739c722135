import { expect, it } from 'vitest';
import { followUpsIn } from './read.ts';

/** Said on tuesday, 2026-05-12. */
it.each([
  ['clean the gutters before friday', '2026-05-15', null],
  ['glue the panels no sooner than the 14th', null, '2026-05-14'],
  ['hang the doors tuesday at the earliest', null, '2026-05-19'],
  ["The inspector comes thursday. Don't close the wall till he's been.", null, '2026-05-14'],
  ['fit the trim after lunch', '2026-05-12', null],
  ['let the base coat cure three days then start the cap', null, '2026-05-15'],
])('%s', (text, due, notBefore) => {
  expect(followUpsIn(text).at(-1)).toMatchObject({ due, notBefore });
});

it('leaves the day of one plan to it, where another is told beside it', () => {
  expect(followUpsIn('paint the hall friday. caulk the tub. fix the gate.').map(({ due }) => due)).toEqual([
    '2026-05-15',
    null,
    null,
  ]);
});

it('names the wait that sets the first day', () => {
  expect(followUpsIn('let the thinset cure 24 hours, then grout the floor')[0]).toMatchObject({
    notBefore: '2026-05-13',
    waitingFor: '24 hours',
  });
});
