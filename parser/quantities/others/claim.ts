import type Fraction from 'fraction.js';
import type { NotQuantity } from '../../types.ts';
import type { Line } from '../line.ts';

/** Words up to `until` that hold a number and count nothing. */
export interface Claim {
  until: number;
  kind: NotQuantity['kind'];
  value?: Fraction;
}

export type ClaimRule = (line: Line, i: number) => Claim | null;

export const isDigits = (line: Line, i: number) =>
  line.tokens[i]?.kind === 'number' && /^\d+$/.test(line.tokens[i]!.text);
