import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';

const saidAt = '2026-04-07T17:00:00';
const kinds = (text: string) => readNote(text, { saidAt }).facts.map((fact) => fact.kind);

describe('talk that is no work', () => {
  it.each([
    'hey thanks for the coffee this morning, see you tomorrow',
    'the game is on saturday and my cousin is coming over with the kids so I am out after four',
    'lunch was great, that taco place is better than the other one, we should go again wednesday',
    'good night everybody, nice work today, see you monday',
    'my kid has a dentist appointment thursday at ten',
    'ok sounds good talk to you later',
  ])('gives nothing: %s', (text) => expect(kinds(text)).toEqual([]));

  it.each([
    ['call the plumber tomorrow', 'followUp'],
    ['happy birthday boss, and call the inspector tomorrow', 'followUp'],
    ['thanks for lunch, the sink drips', 'problem'],
  ])('keeps the work in it: %s', (text, kind) => expect(kinds(text)).toContain(kind));
});
