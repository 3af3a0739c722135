import type { Term } from '../types.ts';
import type { Chunk } from './chunks.ts';
import { isSmall, MODALS } from './words.ts';

/** Opens what somebody is to do: "and Luis will", "then Sam can". */
const OPENS = /^(?:and|then|so|but|now|or|if|when|once|before|after|while|because)$/;
const WILL = /^(?:will|can|should|must|gonna|could)$/;
/** "Is gonna", "'s going to", "has to". */
const IS_TO = /^(?:is gonna|is going|'s gonna|'s going|has to|has got|needs to|gets to)$/;
const BETWEEN = /^(?:to|also|just|then|still|probably|go|come|and)$/;

/**
 * People by name, whom no vocabulary knows: a word of its own that opens a clause and will do some of the trade's work
 * ("Luis will caulk the window", "then ines is going to pull the breaker").
 */
export const peopleNamed = (chunks: readonly Chunk[], text: string): Chunk[] =>
  chunks.map((c, k) => {
    if (!isNameAt(chunks, k) || !isToWork(chunks, k + 1)) return c;
    const said = text.slice(c.start, c.end).replace(/['’]s$/, '');
    const term: Term = { name: said[0]!.toUpperCase() + said.slice(1), kind: 'role' };
    return { ...c, kind: 'term', term, verb: undefined, owner: undefined };
  });

function isNameAt(chunks: readonly Chunk[], k: number): boolean {
  const c = chunks[k]!;
  const before = chunks[k - 1];
  const opens = !before || before.kind === 'mark' || before.kind === 'break' || OPENS.test(before.word);
  return (
    opens &&
    c.kind === 'word' &&
    /^\p{L}{2,}(?:'s)?$/u.test(c.word) &&
    !isSmall(c.owner ?? c.word) &&
    !MODALS.has(c.word)
  );
}

function isToWork(chunks: readonly Chunk[], from: number): boolean {
  const two = `${chunks[from]?.word} ${chunks[from + 1]?.word}`;
  const own = chunks[from - 1]!.owner !== undefined && /^(?:gonna|going)$/.test(chunks[from]?.word ?? '');
  let k = WILL.test(chunks[from]?.word ?? '') || own ? from + 1 : IS_TO.test(two) ? from + 2 : -1;
  if (k < 0) return false;
  while (BETWEEN.test(chunks[k]?.word ?? '')) k++;
  const verb = chunks[k]?.verb;
  return verb?.forms.has('base') === true && verb.use === 'work';
}
