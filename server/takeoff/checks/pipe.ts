import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

export type PipeKind = 'pvc' | 'steel' | 'copper' | 'pex' | 'cpvc';

export interface Pipe {
  kind: PipeKind;
  /** Nominal size, inches. */
  size: Fraction;
}

type Table = Readonly<Record<string, string>>;

/** Outside diameters of iron pipe size, which PVC, ABS and threaded steel share: ASTM D1785, D2665, ASME B1.20.1. */
const IRON_OUTSIDE: Table = {
  '3/8': '0.675',
  '1/2': '0.84',
  '3/4': '1.05',
  '1': '1.315',
  '5/4': '1.66',
  '3/2': '1.9',
  '2': '2.375',
  '3': '3.5',
  '4': '4.5',
  '6': '6.625',
};

/** Average inside diameters of schedule 40 PVC: ASTM D1785, D2665. */
const PVC_INSIDE: Table = { '5/4': '1.364', '3/2': '1.592', '2': '2.049', '3': '3.042', '4': '3.998', '6': '6.031' };

/** Inside diameters of PEX: ASTM F876. */
const PEX_INSIDE: Table = { '3/8': '0.36', '1/2': '0.485', '3/4': '0.681', '1': '0.875' };

/** Walls of type K copper, the thickest and so the tightest inside: ASTM B88. */
const COPPER_WALL: Table = {
  '3/8': '0.049',
  '1/2': '0.049',
  '3/4': '0.065',
  '1': '0.065',
  '5/4': '0.065',
  '3/2': '0.072',
  '2': '0.083',
};

const SOURCES: Readonly<Record<PipeKind, string>> = {
  pvc: 'ASTM D1785, D2665',
  steel: 'ASME B1.20.1',
  copper: 'ASTM B88',
  pex: 'ASTM F876',
  cpvc: 'ASTM F876, B88 (copper tube sizes)',
};

const lookUp = (table: Table, size: Fraction): Fraction | null => {
  const found = table[size.toFraction()];
  return found === undefined ? null : new Fraction(found);
};

/** Outside diameter, inches: copper, PEX and CPVC measure an eighth over their name; null for a size not in the table. */
export function outsideOf({ kind, size }: Pipe): Fraction | null {
  if (kind === 'pvc' || kind === 'steel') return lookUp(IRON_OUTSIDE, size);
  return lookUp(COPPER_WALL, size) && size.add(1, 8);
}

/** Inside diameter, inches, the tightest of the kind; null where the table has none. */
export function insideOf(pipe: Pipe): Fraction | null {
  if (pipe.kind === 'pvc') return lookUp(PVC_INSIDE, pipe.size);
  if (pipe.kind === 'pex') return lookUp(PEX_INSIDE, pipe.size);
  const wall = pipe.kind === 'copper' ? lookUp(COPPER_WALL, pipe.size) : null;
  return wall && outsideOf(pipe)!.sub(wall.mul(2));
}

export const nameOf = ({ kind, size }: Pipe): string => `${size.toFraction(true)} in ${kind}`;
export const sourceOf = ({ kind }: Pipe): string => SOURCES[kind];

/** Does a pipe slide through another. */
export function pipeThroughPipe(inner: Pipe, outer: Pipe): Verdict {
  const of = 'pipe through pipe';
  const source = [...new Set([sourceOf(inner), sourceOf(outer)])].join('; ');
  const outside = outsideOf(inner);
  const inside = insideOf(outer);
  if (!outside || !inside) {
    const missing = outside
      ? `the inside of ${nameOf(outer)}: measure it`
      : `the outside of ${nameOf(inner)}: measure it`;
    return cannotSay(of, missing, source);
  }
  return compare({
    of,
    figure: outside,
    limit: inside,
    unit: 'in',
    must: 'be under',
    source,
    working: `${nameOf(inner)} is ${outside.toString()} in outside, ${nameOf(outer)} ${inside.toString()} in inside`,
  });
}

/** Does a pipe go through a hole of this diameter. */
export function pipeThroughHole(pipe: Pipe, hole: Fraction): Verdict {
  const outside = outsideOf(pipe);
  if (!outside) return cannotSay('hole and part', `the outside of ${nameOf(pipe)}: measure it`, sourceOf(pipe));
  return partThroughHole(outside, hole, sourceOf(pipe), `${nameOf(pipe)} is ${outside.toString()} in outside`);
}

/** Does a part of this diameter, inches, go through a hole: it must be smaller. */
export const partThroughHole = (part: Fraction, hole: Fraction, source = 'as measured', working?: string): Verdict =>
  compare({ of: 'hole and part', figure: part, limit: hole, unit: 'in', must: 'be under', source, working });

/** Is a hole as big as the part's maker asks for. */
export const holeAsked = (hole: Fraction, asked: Fraction): Verdict =>
  compare({ of: 'hole and part', figure: hole, limit: asked, unit: 'in', must: 'be at least', source: 'as said' });
