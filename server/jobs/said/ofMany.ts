import { NUMBER, numberOf } from './numbers.ts';

/** "Six of the eight footings", "4 of 10 posts", but not "two of them", nor the eight of "eight of eight". */
const OF_MANY = new RegExp(`\\b(${NUMBER}) (?:out )?of (?:the |our |those |these |all )?(${NUMBER}) [a-z]`);
const SIDES = '(?:north|south|east|west|left|right|front|back|top|bottom|upper|lower|other)';
/** "Got the north and east done, south and west after lunch". */
const SIDES_LATER = new RegExp(
  `^[ ,.]*(?:and |then )?((?:the )?${SIDES}(?:(?:,| and|,? &) (?:the )?${SIDES})*(?: (?:side|wall|end|half|run)s?)? (?:after|later|tomorrow|tmrw|next|this afternoon|tonight|monday|tuesday|wednesday|thursday|friday|saturday|still|to go)\\b[^,.;!?\\n]{0,15})`,
);

/**
 * What is left of work told by how many of how many, or by its sides; null where that is not told.
 *
 * @param words what tells the work
 * @param behind the words right behind it
 */
export function leftOfMany(words: string, behind: string): string | null {
  const [, done, all] = OF_MANY.exec(words) ?? [];
  const left = done && all ? numberOf(all)! - numberOf(done)! : 0;
  return left > 0 ? `${left} of ${all} left` : (SIDES_LATER.exec(behind)?.[1]?.trim() ?? null);
}
