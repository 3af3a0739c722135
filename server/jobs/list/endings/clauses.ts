import { remembered } from '../../../../parser/remembered.ts';
import { stem, wordsOf } from '../../../../parser/trade/likeness.ts';
import { lowered } from '../../../../parser/trade/words.ts';
import { isWork } from '../board.ts';
import { ailmentsOf, curesAmong } from './ailments.ts';
import { DENIES, GONE, manner } from './manner.ts';

interface Token {
  word: string;
  stem: string;
}

/** A stretch of a note that says one thing, with all of it that has nothing to do with any item. */
export interface Clause {
  /** As said, in lower case. */
  said: string;
  /** Where it stands in the note. */
  start: number;
  end: number;
  /** Where its first whole word stands: it is cut behind the first letter of the word that joins it, "nd" of "and". */
  whole: number;
  /** Key words, by stem. */
  words: ReadonlySet<string>;
  /** Those of them that name things, none of them work. */
  things: readonly string[];
  /** Key words of the clause before it in the same sentence. */
  before: ReadonlySet<string>;
  thingsBefore: readonly string[];
  /** Every word in its order, as said and by stem. */
  tokens: readonly Token[];
  /** Each of them once. */
  distinct: readonly Token[];
  /** Ailments that it tells of, and for each ailment the words that tell it as gone. */
  ails: readonly number[];
  cures: readonly (readonly string[])[];
  /** Whether it denies something: "don't drip", "no more buzz". */
  denies: boolean;
  /** Whether it tells a flaw as gone, whichever that is. */
  gone: boolean;
  /** Signs that hold whichever item it is about. */
  signs: readonly string[];
}

const CLAUSES = /(?:(?!\b(?:and|so|but|cause|because|then)\b)[^.,;!?\n])+/gi;
const LEAST = 4;

/** The clauses of a note; the same text is taken apart once, however often the history is folded. */
export const clausesOf = remembered((text): readonly Clause[] => {
  const out: Clause[] = [];
  for (const { 0: raw, index } of text.matchAll(CLAUSES)) {
    const trimmed = raw.trim();
    if (trimmed.length < LEAST) continue;
    const start = index + raw.indexOf(trimmed);
    const joint = /[a-z]/i.test(text.charAt(start - 1)) ? /^\w*\s*/.exec(trimmed)![0].length : 0;
    const said = lowered(trimmed);
    const tokens = (said.match(/[a-z0-9']+/g) ?? []).map((word) => ({ word, stem: stem(word) }));
    const words = wordsOf(said);
    const told = manner(said);
    const last = out.at(-1);
    const sameSentence = last !== undefined && !/[.!?\n]/.test(text.slice(last.end, start));
    out.push({
      said,
      start,
      end: index + raw.length,
      whole: start + joint,
      words,
      things: thingsAmong(words),
      before: sameSentence ? last.words : NONE,
      thingsBefore: sameSentence ? last.things : [],
      tokens,
      distinct: [...new Map(tokens.map((token) => [token.word, token])).values()],
      ails: ailmentsOf(said),
      cures: curesAmong(tokens.map((token) => token.stem)),
      gone: told.includes(GONE),
      denies: tokens.some(({ word }) => DENIES.test(word)),
      signs: [
        `asked ${/^\s*\?/.test(text.slice(index + raw.length))}`,
        `size ${tokens.length > 12 ? 'long' : tokens.length > 6 ? 'middle' : 'short'}`,
        `first ${tokens[0]?.word ?? ''}`,
        `end ${tokens.at(-1)?.word ?? ''}`,
        ...tokens.slice(1).map(({ word }, i) => `pair ${tokens[i]!.word} ${word}`),
        ...told,
      ],
    });
  }
  return out;
});

/** Words that name things, none of them work. */
export const thingsAmong = (words: ReadonlySet<string>): string[] => [...words].filter((word) => !isWork(word));

const NONE: ReadonlySet<string> = new Set();
