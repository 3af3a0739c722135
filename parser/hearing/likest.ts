import { singular } from '../trade/words.ts';
import type { Term } from '../types.ts';
import { bonesOf, hashOf, type Names, soundOf, soundsOf } from './names.ts';
import { leastFor } from './plain.ts';
import { soundAlike } from './sounds.ts';

/** The name that some sounds are likest to, and how like (0 to 1). */
export interface Likest {
  words: string;
  term: Term;
  alike: number;
}

/** Several plain words that sound this like a name were that name; one plain word must sound the very same. */
export const ALIKE = 0.9;
/** What is no English at all may be further off. */
const FOREIGN = 0.86;
/** One word heard as two, which crews hardly ever say side by side: so much more than `leastFor`. */
const SPLIT = 0.1;
const SHORT_BONES = 4;

/** The name that some words sound likest to; the sounds are worked out where any has their bones. */
export function likest(heard: readonly string[], bones: string, names: Names): Likest | null {
  const sure = heard.length > 1 ? ALIKE : FOREIGN;
  let sounds: string | undefined;
  let best: Likest | null = null;
  const weigh = (at: number, atLeast: number) => {
    sounds ??= soundsHeard(heard);
    const way = names.ways[at]!;
    const alike = soundAlike(sounds, soundsOf(way), Math.max(atLeast, best?.alike ?? 0));
    if (alike >= atLeast && alike > (best?.alike ?? 0)) best = { words: way, term: names.terms[at]!, alike };
  };
  const weighAll = (hash: number, atLeast: number) => {
    for (let at = names.first(hash); at >= 0; at = names.next(at)) weigh(at, atLeast);
  };
  weighAll(hashOf(bones), sure);
  // One consonant heard too many: "drive wall", "flandge".
  if (!best && bones.length >= SHORT_BONES) for (let k = 0; k < bones.length; k++) weighAll(hashOf(bones, k), sure);
  const least = leastFor(heard) + SPLIT;
  if (best || heard.length < 2 || bones.length < SHORT_BONES - 1 || least >= ALIKE) return best;
  // One word heard as two, and a consonant of it as another or not at all: "sealer cone".
  weighAll(hashOf(bones), least);
  for (const at of names.nearly(hashOf(bones))) weigh(at, least);
  for (let k = 0; k < bones.length; k++) {
    weighAll(hashOf(bones, k), least);
    for (const at of names.nearly(hashOf(bones, k))) weigh(at, least);
  }
  return best;
}

/** Of a plural: names are kept as one. */
export function likestOne(word: string, names: Names): Likest | null {
  const one = singular(word);
  return one === word || one.length < 3 ? null : likest([one], bonesOf(one), names);
}

/** "Close her" is said as "closer". */
const soundsHeard = (heard: readonly string[]) =>
  heard.map((word, k) => soundOf(k > 0 && word === 'her' ? 'er' : word)).join('');
