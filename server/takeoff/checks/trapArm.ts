import Fraction from 'fraction.js';
import { cannotSay, compare, dependsOn, type Verdict } from './verdict.ts';

/** Farthest from trap to vent by trap size, feet: UPC Table 1002.2; IPC Table 909.1 and IRC Table P3105.1. */
const STRICT: Readonly<Record<string, string>> = { '5/4': '2.5', '3/2': '3.5', 2: '5', 3: '6', 4: '10' };
const LOOSE: Readonly<Record<string, string>> = { '5/4': '5', '3/2': '6', 2: '8', 3: '12', 4: '16' };
const SOURCE = 'UPC Table 1002.2; IPC Table 909.1 and IRC Table P3105.1 allow more';

/** Trap to vent, feet along the pipe; the two model codes differ, and between them only the adopted one tells. */
export function trapArm(length: Fraction, size: Fraction | null): Verdict {
  const of = 'trap to vent';
  if (!size) return cannotSay(of, 'the size of the trap arm', SOURCE, { figure: `${length.toFraction(true)} ft` });
  const [strict, loose] = [STRICT, LOOSE].map((table) => {
    const limit = table[size.toFraction()];
    return (
      limit &&
      compare({ of, figure: length, limit: new Fraction(limit), unit: 'ft', must: 'be at most', source: SOURCE })
    );
  });
  if (!strict || !loose) return cannotSay(of, `the limit for a ${size.toFraction(true)} in trap arm`, SOURCE);
  if (strict.result === 'fits') return strict;
  return loose.result === 'fits' ? dependsOn(strict, 'which plumbing code is adopted') : loose;
}
