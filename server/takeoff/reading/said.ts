import type Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import type { TermMention, UnitKind } from '../../../parser/types.ts';

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
  words: string;
  figures: readonly Figure[];
  area: string | null;
  /** Trade words named, in order. */
  terms: readonly TermMention[];
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

export const letterOf = (figure: Figure) =>
  figure.unit === null ? 'N' : ((figure.kind && LETTERS[figure.kind]) ?? 'X');

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
