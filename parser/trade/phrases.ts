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

/**
 * The index of all ways of saying some terms. A note uses few of them, so each is laid out only when its first word is
 * asked for; till then it waits in flat arrays.
 */
export class Phrases {
  /** By their words, one blank between: a term, or null for what only begins a longer way. */
  #ways = new Map<string, Term | null>();
  /** Ways as written and their terms; those with the same first word are chained, in order. */
  readonly #said: string[] = [];
  readonly #terms: Term[] = [];
  readonly #next: number[] = [];
  readonly #chains = new Map<string, { first: number; last: number }>();
  readonly #laidOut = new Set<string>();
  /** Beginnings and lengths of the first words: what fits none is no name written as two words. */
  readonly #shapes = new Uint8Array(SHAPES);
  #words: Set<string> | undefined;

  constructor(terms: readonly Term[]) {
    for (const term of terms) {
      this.#expect(term.name, term);
      if (term.also) for (const way of term.also) this.#expect(way, term);
    }
  }

  /** Is it one of the words of any way, or its plural? */
  has(word: string): boolean {
    const own = plain(word);
    if (this.#chains.has(own)) return true;
    this.#words ??= this.#allWords();
    return this.#words.has(own) || this.#words.has(singular(own));
  }

  #allWords(): Set<string> {
    const words = new Set(this.#chains.keys());
    for (const way of this.#said) {
      const said = spoken(way);
      for (let at = said.indexOf(' '); at > 0; ) {
        const end = said.indexOf(' ', at + 1);
        words.add(end < 0 ? said.slice(at + 1) : said.slice(at + 1, end));
        at = end;
      }
    }
    return words;
  }

  /** The longest way that starts at `index`, plurals and possessives included; skipped tokens are stepped over. */
  longest(tokens: readonly Token[], index: number): Found | null {
    const first = tokens[index];
    if (!first || first.skip || first.kind === 'mark' || first.kind === 'break') return null;
    const whole = this.#from(tokens, index + 1, plain(first.word));
    const second = tokens[index + 1];
    if (!second?.spaced || !isHalf(first) || !isHalf(second)) return whole;
    if (!this.#shapes[shapeOf(first.word, first.word.length + second.word.length)]) return whole;
    // "dry wall" for "drywall".
    const halves = this.#from(tokens, index + 2, first.word + plain(second.word));
    return halves && halves.until > (whole?.until ?? 0) ? halves : whole;
  }

  #from(tokens: readonly Token[], after: number, start: string): Found | null {
    let before = '';
    let word = start;
    let until = after;
    let best: Found | null = null;
    const one = singular(start);
    if (!this.#chains.has(start) && (one === start || !this.#chains.has(one))) return null;
    this.#layOut(start);
    this.#layOut(one);
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

  #expect(way: string, term: Term): void {
    const said = PLAIN.test(way) ? way : spoken(way);
    const cut = said.indexOf(' ');
    this.#chain(cut < 0 ? said : said.slice(0, cut), way, term);
    // "p-trap" and "ptrap", "sub floor" and "subfloor" are one; "types" is no "type s".
    if (cut < 0 || said.includes(' ', cut + 1)) return;
    if (way.includes('-') || (cut >= SHORTEST_HALF && said.length - cut > SHORTEST_HALF))
      this.#chain(said.slice(0, cut) + said.slice(cut + 1), way, term);
  }

  #chain(first: string, way: string, term: Term): void {
    const at = this.#said.push(way) - 1;
    this.#terms.push(term);
    this.#next.push(-1);
    const chain = this.#chains.get(first);
    if (!chain) {
      this.#chains.set(first, { first: at, last: at });
      // A plural, or a possessive heard with its apostrophe, is longer by up to two.
      for (let more = 0; more <= 3; more++) this.#shapes[shapeOf(first, first.length + more)] = 1;
    } else {
      this.#next[chain.last] = at;
      chain.last = at;
    }
  }

  /** A later term wins a name that an earlier one has too; nobody's name is taken by a mere variant of another's. */
  #layOut(first: string): void {
    const chain = this.#chains.get(first);
    if (!chain || this.#laidOut.has(first)) return;
    this.#laidOut.add(first);
    for (let at = chain.first; at >= 0; at = this.#next[at]!) {
      const said = spoken(this.#said[at]!);
      const isJoined = firstOf(said) !== first;
      if (isJoined && this.#ways.get(first)) continue;
      const whole = isJoined ? first : said;
      for (let blank = whole.indexOf(' '); blank > 0; blank = whole.indexOf(' ', blank + 1)) {
        const begun = whole.slice(0, blank);
        if (!this.#ways.has(begun)) this.#ways.set(begun, null);
      }
      this.#ways.set(whole, this.#terms[at]!);
    }
  }
}

/** A word's first two letters and a length, as one number. */
/** Two shapes may share a place: then one more way is compared in vain. */
const SHAPES = 1 << 14;
const shapeOf = (word: string, length: number) =>
  ((word.charCodeAt(0) << 9) ^ (word.charCodeAt(1) << 4) ^ length) & (SHAPES - 1);

const PLAIN = /^[a-z ]*$/;
const firstOf = (said: string) => (said.includes(' ') ? said.slice(0, said.indexOf(' ')) : said);

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
