import { DoubleMetaphone } from 'natural/lib/natural/phonetics/index.js';
import type { Term } from '../types.ts';

export interface Beside {
  before: string[];
  after: string[];
}

export interface Spelling {
  word: string;
  term: Term;
  /** Of a longer name: its words before and after this one, all of which must be heard too. */
  beside?: Beside;
}

/** Shorter words have too many neighbours by sound. */
export const SHORTEST = 5;
const BY_SOUND = new Set(['material', 'part', 'fixture', 'tool', 'surface', 'defect', 'finish']);
const metaphone = new DoubleMetaphone();

/**
 * Both codes of a word: Double Metaphone gives a second where English and its loans differ. Hissing sounds are left out:
 * the package drops some of them (`joist` is JT, `joice` JS), and the spelling is compared next anyway.
 */
export const soundsOf = (word: string): Set<string> =>
  new Set(metaphone.process(word).map((code) => code.replace(/[SX]/g, '')));

/** Every long word of the trade's names, by both its codes. */
export function spellingsBySound(terms: readonly Term[]): Map<string, Spelling[]> {
  const bySound = new Map<string, Spelling[]>();
  // Each word of the trade stands in many names: its sounds are worked out once.
  const sounds = new Map<string, ReadonlySet<string>>();
  const soundsOnce = (word: string) => {
    const known = sounds.get(word) ?? soundsOf(word);
    sounds.set(word, known);
    return known;
  };
  for (const term of terms) {
    if (!BY_SOUND.has(term.kind)) continue;
    for (const way of [term.name, ...(term.also ?? [])]) {
      // "Joint compownd": each long word of a longer name is listened for too, beside the rest of that name.
      const words = way.split(/[\s-]+/);
      words.forEach((word, k) => {
        if (word.length < SHORTEST || /[^a-z]/.test(word)) return;
        const beside = words.length > 1 ? { before: words.slice(0, k), after: words.slice(k + 1) } : undefined;
        for (const sound of soundsOnce(word)) push(bySound, sound, beside ? { word, term, beside } : { word, term });
      });
    }
  }
  return bySound;
}

/** Puts a value with those of the same key. */
export function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}
