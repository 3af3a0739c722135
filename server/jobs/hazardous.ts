/** What can hurt whoever believes that it was dealt with: words that only may mean it do not close it. */
import { concerns } from '../takeoff/index.ts';
import type { Standing } from './board.ts';

/** Left alone until somebody who may has dealt with it. */
const HAZARDS = ['asbestos', 'lead paint', 'gas', 'sewer gas'];

/** What is said of such a thing once it was tested or dealt with. */
const DEALT_WITH =
  /\b(?:asbestos|lead|gas|abat\w+|remediat\w+|encapsulat\w+|test(?:ed|s)?|swab\w*|sampled?|lab|results?|clean|negative|clear(?:ed)?|capped|sealed|leak\w*|inspector|licen[cs]ed|removed|taken out|hauled|scraped|stripped)\b/i;

/** Whether an item tells of a hazard that words heard do not tell as dealt with. */
export const staysHazardous = ({ task, problem, history }: Standing, quote: string): boolean => {
  const said = [task, problem, ...history.map(({ words }) => words)].join('. ');
  return !DEALT_WITH.test(quote) && HAZARDS.some((hazard) => concerns(hazard, said));
};
