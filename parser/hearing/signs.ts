import { JaroWinklerDistance } from 'natural/lib/natural/distance/index.js';
import { DoubleMetaphone } from 'natural/lib/natural/phonetics/index.js';
import { remembered } from '../remembered.ts';
import { singular } from '../trade/words.ts';
import type { Term, Token, Vocabulary } from '../types.ts';
import { around, isUnitOf, slotBefore, slotBehind } from './around.ts';
import { COMMON } from './common.ts';
import { companyOf, nameKey, saidOf } from './company.ts';
import { everyday, startsWord } from './everyday.ts';
import { isLetterOff } from './letters.ts';
import { NAMED_KINDS } from './names.ts';
import type { Candidate } from './nearest.ts';
import { isWord } from './ownWords.ts';
import { saidSo } from './saidSo.ts';
import { SHORTHAND } from './shorthand.ts';
import { viewOf } from './views.ts';

/** What is known of a candidate: each sign has a weight, learned by `tests/learn/misheard.ts`. */
export interface Signed {
  signs: readonly (readonly [name: string, value: number])[];
  /** The neighbour, or the word heard right, that supports the name; null where none does. */
  because: string | null;
}

const KNOWN = new Set<string>([...NAMED_KINDS, 'area', 'role', 'work']);
const COUNTS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|half|quarter)$/;
/** Before a thing of the trade these are meant: "new post". */
const DESCRIBING = new Set('new old big back left right top bottom main other hot cold wet dry front side'.split(' '));
const metaphone = new DoubleMetaphone();

/** The signs that some words were a name of the trade, misheard. */
export function signsOf(candidate: Candidate, meant: string, tokens: readonly Token[], vocabulary: Vocabulary): Signed {
  const { from, until, way, cost } = candidate;
  const heard = tokens.slice(from, until).map(({ word }) => word);
  const name = meant.split(/[ -]/);
  const right = heard.filter((word) => name.includes(word) || name.includes(singular(word)));
  const wrong = heard.filter((word) => !right.includes(word));
  const missing = name.filter((word) => !heard.includes(word) && !heard.some((own) => singular(own) === word));
  const length = Math.max(2, way.sounds.length);
  // What was heard right says nothing of the rest: "leisure board" is as far off as "leisure" is.
  const rest = Math.max(2, (length * Math.max(1, missing.join('').length)) / Math.max(1, name.join('').length));
  const sum = (of: (word: string) => number) => wrong.reduce((total, word) => total + of(word), 0);
  const mean = (of: (word: string) => number) => (wrong.length ? sum(of) / wrong.length : 0);
  const said = mean((word) => companyOf(word)?.said ?? companyOf(singular(word))?.said ?? 0);
  const least = wrong.length ? Math.min(...wrong.map((word) => companyOf(word)?.said ?? 0)) : 0;
  const isSlip = heard.length === 1 && name.length === 1 && isLetterOff(heard[0]!, name[0]!);
  const foreign = isSlip ? 1 : sum((word) => (isForeign(word, vocabulary) ? 1 : 0));
  const known = wrong.filter((word) =>
    KNOWN.has(viewOf(tokens, from + heard.indexOf(word), vocabulary).found?.term.kind ?? 'task'),
  );
  const beside = around(tokens, from, until, way.term, vocabulary);
  const own = right.find((word) => word.length > 2 && vocabulary.has(word) && !everyday(word));
  const shared = right.some((word) => word.length > 2 && vocabulary.has(word));
  const per = cost / length;
  const perRest = cost / rest;
  const one = heard.length === 1;
  const letters = heard.join('');
  const overlap = viewOf(tokens, until - 1, vocabulary).found;
  const like = JaroWinklerDistance(letters, name.join(''));
  const support = beside.counter + beside.same;
  const so = saidSo(heard.join(' '));
  const isVerb = !one && wrong.includes(heard.at(-1)!) && isDone(heard.at(-1)!);
  const strangeness = mean((word) => (companyOf(word) ? 0 : isWord(word, vocabulary) ? 1 : 0));
  return {
    because:
      one && !foreign && support + beside.other === 0
        ? null
        : (own ?? beside.because ?? (shared ? (right.find((word) => vocabulary.has(word)) ?? null) : null)),
    signs: [
      ['any', 1],
      ['cost', cost],
      ['cost a sound', 10 * per],
      ['cost a sound of what was misheard', Math.min(10, 10 * perRest)],
      ['sounds', Math.min(12, length) / 4],
      ['sounds misheard', Math.min(12, rest) / 4],
      ['the very same', cost < 0.04 ? 1 : 0],
      ['nearly the same', per < 0.06 ? 1 : 0],
      ['spelled alike', (like - 0.8) * 5],
      ['one code', sameCode(letters, name.join('')) ? 1 : 0],
      ['no English', Math.min(2, foreign)],
      ['one word, no English', one && foreign ? 1 : 0],
      ['one word, plain', one && !foreign ? 1 : 0],
      ['one word, plain, cost', one && !foreign ? 10 * per : 0],
      ['no English, cost', foreign ? 10 * per : 0],
      ['said', said],
      ['said, least', least],
      ['said, cost', said * 10 * per],
      ["crews'", mean((word) => companyOf(word)?.crew ?? 0)],
      ['never said', strangeness],
      ['a name alone', known.length],
      ['a count', wrong.some((word) => COUNTS.test(word)) ? 1 : 0],
      ['two words', heard.length === 2 ? 1 : 0],
      ['three words', heard.length > 2 ? 1 : 0],
      ['two as one', heard.length < name.length ? 1 : 0],
      ['one as two', heard.length > name.length ? 1 : 0],
      ['short end', wrong.filter((word) => word.length < 3).length],
      ['heard right', shared ? 1 : 0],
      ['words heard right', Math.min(3, right.filter((word) => word.length > 2).length)],
      ['share heard right', 1 - rest / length],
      ['packed so', isPackedSo(tokens, from, way.term) ? 1 : 0],
      ['packed so, cost', isPackedSo(tokens, from, way.term) ? 10 * per : 0],
      ["heard right, the trade's", own ? 1 : 0],
      ['heard right, said', shared ? said : 0],
      ['heard right, cost', shared ? Math.min(10, 10 * perRest) : 0],
      [
        'name said',
        missing.length
          ? missing.reduce((t, w) => t + (companyOf(w)?.said ?? companyOf(`${w}s`)?.said ?? 0), 0) / missing.length
          : 0,
      ],
      ['part', way.isPart ? 1 : 0],
      ['listed', way.listed ? 1 : 0],
      ['listed, plain', way.listed && !foreign ? 1 : 0],
      ['listed, cost', way.listed ? 10 * per : 0],
      ['before', slotBefore(tokens, from)],
      ['behind', slotBehind(tokens, until)],
      ['counter', Math.min(5, beside.counter)],
      ['same counter', Math.min(2, beside.same)],
      ['other counter', Math.min(2, beside.other)],
      ['unsupported', support ? 0 : 1],
      ['crew talk', beside.crew],
      ['talk', Math.max(-8, Math.min(12, beside.talk)) / 4],
      ['talk, plain', foreign ? 0 : Math.max(-8, Math.min(12, beside.talk)) / 4],
      ["crews' own near", Math.min(4, beside.own)],
      ['and her', heard.at(-1) === 'her' ? 1 : 0],
      ['and her, before', heard.at(-1) === 'her' ? slotBefore(tokens, from) : 0],
      ['said so by crews', so.crews],
      ['said so by others', so.others],
      ['strange talk', beside.strange * 5],
      ['strange talk, plain', foreign ? 0 : beside.strange * 5],
      ['into another name', overlap && overlap.until > until ? 1 : 0],
      ['written short', wrong.some((word) => isShort(word, vocabulary)) ? 1 : 0],
      ['ends as a verb', isVerb ? 1 : 0],
      ['ends as a verb, behind', isVerb ? slotBehind(tokens, until) : 0],
      ['Spanish', isSpanish(way.words) ? 1 : 0],
      ['describing', heard.length > 1 && DESCRIBING.has(heard[0]!) ? 1 : 0],
      ['typed', beside.typed],
      ['typed, plain', foreign ? 0 : beside.typed],
      ['the name said', saidOf(nameKey(way.words))],
      ['the name never said', heard.length > 1 && !saidOf(nameKey(way.words)) ? 1 : 0],
      ['large', /^\p{Lu}\p{Ll}/u.test(tokens[from]!.text) ? 1 : 0],
    ],
  };
}

