import type { Term, Token } from '../types.ts';
import { plain, singular } from './words.ts';

/** Before a noun these are not the first half of its name: "take down light gray grout" holds no downlight. */
const PARTICLES = new Set(
  'all and any are down for from has into its not off one our out over the two under was with'.split(' '),
);
const SHORTEST_HALF = 3;

interface Found {
  term: Term;
  until: number;
}

/** The index of all ways of saying some terms. */
export class Phrases {
  /** By their words, one blank between: a term, or null for what only begins a longer way. */
  #ways = new Map<string, Term | null>();
  #words: Set<string> | undefined;

  /** A later term wins a name that an earlier one has too; nobody's name is taken by a mere variant of another's. */
  constructor(terms: readonly Term[]) {
    for (const term of terms) {
      this.#add(term.name, term);
      if (term.also) for (const way of term.also) this.#add(way, term);
    }
  }

  /** Is it one of the words of any way, or its plural? */
  has(word: string): boolean {
    this.#words ??= new Set(Array.from(this.#ways.keys(), (way) => way.slice(way.lastIndexOf(' ') + 1)));
    const said = plain(word);
    return this.#words.has(said) || this.#words.has(singular(said));
  }

  /** The longest way that starts at `index`, plurals and possessives included; skipped tokens are stepped over. */
  longest(tokens: readonly Token[], index: number): Found | null {
    const first = tokens[index];
    if (!first || first.skip || first.kind === 'mark' || first.kind === 'break') return null;
    const whole = this.#from(tokens, index + 1, plain(first.word));
    const second = tokens[index + 1];
    if (!second?.spaced || !isHalf(first) || !isHalf(second)) return whole;
    // "dry wall" for "drywall".
    const halves = this.#from(tokens, index + 2, first.word + plain(second.word));
    return halves && halves.until > (whole?.until ?? 0) ? halves : whole;
  }

  #from(tokens: readonly Token[], after: number, start: string): Found | null {
    let before = '';
    let word = start;
    let until = after;
    let best: Found | null = null;
    for (;;) {
      const exact = this.#ways.get(before + word);
      const term = exact ?? this.#ways.get(before + singular(word));
      if (term) best = { term, until };
      if (exact === undefined) return best;
      while (tokens[until]?.skip || isJoint(tokens, until)) until++;
      const next = tokens[until++];
      if (!next) return best;
      before += `${word} `;
      word = plain(next.word);
    }
  }

  #add(way: string, term: Term): void {
    const said = spoken(way);
    const first = said.indexOf(' ');
    for (let blank = first; blank > 0; blank = said.indexOf(' ', blank + 1)) {
      const begun = said.slice(0, blank);
      if (!this.#ways.has(begun)) this.#ways.set(begun, null);
    }
    this.#ways.set(said, term);
    if (first < 0 || said.includes(' ', first + 1)) return;
    // "p-trap" and "ptrap", "sub floor" and "subfloor" are one; "types" is no "type s".
    if (way.includes('-') || (first >= SHORTEST_HALF && said.length - first > SHORTEST_HALF)) {
      const joined = said.replace(' ', '');
      if (!this.#ways.get(joined)) this.#ways.set(joined, term);
    }
  }
}

const isHalf = ({ kind, word, skip }: Token) =>
  kind === 'word' && !skip && word.length >= SHORTEST_HALF && !PARTICLES.has(word);

/** The hyphen of "thin-set". */
const isJoint = (tokens: readonly Token[], k: number) =>
  tokens[k]?.text === '-' && !tokens[k]!.spaced && tokens[k + 1]?.spaced === false;

/** A way with its words parted as the tokeniser parts them: at hyphens, "2x4" at its x, "12/2" and "t&g" at their marks. */
function spoken(way: string): string {
  const words = plain(way).replaceAll('-', ' ');
  return MARKED.test(words) ? words.replace(PARTED, (word) => word.match(PIECES)!.join(' ')) : words;
}

const MARKED = /[\d&]/;
const PARTED = /(?<!\S)(?:\d|\S+&)\S*/g;
const PIECES = /\d+|[a-z]+|[^\da-z]/g;
