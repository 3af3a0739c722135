import { NUMBER, numberOf } from './numbers.ts';

const ONE = `(?:${NUMBER})`;
const NUMBERED = '(?:(?:number|numbers|no\\.?|nos\\.?|items?|#) ?)';

/** Items by their numbers: "four and six", "numbers 2, 3 and 9". */
export const NUMBERS = `${NUMBERED}?${ONE}(?:(?:,| and|, and| &) ?${NUMBERED}?${ONE})*`;
/** Items by their numbers or by a few words. */
export const ITEMS = `${NUMBERS}|(?:the|that|those) [a-z][a-z0-9' -]{2,40}?`;

/** Numbers of the list in words that are nothing but numbers; none where they name things. */
export const numbersIn = (words: string): number[] =>
  new RegExp(`^${NUMBERS}$`).test(words.trim())
    ? [...words.matchAll(new RegExp(`\\b${ONE}\\b`, 'g'))].map(([word]) => numberOf(word)!)
    : [];
