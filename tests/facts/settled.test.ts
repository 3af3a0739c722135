import { expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const told = (text: string) =>
  readNote(text, { saidAt: SAID_AT }).facts.map((f) =>
    f.kind === 'material' ? `${f.status} ${f.quantity} ${f.item}` : f.kind,
  );

it.each([
  ["let's do six sheets of half inch drywall", ['need 6 drywall']],
  ["okay let's get four bags of thinset and two rolls of tape", ['need 4 thinset', 'need 2 tape']],
  ["let's do the hall first", ['followUp']],
])('goods settled on are to buy, and no work: %s', (text, facts) => expect(told(text)).toEqual(facts));

it.each(["I've got two treads split right through", "we've got three balusters cracked on the front stairs"])(
  'what is amiss is not on hand: %s',
  (text) => expect(told(text)).toEqual(['problem']),
);
