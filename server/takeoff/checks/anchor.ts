import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict, within } from './verdict.ts';

/** Carbide bit for each concrete screw, inches (bits to ANSI B212.15). */
const BIT: Readonly<Record<string, Fraction>> = { '3/16': new Fraction(5, 32), '1/4': new Fraction(3, 16) };
const LEAST = new Fraction(1);
const MOST = new Fraction('1.75');
/** Room for dust under the screw's tip; reports ask for a quarter or a half: the safe end. */
const UNDER_TIP = new Fraction(1, 2);
const SOURCE = 'concrete screw makers: embedment 1 to 1-3/4 in (fastener trade press; minimum also confast.com)';

export interface ConcreteScrew {
  /** All inches; null where not said. */
  diameter: Fraction | null;
  length: Fraction | null;
  /** Thickness of what is fastened. */
  through: Fraction | null;
  hole: Fraction | null;
  holeDepth: Fraction | null;
  /** How far it bites, where that was said straight. */
  bites?: Fraction | null;
}

/** Embedment, hole and hole depth of a concrete screw, each where enough was said. */
export function concreteScrew({ diameter, length, through, hole, holeDepth, bites }: ConcreteScrew): Verdict[] {
  const out: Verdict[] = [];
  const embedment = bites ?? (length && through ? length.sub(through) : null);
  if (embedment)
    out.push(
      within({
        of: 'anchor embedment',
        figure: embedment,
        least: LEAST,
        most: MOST,
        unit: 'in',
        source: SOURCE,
        ...(!bites && { working: `${length!.toFraction(true)} - ${through!.toFraction(true)} in` }),
      }),
    );
  else if (length) out.push(cannotSay('anchor embedment', 'how thick the fastened part is', SOURCE));
  else if (through) out.push(cannotSay('anchor embedment', 'how long the screw is', SOURCE));
  if (hole) out.push(anchorHole(hole, diameter));
  if (holeDepth && embedment)
    out.push(
      compare({
        of: 'anchor hole depth',
        figure: holeDepth,
        limit: embedment.add(UNDER_TIP),
        unit: 'in',
        must: 'be at least',
        source: SOURCE,
        working: `${embedment.toFraction(true)} in of screw + 1/2 in for dust`,
      }),
    );
  return out;
}

/** The bit must be the screw's own: a wider hole holds nothing, a narrower one snaps the screw. */
function anchorHole(hole: Fraction, diameter: Fraction | null): Verdict {
  const of = 'anchor hole';
  const bit = diameter && BIT[diameter.toFraction()];
  if (!diameter) return cannotSay(of, 'the diameter of the screw', SOURCE, { figure: `${hole.toFraction(true)} in` });
  if (!bit) return cannotSay(of, `the bit for a ${diameter.toFraction(true)} in screw: see the box`, SOURCE);
  return within({
    of,
    figure: hole,
    least: bit,
    most: bit,
    unit: 'in',
    source: 'concrete screw makers, carbide bits to ANSI B212.15',
    working: `${diameter.toFraction(true)} in screw takes a ${bit.toFraction(true)} in bit`,
  });
}
