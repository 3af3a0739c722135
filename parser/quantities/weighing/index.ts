import { columns, dot } from '../../weights.ts';
import type { Draft } from '../draft.ts';
import type { Line } from '../line.ts';
import { signsOf } from './signs.ts';
import { COUNTING } from './table.ts';

const { counts } = columns(COUNTING, ['counts']);

/** Below this nothing is read, above it and below the next it is asked about. Chosen by totals on notes and phrases not learned from. */
const NONE = -1.5;

/** A number alone in what was said answers a question: nothing stands beside it to be weighed. */
const MOST_ALONE = 2;

/** A whole number or a decimal with no unit, said or shared: "three" in "three doors" and in "option three" alike. */
export const isBare = (draft: Draft) => draft.unit === null && draft.unitFrom === 'none';

/**
 * Bare numbers that, by their neighbours, neither count nor measure: "local three seventeen", "take the four oh one". What
 * was said of no thing and in no unit is left out rather than guessed at.
 */
export function countless(line: Line, drafts: readonly Draft[], claims: number): Draft[] {
  const bare = drafts.filter(isBare);
  if (bare.length === 0) return [];
  const said = { units: drafts.length - bare.length, claims, bare: bare.length };
  const weak = bare.filter(
    (draft) =>
      draft.group?.kind !== 'pair' &&
      line.tokens.length - (draft.until - draft.from) > MOST_ALONE &&
      dot(counts, signsOf(line, draft, said)) < NONE,
  );
  // "Four or seven": both or none.
  return weak.filter(({ group }) => !group || drafts.every((d) => d.group?.id !== group.id || weak.includes(d)));
}
