import type { Extent } from './covered.ts';
import type { Length } from './measure.ts';

/** The walls of a room by its sides and height, feet where bare, and what is taken out of them. */
export interface Walls extends Extent {
  height: Length;
  ceiling?: boolean | undefined;
  openings?: { width: Length; height: Length; count: number }[] | undefined;
}

/**
 * What a form may ask to be reckoned, without a note. Bare lengths: places in feet, goods and gaps in inches. `holds` is
 * the square feet that one `unit` covers.
 */
export type Form =
  | (Extent & {
      kind: 'cover';
      unit: string;
      holds: number;
      coats?: number | undefined;
      tile?: [Length, Length] | undefined;
    })
  | (Extent & {
      kind: 'mortar';
      notch: [Length, Length];
      bagPounds?: number | undefined;
      backButtered?: boolean | undefined;
    })
  | (Extent & { kind: 'grout'; tile: [Length, Length]; thickness: Length; joint: Length; bagPounds: number })
  | { kind: 'sealant'; run: Length; bead: [Length, Length]; ounces?: number | undefined; waste?: number | undefined }
  | { kind: 'spacing'; run: Length; spacing: Length; ends?: boolean | undefined }
  | { kind: 'boards'; run: Length; width: Length; gap: Length }
  | { kind: 'balusters'; clear: Length; width: Length; gap?: Length | undefined }
  | { kind: 'holes'; holes: number; diameter: Length; depth: Length; bagPounds: 40 | 50 | 60 | 80 }
  | (Extent & { kind: 'slab'; thick: Length; bagPounds: 40 | 50 | 60 | 80 })
  | (Walls & { kind: 'walls'; unit: string; holds: number; coats?: number | undefined })
  | (Walls & { kind: 'board'; sheet: [Length, Length] })
  | {
      kind: 'run';
      run: Length;
      /** Boxes or fittings at which some is left over to make it up, and how much at each. */
      ends?: number | undefined;
      makeUp?: Length | undefined;
      /** Length of a stick, roll or coil; left out where it is sold by the foot. */
      stock?: Length | undefined;
      waste?: number | undefined;
    }
  | { kind: 'batts'; wall: Length; spacing: Length; height: Length; batt: Length }
  | { kind: 'cutList'; pieces: { length: Length; count: number }[]; stock: Length[]; kerf?: Length | undefined };
