import type { Line } from './line.ts';
import { wordSet } from './words.ts';

/** Words after which a measured unit ends its phrase: "one twenty foot long" is 120. */
export const STANDS_APART = wordSet(
  'by x and wide long tall high deep thick to off from at on in with up down is but so for of or the which across not apart ' +
    'clear out behind above below between times then over under inside outside total each strong shy even heavy light full ' +
    'plus minus center centre centers centres oc per a an it that i we they he she if because when where whole left right low max min was ' +
    'will would should can could has have had need needs got get wants want there here too also away back now max tops',
);

/** Words that show a measured unit to end its phrase; anything else behind a bare number is what is counted. */
export const endsPhrase = (line: Line, at: number) => {
  const token = line.tokens[at];
  return token === undefined || token.kind !== 'word' || STANDS_APART.has(token.word);
};
