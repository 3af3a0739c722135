import type { Term, Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { SHORTHAND } from './shorthand.ts';
import { letterHeard, skeletonOf, soundAlike, soundsOfSpelling } from './sounds.ts';
import { anyNear, relatedTo, tradeNear } from './support.ts';

/** A stretch of words that sounds like one of the trade's names, with what supports it. */
export interface HeardAs {
  until: number;
  meant: string;
  because: string;
}

interface Way {
  words: string;
  term: Term;
}

interface Index {
  /** By the consonants of the whole name. */
  byBones: Map<string, Way[]>;
  /** Names said letter by letter, or with a letter in them: "o s b", "j channel". */
  byLetters: Map<string, { words: string; term: Term }>;
}

/** What is bought, carried and worked on; flaws and colours are everyday words. */
const KINDS = new Set(['material', 'part', 'fixture', 'tool', 'surface']);
const MOST_WORDS = 3;
const SHORTEST = 4;
/** Several plain words that sound this like a name were that name; one plain word must sound the very same. */
const ALIKE = 0.9;
/** Sounding so alike, any thing of the trade beside them is enough. */
const SURE = 0.94;
/** A word beside one of the trade's own. */
const BESIDE = 0.92;
const SHORT_BONES = 4;

/** No name of the trade starts or ends with these. */
const OUTSIDE = new Set(
  (
    'a an the this that these those my your our his their its it i we he she they you me him us them and or but so if of to in on at by for ' +
    'from with as is are was were be been am do did does has have had will can not no yes up out off over down there here then than when what who ' +
    'which just also too very all-right got get gets put puts go goes went need needs want wants about into ' +
    'foot feet inch inches yard yards gallon gallons pound pounds hour hours minute minutes day days week weeks'
  ).split(' '),
);
/** Before a noun: a plain word here may be one. */
const BEFORE_NOUN = new Set(
  'the a an this that new old each every another bad broken cracked loose both two three four five'.split(' '),
);

const indexes = new WeakMap<Vocabulary, Index>();
const spoken = new Map<string, { sounds: string; bones: string }>();
const MOST_SPOKEN = 20_000;

function said(word: string): { sounds: string; bones: string } {
  let known = spoken.get(word);
  if (!known) {
    const letters = word.replace(/[^a-z]/g, '');
    known = { sounds: soundsOfSpelling(letters), bones: skeletonOf(letters) };
    if (spoken.size >= MOST_SPOKEN) spoken.clear();
    spoken.set(word, known);
  }
  return known;
}

const soundsOf = (words: string) =>
  words
    .split(/[ -]/)
    .map((word) => said(word).sounds)
    .join('');

/** The bones of words run together: a consonant that ends one and starts the next is heard once. */
function joined(bones: string, next: string): string {
  return bones.endsWith(next[0] ?? '-') ? bones + next.slice(1) : bones + next;
}

function indexOf(vocabulary: Vocabulary): Index {
  const built = indexes.get(vocabulary);
  if (built) return built;
  const index: Index = { byBones: new Map(), byLetters: new Map() };
  for (const term of vocabulary.terms) {
    if (!KINDS.has(term.kind)) continue;
    for (const way of [term.name, ...(term.also ?? [])]) {
      const words = way.split(/[ -]/);
      if (/[^a-z -]/.test(way)) continue;
      lettersOf(words, way, term, index);
      if (words.length > MOST_WORDS || way.length < SHORTEST) continue;
      let bones = '';
      for (const word of words) bones = joined(bones, skeletonOf(word));
      if (bones.length < 2) continue;
      const list = index.byBones.get(bones);
      const entry = { words: way, term };
      if (list) list.push(entry);
      else index.byBones.set(bones, [entry]);
    }
  }
  indexes.set(vocabulary, index);
  return index;
}

function lettersOf(words: readonly string[], way: string, term: Term, index: Index): void {
  const first = words[0]!;
  const letters = /^[a-z]{2,4}$/.test(first) && !everyday(first) ? [...first, ...words.slice(1)] : words;
  if (letters.some((w) => w.length === 1)) index.byLetters.set(letters.join(' '), { words: way, term });
}

/** Words that sound like a name of the trade beside words that go with it, or null. */
export function heardAs(tokens: readonly Token[], i: number, vocabulary: Vocabulary): HeardAs | null {
  const index = indexOf(vocabulary);
  return spelledOut(tokens, i, index, vocabulary) ?? soundedOut(tokens, i, index, vocabulary);
}

const isPlain = (token: Token | undefined) => token?.kind === 'word' && !token.skip && !/[^a-z']/.test(token.word);

/** A word that the trade has of its own says what it says: "the hall light" is no wall light. */
const isKnown = (tokens: readonly Token[], at: number, vocabulary: Vocabulary) =>
  NAMES.has(vocabulary.match(tokens, at)?.term.kind ?? 'task');

const NAMES = new Set([...KINDS, 'area', 'role', 'work']);
const COUNTS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|half|quarter)$/;

function soundedOut(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary): HeardAs | null {
  if (!isPlain(tokens[i]) || OUTSIDE.has(tokens[i]!.word)) return null;
  let bones = '';
  let sounds = '';
  let best: (HeardAs & { alike: number }) | null = null;
  for (let count = 1; count <= MOST_WORDS; count++) {
    const token = tokens[i + count - 1];
    if (!isPlain(token) || token!.word.length < 2 || (count > 1 && !token!.spaced)) break;
    const one = said(token!.word);
    bones = joined(bones, one.bones);
    sounds += one.sounds;
    if (bones.length < 2 || OUTSIDE.has(token!.word)) continue;
    // What costs little is asked first: few stretches sound like anything.
    const found = likest(bones, sounds, count > 1 ? ALIKE : SURE, count, index);
    if (!found || found.alike <= (best?.alike ?? 0)) continue;
    const foreign = count === 1 && isForeign(token!.word, vocabulary);
    if (count === 1 && !foreign && (found.alike < 1 || !mayBeHomophone(tokens, i, vocabulary))) continue;
    if ((vocabulary.match(tokens, i)?.until ?? 0) >= i + count) continue;
    const known = tokens
      .slice(i, i + count)
      .filter((_, k) => isKnown(tokens, i + k, vocabulary))
      .map(({ word }) => word);
    if (known.length === count) continue;
    const words = tokens.slice(i, i + count).map(({ word }) => word);
    // "One fill valve", "box of one": a count is heard as nothing else, unless the name holds it.
    if (words.some((word) => COUNTS.test(word) && !found.way.words.includes(word))) continue;
    if (known.length && !differsBySound(words, found.way.words.split(/[ -]/), known)) continue;
    const sure = (foreign || count > 1) && found.alike >= SURE;
    const because =
      relatedTo(found.way.term, tokens, i, i + count, vocabulary) ??
      (sure ? (foreign ? anyNear : tradeNear)(tokens, i, i + count, vocabulary) : null);
    if (because) best = { until: i + count, meant: found.way.words, because, alike: found.alike };
  }
  return best && { until: best.until, meant: best.meant, because: best.because };
}

/** Neither everyday English nor the trade's: it was heard or typed wrong. */
const isForeign = (word: string, vocabulary: Vocabulary) =>
  word.length >= SHORTEST && !everyday(word) && !vocabulary.has(word) && !SHORTHAND[word];

/** "Bawl valve": the trade's own word stays, and the other starts with the same sound and is said nearly the same. */
function differsBySound(heard: readonly string[], meant: readonly string[], known: readonly string[]): boolean {
  if (heard.length !== meant.length) return false;
  return heard.every((word, k) => {
    if (known.includes(word)) return meant[k] === word;
    const [a, b] = [said(word).sounds, said(meant[k]!).sounds];
    return a[0] === b[0] && soundAlike(a, b) >= BESIDE;
  });
}

/** A plain English word where a noun stands, which the trade does not have: "a pale of mud". */
const mayBeHomophone = (tokens: readonly Token[], i: number, vocabulary: Vocabulary) =>
  BEFORE_NOUN.has(tokens[i - 1]?.word ?? '') && !vocabulary.has(tokens[i]!.word);

function likest(
  bones: string,
  sounds: string,
  least: number,
  count: number,
  index: Index,
): { way: Way; alike: number } | null {
  let best: { way: Way; alike: number } | null = null;
  const weigh = (ways: readonly Way[] | undefined) => {
    for (const way of ways ?? []) {
      const alike = soundAlike(sounds, soundsOf(way.words));
      if (alike >= least && alike > (best?.alike ?? 0)) best = { way, alike };
    }
  };
  weigh(index.byBones.get(bones));
  // One consonant heard too many: "drive wall".
  if (!best && count > 1 && bones.length >= SHORT_BONES)
    for (let k = 0; k < bones.length; k++) weigh(index.byBones.get(bones.slice(0, k) + bones.slice(k + 1)));
  return best;
}

/** "You eff cable", "jay channel", "tea and pea valve". */
function spelledOut(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary): HeardAs | null {
  if (!isPlain(tokens[i])) return null;
  const letters: string[] = [];
  let found: HeardAs | null = null;
  let heard = 0;
  for (let k = i; k < i + 5 && isPlain(tokens[k]); k++) {
    const { word } = tokens[k]!;
    const letter = letterHeard(word);
    if (k === i && letter === undefined) return null;
    if (letter !== undefined && letter !== word) heard++;
    letters.push(letter ?? word);
    const way = heard ? index.byLetters.get(letters.join(' ')) : undefined;
    if (!way) continue;
    // One letter among words: its name must be no word of its own ("you bolt it").
    if (heard < 2 && letters.some((l) => l.length > 1) && !LETTER_ONLY.has(tokens[i]!.word)) continue;
    const because = relatedTo(way.term, tokens, i, k + 1, vocabulary) ?? tradeNear(tokens, i, k + 1, vocabulary);
    if (because) found = { until: k + 1, meant: way.words, because };
  }
  return found;
}

const LETTER_ONLY = new Set('jay elle ell el eff tea pea tee dee vee zee zed ess ex cue queue aitch kay'.split(' '));
