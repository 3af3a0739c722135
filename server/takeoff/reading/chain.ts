import Fraction from 'fraction.js';
import { convert, unitNamed } from '../../../parser/quantities/units.ts';
import { show } from '../calculators/reckoned.ts';
import type { Ratio } from './ratios.ts';

/** One turn from a unit into the next. */
export interface Step {
  to: string;
  factor: Fraction;
  said: string;
  /** A plain conversion, not worth a line in the working. */
  silent: boolean;
}

/** The way from an extent to what is bought. */
export interface Chain {
  through: Step[];
  /** The unit that the amount is kept in. */
  unit: string;
  pack: { unit: string; holds: Fraction } | null;
  /** A unit that a shop sells was reached, not only another measure. */
  bought: boolean;
}

const SOLD = (unit: string) => {
  const kind = unitNamed(unit)?.kind;
  if (kind === 'pack' || /^(?:stick|bale|jug)$/.test(unit)) return 3;
  if (unit === 'each') return 2;
  return kind === 'volume' || kind === 'weight' ? 1 : 0;
};

/**
 * Finds how said ratios lead from `from` (sq ft, ft, cu ft) to what is bought: packs before pieces before measures.
 * "350 a gallon, five gallon buckets": sq ft -> gal -> bucket. Null where nothing sold is reached.
 */
export function chain(from: string, ratios: readonly Ratio[]): Chain | null {
  const routes = new Map<string, Route>([[from, { steps: [], last: null }]]);
  const open = [from];
  for (let unit = open.shift(); unit !== undefined; unit = open.shift()) {
    const route = routes.get(unit)!;
    for (const ratio of ratios) {
      const next = turn(unit, ratio);
      if (!next || routes.has(next.step.to)) continue;
      const steps = next.silent ? [...route.steps, next.silent, next.step] : [...route.steps, next.step];
      routes.set(next.step.to, { steps, last: next.holds });
      open.push(next.step.to);
    }
  }
  let best: string | null = null;
  for (const unit of routes.keys()) {
    const [rank, top] = [SOLD(unit), best === null ? 0 : SOLD(best)];
    if (
      rank > top ||
      (rank === top && rank > 0 && best !== null && routes.get(unit)!.steps.length > routes.get(best)!.steps.length)
    )
      best = unit;
  }
  if (best === null || best === from) return null;
  const { steps, last } = routes.get(best)!;
  // The last turn into whole packs is left to the buyer: the amount stays in what a pack holds.
  const kept = last ? steps.slice(0, -1) : steps;
  const unit = kept.at(-1)?.to ?? from;
  return {
    through: kept,
    unit: last ? unit : best,
    pack: last ? { unit: best, holds: last } : null,
    bought: SOLD(best) > 1,
  };
}

interface Route {
  steps: Step[];
  /** What one of the last unit holds of the one before; null where the turn went the other way. */
  last: Fraction | null;
}

/** One ratio used from a unit: into its `per`, or from its `per` into what that holds; converting first where needed. */
function turn(unit: string, ratio: Ratio): { silent: Step | null; step: Step; holds: Fraction | null } | null {
  const measured = ratio.unit ?? unit;
  const into = convert(new Fraction(1), unit, measured);
  if (into && ratio.per !== unit && ratio.value.compare(0) > 0) {
    const step = {
      to: ratio.per,
      factor: ratio.value.inverse(),
      said: `${show(ratio.value)} ${measured} a ${ratio.per}`,
      silent: false,
    };
    return { silent: same(unit, measured) ? null : conversion(measured, into), step, holds: ratio.value };
  }
  const out = convert(new Fraction(1), unit, ratio.per);
  if (!out || measured === unit) return null;
  const step = {
    to: measured,
    factor: ratio.value,
    said: `${show(ratio.value)} ${measured === 'each' ? '' : measured} a ${ratio.per}`.replace('  ', ' '),
    silent: false,
  };
  return { silent: same(unit, ratio.per) ? null : conversion(ratio.per, out), step, holds: null };
}

const same = (a: string, b: string) => a === b;
const conversion = (to: string, factor: Fraction): Step => ({ to, factor, said: '', silent: true });
