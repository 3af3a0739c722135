import type Fraction from 'fraction.js';
import type { Check } from '../../jobs/types.ts';

/** A check before the list puts its item's number on it. */
export type Verdict = Omit<Check, 'item'>;

export const CODE = 'local code and the licensed trade decide';

interface Comparison {
  of: string;
  figure: Fraction;
  limit: Fraction;
  unit: string;
  must: 'be at most' | 'be at least' | 'be under';
  source: string;
  working?: string;
}

/**
 * A figure against its limit, compared exactly. Shown figures are rounded to the side that looks worse, so that a
 * rounded one never seems to pass.
 */
export function compare({ of, figure, limit, unit, must, source, working }: Comparison): Verdict {
  // No size is below nothing: what was read is not what was meant, and would pass every upper limit.
  if (figure.compare(0) < 0) return cannotSay(of, 'a figure that is not below 0', source);
  const least = must === 'be at least';
  const way = figure.compare(limit);
  const fits = least ? way >= 0 : must === 'be under' ? way < 0 : way <= 0;
  return {
    of,
    result: fits ? 'fits' : 'does not fit',
    // On the limit both are shown alike.
    figure: `${decimal(figure, least === (way !== 0) ? 'down' : 'up')} ${unit}`.trim(),
    limit: `${decimal(limit, least ? 'up' : 'down')} ${unit}`.trim(),
    source: `${source}; ${CODE}`,
    missing: null,
    ...(working && { working }),
  };
}

/** A figure that must lie between two limits, shown against the one that it breaks, else against the lower. */
export function within({
  least,
  most,
  ...rest
}: Omit<Comparison, 'limit' | 'must'> & { least: Fraction; most: Fraction }): Verdict {
  const low = compare({ ...rest, limit: least, must: 'be at least' });
  const high = compare({ ...rest, limit: most, must: 'be at most' });
  return low.result === 'fits' && high.result !== 'fits' ? high : low;
}

/** Two readings of a rule disagree about the figure: it depends on what was not said. */
export const dependsOn = (verdict: Verdict, missing: string): Verdict => ({
  ...verdict,
  result: 'cannot say',
  missing,
});

/** Something that must be known was not said: no guess. */
export const cannotSay = (of: string, missing: string, source: string, known: Partial<Verdict> = {}): Verdict => ({
  of,
  result: 'cannot say',
  figure: '',
  limit: '',
  source: `${source}; ${CODE}`,
  ...known,
  missing,
});

const PLACES = 10_000;

/** At most four decimals, rounded up or down where it does not come out even. */
export function decimal(value: Fraction, way: 'up' | 'down'): string {
  const scaled = value.mul(PLACES);
  return String((way === 'up' ? scaled.ceil() : scaled.floor()).valueOf() / PLACES);
}
