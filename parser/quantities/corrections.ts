import { takeBackAt } from '../hearing/takeback.ts';
import type { Token } from '../types.ts';
import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { wordSet } from './words.ts';

/** As many words may stand between a number and the words that take it back: "six cans of the grey foam, no wait, five". */
const REACH = 10;
/** "Two cans, well three": "well" takes back only what was said just now. */
const NEAR = 5;
/** Words between the taking-back and the new number that say nothing of their own. */
const PADDING = wordSet(
  "just only that it get like let's lets do better going go with about make more to be i mean it's its that's is need a an the of at say call , . …",
);
/** A new thought between them: what follows is no correction. */
const JOINTS = wordSet('and but then also plus so');

/** Before "make it" where somebody does or will: "I make it fourteen" measures, "they can't make it by ten" is no number. */
const MAKER =
  /^(?:i|we|you|he|she|they|who|to|can|could|can't|cant|will|would|won't|wont|may|might|must|should|gonna|not|don't|never|i'll|we'll|you'll|he'll|she'll|they'll|i'd|we'd|he'd|they'd|didn't|'ll)$/;

/** "A dozen anchors, make it two dozen", "two gallons of primer make it three". */
const madeIt = (all: readonly Token[], k: number) =>
  all[k]!.word === 'make' && all[k + 1]?.word === 'it' && !MAKER.test(all[k - 1]?.word ?? '')
    ? ({ until: k + 2, scope: 'number' } as const)
    : null;

/** "Six cans of foam, no wait, five": the later number stands, in the earlier one's place and with its unit. */
export function correct(line: Line, all: readonly Token[], drafts: readonly Draft[]): Draft[] {
  const out: Draft[] = [];
  for (let i = 0; i < drafts.length; i++) {
    const next = drafts[i]!;
    const last = out.at(-1);
    const marker = last ? markerBetween(line, all, last, next) : null;
    const counted = last && marker !== null ? countBefore(line, out, next) : null;
    if (counted) {
      standFor(line, next, [counted], marker!);
      // Behind the goods' own figures, in whose place it does not stand.
      out.splice(out.indexOf(counted), 1);
      out.push(next);
      continue;
    }
    const back = last;
    if (!back || marker === null || !sameSort(back, next) || isOfGoods(line, back, next)) {
      out.push(next);
      continue;
    }
    const sizes = tiedTo(drafts, i, next).length;
    const taken = sizes > 1 ? out.slice(-sizes) : [back];
    const whole = taken.every((d) => d.group?.id === back.group?.id) ? taken : [back];
    out.length -= whole.length;
    if (whole.length === 1 && back.group && !next.group) next.group = back.group;
    if (whole.length === 1) keepLarger(back, next);
    standFor(line, next, whole, marker);
    out.push(next);
  }
  return out;
}

/** Under so many inches a part said alone may stand for all that was said before it. */
const SURELY_PART = 4;

/** "Sixty two and a half, no, five eighths", "ten foot six, no, seven": only the part is taken back, the inches or feet stay. */
function keepLarger(back: Draft, next: Draft): void {
  const inches = next.unitFrom !== 'said' || next.unit?.unit === 'in';
  const isInches = back.unit?.unit === 'in' && inches;
  if (isInches && back.rule === 'quantity/feet-inches' && next.unitFrom !== 'said' && next.n < 12 * next.d) {
    const feet = Math.floor(back.n / (12 * back.d));
    Object.assign(next, { n: feet * 12 * next.d + next.n, shape: 'mixed', rule: back.rule });
  } else if (isInches && back.shape === 'mixed' && back.n > back.d && next.shape === 'fraction') {
    const whole = Math.floor(back.n / back.d);
    if (whole < SURELY_PART) next.doubt = `${whole}-${next.n}/${next.d} or ${next.n}/${next.d}?`;
    Object.assign(next, { n: whole * next.d + next.n, shape: 'mixed' });
  }
}

/** The later reading stands for the earlier ones, which are gone with the words that took them back. */
function standFor(line: Line, next: Draft, gone: readonly Draft[], marker: number): void {
  const [first, back] = [gone[0]!, gone.at(-1)!];
  if (next.unitFrom !== 'said' && back.unitFrom === 'said') {
    next.unit = back.unit;
    next.unitFrom = 'shared';
  }
  next.instead = [
    ...gone.flatMap((d) => d.instead ?? []),
    { from: line.place(first.from), until: line.place(back.until - 1) + 1 },
    { from: marker, until: line.place(next.from) },
  ];
  next.rule += '+taken-back';
}

/** What may stand between a count and the size of what is counted: "five boxes of the 12x24", "six of them 2x4s". */
const OF_THE = wordSet('of the those them these that more new our my -');
const LUMBER = /^(?:1|2|4|6)x(?:2|3|4|6|8|10|12)$/;

/**
 * "Five boxes of the 12x24, no make it six", "five sheets of half inch, sorry, seven": the figures said last are the
 * goods' size, and the count before them is what the new number stands for. Null where the size itself was put right.
 */
function countBefore(line: Line, said: readonly Draft[], next: Draft): Draft | null {
  const isNumber = next.d === 1 && !next.group && (next.unitFrom !== 'said' || isCountUnit(next));
  if (!isNumber) return null;
  let k = said.length - 1;
  const size = said[k]!;
  const group = size.group?.kind === 'pair' ? size.group.id : null;
  while (group !== null && said[k - 1]?.group?.id === group) k--;
  const figures = said.slice(k);
  const count = said[k - 1];
  if (count?.d !== 1 || count.group || !isCountUnit(count)) return null;
  for (let w = count.until; w < figures[0]!.from; w++) if (!OF_THE.has(line.word(w))) return null;
  const part = size.d > 1 && size.n < size.d;
  if (group === null && !part && (size.unit?.kind !== 'length' || size.unitFrom !== 'said')) return null;
  const packed = count.unit?.kind === 'pack';
  // "Five sheets of half inch plywood, sorry, seven": no half inch is taken for seven.
  if (next.unit && isCountUnit(next)) return !packed || next.unit.unit === count.unit!.unit ? count : null;
  if (
    group !== null &&
    (packed ||
      LUMBER.test(
        figures
          .slice(0, 2)
          .map((f) => `${f.n / f.d}`)
          .join('x'),
      ))
  )
    return count;
  const [before, after] = [count.n, size.n / size.d];
  const apart = (a: number, b: number) => Math.max(a / b, b / a);
  return apart(next.n, before) <= apart(next.n, after) ? count : null;
}

const isCountUnit = ({ unit }: Draft) => unit === null || /^(?:pack|count)$/.test(unit.kind);

const tiedTo = (drafts: readonly Draft[], i: number, first: Draft) =>
  first.group ? drafts.slice(i, i + 4).filter((d) => d.group?.id === first.group!.id) : [first];

const sameSort = (a: Draft, b: Draft) =>
  a.unit === null || b.unit === null || a.unit.kind === b.unit.kind || b.unitFrom === 'implied';

/** "An inch and a half, no, get two": a count of goods takes back no size. */
const isOfGoods = (line: Line, back: Draft, next: Draft) =>
  next.unit === null &&
  /^(?:get|need|want|order|buy|bring|grab)$/.test(line.word(next.from - 1)) &&
  back.unit !== null &&
  !/^(?:pack|count)$/.test(back.unit.kind);

/** Where in all the note's tokens the taking-back starts, its comma with it. */
function markerBetween(line: Line, all: readonly Token[], back: Draft, next: Draft): number | null {
  if (next.from - back.until > REACH || next.from < back.until) return null;
  const end = line.place(next.from);
  for (let k = line.place(back.until - 1) + 1; k < end; k++) {
    if (JOINTS.has(all[k]!.word) || all[k]!.kind === 'break') return null;
    // "Fourteen six, call it sixteen": rounded up to be safe; both were said.
    if (all[k]!.word === 'call') continue;
    const marker = takeBackAt(all, k) ?? madeIt(all, k);
    if (all[k]!.word === 'well' && k > line.place(back.until - 1) + NEAR) return null;
    if (marker?.scope !== 'number' || marker.until > end) continue;
    if (all.slice(marker.until, end).every((t) => t.skip || PADDING.has(t.word)))
      return all[k - 1]!.text === ',' ? k - 1 : k;
  }
  return null;
}
