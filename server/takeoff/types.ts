/** What the trade's computing takes and gives. Pure data; fractions exact. */
import type Fraction from 'fraction.js';
import type { Fact } from '../../parser/types.ts';
import type { Caution, Check } from '../jobs/types.ts';

/** A note as the take-off sees it, in the order said. */
export interface NoteFacts {
  noteId: string;
  /** Local wall time, ISO without zone. */
  saidAt: string;
  text: string;
  facts: readonly Fact[];
}

export interface SiteFacts {
  areas: readonly string[];
  /** Year built, where known (from the job, or said in a note). */
  builtYear: number | null;
  /** How the firm's own words and price list say that goods are sold. */
  packFor?: PackFor;
}

/**
 * The pack in which goods that are needed in `unit` are sold, and what it holds in that unit; null where it is not
 * known or they are sold by that unit. `supplier` null: a note or set-up said it.
 */
export type PackFor = (
  item: string,
  size: string | null,
  unit: string,
) => { unit: string; holds: Fraction; supplier: string | null } | null;

/** Something to buy that was reckoned, before what is on hand comes off. */
export interface ComputedLine {
  item: string;
  size: string | null;
  specs: string[];
  area: string | null;
  /** What is needed, exact, waste included, in `unit`. */
  amount: Fraction;
  unit: string;
  /** How it is sold: `{unit: 'box', holds: 11.5}` in `unit`; null when `unit` is the purchase unit. */
  pack: { unit: string; holds: Fraction } | null;
  /** True where nobody said how it is sold: the usual pack was taken. */
  packAssumed?: boolean;
  /** True where stock on hand was already used in the reckoning (cut lists). */
  stockUsed: boolean;
  /** The working: `8 ft x 11 ft 6 in = 92 sq ft, + 10 % = 101.2`. */
  working: string;
  assumptions: string[];
  source: string;
  noteIds: string[];
}

/** Work that cannot start before a day. Matched by the list to its item by words and area. */
export interface ComputedWait {
  /** The next step, verb first: `grout the entry floor`. */
  task: string;
  area: string | null;
  readyOn: string;
  waitingFor: string;
  source: string;
  noteId: string;
  /** The note that named the step. */
  namedIn: string;
  /** Day for which the notes plan it, where they name one. */
  plannedOn: string | null;
  /** Hour of the clock of that plan, and at which it is ready: told where both are known. */
  plannedAt: number | null;
  readyAt: string | null;
}

export interface Computed {
  lines: ComputedLine[];
  /** How goods are sold that were counted by hand, by the notes and then by the price list. */
  packFor: PackFor;
  checks: (Omit<Check, 'item'> & { noteId: string; area: string | null })[];
  waits: ComputedWait[];
  /** `items` empty: the list fills in the numbers of the items whose words call for it. */
  cautions: (Omit<Caution, 'items'> & { noteIds: string[] })[];
  /**
   * Things that a note counts only for the goods that go on them or are cut into them: "two bolts to a toilet for the
   * four toilets", "nine pieces at 14".
   */
  counted: { thing: string; noteId: string }[];
  /** What cannot be reckoned until somebody answers. */
  questions: { noteId: string; ask: string }[];
}
