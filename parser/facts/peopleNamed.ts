import { COMMON } from '../hearing/common.ts';
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
 * ("Luis will caulk the window", "then ines is going to pull the breaker"), or comes on a day ("Gil's back Monday").
 */
export const peopleNamed = (chunks: readonly Chunk[], text: string): Chunk[] =>
  chunks.map((c, k) => {
    if (!isNameAt(chunks, k)) return c;
    const said = text.slice(c.start, c.end).replace(/['’]s$/, '');
    if (!isToWork(chunks, k + 1) && !(isWritten(said) && isToCome(chunks, k + 1))) return c;
    const term: Term = { name: said[0]!.toUpperCase() + said.slice(1), kind: 'role' };
    return { ...c, kind: 'term', term, verb: undefined, owner: undefined };
  });

/** Somebody whom no vocabulary knows, by the name that he goes by. */
export const goesByName = ({ kind, name }: Term): boolean => kind === 'role' && /^\p{Lu}/u.test(name);

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

/** A name by its capital, and no everyday word that only begins a sentence. */
const isWritten = (said: string): boolean => /^\p{Lu}/u.test(said) && !COMMON.has(said.toLowerCase());

/** "Gil's back Monday", "Ines is coming Friday", "Gil can't Thursday". */
function isToCome(chunks: readonly Chunk[], from: number): boolean {
  const is =
    chunks[from - 1]!.owner !== undefined || /^(?:is|comes|can't|cant|cannot|won't)$/.test(chunks[from]?.word ?? '');
  const near = chunks.slice(from, from + 5);
  const day = near.findIndex((c) => c.time !== undefined);
  return is && day >= 0 && near.slice(0, day).every((c) => COMING.test(c.word));
}
const COMING = /^(?:is|comes?|coming|back|here|there|in|out|by|over|due|can't|cant|cannot|won't|make|it|be)$/;

function isToWork(chunks: readonly Chunk[], from: number): boolean {
  const two = `${chunks[from]?.word} ${chunks[from + 1]?.word}`;
  const own = chunks[from - 1]!.owner !== undefined && /^(?:gonna|going)$/.test(chunks[from]?.word ?? '');
  let k = WILL.test(chunks[from]?.word ?? '') || own ? from + 1 : IS_TO.test(two) ? from + 2 : -1;
  if (k < 0) return false;
  while (BETWEEN.test(chunks[k]?.word ?? '')) k++;
  const verb = chunks[k]?.verb;
  return verb?.forms.has('base') === true && verb.use === 'work';
}
