import { said } from './said.ts';

/** What a word that crews hardly ever say must sound like at least to have been another. */
const LEAST = 0.69;
/** How much more for each doubling of how often they do say it. */
const PLAINER = 0.035;

/** How alike some words must sound to a name to have been it: the oftener crews say them, the more. */
export function leastFor(words: readonly string[]): number {
  let all = 0;
  // "Heat her" is no more than an ending.
  for (const word of words) if (word !== 'her') all += said(word);
  return LEAST + (PLAINER * all) / words.length;
}

/** Do crews say it, or several of it? */
export const isCrewWord = (word: string): boolean => said(word) > 0 || said(`${word}s`) > 0;
