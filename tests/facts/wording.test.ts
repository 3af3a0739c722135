import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const wordings = (text: string) =>
  readNote(text, { saidAt: SAID_AT }).facts.map((fact) => fact.wording ?? ('task' in fact ? fact.task : null));

describe('the words in which work is told', () => {
  it.each([
    // What its name turns round stays as said.
    [
      "We've got to get the plumber back in there once the wall's shut",
      "get the plumber back in there once the wall's shut",
    ],
    // The day stands with the item, not in its words.
    ['Need to go over the whole ceiling again on Friday', 'go over the whole ceiling again'],
    // Fillers, and what was taken back, are not told.
    ['So I uh gotta run the, no wait, pull the wire back out of the attic', 'pull the wire back out of the attic'],
    // A name that says every word is shorter, and says as much.
    ['Call the lab', 'call the lab'],
    // A name keeps its capital, its title is no room and it is nobody's misheard goods.
    ['Call Mrs. Coyle about the attic', 'call Mrs. Coyle about the attic'],
    ['Ask Dr. Amin about the door', 'ask Dr. Amin about the door'],
  ])('%s', (text, told) => expect(wordings(text)).toContain(told));

  it('say behind them what they point at', () => {
    const told = wordings(
      "The coil pan under the air handler is slimy again. I've got no bleach on me. I'll scrub it out with some on Friday.",
    );
    expect(told).toContainEqual(expect.stringMatching(/^scrub it out with some \(.*pan/));
  });

  it('are at most eighteen', () => {
    const [told] = wordings(
      `We have to take down every single one of the old boards along the back of the barn and then stack them by the gate and cover them with the blue sheet before it rains on them`,
    );
    expect((told ?? '').replace(/ \(.*/, '').split(' ').length).toBeLessThanOrEqual(18);
  });
});
