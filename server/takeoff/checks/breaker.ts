import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const SOURCE = 'NEC 240.4(D)';
const OF = 'wire size and breaker';

/** Most amps of the overcurrent device for small copper conductors, NEC 240.4(D)(3), (5), (7). */
const COPPER: Readonly<Record<number, number>> = { 14: 15, 12: 20, 10: 30 };
/** Aluminum or copper-clad, NEC 240.4(D)(4), (6). */
const ALUMINUM: Readonly<Record<number, number>> = { 12: 15, 10: 25 };
/** Larger copper in cable, 60 C column, NEC Table 310.16 and 334.80. */
const COPPER_60C: Readonly<Record<number, number>> = { 8: 40, 6: 55 };

export interface Circuit {
  /** AWG; null where not said. */
  gauge: number | null;
  /** Amps; null where not said. */
  breaker: number | null;
  metal?: 'copper' | 'aluminum';
}

/** May this breaker stand before this wire. */
export function breaker({ gauge, breaker: amps, metal = 'copper' }: Circuit): Verdict {
  if (gauge === null) return cannotSay(OF, 'the wire size', SOURCE, amps === null ? {} : { figure: `${amps} A` });
  const most = metal === 'aluminum' ? ALUMINUM[gauge] : (COPPER[gauge] ?? COPPER_60C[gauge]);
  if (most === undefined) return cannotSay(OF, `the limit for ${gauge} AWG ${metal}: ask the electrician`, SOURCE);
  if (amps === null) return cannotSay(OF, 'the breaker size', SOURCE, { limit: `${most} A` });
  return compare({
    of: OF,
    figure: new Fraction(amps),
    limit: new Fraction(most),
    unit: 'A',
    must: 'be at most',
    source: gauge < 10 ? 'NEC Table 310.16, 60 C column (334.80)' : SOURCE,
    working: `${gauge} AWG ${metal}: ${most} A at most`,
  });
}
