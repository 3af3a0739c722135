import Fraction from 'fraction.js';
import { compare, dependsOn, type Verdict } from './verdict.ts';

/** Receptacle to the outside edge of a bathroom basin, inches (NEC 210.52(D)). */
export const basinReceptacle = (away: Fraction): Verdict =>
  compare({
    of: 'receptacle at basin',
    figure: away,
    limit: new Fraction(36),
    unit: 'in',
    must: 'be at most',
    source: 'NEC 210.52(D)',
  });

/**
 * A receptacle without GFCI protection near a sink, tub or shower, inches away (NEC 210.8(A)). Within 6 ft it fails;
 * farther off the distance alone proves nothing, since whole rooms need it.
 */
export function unprotected(away: Fraction): Verdict {
  const verdict = compare({
    of: 'receptacle without GFCI',
    figure: away,
    limit: new Fraction(72),
    unit: 'in',
    must: 'be at least',
    source: 'NEC 210.8(A): GFCI within 6 ft of a sink, tub or shower; more places in newer editions',
  });
  return verdict.result === 'fits'
    ? dependsOn(
        verdict,
        'which room: bathrooms, kitchens, laundries, garages, basements and outdoors need GFCI anywhere',
      )
    : verdict;
}

/** From one counter receptacle to the next, inches: no point over 24 in from one (NEC 210.52(C)(1)). */
export const counterSpacing = (apart: Fraction): Verdict =>
  compare({
    of: 'counter receptacles',
    figure: apart,
    limit: new Fraction(48),
    unit: 'in',
    must: 'be at most',
    source: 'NEC 210.52(C)(1)',
    working: 'no point over 24 in from a receptacle: 48 in between two',
  });
