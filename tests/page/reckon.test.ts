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
    // With nothing but what must be given, missing figures are named or asked for.
    const bare = CheckShape.parse({ of: question.key, ...filled(question, (field) => !field.may) });
    expect(askCheck(bare)).toMatchObject({ ok: expect.any(Boolean) });
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
