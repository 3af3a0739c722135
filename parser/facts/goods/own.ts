import { type Chunk, isNounTerm } from '../chunks.ts';
import type { Lot } from './lot.ts';
import { nameAndSizes } from './phrases.ts';
import { isDone, isName, STANDS_IN } from './words.ts';

/** Splits words behind a count into name and sizes, and says whether they name goods or only tell which. */
export function ownName(chunks: readonly Chunk[], at: number): Pick<Lot, 'own' | 'named' | 'sizes' | 'until'> {
  const { item, sizes, until: end } = nameAndSizes(chunks, at);
  // "All thirteen treads glued": what was done to them is no part of the name.
  let until = end;
  while (item.length > 1 && isDone(item.at(-1)!) && !isNounTerm(item.at(-1)) && chunks[until - 1] === item.at(-1)) {
    item.pop();
    until--;
  }
  const standsIn = STANDS_IN.test(item.at(-1)?.word ?? '');
  const own = standsIn ? item.slice(0, -1) : item;
  const named = !standsIn && own.some(isName);
  return { own, named, sizes, until };
}
