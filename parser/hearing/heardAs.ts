import type { Term, Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { bonesOf, hashOf, joined, MOST_WORDS, NAMED_KINDS, type Names, namesOf, soundOf, soundsOf } from './names.ts';
import { SHORTHAND } from './shorthand.ts';
import { letterHeard, soundAlike } from './sounds.ts';
import { anyNear, relatedTo, tradeNear } from './support.ts';

/** A stretch of words that sounds like one of the trade's names, with what supports it. */
export interface HeardAs {
  until: number;
  meant: string;
  because: string;
}

/** The name that some sounds are likest to, and how like (0 to 1). */
interface Likest {
  words: string;
  term: Term;
  alike: number;
}

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

/** Words that sound like a name of the trade beside words that go with it, or null. */
export function heardAs(tokens: readonly Token[], i: number, vocabulary: Vocabulary): HeardAs | null {
  const names = namesOf(vocabulary);
  return spelledOut(tokens, i, names, vocabulary) ?? soundedOut(tokens, i, names, vocabulary);
}

const isPlain = (token: Token | undefined) => token?.kind === 'word' && !token.skip && !/[^a-z']/.test(token.word);

/** A word that the trade has of its own says what it says: "the hall light" is no wall light. */
const isKnown = (tokens: readonly Token[], at: number, vocabulary: Vocabulary) =>
  KNOWN.has(vocabulary.match(tokens, at)?.term.kind ?? 'task');

const KNOWN = new Set([...NAMED_KINDS, 'area', 'role', 'work']);
const COUNTS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|half|quarter)$/;

function soundedOut(tokens: readonly Token[], i: number, names: Names, vocabulary: Vocabulary): HeardAs | null {
  if (!isPlain(tokens[i]) || OUTSIDE.has(tokens[i]!.word)) return null;
  let bones = '';
  let best: (HeardAs & { alike: number }) | null = null;
  for (let count = 1; count <= MOST_WORDS; count++) {
    const token = tokens[i + count - 1];
    if (!isPlain(token) || token!.word.length < 2 || (count > 1 && !token!.spaced)) break;
    bones = joined(bones, bonesOf(token!.word));
    if (bones.length < 2 || OUTSIDE.has(token!.word)) continue;
    // What costs little is asked first: few stretches sound like anything.
    const found = likest(tokens, i, count, bones, names);
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
    if (words.some((word) => COUNTS.test(word) && !found.words.includes(word))) continue;
    if (known.length && !differsBySound(words, found.words.split(/[ -]/), known)) continue;
    const sure = (foreign || count > 1) && found.alike >= SURE;
    const because =
      relatedTo(found.term, tokens, i, i + count, vocabulary) ??
      (sure ? (foreign ? anyNear : tradeNear)(tokens, i, i + count, vocabulary) : null);
    if (because) best = { until: i + count, meant: found.words, because, alike: found.alike };
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
    const [a, b] = [soundOf(word), soundOf(meant[k]!)];
    return a[0] === b[0] && soundAlike(a, b) >= BESIDE;
  });
}

/** A plain English word where a noun stands, which the trade does not have: "a pale of mud". */
const mayBeHomophone = (tokens: readonly Token[], i: number, vocabulary: Vocabulary) =>
  BEFORE_NOUN.has(tokens[i - 1]?.word ?? '') && !vocabulary.has(tokens[i]!.word);

/** The name that the stretch of `count` words sounds likest to; the sounds are worked out where any has its bones. */
function likest(tokens: readonly Token[], i: number, count: number, bones: string, names: Names): Likest | null {
  const least = count > 1 ? ALIKE : SURE;
  let sounds: string | undefined;
  let best: Likest | null = null;
  const weigh = (hash: number) => {
    for (let at = names.first(hash); at >= 0; at = names.next(at)) {
      sounds ??= soundsHeard(tokens, i, count);
      const way = names.ways[at]!;
      const alike = soundAlike(sounds, soundsOf(way), Math.max(least, best?.alike ?? 0));
      if (alike >= least && alike > (best?.alike ?? 0)) best = { words: way, term: names.terms[at]!, alike };
    }
  };
  weigh(hashOf(bones));
  // One consonant heard too many: "drive wall".
  if (!best && count > 1 && bones.length >= SHORT_BONES) for (let k = 0; k < bones.length; k++) weigh(hashOf(bones, k));
  return best;
}

function soundsHeard(tokens: readonly Token[], i: number, count: number): string {
  let sounds = '';
  for (let k = i; k < i + count; k++) sounds += soundOf(tokens[k]!.word);
  return sounds;
}

/** "You eff cable", "jay channel", "tea and pea valve". */
function spelledOut(tokens: readonly Token[], i: number, names: Names, vocabulary: Vocabulary): HeardAs | null {
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
    const way = heard ? names.spelled(letters.join(' ')) : undefined;
    if (!way) continue;
    // One letter among words: its name must be no word of its own ("you bolt it").
    if (heard < 2 && letters.some((l) => l.length > 1) && !LETTER_ONLY.has(tokens[i]!.word)) continue;
    const because = relatedTo(way.term, tokens, i, k + 1, vocabulary) ?? tradeNear(tokens, i, k + 1, vocabulary);
    if (because) found = { until: k + 1, meant: way.words, because };
  }
  return found;
}

const LETTER_ONLY = new Set('jay elle ell el eff tea pea tee dee vee zee zed ess ex cue queue aitch kay'.split(' '));
