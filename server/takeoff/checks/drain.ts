import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const SOURCE = 'IPC Table 704.1; 1/4 in a foot up to 3 in is the safe reading (UPC 708 allows less only for 4 in)';

export interface Drain {
  /** Nominal inches; null where not said. */
  size: Fraction | null;
  /** Feet; null where not said. */
  run: Fraction | null;
  /** Inches over the whole run; null where not said. */
  fall: Fraction | null;
  /** Inches a foot, where it was said straight. */
  slope?: Fraction | null;
}

/** Least slope, inches a foot: 1/4 up to 3 in, 1/8 for 4 to 6, 1/16 from 8. */
export const leastSlope = (size: Fraction): Fraction =>
  new Fraction(1, size.compare(3) <= 0 ? 4 : size.compare(8) < 0 ? 8 : 16);

/** Drain slope. Unknown pipe size counts as small: the steeper limit. */
export function drainSlope({ size, run, fall, slope }: Drain): Verdict {
  const of = 'drain slope';
  const actual = slope ?? (run && fall && run.compare(0) > 0 ? fall.div(run) : null);
  if (!actual) return cannotSay(of, run ? 'how much it falls over the run' : 'the run and its fall', SOURCE);
  // Steeper than 45 degrees is no drain run: one of the figures is another's, and would pass every limit.
  if (actual.compare(12) > 0) return cannotSay(of, 'the run and its fall: a fall longer than its run was read', SOURCE);
  const verdict = compare({
    of,
    figure: actual,
    limit: leastSlope(size ?? new Fraction(2)),
    unit: 'in/ft',
    must: 'be at least',
    source: SOURCE,
    working: slope ? undefined : `${fall!.toString()} in over ${run!.toString()} ft`,
  });
  if (size === null && verdict.result === 'does not fit' && actual.compare(leastSlope(new Fraction(4))) >= 0)
    return { ...verdict, result: 'cannot say', missing: 'the pipe size' };
  return verdict;
}
