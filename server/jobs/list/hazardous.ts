/** What can hurt whoever believes that it was dealt with: words that only may mean it do not close it. */
import { namingAny } from '../../takeoff/index.ts';
import type { Item } from '../types.ts';

/** Left alone until somebody who may has dealt with it. */
const HAZARDS = namingAny(['asbestos', 'lead paint', 'gas', 'sewer gas']);

/** What is said of such a thing once it was tested or dealt with. */
const DEALT_WITH =
  /\b(?:asbestos|lead|gas|abat\w+|remediat\w+|encapsulat\w+|test(?:ed|s)?|swab\w*|sampled?|lab|results?|clean|negative|clear(?:ed)?|capped|sealed|leak\w*|inspector|licen[cs]ed|removed|taken out|hauled|scraped|stripped)\b/i;

/** Everything said of an item: its task, its flaw, and the words of its history. */
export const saidOf = ({ task, problem, history }: Pick<Item, 'task' | 'problem' | 'history'>): string =>
  [task, problem, ...history.map(({ words }) => words)].filter(Boolean).join('. ');

/** Whether an item tells of a hazard that words heard do not tell as dealt with. */
export const staysHazardous = (item: Item, quote: string): boolean =>
  !DEALT_WITH.test(quote) && HAZARDS.test(saidOf(item).toLowerCase());
