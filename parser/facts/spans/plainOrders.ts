import type { Fact, FollowUp } from '../../types.ts';
import { isNounTerm } from '../chunks.ts';
import { isStanding } from '../plans/standing.ts';
import type { Talk } from '../talk.ts';

/** A whole sentence that orders work on a thing of the trade ("caulk the window in the hall."), or that something be left. */
function isPlainOrder(talk: Talk, { rule, task, start, end }: FollowUp): boolean {
  if (isStanding(task)) return true;
  const frame = talk.frames.find((f) => f.start <= start && end <= f.end);
  if (rule !== 'follow-up/imperative' || frame?.use !== 'work' || frame.verbAt > 0) return false;
  const alone = talk.frames.filter((f) => f.sentence === frame.sentence).length === 1;
  return alone && frame.rest.some((c) => isNounTerm(c) && c.term!.kind !== 'area');
}

/** Plain orders that the weighing left without any fact: a lost one costs a trip. */
export const leftOut = (talk: Talk, orders: readonly FollowUp[], taken: readonly Fact[]): FollowUp[] =>
  orders.filter((order) => isPlainOrder(talk, order) && !taken.some((f) => f.start < order.end && order.start < f.end));
