import Fraction from 'fraction.js';
import { cannotSay, compare, dependsOn, type Verdict } from './verdict.ts';

/** Actual depth of softwood lumber by its nominal one, inches (PS 20). */
const ACTUAL: Readonly<Record<string, string>> = { 3: '2.5', 4: '3.5', 6: '5.5', 8: '7.25', 10: '9.25', 12: '11.25' };

/** Actual depth of a `2x` member, inches; null for one that the yard does not sell. */
export const actualDepth = (nominal: Fraction): Fraction | null => {
  const actual = ACTUAL[nominal.toFraction()];
  return actual === undefined ? null : new Fraction(actual);
};

const STUD = 'IRC R602.6';
const JOIST = 'IRC R502.8.1';
const MAKER = 'IRC R502.8.2, R802.7.2';
const smaller = (a: Fraction, b: Fraction) => (a.compare(b) < 0 ? a : b);

export interface Stud {
  /** Actual width, inches. */
  width: Fraction;
  /** In a bearing or outside wall; null where not said. */
  bearing: boolean | null;
  doubled?: boolean;
}

/** Wood left between a hole and the edge, inches: joists IRC R502.8.1, studs IRC R602.6. */
const EDGE = { joist: ['2', 'IRC R502.8.1'], stud: ['0.625', 'IRC R602.6'] } as const;

/** A hole so near the edge of its member that its size does not matter, inches; null where it is far enough. */
export function tooNearEdge(member: keyof typeof EDGE, away: Fraction): Verdict | null {
  const [limit, source] = EDGE[member];
  const verdict = compare({
    of: `hole in ${member}`,
    figure: away,
    limit: new Fraction(limit),
    unit: 'in',
    must: 'be at least',
    source,
    working: 'from the edge of the hole to the edge of the wood',
  });
  return verdict.result === 'fits' ? null : verdict;
}

/** A bored stud: 40 % of its width, 60 % where it bears nothing or is doubled, and 5/8 in left at each edge. */
export function holeInStud(hole: Fraction, { width, bearing, doubled = false }: Stud, working?: string): Verdict {
  const limitAt = (share: string) => smaller(width.mul(share), width.sub('1.25'));
  const check = (share: string) =>
    compare({
      of: 'hole in stud',
      figure: hole,
      limit: limitAt(share),
      unit: 'in',
      must: 'be at most',
      source: STUD,
      working: [working, `${Number(share) * 100} % of ${width.toFraction(true)} in, 5/8 in left at each edge`]
        .filter(Boolean)
        .join('; '),
    });
  if (bearing === false || doubled) return check('0.6');
  if (bearing) return check('0.4');
  const strict = check('0.4');
  return strict.result === 'fits' || check('0.6').result !== 'fits'
    ? strict
    : dependsOn(strict, 'whether the wall bears load');
}

/** A notched stud: 25 % of its width, 40 % where it bears nothing. */
export function notchInStud(depth: Fraction, { width, bearing }: Stud): Verdict {
  const check = (share: string) =>
    compare({
      of: 'notch in stud',
      figure: depth,
      limit: width.mul(share),
      unit: 'in',
      must: 'be at most',
      source: STUD,
      working: `${Number(share) * 100} % of ${width.toFraction(true)} in`,
    });
  if (bearing !== null) return check(bearing ? '0.25' : '0.4');
  const strict = check('0.25');
  return strict.result === 'fits' || check('0.4').result !== 'fits'
    ? strict
    : dependsOn(strict, 'whether the wall bears load');
}

/** A bored joist: a third of its depth, and 2 in left at top and bottom. */
export const holeInJoist = (hole: Fraction, depth: Fraction, working?: string): Verdict =>
  compare({
    of: 'hole in joist',
    figure: hole,
    limit: smaller(depth.div(3), depth.sub(4)),
    unit: 'in',
    must: 'be at most',
    source: JOIST,
    working: [working, `a third of ${depth.toFraction(true)} in, 2 in left at top and bottom`]
      .filter(Boolean)
      .join('; '),
  });

/** A notched joist: a sixth of its depth and never in the middle third of the span, a quarter at its end. */
export function notchInJoist(notch: Fraction, depth: Fraction, at: 'end' | 'middle' | 'outer' | null): Verdict {
  const check = (parts: number) =>
    compare({
      of: 'notch in joist',
      figure: notch,
      limit: depth.div(parts),
      unit: 'in',
      must: 'be at most',
      source: JOIST,
      working: `1/${parts} of ${depth.toFraction(true)} in`,
    });
  if (at === 'end') return check(4);
  const inner = check(6);
  if (at === 'outer') return inner;
  if (at === 'middle')
    return { ...inner, result: 'does not fit', limit: '0 in', working: 'no notch in the middle third of the span' };
  return check(4).result === 'fits' ? dependsOn(inner, 'where along the span the notch is') : check(4);
}

/** Trusses, I-joists and glued members: only the maker's own drawing tells. */
export const engineeredMember = (of: 'hole in joist' | 'notch in joist', figure: Fraction): Verdict =>
  cannotSay(of, "the maker's hole chart: no cut in an engineered member without it", MAKER, {
    figure: `${figure.toFraction(true)} in`,
  });
