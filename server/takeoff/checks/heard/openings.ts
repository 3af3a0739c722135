import Fraction from 'fraction.js';
import { type Said, saying } from '../../reading/said.ts';
import { roughOpening } from '../doorOpening.ts';
import { egressOpening, egressSill } from '../egress.ts';
import { cannotSay, type Verdict } from '../verdict.ts';
import { inchesOf, matched, type Reader } from './reader.ts';

const PAIR = saying(
  '<LN>(?: (wide|high|tall))?(?: (?:x|by)|(?<= (?:wide|high|tall))(?= [^ ]+ (?:wide|high|tall))|,? and(?= [^ ]+ (?:wide|high|tall))|(?<= (?:wide|high|tall)),(?= [^ ]+ (?:wide|high|tall))) <LN>(?: (wide|high|tall))?',
);
const SILL = saying("\\bsill(?:'s|s)?\\b[^.{]{0,24}<LN>");

/** Escape windows: only where the note speaks of escape, of the clear opening, or of a bedroom's window. */
export const egress: Reader = (said) => {
  const { words } = said;
  const forEscape = /\b(?:egress|escape|clear opening|net clear)\b/.test(words);
  const place = `${words} ${said.area ?? ''}`;
  if (
    !/\b(?:windows?|casements?|double hung|sash|egress)\b/.test(words) ||
    !(forEscape || (/\b(?:opens?|clear)\b/.test(words) && /\b(?:bed ?rooms?|br ?\d|nursery|basement)\b/.test(place)))
  )
    return [];
  const out: Verdict[] = [];
  const pair = PAIR.exec(words);
  const [a, b] = [pair?.[1], pair?.[3]].map((id) => (id === undefined ? null : inchesOf(said.figures[Number(id)])));
  if (pair && a && b) {
    if (/\brough opening\b|\b(?:frame|unit|sash|glass) (?:size|is|measures)\b/.test(words) && !/\bclear\b/.test(words))
      out.push(cannotSay('egress opening', 'the net clear opening with the window fully open', 'IRC R310.2.1'));
    else {
      const heightFirst = pair[2] !== undefined ? pair[2] !== 'wide' : pair[4] === 'wide';
      const [width, height] = heightFirst ? [b, a] : [a, b];
      out.push(...egressOpening({ width, height, gradeFloor: gradeFloorIn(words) }));
    }
  }
  const sill = matched(said, SILL);
  if (sill && sill.compare(12) > 0) out.push(egressSill(sill));
  return out;
};

function gradeFloorIn(words: string): boolean | null {
  if (/\bnot (?:an? |on the )?(?:at )?(?:grade|ground)\b/.test(words)) return false;
  if (/\b(?:ground floor|grade floor|at grade|first floor)\b/.test(words)) return true;
  return /\b(?:second|third|upper|upstairs|2nd|3rd|attic)\b/.test(words) ? false : null;
}

const OPENING = saying(
  "\\b(?:rough opening|ro|r\\.o\\.|opening|framing|framed)(?:'s)?\\b[^.{]{0,44}<LN>(?:(?: wide)?,? (?:x|by|and) <LN>)?",
);
const SLAB = saying(
  "\\b([2-3])/(\\d{1,2})\\b(?:,? ([67])/([68]))?|{N(\\d+)} (?:door|prehung|slab)|<L>(?: inch)?(?: [a-z]+)? (?:door|prehung|slab)\\b|\\b(?:door|slab)(?: is|'s) (?:a )?<L>|\\b(?:door|slab)(?: is|'s) (?:a )?<N> <N>",
);

/** A prehung door against the hole it goes into. */
export const doors: Reader = (said) => {
  if (!/\b(?:doors?|prehung|slab)\b/.test(said.words)) return [];
  const opening = OPENING.exec(said.words);
  const width = opening && inchesOf(said.figures[Number(opening[1])]);
  const slab = slabIn(said);
  if (!width || !slab) return [];
  return roughOpening(
    { width, height: opening[2] === undefined ? null : inchesOf(said.figures[Number(opening[2])]) },
    slab,
  );
};

/** `2/8`, `2868` or inches; a height nobody said is 6/8, the usual one. */
function slabIn(said: Said): { width: Fraction; height: Fraction } | null {
  const match = SLAB.exec(said.words);
  if (!match) return null;
  const feet = (f: number, i: number) => new Fraction(f * 12 + i);
  if (match[1])
    return { width: feet(+match[1], +match[2]!), height: match[3] ? feet(+match[3], +match[4]!) : feet(6, 8) };
  if (match[5] !== undefined) {
    const digits = /^([2-3])(\d)([67])([68])$/.exec(said.figures[Number(match[5])]!.value.toFraction());
    return digits ? { width: feet(+digits[1]!, +digits[2]!), height: feet(+digits[3]!, +digits[4]!) } : null;
  }
  // "The door's a two eight": feet and inches.
  if (match[8] !== undefined) {
    const [wide, over] = [match[8], match[9]].map((id) => said.figures[Number(id)]!.value.valueOf());
    const called = (wide === 2 || wide === 3) && Number.isInteger(over) && over! < 12;
    return called ? { width: feet(wide, over!), height: feet(6, 8) } : null;
  }
  const width = inchesOf(said.figures[Number(match[6] ?? match[7])]);
  return width && width.compare(16) > 0 && width.compare(48) < 0 ? { width, height: feet(6, 8) } : null;
}
