import { describe, expect, it } from 'vitest';
import type { SpanKind } from '../../parser/facts/spans/features.ts';
import { possibleNames } from '../../parser/facts/spans/possible.ts';
import { layOpen, readNote } from '../../parser/index.ts';

const saidAt = '2026-05-12T15:20:00';

/** Every name that is possible for a quote of a note, where no rule has read it. */
function names(kind: SpanKind, text: string, quote: string): string[] {
  const start = text.indexOf(quote);
  const talk = layOpen(text, { saidAt });
  return possibleNames(talk, { start, end: start + quote.length }, kind, { name: '', rule: '' }, []).map(
    (p) => p.words,
  );
}

describe('names that are possible', () => {
  it('leads work by its verb in base form, with its particle', () => {
    expect(names('done', 'there was a zip tie on the chain. I cut that off', 'I cut that off')).toContain(
      'cut off zip tie',
    );
    expect(
      names('followUp', 'the can light is dead, it is coming out tomorrow', 'it is coming out tomorrow'),
    ).toContain('take out can light');
    expect(names('followUp', 'no air gap here. put one in tuesday', 'put one in tuesday')).toContain('put in air gap');
  });

  it('gives work told without its verb the one it means', () => {
    expect(names('done', 'the drawer fronts are on', 'the drawer fronts are on')).toContain('install drawer fronts');
    expect(names('followUp', 'baseboard goes on monday', 'baseboard goes on monday')).toContain('install baseboard');
  });

  it('takes two things of a clause as they were said', () => {
    expect(names('done', 'I caulked the gap at the ceiling', 'I caulked the gap at the ceiling')).toContain(
      'caulk gap at ceiling',
    );
  });

  it('names a thing without a verb', () => {
    const all = names('problem', 'the left shelf in the pantry sags', 'the left shelf in the pantry sags');
    expect(all).toContain('left shelf');
    expect(all.every((name) => !/\bsag/.test(name))).toBe(true);
  });

  it('never looks further on than the clause after', () => {
    const text = 'I tacked it on. the molding is oak. the sink leaks. the fridge is in';
    const all = names('done', text, 'I tacked it on');
    expect(all).toContain('tack on molding');
    expect(all.some((name) => /fridge|sink/.test(name))).toBe(false);
  });
});

describe('the likeliest name', () => {
  const note =
    'ok so the dishwasher in the kitchen has no air gap. I will put one in tuesday. the mirror clips came in today. ' +
    'I screwed those on. the vanity lights are up';

  it('says what "one" and "those" are', () => {
    const { facts } = readNote(note, { saidAt });
    expect(facts.find((f) => f.kind === 'followUp')).toMatchObject({
      task: expect.stringMatching(/^put in .*air gap/),
    });
    expect(facts.find((f) => f.kind === 'done' && /screw/.test(f.task))).toMatchObject({
      task: expect.stringMatching(/^screw on .*mirror clips/),
    });
  });
});
