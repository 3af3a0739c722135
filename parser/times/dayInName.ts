import { holidayAt } from './holidays.ts';
import type { Talk } from './talk.ts';

/** "Sunday best", "the monday crew": a name with a day in it. */
export const NO_DAY =
  /^(?:ever|mornings|afternoons|nights|evenings|trading|roast|market|league|football|harbou?r|street|road|creek|lane|club|dieu|best|school|paper|papers|mug|crew|crowd|special|drivers?|football|funnies|blues|feeling|quarterback|traffic|rush|rates?|pric(?:e|es|ing)|sales?|wages?|rota|shift)$/;
const CALLED = /\b(?:happy|boy|girl|named|name is|name's|(?:dog|fella|man|guy|lad|bloke) called)$/;
const ANIMAL = /^(?:ate|dug|chewed|barked|barks|bit|peed|pissed|licked|chased|growled|stole|wants)$/;
const BEAST = /^(?:dog|cat|pup|puppy|horse|kitten|parrot|donkey|goat)$/;
const WHOSE = /^(?:the|a|my|our|his|her|their)$/;
/** "Friday dug up the forms", "friday the dog", "black friday pricing": somebody's name, or part of another. */
export const isName = (talk: Talk, i: number): boolean =>
  CALLED.test(talk.lead(i)) ||
  /^(?:casual|taco|throwback|fat|ruby|man|girl)$/.test(talk.word(i - 1)) ||
  /\bthank (?:god|christ|goodness) (?:it's|its|for)$/.test(talk.lead(i)) ||
  // "What a monday", "never on a friday": one like all others.
  (talk.word(i - 1) === 'a' && talk.ends(i + 1) && !/^(?:week|fortnight)$/.test(talk.word(i - 2))) ||
  ANIMAL.test(talk.word(i + 1)) ||
  (talk.word(i + 1) === 'the' && BEAST.test(talk.word(i + 2))) ||
  (/^(?:is|was)$/.test(talk.word(i + 1)) && WHOSE.test(talk.word(i + 2)) && BEAST.test(talk.word(i + 3))) ||
  (holidayAt(talk, i - 1)?.until ?? 0) > i;
