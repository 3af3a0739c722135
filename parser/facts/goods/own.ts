import { type Chunk, isPreposition } from '../chunks.ts';
import { CONJUNCTIONS } from '../words.ts';
import type { Lot } from './lot.ts';
import { nameAndSizes } from './phrases.ts';
import { isDone, isName, STANDS_IN } from './words.ts';

/**
 * Splits words behind a count into name and sizes, and says whether they name goods or only tell which. `counted`: a
 * figure or "a" stands before, so that a word that may be a verb is a noun where it ends them ("a pack of double stick").
 */
export function ownName(
  chunks: readonly Chunk[],
  at: number,
  counted = false,
): Pick<Lot, 'own' | 'named' | 'sizes' | 'until'> {
  const numbered = chunks[at]?.word === '#' && chunks[at + 1]?.notQuantity?.kind === 'label';
  const { item, sizes, until: end } = nameAndSizes(chunks, numbered ? at + 1 : at);
  // "#8 screws": the mark belongs to its number.
  if (numbered && item[0] === chunks[at + 1])
    item[0] = { ...item[0]!, word: `#${item[0]!.word}`, start: chunks[at]!.start };
  let until = end;
  const head = chunks[until];
  if (counted && head && isVerbalHead(chunks, until, item)) {
    item.push({ ...head, verb: undefined });
    until++;
  }
  // "All thirteen treads glued", "12 sheets hung bedroom 2": what was done to them is no part of the name.
  const told = chunks[at - 1]?.word === 'of' ? 1 : 0;
  const done = item.findIndex(
    (c, k) => k >= told && isDone(c) && !item.slice(k + 1).some((n) => namesGoods(n) || STANDS_IN.test(n.word)),
  );
  if (done >= 0) {
    const from = chunks.indexOf(item[done]!, at);
    if (from >= 0) until = from;
    item.splice(done);
  }
  const standsIn = STANDS_IN.test(item.at(-1)?.word ?? '');
  const own = standsIn ? item.slice(0, -1) : item;
  const named = !standsIn && own.some((c) => isName(c) || (told > 0 && isDone(c)));
  return { own, named, sizes, until };
}

const namesGoods = (c: Chunk) => isName(c) && c.term?.kind !== 'surface';

/** True where a word that may be a verb can only be the noun that the words before it describe: "nine of the angle braces |". */
function isVerbalHead(chunks: readonly Chunk[], k: number, item: readonly Chunk[]): boolean {
  const { verb, kind } = chunks[k]!;
  const last = item.at(-1);
  if (!verb || kind !== 'word' || !last || chunks[k - 1] !== last || /s$/.test(last.word)) return false;
  if (!verb.forms.has('base') && !verb.forms.has('s')) return false;
  const next = chunks[k + 1];
  return !next || next.kind === 'mark' || next.kind === 'time' || isPreposition(next) || CONJUNCTIONS.has(next.word);
}
