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

// A figure without a unit has that of what it is read of, of what was told before it, or none where it is a count.
it.each([
  ['water pressure at the hose bib is ninety five, regulator is set to sixty', ['95 psi', '60 psi']],
  ['supply 96 F / return 70', ['96 F', '70 F']],
  ['moisture in the subfloor is eleven percent, joist is fourteen', ['11 %', '14 %']],
  ['niche is 30 x 60 cm and sits 1100 mm off the floor, bench is 450 high', ['30 cm', '60 cm', '1100 mm', '450 mm']],
  ['put eighty pounds of air on the gas line and it held', ['80 psi']],
  ['we got four hinges left and used 8 outlets', []],
  ['two guys, three doors hung', []],
])('%s', (text, told) => {
  const { facts } = readNote(text, { saidAt: SAID_AT });
  expect(facts.flatMap((f) => (f.kind === 'measurement' ? [`${f.value} ${f.unit}`] : []))).toEqual(told);
});
