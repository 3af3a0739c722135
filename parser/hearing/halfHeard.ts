import { singular } from '../trade/words.ts';
import type { Token, Vocabulary } from '../types.ts';
import { EDGE, edgesOf } from './edges.ts';
import { everyday } from './everyday.ts';
import { namesOf, soundOf } from './names.ts';
import { isCrewWord, leastFor } from './plain.ts';
import { said } from './said.ts';
import { sameOnset, soundAlike } from './sounds.ts';
import { crewTalk, relatedTo, tradeNear, workBefore } from './support.ts';

/** A name of the trade of which one end was heard right and the other as something else. */
export interface HalfHeard {
  until: number;
  meant: string;
  because: string;
  /** How alike the other half sounds (0 to 1), less what it would have had to be. */
  spare: number;
}

const MOST_HEARD = 4;
/** More than `leastFor` where the trade has the word too... */
const OF_THE_TRADE = 0.04;
/** ...where the half heard right may stand alone ("the door binds")... */
const ALONE = 0.03;
/** ...and where the other then may be what it does. */
const DOES = 0.08;
/** Less will do beside goods of the same counter, or where the half heard right is no word of everyday talk. */
const RELATED = 0.02;
const OWN = 0.03;
/** The rest would be a word that crews say, or one that they do not. */
const FAMILIAR = 0.03;
const UNKNOWN = 0.04;
/** Where less than so much of the talk around is in words that crews use, it is no talk of theirs, the less the dearer. */
const CREW = 0.85;
const STRANGERS = 0.7;
/** The first sounds are seldom misheard, unless one was left out. */
const ONSET = 0.06;
/** With no more than some thing of the trade near. */
const LOOSE = 0.035;
/** As often as this (`said`), a word is one that crews use every day. */
const OFTEN = 2;
/** So many letters more or fewer sound like something else. */
const FAR = 4;
/** A shorter rest sounds like too much. */
const SHORTEST_REST = 3;

/** What the caller knows of the words at some places. */
export interface Asked {
  /** A word that is heard and may be part of a name's sound. */
  isPlain: (at: number) => boolean;
  /** No name starts or ends with it, or it counts. */
  isOutside: (at: number) => boolean;
  /** It says of what kind a thing is, and means it: "a big screen". */
  isDescribing: (at: number) => boolean;
  /** A thing of the trade by itself. */
  isKnown: (at: number) => boolean;
}

/** A name of which one end is as heard and the other sounds alike. */
interface Guess {
  at: number;
  alike: number;
  /** The words heard as its other end, and the first of them. */
  rest: readonly string[];
  from: number;
  right: string;
  /** Where the words heard right begin, if they may stand alone. */
  alone: number | null;
  isLead: boolean;
}

