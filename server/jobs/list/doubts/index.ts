import { isStanding } from '../../../../parser/facts/plans/standing.ts';
import { remembered } from '../../../../parser/remembered.ts';
import { dot, hundredths } from '../../../../parser/weights.ts';
import type { Telling } from '../items.ts';
import type { Setting } from '../setting.ts';
import { type Opens, signsOfDoubt } from './signs.ts';
import { DOUBTS } from './table.ts';

/** A note of so few words says plainly what it is about. */
const PLAIN = 15;

/** Under this log of odds an item is kept apart until somebody keeps it: found by trying on annotated jobs. */
const DOUBTED = -1.2;

/** Whoever comes to look is not to be missed; nor is an order to leave something be. */
const OFFICIAL = /^(?:inspection|inspect)\b/;

const weights = hundredths(DOUBTS);

/** Whether a note says so little that there is nothing to doubt. */
export const isPlain = ({ entry: { what } }: Setting): boolean => what.kind !== 'noteRead' || saysLittle(what.text);

const saysLittle = remembered((text) => text.trim().split(/\s+/).length <= PLAIN);

/**
 * Whether what would open an item is likelier none: told in passing, a second name for one that stands, misread. Weighed by a
 * table learned from annotated jobs (`tests/learn/doubts.ts`).
 */
export function isDoubted(telling: Telling, fact: Opens): boolean {
  const sure = fact.kind === 'followUp' && (OFFICIAL.test(fact.task) || isStanding(fact.task));
  if (telling.apart || isPlain(telling) || sure) return false;
  return dot(weights(), signsOfDoubt(telling, fact)) < DOUBTED;
}
