import { describe, expect, it } from 'vitest';
import { orderOf } from './order.ts';

const AREAS = ['hall', 'den', 'porch'];
const LIST = 'cut list for the 2x4s in the den: four at 30 inches, six at 22, eight foot sticks';

describe('boards wanted beside a cut list of the same size', () => {
  it.each([
    ['said before it', ['need ten 2x4s for the blocking in the hall', LIST]],
    [
      'said after it',
      ['cut list for 2x4s, eight footers: four at 30 inches, six at 22', 'need ten 2x4s for the porch'],
    ],
  ])('%s: both stand', (_, notes) => {
    expect(orderOf(AREAS, ...notes).order).toEqual(['2x4 8 ft: 3 each', '2x4 2x4: 10 each']);
  });

  it.each([
    ['have two 2x4 eight footers in the van', 1],
    ['have two eight footers in the van', 1],
    ['found a 2x4 eight footer in the van', 2],
  ])('%s: the figures of the section are no count', (note, left) => {
    const list = 'cut list 2x4, eight footers: four at 30 inches, six at 22';
    expect(orderOf(AREAS, list, note).order).toEqual([`2x4 8 ft: ${left} each`]);
  });
});

it('13 by 11-6 is in feet on both sides', () => {
  const note = 'floor in the den is 13 by 11-6, want plank at 20.4 square feet a box, eight percent over';
  expect(orderOf(AREAS, note).order).toEqual(['vinyl plank: 8 box']);
});
