import { describe, expect, it } from 'vitest';
import { CheckShape } from '../../server/http/checkShapes.ts';
import { FormShape } from '../../server/http/reckonRoutes.ts';
import { BUYING } from '../../server/page/app/reckon/buying.ts';
import { type Field, type Question, readFields } from '../../server/page/app/reckon/fields.ts';
import { FITTING } from '../../server/page/app/reckon/fitting.ts';
import { askCheck, reckonForm } from '../../server/takeoff/form/index.ts';
import { examples } from './examples.ts';

const typedIn = (rows: readonly [string, string][]) => {
  const typed = new Map(rows);
  return (name: string) => typed.get(name) ?? '';
};
const filled = ({ fields }: Question, only: (field: Field) => boolean = () => true) => {
  const asked = fields.filter(only);
  return readFields(asked, typedIn(examples(asked)));
};

/** What the checks say where nothing was filled in but what must be; the others had nothing to check. */
const withoutTheRest: Record<string, string | string[]> = {
  'box fill': ['which conductors enter the box'],
  'hole in stud': ['fits'],
  'notch in stud': ['whether the wall bears load'],
  'hole in joist': 'the size of the lumber: 2x4, 2x6, 2x8, 2x10 or 2x12?',
  'notch in joist': 'the size of the lumber: 2x4, 2x6, 2x8, 2x10 or 2x12?',
  'drain slope': ['the run and its fall'],
  'trap arm': ['the size of the trap arm'],
  'closet flange': ['how the flange sits to the finished floor'],
  'dryer vent': ['the length of the duct'],
  'door opening': ['fits'],
  'wood floor': ['fits'],
  'deck boards': ['how thick the boards are, 5/4 or 2 in'],
};

describe('the questions of the page', () => {
  it.each(BUYING.map((q) => [q.words, q] as const))('%s: every field arrives and is answered', (_, question) => {
    for (const fields of [filled(question), filled(question, (field) => !field.may)]) {
      const form = { kind: question.key, ...fields };
      expect(FormShape.parse(form)).toEqual(form);
      expect(reckonForm(FormShape.parse(form))).toMatchObject({ ok: true });
    }
  });

  it.each(FITTING.map((q) => [q.words, q] as const))('%s: every field arrives and is answered', (_, question) => {
    const form = { of: question.key, ...filled(question) };
    expect(CheckShape.parse(form)).toEqual(form);
    const answer = askCheck(CheckShape.parse(form));
    expect(answer.ok && answer.checks.length).toBeTruthy();
    // With nothing but what must be given, it is enough, or what is missing is named or asked for.
    const bare = askCheck(CheckShape.parse({ of: question.key, ...filled(question, (field) => !field.may) }));
    const said = bare.ok ? bare.checks.map((c) => (c.result === 'cannot say' ? c.missing : c.result)) : bare.why;
    expect(said).toEqual(withoutTheRest[question.key] ?? 'no size was given to check');
  });

  it('asks each calculator and each check once', () => {
    const keys = [...BUYING, ...FITTING].map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(BUYING).toHaveLength(14);
  });

  it('leaves out empty rows, half groups and what nobody knows', () => {
    const fields = FITTING.find(({ key }) => key === 'pipe through')!.fields;
    const typed = typedIn([
      ['pipe.kind', 'pvc'],
      ['pipe.size', '2'],
      ['outer.kind', 'pvc'],
    ]);
    expect(readFields(fields, typed)).toEqual({ pipe: { kind: 'pvc', size: '2' } });
    expect(readFields(FITTING[0]!.fields, typedIn([['clamps', '']]))).toEqual({});
  });
});
