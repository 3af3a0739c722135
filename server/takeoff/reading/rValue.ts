import { figureAt, type Said, saying } from './said.ts';

const SPELT: Readonly<Record<string, number>> = {
  eleven: 11,
  thirteen: 13,
  fifteen: 15,
  nineteen: 19,
  'twenty one': 21,
  'twenty-one': 21,
  thirty: 30,
  'thirty eight': 38,
  'thirty-eight': 38,
  'forty nine': 49,
};

/** "R-13", "R nineteen". */
export const R_VALUE = saying(`\\br[- ]?(?:(\\d{2})\\b|<N>|(${Object.keys(SPELT).join('|')})\\b)`);

/** `R-13`, the first that a note names; null where it names none. */
export function rValueIn(said: Said): string | null {
  const m = R_VALUE.exec(said.words);
  if (!m) return null;
  const value = m[1] ?? (m[2] ? figureAt(said, m[2]).value.toFraction() : String(SPELT[m[3]!]));
  return `R-${value}`;
}
