import { expect, it } from 'vitest';
import { played } from './told.ts';

const lines = (...texts: string[]) =>
  played({
    id: 't',
    rooms: ['cabin'],
    notes: texts.map((text, k) => ({ saidAt: `2026-06-09T1${k}:00:00`, text })),
    asOf: '2026-06-09T20:00:00',
  }).lines;

it('the reply tells a check with its limit, and what is missing where it cannot say', () => {
  expect(lines('deck is 5 feet up and the railing is 34 high')).toContain(
    'guard height: does not fit. 34 in against 36 in (IRC R312.1.2; local code and the licensed trade decide)',
  );
  expect(lines('two 14/2 and a switch in the box, is that too much')).toContainEqual(
    expect.stringMatching(
      /^box fill: cannot say without the box volume \(the stamp in the box\) \(14 cu in so far\) \(NEC 314\.16/,
    ),
  );
});

it('a figure put right is told again, one that stands is not', () => {
  expect(lines('risers are 8', 'redid it, risers are 7 and a half')).toContainEqual(
    expect.stringMatching(/^riser height: fits\. 7\.5 in/),
  );
  expect(lines('risers are 8', 'swept the cabin').filter((l) => l.startsWith('riser'))).toEqual([]);
});
