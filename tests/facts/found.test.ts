import { describe, expect, it } from 'vitest';
import { problemsIn } from './read.ts';

const openIn = (text: string) => problemsIn(text).map(({ thing, defect, state }) => `${thing}: ${defect} ${state}`);

describe('met with and bad: an open problem', () => {
  it.each([
    ['found an old splice behind the paneling, just taped', /splice.*open$/],
    ['came across knob and tube in the attic', /knob and tube open$/],
    ['we found bare wires under the sink', /bare wires.*open$/],
    ["there's old galvanized pipe under the tub", /galvanized.*open$/],
    ['found a junction box with no cover', /junction box: no cover open$/],
    ['electrician found aluminum wiring in the panel', /panel.*aluminum wiring open$/],
    ['ran into an abandoned gas line behind the stove', /gas line.*open$/],
  ])('%s', (text, told) => expect(openIn(text).join(' | ')).toMatch(told));

  it('stays open in a note that tells of nothing done to it', () => {
    const [splice] = problemsIn(
      "Garage, found an old splice behind the drywall, cloth wire, no box, just taped. Shut that breaker off. Have Lou look at it, he's the electrician. Don't cover it.",
    );
    expect(splice).toMatchObject({ state: 'open' });
    expect(splice!.thing).toContain('splice');
  });

  it.each(['found an old door in the garage we can use', 'found the studs', "there's an old table in the kitchen"])(
    '%s: nothing amiss',
    (text) => expect(problemsIn(text)).toEqual([]),
  );

  it('is put right where that is told', () =>
    expect(problemsIn('found an old splice behind the paneling so I replaced it')[0]?.state).toBe('fixed'));
});
