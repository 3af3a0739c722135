import { remembered } from '../remembered.ts';
import { COMMON } from './common.ts';
import { RARE } from './rare.ts';

const ENDINGS = ['s', 'es', 'ed', 'd', 'ing', 'ings', 'er', 'ers', 'r', 'rs', 'est', 'ly'];

/** Everyday English, inflections included: never a trade word by its sound alone. */
export const everyday = (word: string): boolean => isWord(word) || isInflected(word);

const isWord = (word: string) => COMMON.has(word) || RARE.has(word);

const isInflected = remembered((word) => {
  const bare = word.replace(/'s$/, '');
  // "Sittin": the g is dropped.
  if (isWord(bare) || (bare.endsWith('in') && isWord(`${bare}g`))) return true;
  if (bare.endsWith('ies') && isWord(`${bare.slice(0, -3)}y`)) return true;
  // "Midspan", "midday".
  if (bare.startsWith('mid') && bare.length > 5 && isWord(bare.slice(3))) return true;
  return ENDINGS.some((ending) => {
    if (!bare.endsWith(ending)) return false;
    const base = bare.slice(0, -ending.length);
    if (base.length < 3) return false;
    const doubled = base.replace(/(.)\1$/, '$1');
    return (base.length > 3 && isWord(base)) || isWord(`${base}e`) || (doubled !== base && isWord(doubled));
  });
});

let starts: Set<string> | undefined;

/** Does a longer everyday word start with these three to five letters? */
export function startsWord(letters: string): boolean {
  if (!starts) {
    starts = new Set();
    for (const word of COMMON)
      for (let length = 3; length < 6 && length + 2 <= word.length; length++) starts.add(word.slice(0, length));
  }
  return starts.has(letters);
}
