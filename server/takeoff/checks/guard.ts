import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict, within } from './verdict.ts';

const SOURCE = 'IRC R312.1';
/** A guard is needed over a drop of more than this, inches (IRC R312.1.1). */
const DROP = new Fraction(30);
const HEIGHT = { floor: new Fraction(36), stair: new Fraction(34) } as const;
const SPHERE = { floor: new Fraction(4), stair: new Fraction('4.375'), triangle: new Fraction(6) } as const;

export interface Guard {
  /** Inches from the walking surface to what is below; null where not said. */
  drop: Fraction | null;
  /** Inches from the walking surface to the top of the rail; null where not said. */
  height: Fraction | null;
  on: 'floor' | 'stair';
}

/** Guard height. Low surfaces need none: with a drop of 30 in or less anything fits. */
export function guardHeight({ drop, height, on }: Guard): Verdict {
  const of = 'guard height';
  const limit = HEIGHT[on];
  const low = drop !== null && drop.compare(DROP) <= 0;
  if (height === null)
    return low
      ? compare({ of: 'guard needed', figure: drop, limit: DROP, unit: 'in drop', must: 'be at most', source: SOURCE })
      : cannotSay(of, 'the height of the rail', SOURCE, { limit: `${limit.toString()} in` });
  const verdict = compare({ of, figure: height, limit, unit: 'in', must: 'be at least', source: `${SOURCE}.2` });
  if (verdict.result === 'fits') return verdict;
  if (low) return { ...verdict, result: 'fits', working: `a drop of ${drop.toString()} in needs no guard` };
  if (drop === null) return { ...verdict, working: 'a guard is needed where the drop is over 30 in' };
  return verdict;
}

/** A ball of this size must not pass between balusters: a gap as wide as the ball lets it through. */
export const balusterGap = (gap: Fraction, at: keyof typeof SPHERE): Verdict =>
  compare({
    of: 'baluster gap',
    figure: gap,
    limit: SPHERE[at],
    unit: 'in',
    must: 'be under',
    source: 'IRC R312.1.3',
    working: `a ${SPHERE[at].toString()} in ball must not pass`,
  });

/** A handrail on a stair, inches above the nosings (IRC R311.7.8.1). */
export const handrailHeight = (height: Fraction): Verdict =>
  within({
    of: 'handrail height',
    figure: height,
    least: new Fraction(34),
    most: new Fraction(38),
    unit: 'in',
    source: 'IRC R311.7.8.1',
    working: 'between 34 and 38 in above the nosings',
  });
