import type { Quantity } from '../types.ts';
import type { SaidNumber } from './saidNumber.ts';
import type { Unit } from './units.ts';

/** A reading while it is still being put together: plain integers, places in the line, no Fraction yet. */
export interface Draft {
  n: number;
  d: number;
  from: number;
  until: number;
  /** Where the number ended, before its unit. */
  bareUntil?: number;
  unit: Unit | null;
  unitFrom: Quantity['unitFrom'];
  shape: SaidNumber['shape'];
  inWords: boolean;
  rule: string;
  bound?: Quantity['bound'];
  tolerance?: Quantity['tolerance'];
  onCenter?: boolean;
  per?: string;
  more?: true;
  group?: { kind: NonNullable<Quantity['group']>['kind']; id: number };
  /** The readings that this one took the place of. */
  instead?: { from: number; until: number }[];
  doubt?: string;
}
