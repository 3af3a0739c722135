import type Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { compare } from '../verdict.ts';
import { woodMoisture } from '../woodMoisture.ts';
import { matched, type Reader } from './reader.ts';

const LIMIT = saying(
  "\\b(?:gotta|got to|has to|have to|must|needs? to|should|wants? to|can't be)(?: be| get| read| come)*(?: to)? (?:under|below|less than|over) {[PN](\\d+)}",
);
const PLACES = '(plate|stud|subfloor|framing|slab|joist|sheathing|wood|lumber|meter|moisture)';
const READING = saying(
  `\\b${PLACES}(?:'s|s)?(?: (?:is|are|was|reads?|reading|says?|down|still|now|at|to|content|up|only))* {[PN](\\d+)}(?! ?(?:x|by|inch|ft|feet))`,
  'g',
);
/** "We're down to 13 percent now": of whatever was measured. */
const AGAIN = saying(
  "\\b(?:we're|it's|it is|they're|everything's|all|now|down)(?: (?:all|at|down|to|about|now|reading))* {P(\\d+)}",
  'g',
);
/** A reading of no place stands for all of them. */
const ANYWHERE = /^(?:wood|lumber|meter|moisture)$/;

/**
 * Moisture read off wood or slab against the limit that the notes of the area set: under fifteen per cent. The latest
 * reading of each place counts, and of the places the wettest.
 */
export const moistures: Reader = (said, before) => {
  const notes = [...before, said];
  const limit = notes.map((note) => figureOf(note, LIMIT)).findLast((f) => f !== null);
  const spoken = notes.some(
    (n) => /\b(?:moisture|wet|dry|soaked|damp|percent|pct)\b/.test(n.words) || n.figures.some((f) => f.unit === '%'),
  );
  if (!limit || !spoken || (readingsIn(said).length === 0 && !figureOf(said, LIMIT))) return [];
  const standing = new Map<string, Fraction>();
  for (const { place, figure } of notes.flatMap(readingsIn)) {
    if (place === null) standing.clear();
    standing.set(place ?? '', figure);
  }
  const wettest = [...standing].reduce<[string, Fraction] | null>(
    (w, r) => (w && w[1].compare(r[1]) >= 0 ? w : r),
    null,
  );
  if (!wettest) return [];
  return [
    compare({
      of: 'moisture',
      figure: wettest[1],
      limit,
      unit: '%',
      must: 'be under',
      source: 'limit as said on this job',
      ...(standing.size > 1 && { working: `wettest of ${standing.size} places: ${wettest[0] || 'as measured'}` }),
    }),
  ];
};

/** Readings of a note in order; a place is null where none was named. Of several of one place the wettest counts. */
function readingsIn(said: Said): { place: string | null; figure: Fraction }[] {
  const limited = said.words.replace(LIMIT, '');
  const found = [...limited.matchAll(READING)].map((m) => ({
    place: ANYWHERE.test(m[1]!) ? null : m[1]!,
    figure: said.figures[Number(m[2])]!.value,
  }));
  const readings =
    found.length > 0
      ? found
      : [...limited.matchAll(AGAIN)].map((m) => ({ place: null, figure: said.figures[Number(m[1])]!.value }));
  return readings
    .filter(({ figure }) => figure.compare(0) > 0 && figure.compare(100) < 0)
    .sort((a, b) => a.figure.compare(b.figure));
}

const WOOD = '(?:strips?|planks?|boards?|flooring|oak|maple|hickory|hardwood|bamboo)';
const CONTENT = '(?:is|are|was|reads?|reading|at|now|about|still|down to|says|averag(?:es|ing)|comes? in at)';
const readOn = (what: string) =>
  saying(
    `\\b${what}(?:'s)?(?:,? {L\\d+}(?: (?:inch|in|inches))?(?: wide)?)?(?: ${CONTENT})* {[PN](\\d+)}(?! ?(?:x|by|inch|ft|feet|wide|boxes|{))|{[PN](\\d+)}(?: percent)? (?:on|in|for) (?:the )?${what}\\b`,
  );
const ON_FLOORING = readOn(WOOD);
const ON_SUBFLOOR = readOn('sub ?floor(?: (?:in|under|of) (?:the )?[a-z]+(?: [a-z]+)?)?');
const WIDE = saying('<LN>(?: (?:inch|in))?(?: wide)? (?:[a-z]+ )?(?:planks?|boards?|flooring|strip)\\b');

/** Flooring against subfloor, by the latest reading of each: a floor measured again is judged by the new figure. */
export const woodFloors: Reader = (said, before) => {
  const notes = [...before, said];
  if (!figureOf(said, ON_FLOORING) && !figureOf(said, ON_SUBFLOOR)) return [];
  if (!notes.some((n) => /\b(?:moisture|meter|percent|pct)\b/.test(n.words) || n.figures.some((f) => f.unit === '%')))
    return [];
  const latest = (pattern: RegExp) => notes.map((n) => figureOf(n, pattern)).findLast((f) => f !== null);
  const [floor, subfloor] = [latest(ON_FLOORING), latest(ON_SUBFLOOR)];
  return floor && subfloor ? [woodMoisture(floor, subfloor, wideIn(notes))] : [];
};

function wideIn(notes: readonly Said[]): boolean | null {
  const width = notes.map((n) => matched(n, WIDE)).findLast((w) => w !== null);
  if (width) return width.compare(3) >= 0;
  if (notes.some((n) => /\bplanks?\b/.test(n.words))) return true;
  return notes.some((n) => /\bstrips?\b/.test(n.words)) ? false : null;
}

function figureOf(said: Said, pattern: RegExp): Fraction | null {
  const match = pattern.exec(said.words);
  const value = match && said.figures[Number(match[1] ?? match[2])]!.value;
  return value && value.compare(0) > 0 && value.compare(100) < 0 ? value : null;
}
