import Fraction from 'fraction.js';
import { PACKS, packUnit } from './packWords.ts';
import { figureAt, type Said, saying } from './said.ts';

/** On hand, in its own unit. */
export interface Stock {
  value: Fraction;
  unit: string;
}

const HAVE =
  "(?:found|have|has|got|already have|we got|i got|there's|theres|there is|there are|still have|still got|still|left|leftover)";

const PATTERNS = [
  saying(
    `\\b${HAVE} (?:about |already |still |a |another )?<NCKVAL>(?: [a-z']+| <[LN]> x <[LN]>){0,7}? (?:left|left over|leftover|on hand|in the (?:van|truck|shop|shed|garage|basement)|already|(?:half|third|quarter) full|unopened|unused|still (?:wrapped|sealed|in the wrapper)|of the same|from (?:the )?last|to use|(?:we|i|you) (?:can|could) use)`,
    'g',
  ),
  saying(
    '<NCKVAL>(?: of)?(?: [a-z0-9-]+){0,5} (?:left|left over|leftover|on hand|already here|unopened|still (?:wrapped|sealed)|in the (?:van|truck|shop|shed|garage)|(?:on|in) (?:the )?(?:van|truck) counts)\\b',
    'g',
  ),
  saying('\\b(?:less|minus|take off) (?:the )?<NCK>(?: [a-z]+){0,4} (?:we have|i have|on hand|left|already)', 'g'),
];

/** "I have one piece of the half inch pex, 60 feet": as long as it is. */
const A_PIECE = saying(
  `\\b${HAVE} (?:(?:an?|one) (?:piece|length|roll|coil|end|offcut)|<C>) of (?:the |that )?(?:\\{[LN]\\d+\\} )?[a-z]+(?: [a-z]+)?,? (?:about )?<LAV>`,
  'g',
);
/** "A pail that's half full". */
const PART_FULL: Readonly<Record<string, Fraction>> = {
  half: new Fraction(1, 2),
  third: new Fraction(1, 3),
  quarter: new Fraction(1, 4),
};
const PART = /\b(half|third|quarter)(?: of it)? (?:full|left|there)\b/;

/** "Two unopened cartons": packs, whatever is said of them in between. */
const NEVER_OPENED = new RegExp(`^\\{[A-Z]\\d+\\} (?:unopened|full|whole|new|spare|sealed|extra) (${PACKS})\\b`);

const SPENT = saying(
  '\\bused (?:up )?<NCK>[^.;]*\\b(?:out of|off|from) the (?:van|truck|shop|shed|garage|stock|pile)\\b',
);

/** "Used one whole bag of it out of the van on the curb": what stock there was is so much less. */
export function spentIn(said: Said): Stock | null {
  const m = SPENT.exec(said.words);
  const figure = m && figureAt(said, m[1]);
  return figure ? { value: figure.value.neg(), unit: figure.unit ?? 'each' } : null;
}

/** "Found 40 of the same", "2 litres of it left": stock for goods that are reckoned. Claims its figures. */
export function stockIn(said: Said, used: Set<number>): Stock[] {
  const out: Stock[] = [];
  for (const m of said.words.matchAll(A_PIECE)) {
    const piece = figureAt(said, m[2]);
    if (used.has(Number(m[2]))) continue;
    for (const id of m[0].matchAll(/\{[A-Z](\d+)\}/g)) used.add(Number(id[1]));
    out.push({ value: piece.value, unit: piece.unit ?? 'each' });
  }
  // "Two unopened cartons of that plank": never opened is never used.
  said.figures.forEach((figure, id) => {
    if (figure.kind !== 'pack' || used.has(id) || !/\b(?:unopened|leftover|spare|sealed)\b/i.test(figure.quote)) return;
    used.add(id);
    out.push({ value: figure.value, unit: figure.unit! });
  });
  for (const pattern of PATTERNS)
    for (const m of said.words.matchAll(pattern)) {
      const figure = figureAt(said, m[1]);
      if (used.has(Number(m[1])) || figure.per || /(?:x|by) $/.test(said.words.slice(0, m.index))) continue;
      used.add(Number(m[1]));
      for (const id of m[0].matchAll(/\{[LN](\d+)\}/g)) used.add(Number(id[1]));
      const part = PART.exec(m[0])?.[1];
      const pack =
        figure.unit === null ? NEVER_OPENED.exec(said.words.slice(m.index + m[0].indexOf('{')))?.[1] : undefined;
      out.push({
        value: part ? figure.value.mul(PART_FULL[part]!) : figure.value,
        unit: pack ? packUnit(pack) : (figure.unit ?? 'each'),
      });
    }
  return out;
}
