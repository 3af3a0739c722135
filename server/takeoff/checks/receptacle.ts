import Fraction from 'fraction.js';
import { compare, decimal, dependsOn, type Verdict } from './verdict.ts';

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

const ALONG_WALL = 'NEC 210.52(A)(1), (2)';

/** Receptacles that a wall of so many inches between doors needs: none under 2 ft, then one for every 12 ft begun. */
export const wallNeeds = (wall: Fraction): number => (wall.compare(24) < 0 ? 0 : wall.div(144).ceil().valueOf());

/**
 * So many receptacles along a wall between doors, inches (NEC 210.52(A)): no point over 6 ft from one. Too few fail;
 * enough of them prove nothing until it is known where they stand.
 */
export function wallReceptacles(wall: Fraction, count: number): Verdict {
  const verdict = compare({
    of: 'receptacles along the wall',
    figure: new Fraction(count),
    limit: new Fraction(wallNeeds(wall)),
    unit: '',
    must: 'be at least',
    source: ALONG_WALL,
    working: `${decimal(wall.div(12), 'up')} ft of wall, 6 ft to each side of a receptacle`,
  });
  return verdict.result === 'fits'
    ? dependsOn(verdict, 'where they stand: within 6 ft of each door and 12 ft of one another')
    : verdict;
}

/** From one receptacle along a wall to the next, inches: no point over 6 ft from one. */
export const wallSpacing = (apart: Fraction): Verdict =>
  compare({
    of: 'receptacle spacing along the wall',
    figure: apart,
    limit: new Fraction(144),
    unit: 'in',
    must: 'be at most',
    source: ALONG_WALL,
    working: 'no point over 6 ft from a receptacle: 12 ft between two',
  });

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
