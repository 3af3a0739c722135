import type { Token, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { halfHeard } from './halfHeard.ts';
import { ALIKE, type Likest, likest, likestOne } from './likest.ts';
import { bonesOf, joined, MOST_WORDS, NAMED_KINDS, type Names, namesOf, remembered, soundOf } from './names.ts';
import { isCrewWord, leastFor } from './plain.ts';
import { SHORTHAND } from './shorthand.ts';
import { letterHeard, soundAlike } from './sounds.ts';
import { anyNear, crewTalk, relatedTo, tradeNear, workBefore } from './support.ts';

/** A stretch of words that sounds like one of the trade's names, with what supports it. */
export interface HeardAs {
  until: number;
  meant: string;
  because: string;
}

const SHORTEST = 4;
/** Sounding so alike, any thing of the trade beside them is enough. */
const SURE = 0.94;
/** The longer of two stretches is right, unless it sounds so much less like its name. */
const LONGER = 0.04;
/** Where less of the talk around is in words that crews use, it is no talk of theirs. */
const CREW = 0.65;
/** What sounds less alike must stand in talk that is wholly theirs. */
const ALL_CREW = 0.85;
const HALF_HEARD = 5;
/** A word beside one of the trade's own. */
const BESIDE = 0.8;

/** No name of the trade starts or ends with these. */
const OUTSIDE = new Set(
  (
    'a an the this that these those my your our his their its it i we he she they you me him us them and or but so if of to in on at by for ' +
    'from with as is are was were be been am do did does has have had will can not no yes up out off over down there here then than when what who ' +
    'which just also too very all-right got get gets put puts go goes went need needs want wants about into ' +
    'monday tuesday wednesday thursday friday saturday sunday mon tue tues wed thu thurs fri sat sun foot feet inch inches yard yards gallon gallons pound pounds hour hours minute minutes day days week weeks'
  ).split(' '),
);
/** Before a noun: a plain word here may be one. */
const BEFORE_NOUN = new Set(
  'the a an this that new old each every another bad broken cracked loose both two three four five'.split(' '),
);

/** Words that sound like a name of the trade beside words that go with it, or null. */
export function heardAs(tokens: readonly Token[], i: number, vocabulary: Vocabulary): HeardAs | null {
  const names = namesOf(vocabulary);
  return (
    spelledOut(tokens, i, names, vocabulary) ??
    soundedOut(tokens, i, names, vocabulary) ??
    halfHeard(
      tokens,
      i,
      {
        isPlain: (at) => isPlain(tokens[at]) && tokens[at]!.word.length > 1,
        isOutside: (at) => isOutside(tokens[at]!.word),
        isDescribing: (at) => DESCRIBING.has(tokens[at]!.word),
        isKnown: (at) => isKnown(tokens, at, vocabulary),
      },
      vocabulary,
    )
  );
}

const isPlain = (token: Token | undefined) =>
  token?.kind === 'word' && !token.skip && !/[^a-z']|'(?:t|re|ve|ll|d|m)$/.test(token.word);

/** A word that the trade has of its own says what it says: "the hall light" is no wall light. */
const isKnown = (tokens: readonly Token[], at: number, vocabulary: Vocabulary) =>
  KNOWN.has(vocabulary.match(tokens, at)?.term.kind ?? 'task');

const KNOWN = new Set([...NAMED_KINDS, 'area', 'role', 'work']);
const COUNTS = /^(?:one|two|three|four|five|six|seven|eight|nine|ten|\w+teen|\w+ty|half|quarter)$/;

/** No name starts or ends with it, or it counts. */
const isOutside = remembered((word) => OUTSIDE.has(word) || COUNTS.test(word));

function soundedOut(tokens: readonly Token[], i: number, names: Names, vocabulary: Vocabulary): HeardAs | null {
  if (!isPlain(tokens[i]) || OUTSIDE.has(tokens[i]!.word)) return null;
  const words: string[] = [];
  let bones = '';
  let best: Sounding | null = null;
  while (words.length < MOST_WORDS) {
    const token = tokens[i + words.length];
    if (!isPlain(token) || token!.word.length < 2 || (words.length && !token!.spaced)) break;
    words.push(token!.word);
    bones = joined(bones, bonesOf(token!.word));
    const ended = token!.word === 'her' ? isErHeard(tokens, i, words.length, vocabulary) : !OUTSIDE.has(token!.word);
    if (bones.length < 2 || !ended) continue;
    // What costs little is asked first: few stretches sound like anything.
    const found = likest(words, bones, names) ?? (words.length === 1 ? likestOne(words[0]!, names) : null);
    if (!found || words.includes(found.words) || words.includes(`${found.words}s`)) continue;
    const worth = found.alike + words.length * LONGER;
    if (worth <= (best?.worth ?? 0)) continue;
    if ((vocabulary.match(tokens, i)?.until ?? 0) >= i + words.length) continue;
    const because =
      crewTalk(tokens, i, i + words.length) < CREW
        ? null
        : words.length > 1
          ? whyMany(tokens, i, words, found, vocabulary)
          : whyOne(tokens, i, found, vocabulary);
    if (because) best = { until: i + words.length, meant: found.words, because, worth };
  }
  return best && { until: best.until, meant: best.meant, because: best.because };
}

interface Sounding extends HeardAs {
  worth: number;
}

/** What supports one word heard as a name: a word of no language takes any thing of the trade, plain English more. */
function whyOne(
  tokens: readonly Token[],
  i: number,
  { words, term, alike }: Likest,
  vocabulary: Vocabulary,
): string | null {
  const foreign = isForeign(tokens[i]!.word, vocabulary);
  if (!foreign && (alike < 1 || !mayBeHomophone(tokens, i, vocabulary))) return null;
  if (isKnown(tokens, i, vocabulary)) return null;
  if (foreign && alike < SURE && !isHalfHeard(tokens[i]!, words)) return null;
  const related = relatedTo(term, tokens, i, i + 1, vocabulary);
  if (related || !foreign) return related;
  const near = (alike >= SURE ? anyNear : tradeNear)(tokens, i, i + 1, vocabulary);
  return near ?? (alike >= SURE ? workBefore(tokens, i, vocabulary) : null);
}

/** What supports several words heard as a name: the word of the name that was heard right, or what stands beside them. */
function whyMany(
  tokens: readonly Token[],
  i: number,
  heard: readonly string[],
  { words, term, alike }: Likest,
  vocabulary: Vocabulary,
): string | null {
  const known = heard.filter((_, k) => isKnown(tokens, i + k, vocabulary));
  // "One fill valve", "box of one": a count is heard as nothing else, unless the name holds it.
  if (known.length === heard.length || heard.some((word) => COUNTS.test(word) && !words.includes(word))) return null;
  const meant = words.split(/[ -]/);
  const right = heard.filter((word, k) => meant[k] === word && vocabulary.has(word));
  const beside = right.length > 0 && differsBySound(heard, meant, right);
  const split =
    meant.length === 1 && heard.length > 1 && (alike >= SURE || (known.length < heard.length && isCrewWord(words)));
  if (known.length && !split && !beside) return null;
  if (alike < leastFor(heard) || (beside && !heard.every((word, k) => isHeardFor(word, meant[k]!)))) return null;
  const until = i + heard.length;
  return (
    (alike >= ALIKE || crewTalk(tokens, i, until) >= ALL_CREW ? relatedTo(term, tokens, i, until, vocabulary) : null) ??
    (alike >= SURE ? tradeNear(tokens, i, until, vocabulary) : null) ??
    (beside ? whyBeside(tokens, i, until, right, vocabulary) : null)
  );
}

const isHeardFor = (word: string, meant: string) =>
  word === meant || soundAlike(soundOf(word), soundOf(meant)) >= leastFor([word]);

/** "Sump pomp": the half heard right is the trade's alone; one that everyday talk has too needs a thing of the trade near. */
const whyBeside = (
  tokens: readonly Token[],
  i: number,
  until: number,
  right: readonly string[],
  vocabulary: Vocabulary,
) => right.find((word) => !everyday(word)) ?? tradeNear(tokens, i, until, vocabulary);

/** "The air handle her", "a door close her": -er heard as a word, where no verb can stand ("level her out"). */
const isErHeard = (tokens: readonly Token[], i: number, count: number, vocabulary: Vocabulary) =>
  count > 1 &&
  (BEFORE_NOUN.has(tokens[i - 1]?.word ?? '') || isKnown(tokens, i + count - 3, vocabulary)) &&
  !/^(?:up|out|in|down|off|on|back|over)$/.test(tokens[i + count]?.word ?? '');

/** "Flandge": no more than a slip in a word that starts as the name does; a capital may be somebody's name. */
const isHalfHeard = ({ text, word }: Token, name: string) =>
  word.length >= HALF_HEARD &&
  (/^[a-z]/.test(text) || text === text.toUpperCase()) &&
  !/[ -]/.test(name) &&
  soundOf(word)[0] === soundOf(name)[0];

/** They stand before a thing of the trade and are meant: "a big screen". */
const DESCRIBING = new Set(
  'big long left right back hard high low old new dry wet hot cold good bad main whole half full best first last next'.split(
    ' ',
  ),
);

/** Neither everyday English nor the trade's: it was heard or typed wrong. */
const isForeign = (word: string, vocabulary: Vocabulary) =>
  word.length >= SHORTEST && !everyday(word) && !vocabulary.has(word) && !SHORTHAND.has(word);

/** "Bawl valve": the trade's own word stays, and the other starts with the same sound and is said nearly the same. */
function differsBySound(heard: readonly string[], meant: readonly string[], known: readonly string[]): boolean {
  if (heard.length !== meant.length) return false;
  return heard.every((word, k) => {
    if (known.includes(word)) return meant[k] === word;
    if (DESCRIBING.has(word)) return false;
    const [a, b] = [soundOf(word), soundOf(meant[k]!)];
    return a[0] === b[0] && soundAlike(a, b) >= BESIDE;
  });
}

/** A plain English word where a noun stands, which the trade does not have: "a pale of mud", "the fan ducked is crushed". */
const mayBeHomophone = (tokens: readonly Token[], i: number, vocabulary: Vocabulary) =>
  !vocabulary.has(tokens[i]!.word) &&
  (BEFORE_NOUN.has(tokens[i - 1]?.word ?? '') ||
    (isKnown(tokens, i - 1, vocabulary) && /^(?:is|was|are|were|has|needs)$/.test(tokens[i + 1]?.word ?? '')));

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
