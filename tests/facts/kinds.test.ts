import { expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

it.each([
  ['the attic fan is drawing 3 amps', 'current'],
  ['supply register blows 96 degrees F', 'temperature'],
  ['conduit is strapped every 4 ft', 'spacing'],
  ['the far end cord came up 10 in short', 'short'],
  ['rotted ledger, about six feet of it', 'length'],
  ['the crawl door is 2 ft clear', 'clearance'],
  ['meter base is set 64 in above the slab', 'height'],
  ['bath fan moves 80 cfm', 'flow'],
])('%s: tells of %s', (text, kind) => {
  const { facts } = readNote(text, { saidAt: SAID_AT });
  expect(facts.flatMap((f) => (f.kind === 'measurement' ? [f.of.split(' ').at(-1)] : []))).toEqual([kind]);
});
