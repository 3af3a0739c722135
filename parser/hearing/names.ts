import type { Term, Vocabulary } from '../types.ts';
import { everyday } from './everyday.ts';
import { Bones, skeletonOf, soundsOfSpelling } from './sounds.ts';

/** What is bought, carried and worked on; flaws and colours are everyday words. */
export const NAMED_KINDS: ReadonlySet<string> = new Set(['material', 'part', 'fixture', 'tool', 'surface']);
export const MOST_WORDS = 3;
const SHORTEST = 4;

/**
 * Every name of the trade by the consonants that it is said with. A phone builds this before its first note, so it is a
 * chained hash in flat arrays, with nothing made for each name.
 */
export interface Names {
  ways: readonly string[];
  terms: readonly Term[];
  /** The first name of some bones' hash, and the next of the same; -1 behind the last. */
  first: (hash: number) => number;
  next: (at: number) => number;
  /** The names of one word whose bones but for one have this hash. */
  nearly: (hash: number) => readonly number[];
  /** The name that these letters and words spell: "o s b", "j channel". */
  spelled: (letters: string) => { words: string; term: Term } | undefined;
}

const SLOTS = 16_384;
const built = new WeakMap<Vocabulary, Names>();
const MOST_HEARD = 40_000;

/** The bones of words run together: a consonant that ends one and starts the next is heard once. */
export const joined = (before: string, next: string): string =>
  before && before.at(-1) === next[0] ? before + next.slice(1) : before + next;

/** The hash of some bones, one of them left out where `without` names its place. */
export function hashOf(said: string, without = -1): number {
  let hash = 0;
  for (let k = 0; k < said.length; k++) {
    if (k !== without) hash = hashed(hash, said.charCodeAt(k));
  }
  return hash;
}

const hashed = (hash: number, code: number) => (Math.imul(hash, 31) + code) | 0;

/** How a word sounds. */
export const soundOf = remembered((word) => soundsOfSpelling(word.replace(/[^a-z]/g, '')));

/** Its consonants. */
export const bonesOf = remembered((word) => skeletonOf(word.replace(/[^a-z]/g, '')));

export const soundsOf = (words: string): string => words.split(/[ -]/).map(soundOf).join('');

/** Notes say the same words again and again: each is worked out once. */
export function remembered<T>(workOut: (word: string) => T): (word: string) => T {
  const known = new Map<string, T>();
  return (word) => {
    let own = known.get(word);
    if (own === undefined) {
      own = workOut(word);
      if (known.size >= MOST_HEARD) known.clear();
      known.set(word, own);
    }
    return own;
  };
}

/** The names of a vocabulary, built when first asked for. */
export function namesOf(vocabulary: Vocabulary): Names {
  let names = built.get(vocabulary);
  if (!names) {
    names = build(vocabulary.terms);
    built.set(vocabulary, names);
  }
  return names;
}

function build(all: readonly Term[]): Names {
  const ways: string[] = [];
  const terms: Term[] = [];
  const hashes: number[] = [];
  const bones = new Bones();
  const letters = new Map<string, { words: string; term: Term }>();
  const nearly = new Map<number, number[]>();
  const take = (way: string, term: Term) => {
    if (NOT_SPOKEN.test(way)) return;
    spell(way, term, letters);
    const hash = way.length < SHORTEST ? NO_BONES : hashOfName(way, bones);
    if (hash === NO_BONES) return;
    ways.push(way);
    terms.push(term);
    hashes.push(hash);
    if (bones.length < LEAST_BONES || way.includes(' ')) return;
    for (let left = 0; left < bones.length; left++) {
      let without = 0;
      for (let k = 0; k < bones.length; k++) if (k !== left) without = hashed(without, bones.codes[k]!);
      const list = nearly.get(without);
      if (list) list.push(ways.length - 1);
      else nearly.set(without, [ways.length - 1]);
    }
  };
  for (const term of all) {
    if (!NAMED_KINDS.has(term.kind)) continue;
    take(term.name, term);
    if (term.also) for (const way of term.also) take(way, term);
  }
  const heads = new Int32Array(SLOTS).fill(-1);
  const nexts = new Int32Array(ways.length);
  // From the end, so that each chain runs in the vocabulary's order.
  for (let at = ways.length - 1; at >= 0; at--) {
    const slot = hashes[at]! & (SLOTS - 1);
    nexts[at] = heads[slot]!;
    heads[slot] = at;
  }
  const same = (at: number, hash: number) => {
    let k = at;
    while (k >= 0 && hashes[k] !== hash) k = nexts[k]!;
    return k;
  };
  return {
    ways,
    terms,
    first: (hash) => same(heads[hash & (SLOTS - 1)]!, hash),
    next: (at) => same(nexts[at]!, hashes[at]!),
    nearly: (hash) => nearly.get(hash) ?? NONE,
    spelled: (said) => letters.get(said),
  };
}

const NONE: readonly number[] = [];
/** Of names with fewer bones, one less leaves too little to know them by. */
const LEAST_BONES = 3;
const NOT_SPOKEN = /[^a-z -]/;
const NO_BONES = 0;

/** The hash of a whole name's bones; none where it has too many words or too few consonants. */
function hashOfName(way: string, bones: Bones): number {
  bones.length = 0;
  let count = 0;
  for (let from = 0; from <= way.length; ) {
    const [blank, dash] = [way.indexOf(' ', from), way.indexOf('-', from)];
    const until = Math.min(blank < 0 ? way.length : blank, dash < 0 ? way.length : dash);
    if (++count > MOST_WORDS) return NO_BONES;
    bones.add(way, from, until);
    from = until + 1;
  }
  let hash = 0;
  for (let k = 0; k < bones.length; k++) hash = hashed(hash, bones.codes[k]!);
  return bones.length < 2 ? NO_BONES : hash;
}

const LETTERED = /(?:^|[ -])[a-z](?:[ -]|$)/;
const INITIALS = /^[a-z]{2,4}(?![a-z])/;

/** "OSB" is spelled o, s, b; "j channel" j and a word. */
function spell(way: string, term: Term, letters: Map<string, { words: string; term: Term }>): void {
  const initials = INITIALS.exec(way)?.[0];
  const spelled = initials && !everyday(initials) ? [...initials].join(' ') + way.slice(initials.length) : way;
  if (LETTERED.test(spelled)) letters.set(spelled.replaceAll('-', ' '), { words: way, term });
}
