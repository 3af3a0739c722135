import Fraction from 'fraction.js';
import type { Terms } from '../reading/terms.ts';
import type { ComputedLine } from '../types.ts';
import type { RowTold } from './row.ts';

/** What the notes have told so far of one row. */
export interface Row extends RowTold {
  area: string | null;
  terms: Terms;
  wanted: boolean;
  asked: boolean;
  noteIds: string[];
}

/** Pieces of a row to buy, with the row's notes and area. */
export function line(
  row: Row,
  item: string,
  size: string | null,
  count: number,
  working: string,
  assumptions: string[] = [],
): ComputedLine {
  return {
    item,
    size,
    specs: [],
    area: row.area,
    amount: new Fraction(count),
    unit: 'each',
    pack: null,
    stockUsed: false,
    working,
    assumptions,
    source: 'a piece at each spacing and one at the end: arithmetic from what was said',
    noteIds: row.noteIds,
  };
}
