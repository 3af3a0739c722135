import { JaroWinklerDistance } from 'natural/lib/natural/distance/index.js';
import { singular } from '../trade/vocabulary.ts';
import type { Repair, Term, Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { heardAs } from './heardAs.ts';
import { asMany, LIKE, meantBy, meantTokens } from './meant.ts';
import { SHORTHAND } from './shorthand.ts';
import { type Beside, push, SHORTEST, type Spelling, soundsOf, spellingsBySound } from './spellings.ts';
import { crewTalk, relatedTo, tradeNear } from './support.ts';

interface Mishearing {
  words: string[];
  heard: string;
  term: Term;
}

/** The spelling that a heard word sounds like, and how like it is (Jaro-Winkler, 0 to 1). */
interface Likely extends Spelling {
  like: number;
}

const NONE: readonly Likely[] = [];

interface Index {
  byFirst: Map<string, Mishearing[]>;
  /** Laid out when a word that is neither English nor trade is first heard: many notes have none. */
  bySound: () => Map<string, Spelling[]>;
  /** Words asked about before, and the spellings that each sounds like, likest first. */
  known: Map<string, readonly Likely[]>;
}

/** One stretch of words put right. */
interface Found {
  until: number;
  meant: string;
  because: string;
}

const indexes = new WeakMap<Vocabulary, Index>();

/** Enough beside a word of the same counter. */
const LIKE_RELATED = 0.85;
/** No half of a word heard as two. */
const LINKS = new Set(['the', 'and', 'was', 'are', 'for', 'has', 'that', 'this']);
/** So much of the talk around is in words that crews use, where it is talk of theirs. */
const CREW = 0.8;
/** Where less is, no word is put right. */
const STRANGE = 0.5;
const MOST_KNOWN = 5000;

function indexOf(vocabulary: Vocabulary): Index {
  const built = indexes.get(vocabulary);
  if (built) return built;
  let sounds: Map<string, Spelling[]> | undefined;
  const index: Index = {
    byFirst: new Map(),
    bySound: () => {
      sounds ??= spellingsBySound(vocabulary.terms);
      return sounds;
    },
    known: new Map(),
  };
  for (const term of vocabulary.terms) {
    for (const heard of term.misheard ?? []) {
      const words = heard.toLowerCase().split(/[\s-]+/);
      push(index.byFirst, words[0]!, { words, heard, term });
    }
  }
  for (const list of index.byFirst.values()) list.sort((a, b) => b.words.length - a.words.length);
  indexes.set(vocabulary, index);
  return index;
}

/**
 * Puts misheard trade words right: by the vocabulary's own lists of mishearings, then by sound for words that are
 * neither English nor trade. Both need a neighbour that supports the repair, and what was heard as plain English needs
 * one of the same counter.
 *
 * @returns the tokens as meant, and each repair with what was heard and what supported it
 */
export function repair(
  tokens: readonly Token[],
  text: string,
  vocabulary: Vocabulary,
): { tokens: Token[]; repairs: Repair[] } {
  const index = indexOf(vocabulary);
  const out: Token[] = [];
  const repairs: Repair[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!;
    const found =
      token.kind === 'word' && !token.skip
        ? (listed(tokens, i, index, vocabulary) ??
          bySound(tokens, i, index, vocabulary) ??
          (isName(tokens, i) ? null : heardAs(tokens, i, vocabulary)))
        : null;
    if (!found || crewTalk(tokens, i, found.until) < STRANGE) {
      out.push(token);
      i++;
      continue;
    }
    const [start, end] = [token.start, tokens[found.until - 1]!.end];
    const heard = text.slice(start, end);
    const meant = asMany(found.meant, tokens[found.until - 1]!.word);
    repairs.push({ start, end, heard, meant, because: found.because });
    out.push(...meantTokens(tokens.slice(i, found.until), meant, heard));
    i = found.until;
  }
  return { tokens: out, repairs };
}

const bareWord = (token: Token | undefined) =>
  token ? singular(token.word.endsWith("'s") ? token.word.slice(0, -2) : token.word) : '';

function listed(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary): Found | null {
  const ways = index.byFirst.get(tokens[i]!.word) ?? index.byFirst.get(bareWord(tokens[i]));
  for (const way of ways ?? []) {
    const until = i + way.words.length;
    const said = way.words.every((word, k) => {
      const token = tokens[i + k];
      return token?.word === word || (k === way.words.length - 1 && bareWord(token) === word);
    });
    // "The chalk line broke": a name of the trade as it stands.
    if (!said || (vocabulary.match(tokens, i)?.until ?? 0) > until) continue;
    const english = way.words.every((word) => word.length < 3 || everyday(word));
    const because = english
      ? (relatedTo(way.term, tokens, i, until, vocabulary) ?? sharedIn(way, tokens, i, until, vocabulary))
      : (relatedTo(way.term, tokens, i, until, vocabulary) ?? tradeNear(tokens, i, until, vocabulary));
    if (because) return { until, meant: meantBy(way.heard, way.term), because };
  }
  return null;
}

/** "Ridge bent", in crews' talk: the word that was heard right, where the trade has it. */
function sharedIn(way: Mishearing, tokens: readonly Token[], i: number, until: number, vocabulary: Vocabulary) {
  if (way.words.length < 2 || crewTalk(tokens, i, until) < CREW) return null;
  const meant = meantBy(way.heard, way.term).split(/[\s-]+/);
  return way.words.find((word) => meant.includes(word) && vocabulary.has(word)) ?? null;
}

function bySound(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary): Found | null {
  const { word } = tokens[i]!;
  if (/[^a-z]/.test(word) || isName(tokens, i)) return null;
  for (const way of word.length < SHORTEST ? NONE : alike(word, index, vocabulary)) {
    const because = way.beside
      ? completed(way.beside, tokens, i)
      : (relatedTo(way.term, tokens, i, i + 1, vocabulary) ??
        (way.like > LIKE ? tradeNear(tokens, i, i + 1, vocabulary) : null));
    if (because) return { until: i + 1, meant: way.word, because };
  }
  // One word heard as two, the first of them no English: "plie wood".
  const next = tokens[i + 1];
  if (
    next?.kind !== 'word' ||
    next.skip ||
    LINKS.has(next.word) ||
    everyday(word) ||
    word.length < 3 ||
    vocabulary.has(word)
  )
    return null;
  const joined = alike(word + next.word, index, vocabulary).find(({ beside }) => !beside);
  if (!joined || joined.like < LIKE) return null;
  const because = relatedTo(joined.term, tokens, i, i + 2, vocabulary);
  return because ? { until: i + 2, meant: joined.word, because } : null;
}

/** The word beside which the rest of a longer name stands: "compownd" after "joint". */
function completed({ before, after }: Beside, tokens: readonly Token[], i: number): string | null {
  const heard = (word: string, at: number) => tokens[at]?.word === word || bareWord(tokens[at]) === word;
  const all =
    before.every((word, k) => heard(word, i - before.length + k)) && after.every((word, k) => heard(word, i + 1 + k));
  return all ? (before.at(-1) ?? after[0]!) : null;
}

/** What a word sounds like, remembered: notes say the same words again and again. */
function alike(word: string, index: Index, vocabulary: Vocabulary): readonly Likely[] {
  let near = index.known.get(word);
  if (near === undefined) {
    near = soundsLike(word, index, vocabulary);
    if (index.known.size >= MOST_KNOWN) index.known.clear();
    index.known.set(word, near);
  }
  return near;
}

/** A capital inside a sentence is somebody's name. */
const isName = (tokens: readonly Token[], i: number) =>
  /^\p{Lu}\p{Ll}/u.test(tokens[i]!.text) && i > 0 && !/^[.!?\n]$/.test(tokens[i - 1]!.word);

/** The trade's spellings that a word of no language sounds like, singular tried where the plural has none. */
function soundsLike(word: string, index: Index, vocabulary: Vocabulary): readonly Likely[] {
  if (everyday(word) || vocabulary.has(word) || SHORTHAND.has(word)) return NONE;
  for (const way of new Set([word, singular(word)])) {
    const found: Likely[] = [];
    for (const sound of soundsOf(way)) {
      for (const candidate of index.bySound().get(sound) ?? []) {
        const like = JaroWinklerDistance(candidate.word, way);
        if (like > LIKE_RELATED && candidate.word !== way) found.push({ ...candidate, like });
      }
    }
    if (found.length) return found.sort((a, b) => b.like - a.like);
  }
  return NONE;
}
