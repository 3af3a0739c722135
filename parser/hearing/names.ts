import type { Term, TermKind, Vocabulary } from '../types.ts';
import { soundOfName, soundsOf, soundsOfName } from './sounds.ts';

/** What is bought, carried and worked on; flaws and colours are everyday words. */
export const NAMED_KINDS: ReadonlySet<TermKind> = new Set(['material', 'part', 'fixture', 'tool', 'surface']);
const MOST_WORDS = 4;
/** Shorter names and words have too many neighbours by sound. */
const FEWEST_SOUNDS = 2;
const LONG_WORD = 5;

/** One way in which a name of the trade may sound. */
export interface Way {
  /** As it is written once it is put right. */
  words: string;
  term: Term;
  sounds: string;
  /** Written so by dictation before: the vocabulary's own list of mishearings. */
  listed: string | null;
  /** A word of longer names, which is no name alone. */
  isPart: boolean;
  /** Which of the ways of its term it is: 0 its name. */
  order: number;
}

/** Names as a tree of sounds, in flat arrays: node 0 is the root. */
export interface Names {
  ways: readonly Way[];
  sound: Uint8Array;
  child: Int32Array;
  sibling: Int32Array;
  /** The first way that ends at a node, and the next of the same; -1 behind the last. */
  ends: Int32Array;
  next: readonly number[];
  /** First words of the listed mishearings: a stretch may start with these, whatever they are. */
  firsts: ReadonlySet<string>;
}

const built = new WeakMap<Vocabulary, Names>();

/** The names of a vocabulary, built when first asked for. */
export function namesOf(vocabulary: Vocabulary): Names {
  let names = built.get(vocabulary);
  if (!names) {
    names = grow(waysOf(vocabulary.terms));
    built.set(vocabulary, names);
  }
  return names;
}

/** "Fourteen two" is heard as a count. */
const COUNTED = /^(?:(?:two|three|four|six|eight|ten|twelve|fourteen|sixteen|eighteen|twenty)(?: |$)){2}/;
const COUNT = /^(?:three|seven|eight|twelve|\w+teen|\w+ty)$/;
const SPOKEN = /^[a-z' -]+$/;

function waysOf(terms: readonly Term[]): Way[] {
  const ways: Way[] = [];
  const parts = new Map<string, Term>();
  const names = new Set<string>();
  for (const term of terms) {
    if (NAMED_KINDS.has(term.kind) || term.kind === 'defect' || term.kind === 'finish') {
      const isNamed = NAMED_KINDS.has(term.kind);
      takeWay(ways, parts, names, term.name, term, isNamed);
      if (term.also) for (const way of term.also) takeWay(ways, parts, names, way, term, isNamed);
    }
    for (const heard of term.misheard ?? []) {
      const words = heard.toLowerCase().split(/[\s-]+/);
      ways.push({
        words: heard,
        term,
        sounds: soundsOf(words),
        listed: heard.toLowerCase(),
        isPart: false,
        order: 0,
      });
    }
  }
  for (const [word, term] of parts)
    if (!names.has(word))
      ways.push({ words: word, term, sounds: soundOfName(word), listed: null, isPart: true, order: 0 });
  return ways;
}

function takeWay(
  ways: Way[],
  parts: Map<string, Term>,
  names: Set<string>,
  way: string,
  term: Term,
  isNamed: boolean,
): void {
  if (!SPOKEN.test(way) || COUNTED.test(way)) return;
  names.add(way);
  const words = way.split(/[ -]/);
  if (words.length > MOST_WORDS) return;
  for (const word of words)
    if (words.length > 1 && word.length >= LONG_WORD && !COUNT.test(word) && !parts.has(word)) parts.set(word, term);
  // "Pressure threaded": a finish of several words is told apart by itself.
  if (!isNamed && !(term.kind === 'finish' && words.length > 1)) {
    if (words.length === 1 && way.length >= LONG_WORD) parts.set(way, term);
    return;
  }
  const sounds = soundsOfName(words);
  if (sounds.length > FEWEST_SOUNDS || way.length > FEWEST_SOUNDS)
    ways.push({
      words: way,
      term,
      sounds,
      listed: null,
      isPart: false,
      order: way === term.name ? 0 : 1 + term.also!.indexOf(way),
    });
}

function grow(ways: readonly Way[]): Names {
  const room = ways.reduce((sum, { sounds }) => sum + sounds.length, 1);
  const [sound, child, sibling] = [new Uint8Array(room), new Int32Array(room).fill(-1), new Int32Array(room).fill(-1)];
  const ends = new Int32Array(room).fill(-1);
  const next: number[] = [];
  let count = 1;
  ways.forEach(({ sounds }, at) => {
    let node = 0;
    for (let k = 0; k < sounds.length; k++) {
      const code = sounds.charCodeAt(k);
      let below = child[node]!;
      while (below >= 0 && sound[below] !== code) below = sibling[below]!;
      if (below < 0) {
        below = count++;
        sound[below] = code;
        sibling[below] = child[node]!;
        child[node] = below;
      }
      node = below;
    }
    next[at] = ends[node]!;
    ends[node] = at;
  });
  const firsts = new Set(ways.flatMap(({ listed }) => (listed ? [listed.split(/[\s-]+/)[0]!] : [])));
  return { ways, sound, child, sibling, ends, next, firsts };
}
