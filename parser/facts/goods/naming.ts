import type { MaterialStatus, Quantity } from '../../types.ts';
import { dot, type Weights } from '../../weights.ts';
import type { Chunk } from '../chunks.ts';
import type { Lot } from './lot.ts';

/** A lot where it stands. */
export interface Placed {
  lot: Lot;
  /** Which clause of the talk. */
  at: number;
}

/** Words that may name a lot: its own, or goods told before it. */
export interface Naming {
  chunks: Chunk[];
  sizes: Quantity[];
  code?: string;
  /** It is the lot's own name. */
  own: boolean;
  /** Where the lot's own name ends in the text, past which the next lot may stand. */
  end?: number;
  /** What speaks for it and against it. */
  features: string[];
}

/** Goods that an earlier lot was of. */
export interface Told {
  placed: Placed;
  naming: Naming;
  status: MaterialStatus;
}

/** The name with the most for it; null where a lot has none. */
export function bestNaming(namings: readonly Naming[], weights: Weights): Naming | null {
  let best: Naming | null = null;
  let top = Number.NEGATIVE_INFINITY;
  for (const naming of namings) {
    const score = dot(weights, naming.features);
    if (score > top) [best, top] = [naming, score];
  }
  return best;
}
