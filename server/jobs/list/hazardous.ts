/** What can hurt whoever believes that it was dealt with: words that only may mean it do not close it. */
import { concerns, type DangerTold, dangersIn } from '../../takeoff/index.ts';
import { sentenceOf } from '../goods/asSaid.ts';
import { isLive } from '../live.ts';
import type { Entry, Item } from '../types.ts';
import type { Board, Standing } from './board.ts';
import { setState } from './items.ts';
import { wonderIfDone } from './perhapsDone.ts';

/** Everything said of an item: its task, its flaw, and the words of its history. */
const saidOf = ({ task, problem, history }: Pick<Item, 'task' | 'problem' | 'history'>): string =>
  [task, problem, ...history.map(({ words }) => words)].filter(Boolean).join('. ');

/** Dangers that an item tells of. */
export const dangersOf = (item: Item): readonly DangerTold[] => dangersIn(saidOf(item));

/** Whether an item is about the work that a hazard is about, or about its danger. */
export const isAbout = (item: Item, hazard: string): boolean => concerns(hazard, saidOf(item));

/** What tests and those whose business it is have found, wherever it is said behind the work. */
const CLEARED =
  /\b(?:no (?:more )?(?:leaks?|gas|smell|bubbles|asbestos|lead)|(?:tested|tests?|came back|results?(?: is| are|'s)?) (?:\w+ )?(?:negative|clean|clear|fine|good)|all clear|reads? zero|leak[- ]tested|abat(?:ed|ement (?:is )?done)|remediated)\b/;

/** Words that tell work as not done, or not all of it. */
const NOT_YET =
  /\b(?:not|n't|never|without|no(?! (?:more|longer|leaks?|bubbles?|smell|gas|asbestos|lead|mou?ld|problem))|still (?:has|have|needs?|got|gotta)|needs?|gotta|ha(?:s|ve) to|should|will|'ll|gonna|going to|tomorrow|before|until|wants?|a (?:bit|little|few|couple)|some(?: of)?|half|part(?:ly|ially)?|started|supposed to)\b|n't\b/;

/** Whether words, in lower case, tell of a danger as dealt with. */
export const isDealtWith = (
  { dealtWith, onlyHides }: Pick<DangerTold, 'dealtWith' | 'onlyHides'>,
  said: string,
): boolean => dealtWith.test(said) && !onlyHides?.test(said) && !NOT_YET.test(said);

/** Finished work that a note tells of, as its words stand there. */
interface Told {
  quote: string;
  start: number;
  end: number;
}

/** "Is the gas leak fixed?" */
const isAsked = ({ what }: Entry, { end }: Told): boolean =>
  what.kind === 'noteRead' && /^[^.!\n]{0,40}\?/.test(what.text.slice(end));

/** Whether an item tells of a danger that words heard do not tell as dealt with. */
function staysHazardous(item: Item, entry: Entry, told: Told): boolean {
  const dangers = dangersOf(item);
  if (!dangers.length) return false;
  const said = told.quote.toLowerCase();
  const sentence = entry.what.kind === 'noteRead' ? sentenceOf(entry.what.text, told) : said;
  if (isAsked(entry, told)) return true;
  if (CLEARED.test(sentence)) return false;
  return dangers.some((danger) => !isDealtWith(danger, said));
}

/**
 * Closes an item by words heard: the one door for all of them. What tells of a danger, and is not told as dealt with, stays
 * and is asked about. True where it is closed.
 *
 * @param key of the words, for taking them back
 * @param what what its history calls it, where that is not done
 */
export function endByWords(
  board: Board,
  item: Standing,
  entry: Entry,
  key: string,
  told: Told,
  what?: string,
): boolean {
  if (isLive(item) && staysHazardous(item, entry, told)) {
    wonderIfDone(item, entry, key, told.quote);
    return false;
  }
  setState(board, item, entry, 'done', told.quote, what);
  return true;
}
