import { COMMON } from './common.ts';
import { RARE } from './rare.ts';

const ENDINGS = ['s', 'es', 'ed', 'd', 'ing', 'ings', 'er', 'ers', 'r', 'rs', 'est', 'ly'];

const known = new Map<string, boolean>();
const MOST_KNOWN = 20_000;

/** Everyday English, inflections included: never a trade word by its sound alone. */
export function everyday(word: string): boolean {
  if (COMMON.has(word) || RARE.has(word)) return true;
  let answer = known.get(word);
  if (answer === undefined) {
    answer = isInflected(word);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(word, answer);
  }
  return answer;
}

function isInflected(word: string): boolean {
  const bare = word.replace(/'s$/, '');
  // "Sittin": the g is dropped.
  if (COMMON.has(bare) || (bare.endsWith('in') && COMMON.has(`${bare}g`))) return true;
  return ENDINGS.some((ending) => {
    if (!bare.endsWith(ending)) return false;
    const base = bare.slice(0, -ending.length);
    if (base.length < 3) return false;
    const doubled = base.replace(/(.)\1$/, '$1');
    return (base.length > 3 && COMMON.has(base)) || COMMON.has(`${base}e`) || (doubled !== base && COMMON.has(doubled));
  });
}
