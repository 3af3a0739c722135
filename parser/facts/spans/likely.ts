import { KINDS, type SpanKind } from './features.ts';
import type { Weights } from './weights.ts';

/** Where a chunk may stand: outside any fact, at the begin of one, or further on in one. */
export const PLACES = ['out', 'begin', 'goOn'] as const;

/** A range of chunks where a fact may stand, `from` inclusive, `until` exclusive. */
export interface Range {
  from: number;
  until: number;
  /** How likely it is that a fact of the kind stands here, its ends a little aside included; 0 to 1. */
  likely: number;
}

/** A range with the kind of fact that may stand there. */
export interface Proposal extends Range {
  kind: SpanKind;
}

/** Ranges less likely than this are not looked at. */
const SEEN = 0.02;
/** A range is proposed from this likelihood on: the weighing of the whole span (`whole.ts`) is to choose among many. */
const PROPOSED = 0.1;
/** How much a range's own ends count beside those a little aside, where two that overlap are chosen between. */
const OWN_ENDS = 0.3;
const NEVER = -1e9;

/**
 * What a rule's word counts for beyond its learned weights: those were learned from whole notes, where a rule is wrong
 * more often than in the one plain sentence that people type. Found by trying on annotated notes.
 */
const TRUST = 1;

/** Where facts of each kind may stand. */
export const proposalsIn = (
  features: readonly (readonly string[])[],
  weights: Readonly<Record<SpanKind, Weights>>,
): Proposal[] =>
  KINDS.flatMap((kind) =>
    likelyRanges(features, weights[kind], `r=${kind}B`, TRUST).map((range) => ({ ...range, kind })),
  );

/**
 * Ranges where facts of one kind may stand, none overlapping another, in order: each feature of a chunk pulls, each step
 * from place to place costs, and all ways to place the chunks are counted (forwards and backwards).
 *
 * @param witness the feature that says that a rule has read a fact of this kind from here on
 * @param trust how much is added to a begin where it does
 */
export function likelyRanges(
  features: readonly (readonly string[])[],
  { pulls, steps }: Weights,
  witness: string,
  trust: number,
): Range[] {
  const step = PLACES.map((a) => PLACES.map((b) => (a === 'out' && b === 'goOn' ? NEVER : (steps[`${a}>${b}`] ?? 0))));
  const own = features.map((names) => {
    let [begin, goOn] = [names.includes(witness) ? trust : 0, 0];
    for (const name of names) {
      const pull = pulls.get(name);
      if (!pull) continue;
      begin += pull.begin;
      goOn += pull.goOn;
    }
    return [0, begin, goOn];
  });
  return apart(gathered(exactly(own, step)));
}

/** Each range with its two ends, and how likely it is that a fact has just these. */
function exactly(own: readonly number[][], step: readonly number[][]): Range[] {
  const last = own.length - 1;
  if (last < 0) return [];
  const ahead: number[][] = [[own[0]![0]!, own[0]![1]!, NEVER]];
  for (let t = 1; t <= last; t++)
    ahead.push(PLACES.map((_, b) => own[t]![b]! + logSum(PLACES.map((_, a) => ahead[t - 1]![a]! + step[a]![b]!))));
  const back: number[][] = own.map(() => [0, 0, 0]);
  for (let t = last - 1; t >= 0; t--)
    back[t] = PLACES.map((_, a) => logSum(PLACES.map((_, b) => step[a]![b]! + own[t + 1]![b]! + back[t + 1]![b]!)));
  const all = logSum(ahead[last]!);
  const out: Range[] = [];
  for (let from = 0; from <= last; from++) {
    let here = ahead[from]![1]! - all;
    let place = 1;
    for (let t = from; Math.exp(here + back[t]![place]!) >= SEEN; ) {
      const next = t + 1;
      // It ends where the next chunk is outside, or begins another.
      const ends = t === last ? 0 : logSum([0, 1].map((b) => step[place]![b]! + own[next]![b]! + back[next]![b]!));
      const likely = Math.exp(here + ends);
      if (likely >= SEEN) out.push({ from, until: next, likely });
      if (t === last) break;
      here += step[place]![2]! + own[next]![2]!;
      place = 2;
      t = next;
    }
  }
  return out;
}

/** Each range with the likelihood of all that tell the same fact: they share a third of the shorter, and it is not far longer. */
const gathered = (ranges: readonly Range[]): (Range & { exact: number })[] =>
  ranges.map((one) => ({
    ...one,
    exact: one.likely,
    likely: Math.min(
      1,
      ranges.reduce((sum, other) => (tellsThat(one, other) ? sum + other.likely : sum), 0),
    ),
  }));

function tellsThat(one: Range, other: Range): boolean {
  const [size, otherSize] = [one.until - one.from, other.until - other.from];
  const both = Math.min(one.until, other.until) - Math.max(one.from, other.from);
  return both > 0.3 * Math.min(size, otherSize) && size <= 2.5 * otherSize + 4;
}

/** The likeliest first, then all that do not overlap one taken before. */
function apart(ranges: readonly (Range & { exact: number })[]): Range[] {
  const worth = (r: Range & { exact: number }) => r.likely + OWN_ENDS * r.exact;
  const out: Range[] = [];
  for (const one of [...ranges].sort((a, b) => worth(b) - worth(a))) {
    const { from, until, likely } = one;
    if (likely >= PROPOSED && !out.some((o) => o.from < until && from < o.until)) out.push({ from, until, likely });
  }
  return out.sort((a, b) => a.from - b.from);
}

function logSum(values: readonly number[]): number {
  const top = Math.max(...values);
  return top + Math.log(values.reduce((sum, v) => sum + Math.exp(v - top), 0));
}
