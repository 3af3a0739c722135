import { expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const decided = (text: string) =>
  readNote(text, { saidAt: SAID_AT }).facts.flatMap((f) => (f.kind === 'decision' ? [f.what] : []));

it.each([
  ['she likes the white tile', 'white tile'],
  ['Linda went with the eggshell', 'eggshell'],
  ['he picked the brushed nickel', 'brushed nickel'],
  ['they decided on the oak', 'oak'],
  ['owner wants the laundry door swung the other way', 'owner wants the laundry door swung the other way'],
  ['skip the shelf in the closet', 'shelf'],
  ['forget the niche', 'niche'],
])('settled: %s', (text, what) => expect(decided(text).join(' | ')).toContain(what));

it.each([
  "looks like the drain's weeping at the trap adapter",
  'it sounds like the fan is rubbing',
  'I picked up the last bracket this morning',
  'the old tiles are in the skip found a slow leak',
  'the boards are screwed off still want the handrail',
  "don't forget to lock the gate",
  'the skip is full',
])('nothing settled: %s', (text) => expect(decided(text)).toEqual([]));
