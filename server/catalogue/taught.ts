import type { OwnWord } from '../store/index.ts';
import type { PackFor } from '../takeoff/types.ts';
import { packOf, unitOf } from './rows.ts';

/** How goods are sold that the firm taught by hand: by what, and how much of `unit` one of them holds. */
export const packsTaught =
  (words: readonly OwnWord[]): PackFor =>
  (item, _size, unit) => {
    for (const { name, soldBy, holds } of words) {
      const pack = name === item && soldBy?.[0] && holds ? packOf(holds) : null;
      if (pack?.unit === unit) return { unit: unitOf(soldBy![0]!), holds: pack.holds, supplier: null };
    }
    return null;
  };
