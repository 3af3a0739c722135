import type { Talk } from './talk.ts';

const OPENINGS = ['week of', 'week commencing', 'week beginning', 'week starting', 'week comm', 'w / c', 'w / b'].map(
  (s) => s.split(' '),
);

/** "Week of", "w/c" right before the day at `at`: the place of its first word, or null. */
export function weekOpening(talk: Talk, at: number): number | null {
  const opening = OPENINGS.find((words) => talk.says(at - words.length, words));
  if (!opening) return null;
  const from = at - opening.length;
  return talk.word(from - 1) === 'the' ? from - 1 : from;
}

const ENDINGS = ['week ending', 'week end', 'w / e'].map((s) => s.split(' '));

/** "Week ending friday the 24th", "w/e 24th". */
export const endsWeek = (talk: Talk, at: number): boolean =>
  ENDINGS.some((words) => talk.says(at - words.length, words));
