import { columns, dot } from '../../weights.ts';
import type { Draft } from '../draft.ts';
import type { Line } from '../line.ts';
import { signsOf } from './signs.ts';
import { COUNTING } from './table.ts';

const { counts } = columns(COUNTING, ['counts']);

/** Below these nothing is read. Chosen where one in fifty bare numbers, and one in 200 with a unit, of files not learned from falls below. */
const LEAST_BARE = -2.4;
const LEAST_WITH_UNIT = -2;

/** A number alone in what was said answers a question: nothing stands beside it to be weighed. */
const MOST_ALONE = 2;

/** A whole number or a decimal with no unit, said or shared: "three" in "three doors" and in "option three" alike. */
export const isBare = (draft: Draft) => draft.unit === null && draft.unitFrom === 'none';

/**
 * Numbers that, by their neighbours, neither count nor measure: "local three seventeen", "take the four oh one", "a load off
 * my mind". They are left out rather than guessed at.
 */
export function countless(line: Line, drafts: readonly Draft[], claims: number): Draft[] {
  const bare = drafts.filter(isBare).length;
  const said = { units: drafts.length - bare, claims, bare };
  const weak = drafts.filter(
    (draft) =>
      draft.group?.kind !== 'pair' &&
      draft.unit?.kind !== 'time' &&
      line.tokens.length - (draft.until - draft.from) > MOST_ALONE &&
      dot(counts, signsOf(line, draft, said)) < (isBare(draft) ? LEAST_BARE : LEAST_WITH_UNIT),
  );
  // "Four or seven": both or none.
  return weak.filter(({ group }) => !group || drafts.every((d) => d.group?.id !== group.id || weak.includes(d)));
}
