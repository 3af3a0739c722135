import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import { unitAt } from './unitAt.ts';
import { isBy, ONES, wordSet } from './words.ts';

const NOMINAL = wordSet('two four six eight ten twelve fours sixes eights tens twelves');

export const isOpening = (line: Line, at: number): boolean =>
  /^(?:doors?|slabs?|windows?|openings?|prehungs?|bifolds?|sliders?|rh|lh|rhr|lhr)$/.test(line.word(at));

/** "Three six by four eight": whether the two words from `at` on are one of two sides in feet and inches, their words swallowed. */
export function isSideInFeet(line: Line, at: number): boolean {
  const [first, second] = isBy(line.word(at + 2)) ? [at, at + 3] : isBy(line.word(at - 1)) ? [at - 3, at] : [];
  if (first === undefined || second === undefined) return false;
  if (!isPair(line, first) || !isPair(line, second) || ONES.has(line.word(first - 1))) return false;
  if (endsPhrase(line, second + 2) || isOpening(line, second + 2)) return true;
  // "Ten two by six eight footers": so many of a size, so long.
  const isLumber = NOMINAL.has(line.word(first + 1)) && NOMINAL.has(line.word(second));
  return !isLumber && !unitAt(line, second + 2, null) && !ONES.has(line.word(second + 2));
}

/** Feet and less than twelve inches. */
const isPair = (line: Line, at: number) =>
  [0, 1].every((k) => line.tokens[at + k]?.kind === 'word' && (ONES.get(line.word(at + k)) ?? 0) > 0) &&
  (ONES.get(line.word(at + 1)) ?? 12) < 12;