/** "Ridge bent", "skirting bored", "sheep rock": one end of a name as it is, the other said much alike; or null. */
export function halfHeard(tokens: readonly Token[], i: number, asked: Asked, vocabulary: Vocabulary): HalfHeard | null {
  if (!asked.isPlain(i) || asked.isOutside(i)) return null;
  const words: string[] = [];
  let best: HalfHeard | null = null;
  for (let k = i; k < i + MOST_HEARD && asked.isPlain(k) && (k === i || tokens[k]!.spaced); k++) {
    // "The set's backset": what is behind it is no part of a name.
    if (words.length && tokens[k - 1]!.word.endsWith("'s")) break;
    words.push(tokens[k]!.word.replace(/'s?$/, ''));
    if (words.length < 2 || asked.isOutside(k)) continue;
    const found = guesses(words, i, asked, vocabulary);
    if (!found.length || holdsName(tokens, i, k + 1, vocabulary)) continue;
    for (const guess of found) {
      const spared = supported(guess, tokens, i, k + 1, asked, vocabulary);
      if (spared && spared.spare > (best?.spare ?? 0)) best = spared;
    }
  }
  return best;
}

/** "Stair stringer where": a name of several words as it stands, or the whole stretch is within one. */
function holdsName(tokens: readonly Token[], from: number, until: number, vocabulary: Vocabulary): boolean {
  for (let at = from; at < until - 1; at++) {
    const named = vocabulary.match(tokens, at)?.until ?? 0;
    if ((named >= at + 2 && named <= until) || (at === from && named >= until)) return true;
  }
  return false;
}

/** For every cut: the names that begin with the words before it, and those that end with the words behind it. */
function guesses(words: readonly string[], from: number, asked: Asked, vocabulary: Vocabulary): Guess[] {
  const edges = edgesOf(vocabulary);
  const one = words.map((word, k) => (k === words.length - 1 ? singular(word) : word));
  const out: Guess[] = [];
  for (let cut = 1; cut < words.length; cut++) {
    if (mayBeHeard(words, cut, words.length, from, asked)) {
      const right = one.slice(0, cut).join('');
      const half = { rest: words.slice(cut), from: from + cut, right, alone: cut === 1 ? from : null, isLead: true };
      if (right.length >= EDGE && !COUNT.test(right)) alikeIn(edges.begin(right), half, one, vocabulary, out);
    }
    if (!asked.isOutside(from + cut) && mayBeHeard(words, 0, cut, from, asked)) {
      const right = one.slice(cut).join('');
      const half = { rest: words.slice(0, cut), from, right, alone: from + cut, isLead: false };
      if (right.length >= EDGE) alikeIn(edges.end(right), half, one, vocabulary, out);
    }
  }
  return out;
}

/** None of the words says what it says: no count, no small word but the -er of "heat her". */
function mayBeHeard(words: readonly string[], first: number, last: number, from: number, asked: Asked): boolean {
  for (let k = first; k < last; k++) {
    if (asked.isDescribing(from + k) || (asked.isOutside(from + k) && !(k > first && words[k] === 'her'))) return false;
  }
  return true;
}

/** Of the names that hold the half heard right, those of which the rest sounds enough alike, whatever stands around. */
function alikeIn(
  ats: readonly number[],
  half: Omit<Guess, 'at' | 'alike'>,
  heard: readonly string[],
  vocabulary: Vocabulary,
  out: Guess[],
): void {
  if (!ats.length) return;
  const least = leastFor(half.rest) - OWN - RELATED - FAMILIAR;
  if (least > 1) return;
  const { letters } = edgesOf(vocabulary);
  const { ways } = namesOf(vocabulary);
  const sound = half.rest.map(soundOf).join('');
  const [whole, all, rest] = [heard.join(''), ` ${heard.join(' ')} `, half.rest.join('')];
  for (const at of ats) {
    const name = letters(at);
    if (name.length < half.right.length + SHORTEST_REST || Math.abs(name.length - whole.length) > FAR) continue;
    const meant = half.isLead ? name.slice(half.right.length) : name.slice(0, -half.right.length);
    const own = soundOf(meant);
    let alike = soundAlike(sound, own, least);
    if (half.isLead) alike = Math.max(alike, soundAlike(sound, `${own}s`, least));
    if (!sameOnset(sound, own)) alike -= ONSET;
    // The same words, or some more: nothing was misheard.
    if (alike < least || name === whole || ` ${ways[at]} `.includes(all) || isInflected(rest, meant)) continue;
    out.push({ ...half, at, alike });
  }
}

const COUNT = /^(?:one|two|three|four|five|six|seven|eight|nine|ten)s?$/;
const VERBAL = /(?:[^s]s|ed|ing)$/;

/** More must be alike beside a word that crews say often; what they seldom say is hardly ever what does something. */
function aloneWith(right: string, rest: readonly string[], isThing: boolean): number {
  const does = VERBAL.test(rest[0]!) && (isThing || !rest[0]!.endsWith('s'));
  return Math.min(1, said(right) / OFTEN) * (ALONE + (does ? DOES : 0));
}

/** "Dense packed", "core drilled": the meant word itself with another ending. */
const isInflected = (heard: string, meant: string) =>
  heard.startsWith(meant) && /^(?:.?ed|d|.?ing|.?ers?|r|es)$/.test(heard.slice(meant.length));

/** How alike the rest must sound; more than any can where one of its words is the trade's and means what it says. */
function needOf({ rest, from, right, alone, isLead }: Guess, asked: Asked, vocabulary: Vocabulary): number {
  let need = leastFor(rest);
  rest.forEach((word, k) => {
    const own = said(word) > 1 && asked.isKnown(from + k);
    need += own ? NEVER : (vocabulary.has(word) ? OF_THE_TRADE : 0) / rest.length;
  });
  if (isLead) return need + aloneWith(right, rest, alone !== null && asked.isKnown(alone));
  return need + (/(?:ed|ing)$/.test(rest[0]!) ? DOES : 0);
}

const NEVER = 2;

function supported(
  guess: Guess,
  tokens: readonly Token[],
  i: number,
  until: number,
  asked: Asked,
  vocabulary: Vocabulary,
): HalfHeard | null {
  const need = needOf(guess, asked, vocabulary);
  if (guess.alike + OWN + RELATED + FAMILIAR < need) return null;
  const names = namesOf(vocabulary);
  const meant = names.ways[guess.at]!;
  const own = !everyday(guess.right);
  const isThing = guess.isLead ? asked.isKnown(i) : asked.isKnown(guess.alone!);
  const related = relatedTo(names.terms[guess.at]!, tokens, i, until, vocabulary);
  const because =
    related ??
    tradeNear(tokens, i, until, vocabulary) ??
    workBefore(tokens, i, vocabulary) ??
    (own || isThing ? guess.right : null);
  const spare =
    guess.alike -
    need +
    (related ? RELATED : -LOOSE) +
    (own ? OWN : 0) +
    (isFamiliar(meant, guess.right) ? FAMILIAR : -UNKNOWN) -
    STRANGERS * Math.max(0, CREW - crewTalk(tokens, i, until));
  return because && spare >= 0 ? { until, meant, because, spare } : null;
}

/** Crews say the words of the name that were not heard right, or the whole of one written together. */
function isFamiliar(name: string, right: string): boolean {
  const rest = name.split(/[ -]/).filter((word) => word !== right);
  return rest.every(isCrewWord);
}
