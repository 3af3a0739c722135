import { type Chunk, isDeterminer, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isPerson, isPointer } from '../talk.ts';
import { isSmall } from '../words.ts';

/** A word as signs name it: no "'s", one of many. */
export function stemOf(c: Chunk): string {
  const word = (c.owner ?? c.word).replace(/'s$/, '');
  return word.length > 4 ? word.replace(/(?<=[^s])s$/, '') : word;
}

/** Words that may tell what is read, each once: neither small words nor figures. */
export const tellingWords = (chunks: readonly Chunk[] | undefined): string[] => [
  ...new Set(
    (chunks ?? [])
      .filter(
        (c) =>
          (c.kind === 'term' || c.kind === 'word') && /^[a-z]/.test(c.word) && !isSmall(c.word) && !isPreposition(c),
      )
      .map(stemOf),
  ),
];

/** A chunk that can name what is read. */
export const isNoun = (c: Chunk): boolean =>
  isNounTerm(c) ||
  (c.kind === 'word' &&
    !c.verb &&
    /^[a-z]{2}/.test(c.word) &&
    !isSmall(c.word) &&
    !isPreposition(c) &&
    !isDeterminer(c));

const TELLS =
  /^(?:spec|code|plate|nameplate|plan|drawing|print|tag|sticker|label|book|manual|sheet|meter|gauge|tape|level|norm|limit)/;

/** What sort of thing a clause is about. */
export function subjectOf({ subject }: Frame): string {
  if (!subject.length) return 'none';
  if (isPerson(subject)) return 'person';
  if (isPointer(subject)) return 'pointer';
  if (subject.some((c) => TELLS.test(c.owner ?? c.word))) return 'tells';
  return subject.findLast(isNounTerm)?.term?.kind ?? 'own';
}
