import type { Vocabulary } from '../types.ts';
import { type Names, namesOf } from './names.ts';
import { push } from './spellings.ts';

/** The names of the trade by how they begin and how they end, for stretches whose first or last words were heard right. */
export interface Edges {
  /** Names, by their place in `Names.ways`, whose first letters are these; at least `EDGE` letters are looked at. */
  begin: (letters: string) => readonly number[];
  end: (letters: string) => readonly number[];
  /** A name's letters run together. */
  letters: (at: number) => string;
}

/** So many letters of a word must be right before the rest of a name is guessed at. */
export const EDGE = 3;
const NONE: readonly number[] = [];
const built = new WeakMap<Names, Edges>();

/** Built when first asked for, beside `namesOf`. */
export function edgesOf(vocabulary: Vocabulary): Edges {
  const names = namesOf(vocabulary);
  let edges = built.get(names);
  if (!edges) {
    edges = build(names.ways);
    built.set(names, edges);
  }
  return edges;
}

function build(ways: readonly string[]): Edges {
  const letters = ways.map((way) => (/[ -]/.test(way) ? way.replace(/[ -]/g, '') : way));
  const begins = new Map<string, number[]>();
  const ends = new Map<string, number[]>();
  letters.forEach((name, at) => {
    push(begins, name.slice(0, EDGE), at);
    push(ends, name.slice(-EDGE), at);
  });
  return {
    begin: (said) => begins.get(said.slice(0, EDGE))?.filter((at) => letters[at]!.startsWith(said)) ?? NONE,
    end: (said) => ends.get(said.slice(-EDGE))?.filter((at) => letters[at]!.endsWith(said)) ?? NONE,
    letters: (at) => letters[at]!,
  };
}
