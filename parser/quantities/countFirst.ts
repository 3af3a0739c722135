import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { unitNamed } from './units.ts';
import { ONES, TENS, wordSet } from './words.ts';

/**
 * A count that runs into the size behind it: "order one thirty two by eighty prehung" is one door and no 132, "10 1/2x4
 * lags" ten lags half an inch thick and not ten and a half.
 */
export const countsFirst = (line: Line, drafts: readonly Draft[]): Draft[] =>
  drafts.flatMap((draft, k) => {
    const next = drafts[k + 1];
    const sized = next !== undefined && next.from === draft.until + 1 && BY.has(line.word(draft.until));
    return sized ? (countOfOpenings(line, draft, next) ?? countOfFasteners(line, draft, next) ?? [draft]) : [draft];
  });

const BY = wordSet('by x ×');
const ASKS = wordSet('order get need needs want wants grab bring buy have got and with plus');
const OPENINGS = /^(?:doors?|prehungs?|slabs?|bifolds?|windows?|sashe?s?|sliders?|units?|blanks?)$/;
const FASTENERS = /^(?:lags?|bolts?|screws?|carriage|anchors?|rods?|studs?|spikes?|nails?|dowels?|timberlocks?)$/;
/** So many words behind a size its goods may stand. */
const NEAR = 6;

/** "One thirty two by eighty": doors and windows are named by inches, the width below a hundred. */
function countOfOpenings(line: Line, draft: Draft, next: Draft): Draft[] | null {
  const count = ONES.get(line.word(draft.from));
  const tens = TENS.get(line.word(draft.from + 1));
  if (!draft.inWords || draft.d !== 1 || draft.unit || !count || count > 9 || !tens) return null;
  const width = draft.n - count * 100;
  const isJoint = width >= 12 && width <= 96 && Math.floor(width / 10) * 10 === tens;
  if (!isJoint || next.d !== 1 || next.n < 12 || next.n > 100) return null;
  const asked = ASKS.has(line.word(draft.from - 1)) || /^up$/.test(line.word(draft.from - 1));
  // "One fifty by fifty" is timber in millimetres, which go by fives.
  if (!asked || !(named(line, next.until, OPENINGS) || (width % 5 !== 0 && next.n % 2 === 0))) return null;
  return [
    { ...draft, n: count, until: draft.from + 1, unit: null, unitFrom: 'none', bareUntil: undefined },
    { ...draft, n: width, from: draft.from + 1, unit: null, unitFrom: 'none' },
  ];
}

/** `10 1/2x4in lags`: a fastener is longer than it is thick. */
function countOfFasteners(line: Line, draft: Draft, next: Draft): Draft[] | null {
  const mixed = draft.shape === 'mixed' && !draft.inWords && draft.n > draft.d;
  if (!mixed || draft.n * next.d <= next.n * draft.d || !named(line, next.until, FASTENERS)) return null;
  const whole = Math.floor(draft.n / draft.d);
  const first = { ...draft, n: whole, d: 1, until: draft.from + 1, shape: 'whole' as const, unit: null };
  return [
    { ...first, unitFrom: 'none', bareUntil: undefined },
    { ...draft, n: draft.n - whole * draft.d, from: draft.from + 1, unit: unitNamed('in'), unitFrom: 'implied' },
  ];
}

function named(line: Line, from: number, goods: RegExp): boolean {
  for (let k = from; k < from + NEAR && line.tokens[k] && line.tokens[k]!.kind !== 'break'; k++)
    if (goods.test(line.word(k))) return true;
  return false;
}
