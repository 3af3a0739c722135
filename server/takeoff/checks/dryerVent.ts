import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

/** 35 ft of 4 in duct, 5 ft off for each 90 and 2-1/2 ft for each 45 elbow; editions before 2009 said 25 ft. */
const SOURCE = 'IRC M1502.4.6 (M1502.4.4 in older editions; the dryer maker may say otherwise)';

/** Developed length of a dryer duct, feet, against 35. */
export function dryerVent(run: Fraction | null, nineties: number | null, fortyFives: number): Verdict {
  const of = 'dryer vent length';
  if (!run) return cannotSay(of, 'the length of the duct', SOURCE);
  const bends = new Fraction(5).mul(nineties ?? 0).add(new Fraction('2.5').mul(fortyFives));
  const verdict = compare({
    of,
    figure: run.add(bends),
    limit: new Fraction(35),
    unit: 'ft',
    must: 'be at most',
    source: SOURCE,
    working: `${run.toString()} ft + ${bends.toString()} ft for elbows`,
  });
  if (nineties === null && verdict.result === 'fits')
    return { ...verdict, result: 'cannot say', missing: 'how many elbows' };
  return verdict;
}
