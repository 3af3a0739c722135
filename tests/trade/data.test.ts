import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { unitNamed } from '../../parser/quantities/units.ts';
import { builtIn, terms } from '../../parser/trade/index.ts';
import { plain } from '../../parser/trade/words.ts';
import type { Term } from '../../parser/types.ts';

const words = z.string().regex(/^[\p{Ll}\d][\p{Ll}\d&/.' -]*$/u);
const list = z
  .array(words)
  .min(1)
  .refine((all) => new Set(all).size === all.length, 'said twice');
const any = { name: words, also: list.optional(), misheard: list.optional() };
const TERM = z.discriminatedUnion('kind', [
  z.strictObject({
    ...any,
    kind: z.enum(['material', 'part', 'fixture']),
    counter: z.string().min(1),
    soldBy: z.array(z.string().refine((unit) => unitNamed(unit), 'not a unit of the quantity reader')).min(1),
  }),
  z.strictObject({ ...any, kind: z.literal('task'), bring: z.array(z.string().min(1)).min(1).optional() }),
  z.strictObject({ ...any, kind: z.enum(['tool', 'surface', 'area', 'role', 'defect', 'finish', 'work']) }),
]);

const waysOf = (term: Term) => [term.name, ...(term.also ?? [])].map((way) => plain(way).split(/[ -]+/).join(' '));

describe('the built-in terms', () => {
  const all = terms();

  it('are well formed', () => {
    const wrong = all.flatMap((term) => {
      const { error } = TERM.safeParse(term);
      return error ? [`${term.name}: ${error.issues.map((i) => `${i.path.join('.')} ${i.message}`)}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  it('are enough for a site', () => {
    expect(all.length).toBeGreaterThanOrEqual(1200);
    expect(all.filter(({ misheard }) => misheard).length).toBeGreaterThanOrEqual(150);
    expect(all.filter(({ bring }) => bring).length).toBeGreaterThanOrEqual(60);
  });

  it.each([
    ['things, people, places and defects', all.filter(({ kind }) => kind !== 'task')],
    ['verbs', all.filter(({ kind }) => kind === 'task')],
  ])('share no name: %s', (_, some) => {
    const owner = new Map<string, string>();
    const twice: string[] = [];
    for (const term of some)
      for (const way of waysOf(term)) {
        if (owner.has(way)) twice.push(`${way}: ${owner.get(way)}, ${term.name}`);
        owner.set(way, term.name);
      }
    expect(twice).toEqual([]);
  });

  it('are misheard as nothing that another term is called', () => {
    const clashes = all.flatMap(({ misheard = [], name }) =>
      misheard
        .filter((heard) => {
          const tokens = tokenise(heard);
          return builtIn().match(tokens, 0)?.until === tokens.length;
        })
        .map((heard) => `${heard} for ${name}`),
    );
    expect(clashes).toEqual([]);
  });

  it('are each found by every name they have', () => {
    const lost = all
      .filter(({ kind }) => kind !== 'task')
      .flatMap((term) =>
        [term.name, ...(term.also ?? [])].filter((way) => {
          const tokens = tokenise(way);
          const found = builtIn().match(tokens, 0);
          return found?.term.name !== term.name || found.until !== tokens.length;
        }),
      );
    expect(lost).toEqual([]);
  });
});
