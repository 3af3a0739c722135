import { COLUMNS, type Column } from '../../parser/facts/measurements/answers.ts';
import { type Choice, learn } from './choice.ts';

const HOW = { epochs: 10, rate: 0.2, shrink: 0.04, atLeast: 6 };
/** Signs whose weight stays under this are learned without. Found by folds. */
const TELLING = 0.15;
/** Weights under this are left out of the table. */
export const LEAST = 0.06;
/** A miss costs as much as a false find: how much less sure than "no reading" one may be, as a log of odds. Found by folds. */
const READINESS = { bare: 1.2, said: 2.2 } as const;

/** What each column of the table gives each sign: learned once for which tell much, and again from those alone. */
export function learnReadings(choices: readonly Choice[]): Record<Column, Map<string, number>> {
  const telling = learn(choices, HOW);
  const few = (signs: readonly string[]) => signs.filter((s) => Math.abs(telling.get(s) ?? 0) >= TELLING);
  const weights = learn(
    choices.map((c) => ({ ...c, answers: c.answers.map((a) => ({ ...a, signs: few(a.signs) })) })),
    HOW,
  );
  const out = Object.fromEntries(COLUMNS.map((column) => [column, new Map<string, number>()])) as Record<
    Column,
    Map<string, number>
  >;
  for (const [sign, weight] of weights) {
    const [column, name] = sign.split('\t') as [Column, string];
    if (Math.abs(weight) >= LEAST) out[column].set(name, weight);
  }
  for (const column of ['bare', 'said'] as const)
    out[column].set('any', (out[column].get('any') ?? 0) + READINESS[column]);
  return out;
}
