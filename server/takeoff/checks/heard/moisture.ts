import type Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { compare } from '../verdict.ts';
import type { Reader } from './reader.ts';

const LIMIT = saying(
  "\\b(?:gotta|got to|has to|have to|must|needs? to|should|wants? to|can't be)(?: be| get| read| come)*(?: to)? (?:under|below|less than|over) {[PN](\\d+)}",
);
const READING = saying(
  "\\b(?:plates?|studs?|subfloor|framing|slab|joists?|sheathing|wood|lumber|meter|moisture)(?:'s|s)?(?: is| are| was| reads?| reading| down| still| now| at| to| content| up)* {[PN](\\d+)}(?! ?(?:x|by|inch|ft|feet))",
);

/** Moisture read off wood or slab against the limit that the notes of the area set: under fifteen per cent. */
export const moistures: Reader = (said, before) => {
  const notes = [...before, said];
  const reading = figureOf(said, READING);
  const limit = notes.map((note) => figureOf(note, LIMIT)).findLast((f) => f !== null);
  const spoken = notes.some(
    (n) => /\b(?:moisture|wet|dry|soaked|damp|percent|pct)\b/.test(n.words) || n.figures.some((f) => f.unit === '%'),
  );
  if (!reading || !limit || !spoken) return [];
  return [
    compare({
      of: 'moisture',
      figure: reading,
      limit,
      unit: '%',
      must: 'be under',
      source: 'limit as said on this job',
    }),
  ];
};

function figureOf(said: Said, pattern: RegExp): Fraction | null {
  const match = pattern.exec(said.words);
  const value = match && said.figures[Number(match[1])]!.value;
  return value && value.compare(0) > 0 && value.compare(100) < 0 ? value : null;
}
