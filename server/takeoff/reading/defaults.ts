import Fraction from 'fraction.js';
import { BAG_YIELD } from '../calculators/concrete.ts';
import type { Ratio } from './ratios.ts';

interface Usual {
  goods: RegExp;
  /** Only where the pack has this size. */
  size?: string;
  ratio: Omit<Ratio, 'at'>;
}

/** How goods are sold where nobody said it; each is the safe end of what is published, named in the working. */
export const USUAL_PACK: readonly Usual[] = [
  ...Object.entries(BAG_YIELD).map(([pounds, holds]) => ({
    goods: /concrete|mortar/,
    size: `${pounds} lb`,
    ratio: { value: holds, unit: 'cu ft', per: 'bag' },
  })),
  { goods: /concrete/, ratio: { value: new Fraction('0.6'), unit: 'cu ft', per: 'bag' } },
  {
    goods: /drywall|moisture board|plywood|osb|sheathing|bead ?board/,
    ratio: { value: new Fraction(32), unit: 'sq ft', per: 'sheet' },
  },
  { goods: /backer|cement board/, ratio: { value: new Fraction(15), unit: 'sq ft', per: 'sheet' } },
  { goods: /shingle/, ratio: { value: new Fraction(3), unit: 'bundle', per: 'square' } },
  {
    goods: /gravel|mulch|sand|stone|soil|dirt|base|compost/,
    ratio: { value: new Fraction(27), unit: 'cu ft', per: 'cu yd' },
  },
];
