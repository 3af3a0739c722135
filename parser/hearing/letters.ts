import { COMMON } from './common.ts';
import { RARE } from './rare.ts';

/** Shorter words have too many neighbours. */
const SHORTEST = 5;

/**
 * "Sodder", "primmer", "diverder": one letter off a name, start and end alike, and in no list of English, though an ending
 * might have made them ("sod" and "er").
 */
export function isLetterOff(word: string, name: string): boolean {
  if (word.length < SHORTEST || word === name || COMMON.has(word) || RARE.has(word)) return false;
  if (word[0] !== name[0] || word.slice(-2) !== name.slice(-2) || Math.abs(word.length - name.length) > 1) return false;
  let k = 0;
  while (word[k] === name[k]) k++;
  const [a, b] = word.length < name.length ? [word, name] : [name, word];
  return a.length === b.length ? word.slice(k + 1) === name.slice(k + 1) : a.slice(k) === b.slice(k + 1);
}
