import type Fraction from 'fraction.js';
import { absurdLength, fraction, type Refusal, refuse, show } from './reckoned.ts';

/** A whole number of pieces with its arithmetic. Lengths are inches. */
export interface Counted {
  ok: true;
  count: number;
  working: string;
}

/** More pieces than this in one row is a slip. Common practice, no source. */
const MOST = 2000;
/** Feet: a fence may run along a whole lot. Common practice, no source. */
const LONGEST_RUN = fraction(2000);
/** Feet between two members; further apart is a slip. Common practice, no source. */
const WIDEST = fraction(100);

function counted(count: number, working: string): Counted | Refusal {
  return count > MOST ? refuse(`${count} pieces in one row: is that right?`) : { ok: true, count, working };
}

/** Null where members can stand so far apart, inches; else why not. */
export function absurdSpacing(step: Fraction): Refusal | null {
  return absurdLength(step.div(12), 'a spacing', WIDEST);
}

function absurdRow(run: Fraction, step: Fraction): Refusal | null {
  return absurdSpacing(step) ?? absurdLength(run.div(12), 'a run', LONGEST_RUN);
}

/** Bays between members no further apart than `spacing`: the run over the spacing, up. */
export const bays = (run: Fraction, spacing: Fraction): number => run.div(spacing).ceil().valueOf();

/**
 * Members at a spacing with one at each end: studs, joists, rafters, posts. `ends` false leaves out both end members
 * (joists between walls, hooks on a rail). Refuses empty or absurd runs.
 */
export function atSpacing(run: Fraction, spacing: Fraction, ends = true): Counted | Refusal {
  const silly = absurdRow(run, spacing);
  if (silly) return silly;
  const between = bays(run, spacing);
  const count = ends ? between + 1 : Math.max(1, between - 1);
  return counted(
    count,
    `${show(run)} in / ${show(spacing)} in = ${show(run.div(spacing))}, so ${between} bays ${ends ? '+' : '-'} 1 = ${count}`,
  );
}

/** Pieces side by side with a gap between, the last one cut to fit: deck boards, pickets, slats. */
export function sideBySide(run: Fraction, width: Fraction, gap: Fraction): Counted | Refusal {
  if (width.compare(0) <= 0) return refuse('a board must be wider than 0');
  if (gap.compare(0) < 0) return refuse('a gap cannot be negative');
  const silly = absurdRow(run, width);
  if (silly) return silly;
  if (width.compare(run) > 0)
    return refuse(`a board of ${show(width)} in is wider than ${show(run)} in: is that right?`);
  const exact = run.add(gap).div(width.add(gap));
  const count = exact.ceil().valueOf();
  return counted(
    count,
    `(${show(run)} + ${show(gap)}) / (${show(width)} + ${show(gap)}) in = ${show(exact)}${exact.d === 1n ? '' : `, so ${count}`}`,
  );
}

/** Fewest pieces that leave no gap over `most` between two ends: balusters. */
export function gapsUnder(clear: Fraction, width: Fraction, most: Fraction): Counted | Refusal {
  if (width.compare(0) <= 0 || most.compare(0) <= 0) return refuse('a width and a gap must be more than 0');
  const silly = absurdRow(clear, width);
  if (silly) return silly;
  if (width.compare(clear) > 0)
    return refuse(`a baluster of ${show(width)} in is wider than ${show(clear)} in: is that right?`);
  const exact = clear.sub(most).div(width.add(most));
  const count = Math.max(0, exact.ceil().valueOf());
  const gap = clear.sub(width.mul(count)).div(count + 1);
  return counted(
    count,
    `(${show(clear)} - ${show(most)}) / (${show(width)} + ${show(most)}) in = ${show(exact)}, so ${count}; gap ${show(gap)} in`,
  );
}
