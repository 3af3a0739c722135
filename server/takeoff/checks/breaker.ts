import Fraction from 'fraction.js';
import { cannotSay, compare, dependsOn, type Verdict } from './verdict.ts';

const SOURCE = 'NEC 240.4(D)';
const OF = 'wire size and breaker';

/** Most amps of the overcurrent device for small copper conductors, NEC 240.4(D)(3), (5), (7). */
const COPPER: Readonly<Record<number, number>> = { 14: 15, 12: 20, 10: 30 };
/** Aluminum or copper-clad, NEC 240.4(D)(4), (6). */
const ALUMINUM: Readonly<Record<number, number>> = { 12: 15, 10: 25 };
/** Larger copper, 60 C column (cable, NEC 334.80) and 75 C column (wire in conduit, 110.14(C)), NEC Table 310.16. */
const COPPER_60C: Readonly<Record<number, number>> = { 8: 40, 6: 55 };
const COPPER_75C: Readonly<Record<number, number>> = { 8: 50, 6: 65 };
const COLUMNS = 'NEC Table 310.16, 60 C column for cable (334.80), 75 C where the terminals allow it';

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
  const check = (limit: number, source: string) =>
    compare({
      of: OF,
      figure: new Fraction(amps),
      limit: new Fraction(limit),
      unit: 'A',
      must: 'be at most',
      source,
      working: `${gauge} AWG ${metal}: ${limit} A at most`,
    });
  const warm = metal === 'copper' ? COPPER_75C[gauge] : undefined;
  if (warm === undefined) return check(most, SOURCE);
  const cable = check(most, COLUMNS);
  // Between the columns, and for the next standard size up (240.4(B)), how it is run decides.
  return cable.result !== 'fits' && check(warm, COLUMNS).result === 'fits'
    ? dependsOn(cable, 'whether it is cable or wire in conduit, and its load: the electrician decides')
    : cable;
}
