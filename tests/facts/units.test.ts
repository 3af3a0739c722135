import { expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

// Common practice, no source: rooms, decks and slabs are told in feet, what is cut into them in inches.
it.each([
  ['room is twelve by fourteen', ['12 ft', '14 ft']],
  ['garage slab measures 22 x 24', ['22 ft', '24 ft']],
  ['kitchen hole sixteen by twenty two', ['16 in', '22 in']],
  ['closet opening is 30 1/4 by 80 5/8', ['30.25 in', '80.625 in']],
])('%s', (text, sides) => {
  const { facts } = readNote(text, { saidAt: SAID_AT });
  expect(facts.flatMap((f) => (f.kind === 'measurement' ? [`${f.value} ${f.unit}`] : []))).toEqual(sides);
});
