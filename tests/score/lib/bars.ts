import { LISTS } from './corpus.ts';
import { f1, type Score } from './tally.ts';

/** What the notes that nobody tuned on must reach: F1, 0 to 1. */
export const BARS = { found: 0.9, strict: 0.8, strictOfEachList: 0.75 };

/** One line for each bar that the score stays under; empty where it holds. */
export function under(score: Score): string[] {
  const lines: string[] = [];
  const ask = (what: string, reached: number, bar: number) => {
    if (reached < bar) lines.push(`${what} ${reached.toFixed(3)} is under ${bar}`);
  };
  ask('found-F1', f1(score.all.found, score.all), BARS.found);
  ask('strict-F1', f1(score.all.strict, score.all), BARS.strict);
  for (const list of LISTS)
    ask(`strict-F1 of ${list}`, f1(score.lists[list].strict, score.lists[list]), BARS.strictOfEachList);
  return lines;
}
