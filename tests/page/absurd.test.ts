import { describe, expect, it } from 'vitest';
import { BUYING } from '../../server/page/app/reckon/buying.ts';
import { readFields } from '../../server/page/app/reckon/fields.ts';
import { FITTING } from '../../server/page/app/reckon/fitting.ts';
import { askCheck, type CheckForm, type Form, reckonForm } from '../../server/takeoff/form/index.ts';
import { examples } from './examples.ts';

/** What nobody can mean by a size or a count. */
const ABSURD = ['-5', '99999999', '1e400', 'abc', '12 14', '5 lb', '∞', '3 acres'];
/** Words, choices, and a flange that may stand above the floor. */
const NO_FIGURE =
  /^(?:unit|metal|layout|edge|at|thick|on|bearing|below|kind|gauge|nominal|bagPounds)$|\.(?:kind|gauge)$/;

describe.each([...BUYING, ...FITTING].map((q) => [q.words, q] as const))('%s', (_, question) => {
  const rows = examples(question.fields).filter(([, value]) => value !== 'no');

  it.each(rows.filter(([name]) => !NO_FIGURE.test(name)).map(([name]) => name))(
    'absurd %s gets a sentence and no number',
    (name) => {
      for (const text of ABSURD) {
        const typed = new Map(rows).set(name, text);
        const fields = readFields(question.fields, (field) => typed.get(field) ?? '');
        const answer = question.goods
          ? reckonForm({ kind: question.key, ...fields } as Form)
          : askCheck({ of: question.key, ...fields } as CheckForm);
        expect(answer, `${name} = ${text}`).toMatchObject({ ok: false, why: expect.stringMatching(/ /) });
      }
    },
  );
});
