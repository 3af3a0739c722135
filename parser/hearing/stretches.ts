import type { Token, Vocabulary } from '../types.ts';
import { saidOf } from './company.ts';
import { meansItself } from './meansItself.ts';
import { meantOf } from './meant.ts';
import { namesOf, type Way } from './names.ts';
import { type Candidate, type Near, nearest } from './nearest.ts';
import { soundOf } from './sounds.ts';
import { viewOf } from './views.ts';

/** Letters are spelled out in up to so many words: "g f c i outlet". */
const MOST_WORDS = 5;
/** No name of the trade starts with these, nor is any of them part of one. */
const NEVER = new Set(
  (
    'a an the this that these those my your our his their its it i we he she they me him us them and or but so if of on at by for ' +
    'from with as is was were be been am pm do did does has have had will can not no yes off over down there here then than when what who ' +
    'which just also too very all-right got gets put puts go goes went needs wants about into ' +
    'monday tuesday wednesday thursday friday saturday sunday mon tue tues wed thu thurs fri sat sun today tomorrow yesterday ' +
    'lunes martes miercoles jueves viernes sabado domingo manana hoy ' +
    'foot feet inch inches yard yards gallon gallons pound pounds hour hours minute minutes day days week weeks'
  ).split(' '),
);
/** They may stand inside or end what was one word: "handle her", "cut in it". */
const ENDINGS = new Set('her it in on is are or oh a an and the i of at to be by for all our went'.split(' '));

/** "Over flow plate": the first half of a name of one word. */
const SPLIT = /^(?:over|off|down)$/;
const isParted = (half: string, { way, until, from }: Candidate) =>
  until > from + 1 && way.words.startsWith(half) && way.words[half.length] !== ' ';

const isPlain = (token: Token | undefined) =>
  token?.kind === 'word' && !token.skip && !/[^a-z']|'(?:t|re|ve|ll|d|m)$/.test(token.word);

/** A capital inside a sentence is somebody's name, unless all is written large. */
const isName = (tokens: readonly Token[], i: number) =>
  /^\p{Lu}\p{Ll}/u.test(tokens[i]!.text) && i > 0 && !/^[.!?\n]$/.test(tokens[i - 1]!.word);

/** Which names the words from `i` on may have been, whatever stands around. */
export function candidatesAt(tokens: readonly Token[], i: number, vocabulary: Vocabulary): Candidate[] {
  const names = namesOf(vocabulary);
  const first = tokens[i]!;
  if (!isPlain(first) || isName(tokens, i)) return [];
  const isNever = NEVER.has(first.word);
  const isSplit = SPLIT.test(first.word);
  if (isNever && !names.firsts.has(first.word) && !isSplit) return [];
  let sounds = '';
  const ends: number[] = [];
  for (let k = i; k < i + MOST_WORDS; k++) {
    const token = tokens[k];
    if (!isPlain(token) || (k > i && (!token!.spaced || (NEVER.has(token!.word) && !ENDINGS.has(token!.word))))) break;
    const own = soundOf(token!.word === 'her' && k > i ? 'er' : token!.word);
    sounds += own;
    ends.push(sounds.length);
  }
  const named = viewOf(tokens, i, vocabulary).found?.until ?? 0;
  return likeliest(tokens, i, nearest(sounds, ends, names)).filter(
    (candidate) =>
      candidate.until > named &&
      (!isNever || candidate.way.listed || (isSplit && isParted(first.word, candidate))) &&
      !meansItself(candidate, meantOf(candidate.way), tokens, vocabulary),
  );
}

/** Is a name near enough, by how often crews say the heard words? What they never say is sooner something else. */
export const isNear = ({ way, cost }: Near, said = 0): boolean =>
  cost <= 0.15 + (0.27 - 0.015 * said) * way.sounds.length;

/** So many names for one stretch are weighed. */
const WEIGHED = 3;

function likeliest(tokens: readonly Token[], i: number, near: readonly Near[]): Candidate[] {
  const kept: Candidate[] = [];
  const heard: string[] = [];
  for (let words = 1; words <= MOST_WORDS && i + words <= tokens.length; words++) {
    heard.push(tokens[i + words - 1]!.word);
    // What is too far whoever says it is left out first: that costs least to ask.
    const list = near.filter(
      (one) => one.words === words && isNear(one) && isNear(one, saidBeside(heard, one.way.words)),
    );
    if (!list.length) continue;
    list.sort((a, b) => Math.round(20 * (a.cost - b.cost)) || a.way.order - b.way.order);
    const seen = new Set<string>();
    for (const { way, cost } of list) {
      const key = keyOf(way);
      if (seen.has(key)) continue;
      seen.add(key);
      kept.push({ way, words, cost, from: i, until: i + words });
      if (seen.size === WEIGHED) break;
    }
  }
  return kept;
}

const keyOf = (way: Way) => (way.listed ? `${way.term.name}~` : way.term.name);

/** How often crews say the heard words that the name has not, on average. */
function saidBeside(heard: readonly string[], name: string): number {
  let [sum, count] = [0, 0];
  for (const word of heard)
    if (!name.includes(word)) {
      sum += saidOf(word);
      count++;
    }
  return count ? sum / count : 0;
}
