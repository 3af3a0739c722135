import { singular } from '../trade/words.ts';
import type { Token, Vocabulary } from '../types.ts';
import { EDGE, edgesOf } from './edges.ts';
import { everyday } from './everyday.ts';
import { namesOf, soundOf } from './names.ts';
import { isCrewWord, LEAST, leastFor } from './plain.ts';
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
const CREW = 0.8;
const STRANGERS = 0.6;
/** The first sounds are seldom misheard, unless one was left out. */
const ONSET = 0.06;
/** With no more than some thing of the trade near. */
const LOOSE = 0.035;
/** As often as this (`said`), a word is one that crews use every day. */
const OFTEN = 2;
/** A shorter rest sounds like too much. */
const SHORTEST_REST = 3;

/** What the caller knows of the words at some places. */
export interface Asked {
  /** A word that is heard and may be part of a name's sound. */
  isPlain: (at: number) => boolean;
  /** No name starts or ends with it, or it counts. */
  isOutside: (at: number) => boolean;
  /** A thing of the trade by itself. */
  isKnown: (at: number) => boolean;
}

/** A name whose letters begin or end as heard. */
interface Guess {
  at: number;
  /** How alike the rest sounds, and how alike it must. */
  alike: number;
  need: number;
  right: string;
  /** The half heard right is a thing of the trade by itself. */
  isThing: boolean;
}

/** "Ridge bent", "skirting bored", "sheep rock": one end of a name as it is, the other said much alike; or null. */
export function halfHeard(tokens: readonly Token[], i: number, asked: Asked, vocabulary: Vocabulary): HalfHeard | null {
  if (asked.isOutside(i)) return null;
  const words: string[] = [];
  let best: HalfHeard | null = null;
  const named = vocabulary.match(tokens, i)?.until ?? 0;
  for (let k = i; k < i + MOST_HEARD && asked.isPlain(k) && (k === i || tokens[k]!.spaced); k++) {
    // "The set's backset": what is behind it is no part of a name.
    if (words.length && tokens[k - 1]!.word.endsWith("'s")) break;
    words.push(tokens[k]!.word.replace(/'s?$/, ''));
    if (words.length < 2 || named > k || asked.isOutside(k) || holdsName(tokens, i, k + 1, vocabulary)) continue;
    for (const guess of guesses(words, i, asked, vocabulary)) {
      const found = supported(guess, tokens, i, k + 1, vocabulary);
      if (found && found.spare > (best?.spare ?? 0)) best = found;
    }
  }
  return best;
}

/** "Stair stringer where": a name of several words as it stands, and another word. */
function holdsName(tokens: readonly Token[], from: number, until: number, vocabulary: Vocabulary): boolean {
  for (let at = from; at < until - 1; at++) {
    const named = vocabulary.match(tokens, at)?.until ?? 0;
    if (named >= at + 2 && named <= until) return true;
  }
  return false;
}

/** For every cut: the names that begin with the words before it, and those that end with the words behind it. */
function* guesses(words: readonly string[], from: number, asked: Asked, vocabulary: Vocabulary): Generator<Guess> {
  const { letters, begin, end } = edgesOf(vocabulary);
  const one = words.map((word, k) => (k === words.length - 1 ? singular(word) : word));
  const whole = one.join('');
  for (let cut = 1; cut < words.length; cut++) {
    const lead = one.slice(0, cut).join('');
    if (lead.length >= EDGE && !COUNT.test(lead)) {
      const rest = words.slice(cut);
      const need = needOf(rest, from + cut, asked, vocabulary) + aloneWith(lead, rest, cut === 1 && asked.isKnown(from));
      const sound = soundsOf(rest);
      for (const at of begin(lead)) {
        const meant = letters(at).slice(lead.length);
        if (meant.length < SHORTEST_REST || letters(at).includes(whole) || isInflected(rest.join(''), meant)) continue;
        const own = soundOf(meant);
        const alike = Math.max(likeRest(sound, own), likeRest(sound, `${own}s`));
        yield { at, alike, need, right: lead, isThing: asked.isKnown(from) };
      }
    }
    const tail = one.slice(cut).join('');
    if (tail.length >= EDGE && !asked.isOutside(from + cut)) {
      const rest = words.slice(0, cut);
      const need = needOf(rest, from, asked, vocabulary) + (/(?:ed|ing)$/.test(rest[0]!) ? DOES : 0);
      const sound = soundsOf(rest);
      for (const at of end(tail)) {
        const meant = letters(at).slice(0, -tail.length);
        if (meant.length < SHORTEST_REST || letters(at).includes(whole) || isInflected(rest.join(''), meant)) continue;
        yield { at, alike: likeRest(sound, soundOf(meant)), need, right: tail, isThing: asked.isKnown(from + cut) };
      }
    }
  }
}

const likeRest = (heard: string, meant: string) =>
  soundAlike(heard, meant, LEAST - OWN) - (sameOnset(heard, meant) ? 0 : ONSET);

const COUNT = /^(?:one|two|three|four|five|six|seven|eight|nine|ten)s?$/;
const VERBAL = /(?:[^s]s|ed|ing)$/;
const soundsOf = (words: readonly string[]) => words.map(soundOf).join('');

/** More must be alike beside a word that crews say often; what they seldom say is hardly ever what does something. */
function aloneWith(right: string, rest: readonly string[], isThing: boolean): number {
  const does = VERBAL.test(rest[0]!) && (isThing || !rest[0]!.endsWith('s'));
  return Math.min(1, said(right) / OFTEN) * (ALONE + (does ? DOES : 0));
}

/** "Dense packed", "core drilled": the meant word itself with another ending. */
const isInflected = (heard: string, meant: string) =>
  heard.startsWith(meant) && /^(?:.?ed|d|.?ing|.?ers?|r|es)$/.test(heard.slice(meant.length));

/** How alike some words must sound to the rest of a name; more than any can where one of them means what it says. */
function needOf(words: readonly string[], from: number, asked: Asked, vocabulary: Vocabulary): number {
  let need = leastFor(words);
  words.forEach((word, k) => {
    const own = (asked.isKnown(from + k) && said(word) > 1) || (asked.isOutside(from + k) && !(k > 0 && word === 'her'));
    need += own ? NEVER : (vocabulary.has(word) ? OF_THE_TRADE : 0) / words.length;
  });
  return need;
}

const NEVER = 2;

function supported(guess: Guess, tokens: readonly Token[], i: number, until: number, vocabulary: Vocabulary) {
  if (guess.alike + OWN + RELATED + FAMILIAR < guess.need) return null;
  const names = namesOf(vocabulary);
  const meant = names.ways[guess.at]!;
  const own = !everyday(guess.right);
  const related = relatedTo(names.terms[guess.at]!, tokens, i, until, vocabulary);
  const because =
    related ??
    tradeNear(tokens, i, until, vocabulary) ??
    workBefore(tokens, i, vocabulary) ??
    (own || guess.isThing ? guess.right : null);
  const spare =
    guess.alike -
    guess.need +
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
