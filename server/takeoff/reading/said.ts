import type Fraction from 'fraction.js';
import { hear } from '../../../parser/hearing/index.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { convert } from '../../../parser/quantities/units.ts';
import { remembered } from '../../../parser/remembered.ts';
import { builtIn } from '../../../parser/trade/index.ts';
import { mentionsIn } from '../../../parser/trade/mentions.ts';
import type { Fact, TermMention, Token, UnitKind } from '../../../parser/types.ts';
import { figuresIn } from './figures.ts';
import { noReadings } from './readOnce.ts';
import { puttingRight } from './spoken.ts';
import { writtenOut } from './writtenOut.ts';

/** A figure of a note, as the take-off reads it. */
export interface Figure {
  value: Fraction;
  unit: string | null;
  kind: UnitKind | null;
  /** The unit was said with it or with its pair, not filled in by habit. */
  sure: boolean;
  per: string | null;
  onCenter: boolean;
  doubt: string | null;
  quote: string;
}

/**
 * A note laid out for reading by rules: words in lower case, misheard ones put right, each figure a token `{L3}` whose
 * letter tells its kind and whose number finds it in `figures`. Rules are then written for the way people talk, not
 * for the ways to say a number.
 */
export interface Said {
  noteId: string;
  saidAt: string;
  /** As it was typed or heard, and the facts read in it. */
  text: string;
  facts: readonly Fact[];
  words: string;
  figures: readonly Figure[];
  area: string | null;
  /** Trade words named, in order. */
  terms: readonly TermMention[];
  /** What readers of the whole note made of its words, each at its own place: see `readOnce`. */
  readings: unknown[];
}

/** Letters of figures: Length, Area, Volume, Weight, pacK, Time, Percent, Count, Degrees, Electric, Number, eXtra. */
const LETTERS: Partial<Record<UnitKind, string>> = {
  length: 'L',
  area: 'A',
  volume: 'V',
  weight: 'W',
  pack: 'K',
  time: 'T',
  percent: 'P',
  count: 'C',
  temperature: 'D',
  current: 'E',
};

/** A pattern for a figure of these kinds, its number captured. */
export const fig = (letters: string): string => `\\{[${letters}](\\d+)\\}`;
/** The same, not captured. */
export const anyFig = '\\{[A-Z]\\d+\\}';

const sayings = new Map<string, RegExp>();

/**
 * A pattern in which `<LN>` stands for a captured figure of those kinds and `<>` for any figure. Each is built once, so
 * one with `g` is for `matchAll` and `replace` only, which keep no place in it.
 */
export function saying(pattern: string, flags = ''): RegExp {
  const key = `${flags}/${pattern}`;
  let built = sayings.get(key);
  if (!built) {
    built = new RegExp(
      pattern.replace(/<([A-Z]+)>/g, (_, letters: string) => fig(letters)).replaceAll('<>', anyFig),
      flags,
    );
    sayings.set(key, built);
  }
  return built;
}

/** Shorthand of hurried typing. */
const SHORT: Readonly<Record<string, string>> = {
  n: 'and',
  '&': 'and',
  '+': 'and',
  '@': 'at',
  '×': 'x',
  ea: 'each',
  w: 'with',
  gnd: 'ground',
  thru: 'through',
  "'em": 'them',
  em: 'them',
  sez: 'says',
  pkg: 'pack',
  pkgs: 'packs',
  pk: 'pack',
  cvrs: 'covers',
  btwn: 'between',
  incl: 'including',
  rm: 'room',
  sht: 'sheet',
  shts: 'sheets',
  scrw: 'screw',
  scrws: 'screws',
  bx: 'box',
  ctn: 'carton',
  ctns: 'cartons',
  flr: 'floor',
  clg: 'ceiling',
};

type Reading = Pick<Said, 'words' | 'figures' | 'terms' | 'readings'>;

/** The words of a note laid out, wherever it was said; the same text is laid out once. */
export const readingOf = remembered(read);

