import type Fraction from 'fraction.js';
import { convert } from '../../../../parser/quantities/units.ts';
import { type Figure, type Said, saying, sentencesOf } from '../../reading/said.ts';
import type { Verdict } from '../verdict.ts';

/** Reads one kind of check from a note, with the notes of the same area before it. */
export type Reader = (said: Said, before: readonly Said[]) => Verdict[];

const COUNTS: Readonly<Record<string, number>> = {
  a: 1,
  an: 1,
  one: 1,
  single: 1,
  another: 1,
  two: 2,
  couple: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
};

/** A pattern for a count before goods, in two groups: a figure, or a word of `COUNTS`. */
export const HOW_MANY = `(?:<NC> |\\b(${Object.keys(COUNTS).join('|')}) )`;

export const countOf = (said: Said, figure: string | undefined, word: string | undefined): number | null =>
  figure !== undefined ? said.figures[Number(figure)]!.value.valueOf() : word ? (COUNTS[word] ?? null) : null;

/** A figure in inches; a bare number is taken as inches where the words before it measure. */
export function inchesOf(figure: Figure | undefined): Fraction | null {
  if (!figure) return null;
  return figure.unit === null ? figure.value : convert(figure.value, figure.unit, 'in');
}

/** Inches of the figure that a pattern's first filled group caught; null where it does not match. */
export function matched(said: Said, pattern: RegExp, words = said.words): Fraction | null {
  const match = pattern.exec(words);
  const id = match?.slice(1).find((group) => group !== undefined);
  return id === undefined ? null : inchesOf(said.figures[Number(id)]);
}

/** Inches of every figure that a pattern with the flag `g` catches. */
export const allMatched = (said: Said, pattern: RegExp, words = said.words): Fraction[] =>
  [...words.matchAll(pattern)].flatMap(
    (match) => inchesOf(said.figures[Number(match.slice(1).find((group) => group !== undefined))]) ?? [],
  );

/** Clauses in which figures belong together: sentences, and their parts at commas and joining words. */
export const clausesOf = (words: string): string[] =>
  sentencesOf(words).flatMap((s) => s.split(/,(?: and| but)? (?!\d)| but | while /).map((c) => c.trim()));

export const least = (values: readonly Fraction[]): Fraction | null =>
  values.reduce<Fraction | null>((low, v) => (low === null || v.compare(low) < 0 ? v : low), null);

/** Nominal lumber named in the words, `2x4` or "one by four": thickness and depth as named. */
export function lumberIn(said: Said): { thick: 1 | 2; deep: Fraction } | null {
  for (const [, figure, word, deep] of said.words.matchAll(LUMBER)) {
    const thick = word ? COUNTS[word] : said.figures[Number(figure)]!.value.valueOf();
    const named = said.figures[Number(deep)]!.value;
    if ((thick === 1 || thick === 2) && named.d === 1n && named.compare(12) <= 0) return { thick, deep: named };
  }
  return null;
}

const LUMBER = saying('(?:<NL>|\\b(one|two)) ?(?:x|by) ?<NL>', 'g');
