import { singular } from '../trade/words.ts';
import type { Token, Vocabulary } from '../types.ts';
import { EDGE, edgesOf } from './edges.ts';
import { everyday } from './everyday.ts';
import { namesOf, soundOf } from './names.ts';
import { said } from './said.ts';
import { soundAlike } from './sounds.ts';
import { relatedTo, tradeNear } from './support.ts';

/** A name of the trade of which one end was heard right and the other as something else. */
export interface HalfHeard {
  until: number;
  meant: string;
  because: string;
  /** How alike the other half sounds (0 to 1), less what it would have had to be. */
  spare: number;
}

const MOST_HEARD = 4;
/** What a word that crews hardly ever say must sound like at least to have been the rest of a name... */
const LEAST = 0.7;
/** ...and how much more for each doubling of how often they do say it... */
const PLAINER = 0.035;
/** ...where the trade has the word too... */
const OF_THE_TRADE = 0.05;
/** ...where the half heard right may stand alone ("the door binds")... */
const ALONE = 0.03;
/** ...and where the other then may be what it does. */
const DOES = 0.08;
/** Less will do beside goods of the same counter, or where the half heard right is no word of everyday talk. */
const RELATED = 0.02;
const OWN = 0.03;
/** With no more than some thing of the trade near. */
const LOOSE = 0.05;
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
}

/** "Ridge bent", "skirting bored", "sheep rock": one end of a name as it is, the other said much alike; or null. */
export function halfHeard(tokens: readonly Token[], i: number, asked: Asked, vocabulary: Vocabulary): HalfHeard | null {
  if (asked.isOutside(i)) return null;
  const words: string[] = [];
  let best: HalfHeard | null = null;
  const named = vocabulary.match(tokens, i)?.until ?? 0;
  for (let k = i; k < i + MOST_HEARD && asked.isPlain(k) && (k === i || tokens[k]!.spaced); k++) {
    words.push(tokens[k]!.word.replace(/'s?$/, ''));
    if (words.length < 2 || named > k || asked.isOutside(k)) continue;
    for (const guess of guesses(words, i, asked, vocabulary)) {
      const found = supported(guess, tokens, i, k + 1, vocabulary);
      if (found && found.spare > (best?.spare ?? 0)) best = found;
    }
  }
  return best;
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
      const need = needOf(rest, from + cut, asked, vocabulary) + (cut === 1 && asked.isKnown(from) ? aloneWith(rest) : 0);
      const sound = soundsOf(rest);
      for (const at of begin(lead)) {
        const meant = letters(at).slice(lead.length);
        if (meant.length < SHORTEST_REST || letters(at) === whole) continue;
        const own = soundOf(meant);
        const alike = Math.max(soundAlike(sound, own, need - OWN), soundAlike(sound, `${own}s`, need - OWN));
        yield { at, alike, need, right: lead };
      }
    }
    const tail = one.slice(cut).join('');
    if (tail.length >= EDGE && !asked.isOutside(from + cut)) {
      const rest = words.slice(0, cut);
      const need = needOf(rest, from, asked, vocabulary);
      const sound = soundsOf(rest);
      for (const at of end(tail)) {
        const meant = letters(at).slice(0, -tail.length);
        if (meant.length < SHORTEST_REST || letters(at) === whole) continue;
        yield { at, alike: soundAlike(sound, soundOf(meant), need - OWN), need, right: tail };
      }
    }
  }
}

const COUNT = /^(?:one|two|three|four|five|six|seven|eight|nine|ten)s?$/;
const VERBAL = /(?:[^s]s|ed|ing)$/;
const soundsOf = (words: readonly string[]) => words.map(soundOf).join('');
const aloneWith = (rest: readonly string[]) => ALONE + (VERBAL.test(rest[0]!) ? DOES : 0);

/** How alike some words must sound to the rest of a name; more than any can where one of them means what it says. */
function needOf(words: readonly string[], from: number, asked: Asked, vocabulary: Vocabulary): number {
  let need = LEAST;
  words.forEach((word, k) => {
    const own = asked.isKnown(from + k) || (asked.isOutside(from + k) && word !== 'her');
    need += own ? NEVER : (PLAINER * said(word) + (vocabulary.has(word) ? OF_THE_TRADE : 0)) / words.length;
  });
  return need;
}

const NEVER = 2;

function supported(guess: Guess, tokens: readonly Token[], i: number, until: number, vocabulary: Vocabulary) {
  if (guess.alike + OWN + RELATED < guess.need) return null;
  const names = namesOf(vocabulary);
  const own = !everyday(guess.right);
  const related = relatedTo(names.terms[guess.at]!, tokens, i, until, vocabulary);
  const because = related ?? tradeNear(tokens, i, until, vocabulary) ?? (own ? guess.right : null);
  const spare = guess.alike - guess.need + (related ? RELATED : -LOOSE) + (own ? OWN : 0);
  return because && spare >= 0 ? { until, meant: names.ways[guess.at]!, because, spare } : null;
}