function read(typed: string): Reading {
  const text = writtenOut(typed);
  const vocabulary = builtIn();
  const { tokens } = hear(text, vocabulary);
  const { quantities, notQuantities } = readQuantities(tokens, text);
  const pieces = figuresIn(text, quantities, notQuantities);
  const figures: Figure[] = [];
  let words = '';
  let next = 0;
  for (const token of tokens) {
    const piece = pieces[next];
    if (piece && token.end > piece.start && token.start < piece.end) {
      if (token.end < piece.end) continue;
      words += ` {${letterOf(piece.figure)}${figures.push(piece.figure) - 1}}`;
      if (endsSentence(text, piece.end)) words += '.';
      next++;
      continue;
    }
    words += wordOf(token, words);
  }
  words = words
    .replace(/\s+/g, ' ')
    .replace(/ with \/ ?/g, ' with ')
    .replace(/\b(\d{1,2}) (st|nd|rd|th)\b/g, '$1$2')
    .replace(/- ?by ?- ?(?=\{)/g, ' by ')
    .replace(/(\{[LN]\d+\}) with (?=(?:x|by) \{)/g, '$1 wide ')
    .replace(/(\{[LN]\d+\}) h\b/g, '$1 high')
    .replace(/(\{[LN]\d+\}) even\b/g, '$1')
    .replace(/(\{N\d+\})\/ (?=[a-z])/g, '$1 per ')
    .trim();
  return {
    words: puttingRight(words, figures),
    figures,
    terms: mentionsIn(tokens, text, vocabulary),
    readings: noReadings(),
  };
}

function wordOf(token: Token, before: string): string {
  if (token.skip) return '';
  if (token.kind === 'break') return ' . ';
  const word = SHORT[token.word] ?? token.word;
  const glued = !token.spaced && before !== '' && !/[a-z]/.test(token.text[0]!.toLowerCase());
  return glued && !/^[@&+×]$/.test(token.text) ? word : ` ${word}`;
}

const letterOf = (figure: Figure) => (figure.unit === null ? 'N' : ((figure.kind && LETTERS[figure.kind]) ?? 'X'));

/** "120 sq ft. Add ten": the unit took the full stop with it. "9 in. wide" goes on. */
const endsSentence = (text: string, end: number): boolean =>
  text[end - 1] === '.' &&
  !/^\s*(?:[,;:)\d"']|(?:x|by|wide|long|high|deep|tall|thick|across|on|o\.?c|of|and|or|to|in|at|from|apart|each|ea|a|per|bags|rolls|boxes|tubes|cans|tins|sheets|sticks|joint|gap|bead|notch|base|floor|walls?)\b)/i.test(
    text.slice(end),
  );

/** Those of some ids, in order. */
export const notesOf = (ids: ReadonlySet<string>, notes: readonly Said[]): readonly Said[] =>
  ids.size ? notes.filter(({ noteId }) => ids.has(noteId)) : [];

/** The figure that a match caught in its n-th group. */
export const figureAt = (said: Said, id: string | undefined): Figure => said.figures[Number(id)]!;

/** A length in inches or feet; null for anything else. A bare number takes `bare`, if given. */
export function lengthIn(figure: Figure, unit: 'in' | 'ft', bare?: string): Fraction | null {
  const from = figure.unit ?? bare;
  return from && (figure.kind === 'length' || figure.unit === null) ? convert(figure.value, from, unit) : null;
}

/** Sentences of a note, in order: a full stop, a line end or a semicolon between. */
export const sentencesOf = (words: string): string[] =>
  words
    .split(/(?:\. |\.$|;|\? |\?$|! )/)
    .map((s) => s.trim())
    .filter(Boolean);

/** The numbers of the figures in some words of a note, in order. */
export const figureIds = (words: string): number[] =>
  [...words.matchAll(/\{[A-Z](\d+)\}/g)].map(([, id]) => Number(id));

/** The note without the sentences whose figures another reader took. */
export function without(said: Said, claimed: ReadonlySet<number> | undefined): Said {
  if (!claimed || claimed.size === 0) return said;
  const left = sentencesOf(said.words).filter((sentence) => !figureIds(sentence).some((id) => claimed.has(id)));
  return { ...said, words: left.join('. ') };
}
