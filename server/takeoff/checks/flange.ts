import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const SOURCE = 'wax ring makers and trade; no model-code height';
const OF = 'flange height';

/** A regular ring serves a flange from flush to this far under the finished floor, inches. */
const MOST_BELOW = new Fraction(1, 4);
/** Over this far above the floor a bowl rocks, inches (makers and trade, the safe end). */
const MOST_ABOVE = new Fraction(1, 4);

/**
 * Closet flange against the finished floor with a regular wax ring.
 *
 * @param below inches that the top of the flange lies under the finished floor, negative above it; null if unknown
 */
export function flangeHeight(below: Fraction | null, working?: string): Verdict {
  if (below === null) return cannotSay(OF, 'how the flange sits to the finished floor', SOURCE);
  const above = below.compare(0) < 0;
  const verdict = compare({
    of: OF,
    figure: below.abs(),
    limit: above ? MOST_ABOVE : MOST_BELOW,
    unit: `in ${above ? 'above' : 'below'} the finished floor`,
    must: 'be at most',
    source: SOURCE,
    working,
  });
  if (verdict.result === 'fits') return verdict;
  const way = above ? 'lower the flange or shim the bowl' : 'needs a flange extender or an extra-thick ring';
  return { ...verdict, working: [working, way].filter(Boolean).join('; ') };
}

/** With an extra-thick ring the regular ring's limit does not hold, and each maker prints its own. */
export const thickRing = (regular: Verdict): Verdict =>
  regular.result === 'fits'
    ? regular
    : { ...regular, result: 'cannot say', missing: 'how deep the extra-thick ring reaches: its box tells' };