/** "Two tubes of cock", "a roll of felled": it comes in what was said right before it. */
const isPackedSo = (tokens: readonly Token[], from: number, term: Term) =>
  tokens[from - 1]?.word === 'of' && isUnitOf(term, tokens[from - 2]?.word ?? '');

/** Neither everyday English nor the trade's: it was heard or typed wrong. */
const isForeign = (word: string, vocabulary: Vocabulary) =>
  word.length >= 4 && !SHORTHAND.has(word) && !isWord(word, vocabulary);

/** The start of a longer word, cut off behind a consonant: "conc", "furn". */
function isShort(word: string, vocabulary: Vocabulary): boolean {
  const bare = singular(word);
  return bare.length > 2 && bare.length < 6 && /[^aeiouy]$/.test(bare) && !isWord(bare, vocabulary) && startsWord(bare);
}

/** "Dives", "sweats", "leans": something that is done. */
function isDone(word: string): boolean {
  if (!/[^s]s$/.test(word)) return false;
  const base = word.replace(/(?<=[sxzh])es$|s$/, '').replace(/e$/, '');
  return [`${base}ing`, `${base}${base.at(-1)}ing`].some((form) => COMMON.has(form));
}

/** Ends as words of Spanish do, and is no English. */
const isSpanish = (words: string) =>
  words.split(' ').every((word) => /(?:[ao]s?|on|ones|ar|era|dor)$/.test(word) && !everyday(word) && saidOf(word) < 2);

/** One of the two Double Metaphone codes of each is the same. */
function sameCode(a: string, b: string): boolean {
  const [one, other] = [codesOf(a), codesOf(b)];
  return one.some((code) => code.length > 1 && other.includes(code));
}

const codesOf = remembered((letters): readonly string[] => metaphone.process(letters));
