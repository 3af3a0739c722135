import type { Token } from '../types.ts';
import type { SaidNumber } from './saidNumber.ts';
import { ONES, PARTS, PLURALS, TENS, wordSet } from './words.ts';

const NOTHING = '';

/** Every word that a number, a count or a unit said first can start with; at most others no rule need be asked. */
const STARTS: ReadonlySet<string> = new Set([
  ...[ONES, TENS, PARTS, PLURALS].flatMap((words) => [...words.keys()]),
  ...wordSet('a an un una couple dozen hundred thousand x × qty quantity inch point ( $ £ €'),
  ...wordSet(
    'double triple treble oh foot mil yard gallon quart pound hour bag box tube sheet can case roll bucket pail',
  ),
]);

type NumberReader = (line: Line, i: number) => SaidNumber | null;

/** The note as the readers of numbers see it: only the tokens that count, and the number that starts at each. */
export class Line {
  /** Without fillers, repeats and what was taken back. */
  readonly tokens: readonly Token[];
  readonly #numbers: (SaidNumber | null | undefined)[] = [];
  /** Place of each of `tokens` in the list that the line was made from. */
  readonly #places: number[] = [];
  readonly #numberAt: NumberReader;

  /** @param numberAt reads the number that starts at a place, and may ask the line for others */
  constructor(all: readonly Token[], numberAt: NumberReader) {
    this.#numberAt = numberAt;
    const counting: Token[] = [];
    all.forEach((token, i) => {
      if (token.skip || joinsWords(all, i)) return;
      counting.push(token);
      this.#places.push(i);
    });
    this.tokens = counting;
  }

  /** Lower-case word at `i`, empty outside the line. */
  word(i: number): string {
    return this.tokens[i]?.word ?? NOTHING;
  }

  /** The word at `i` without its possessive: "the code's 9914". */
  bare(i: number): string {
    return this.word(i).replace(/'s$/, '');
  }

  /** True where no white space stands before token `i`. */
  tight(i: number): boolean {
    return this.tokens[i] !== undefined && !this.tokens[i]!.spaced;
  }

  /** Whether anything with a number in it can start at `i`. */
  mayCount(i: number): boolean {
    const token = this.tokens[i]!;
    return token.kind === 'number' || STARTS.has(token.word) || TIMES.test(token.word);
  }

  /** The number that starts at `i`, worked out once. */
  number(i: number): SaidNumber | null {
    if (i < 0 || i >= this.tokens.length) return null;
    let number = this.#numbers[i];
    if (number === undefined) {
      number = this.#numberAt(this, i);
      this.#numbers[i] = number;
    }
    return number;
  }

  /** What a claim has taken is no number to the readers after it. */
  setAside(from: number, until: number): void {
    for (let i = from; i < until; i++) this.#numbers[i] = null;
  }

  place(i: number): number {
    return this.#places[i]!;
  }
}

/** The hyphens of "one-and-a-half-inch" say nothing. */
const joinsWords = (all: readonly Token[], i: number) =>
  all[i]!.text === '-' &&
  !all[i]!.spaced &&
  all[i + 1]?.spaced === false &&
  (/^(?:and|a|an)$/.test(all[i + 1]!.word) || /^(?:and|a|an)$/.test(all[i - 1]?.word ?? ''));

/** "x4" in one word. */
const TIMES = /^[x×]\d/;
