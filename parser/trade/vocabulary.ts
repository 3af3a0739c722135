import type { Term, Token, Vocabulary } from '../types.ts';

interface Way {
  words: string[];
  term: Term;
}

const SPELLING = /[\s-]+/;

/** Builds the index: every way of saying each term, by its first word, longest first. A later term wins a shared name. */
export function vocabularyOf(terms: readonly Term[]): Vocabulary {
  const byFirst = new Map<string, Way[]>();
  const single = new Set<string>();
  const whole = new Map<string, Term>();
  const add = (way: string, term: Term) => {
    const spoken = way.toLowerCase();
    whole.set(spoken, term);
    // "p-trap", "p trap" and "ptrap" are one; tokens part at hyphens.
    for (const words of new Set([spoken.split(SPELLING).join(' '), spoken.replace(/-/g, '')])) {
      const list = words.split(' ').flatMap(splitDigits);
      const ways = byFirst.get(list[0]!) ?? [];
      const known = ways.findIndex((w) => w.words.join(' ') === list.join(' '));
      if (known >= 0) ways[known] = { words: list, term };
      else ways.push({ words: list, term });
      byFirst.set(list[0]!, ways);
      for (const word of list) single.add(word);
    }
  };
  for (const term of terms) for (const way of [term.name, ...(term.also ?? [])]) add(way, term);
  for (const ways of byFirst.values()) ways.sort((a, b) => b.words.length - a.words.length);
  return {
    terms,
    has: (word) => single.has(word) || single.has(singular(word)),
    match(tokens, index) {
      const first = tokens[index];
      if (!first || first.skip || first.kind === 'mark' || first.kind === 'break') return null;
      const heads = byFirst.get(first.word);
      const bare = singular(first.word.replace(/'s$|s'$/, ''));
      const others = bare !== first.word ? byFirst.get(bare) : undefined;
      return longest(heads, tokens, index) ?? longest(others, tokens, index);
    },
  };
}

/** The tokeniser parts "2x4" at its x and "12/2" at its slash; the index must too. */
const splitDigits = (word: string): string[] =>
  /^\d/.test(word) ? (word.match(/\d+|[a-z&]+|[^\da-z]/g) ?? [word]) : [word];

function longest(
  ways: readonly Way[] | undefined,
  tokens: readonly Token[],
  index: number,
): { term: Term; until: number } | null {
  for (const way of ways ?? []) {
    let k = index;
    let ok = true;
    for (let w = 0; w < way.words.length; w++) {
      while (w > 0 && (tokens[k]?.skip || (tokens[k]?.text === '-' && !tokens[k]!.spaced))) k++;
      const said = tokens[k];
      if (!said || !sameWord(said.word, way.words[w]!, w === way.words.length - 1)) {
        ok = false;
        break;
      }
      k++;
    }
    if (ok) return { term: way.term, until: k };
  }
  return null;
}

function sameWord(said: string, wanted: string, last: boolean): boolean {
  if (said === wanted) return true;
  if (!last && !said.includes("'")) return false;
  const bare = said.replace(/'s$|s'$/, '');
  return bare === wanted || singular(bare) === wanted;
}

const NOT_PLURAL = /(?:ss|us|is|gas|lens|series|brass|glass|as)$/;

/** The singular of a plural noun, by rule: boxes, switches, bodies, hinges, shelves are listed with their terms. */
export function singular(word: string): string {
  if (word.length < 4 || !word.endsWith('s') || NOT_PLURAL.test(word)) return word;
  if (word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:ches|shes|xes|sses|zes)$/.test(word)) return word.slice(0, -2);
  return word.slice(0, -1);
}
