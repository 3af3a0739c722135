/**
 * A job's history and what it adds up to. Pure data: moments are UTC ISO text, days `YYYY-MM-DD` local to the job,
 * quantities exact fractions as text (`5/2`), ids made by the client (uuid v7) or handed in.
 */
import type { Fact, MaterialStatus } from '../../parser/types.ts';

export interface Job {
  id: string;
  name: string;
  /** IANA zone, validated with Intl. */
  zone: string;
  /** First day on site. */
  start: string;
  areas: string[];
  /** Who works here: names that a note may give work to. */
  crew?: string[];
  /** Year the building was put up, where known: lead and asbestos cautions ask for it. */
  builtYear: number | null;
  /** Who gets the day's summary. */
  mailTo: string[];
  /** `HH:MM` local time at which the summary is due. */
  mailAt: string;
}

export interface Note {
  id: string;
  jobId: string;
  /** Local wall time at the job when it was said, ISO without zone. Orders the history. */
  saidAt: string;
  /** UTC moment at which the server stored it. */
  storedAt: string;
  by: string | null;
  text: string;
  /** Where the speaker stood; holds for whatever the words place nowhere else. */
  area?: string | null;
  /** Sound kept with the note. */
  recordingId: string | null;
  photoIds: string[];
  /** Unread: stored, but reading it threw; it is read again later. */
  state: 'unread' | 'read';
}

export type ItemState = 'open' | 'waiting' | 'done' | 'signed off' | 'dropped';
/** `have`: nobody bought it for this job, and nobody has to: it is there. */
export type OrderState = 'to buy' | 'ordered' | 'bought' | 'have';

/** Where words came from: the note, and the span in it. */
export interface Source {
  noteId: string;
  start: number;
  end: number;
}

/** One thing that happened, appended to the job's history and never changed. */
export interface Entry {
  id: string;
  jobId: string;
  /** Local wall time that it counts from: the note's `saidAt`, or when a hand changed it. Ties are ordered by `id`. */
  at: string;
  by: string | null;
  /** Null for a change made by hand. */
  source: Source | null;
  what: EntryBody;
}

/** Kinds of entry. `by: hand` entries outlive a re-reading of the notes. */
export type EntryBody =
  /** A note was read: its facts, in order. The fold decides what they open, join, close and change. */
  | {
      kind: 'noteRead';
      facts: Fact[];
      text: string;
      parser: string;
      /** Of a note read again: the place that each fact had in the first reading, so that keys and corrections hold. */
      places?: number[];
    }
  /** Corrections and ticks by hand, addressed to an item or order line by its stable key. */
  | { kind: 'setState'; item: string; state: ItemState }
  | { kind: 'editItem'; item: string; change: Partial<Pick<Item, 'task' | 'area' | 'who' | 'due' | 'readyOn'>> }
  | { kind: 'sameAs'; item: string; as: string }
  | { kind: 'split'; item: string }
  | { kind: 'setOrder'; line: string; state?: OrderState; quantity?: string; unit?: string }
  /** This fact of that note was read wrong: leave it out, or put this in its place. */
  | { kind: 'correctFact'; noteId: string; index: number; fact: Fact | null }
  /** Takes an entry back. Undoing an undo brings it in again. */
  | { kind: 'undo'; entry: string };

export interface Event {
  at: string;
  by: string | null;
  entry: string;
  what: string;
  /** The words, where it came from a note. */
  words: string | null;
  noteId: string | null;
}

/** A numbered line of the punch list. */
export interface Item {
  /** Stable through refolding: made from the entry and fact that opened it. */
  key: string;
  /** Shown number, in order of opening, never reused in a job. */
  number: number;
  task: string;
  /** The problem behind it, where one was found. */
  problem: string | null;
  thing: string | null;
  area: string | null;
  who: string | null;
  /** `unsure`: heard, and likelier no item of the list; kept apart until somebody keeps it, or it is told of again. */
  state: ItemState | 'unsure';
  due: string | null;
  readyOn: string | null;
  waitingFor: string | null;
  openedOn: string;
  closedOn: string | null;
  doubtful: boolean;
  history: Event[];
}

export interface OrderLine {
  key: string;
  item: string;
  size: string | null;
  specs: string[];
  /** What the goods are for, where their name does not say it: `exit sign`. */
  uses?: readonly string[];
  /** Exact, in whole purchase units less what is on hand. Null where nobody said how many. */
  quantity: string | null;
  unit: string | null;
  /** `unsure`: likelier got by now, or never to be bought; kept apart until somebody says that it is still to buy. */
  state: OrderState | 'unsure';
  /** The arithmetic, or who said so and when. */
  because: string;
  counter: string;
  history: Event[];
  /** Of a reckoned line: what the whole packs are bought for, and what one pack holds, both in `unit`. */
  needs?: { exact: string; unit: string; holds: string };
}

export interface OnHand {
  item: string;
  size: string | null;
  quantity: string;
  unit: string | null;
}

export interface Measured {
  key: string;
  of: string;
  area: string | null;
  value: number;
  exact: string;
  unit: string | null;
  role: 'found' | 'wanted';
  on: string;
  noteId: string;
  /** Earlier values of the same measurement, oldest first. */
  earlier: { value: number; exact: string; unit: string | null; on: string }[];
}

/** From `server/takeoff`: does it fit, is it allowed. */
export interface Check {
  of: string;
  item: number | null;
  result: 'fits' | 'does not fit' | 'cannot say';
  figure: string;
  limit: string;
  source: string;
  missing: string | null;
  working?: string;
}

export interface Caution {
  /** Short name: `lead paint`, `silica dust`, `power off at the breaker`, `asbestos`. */
  hazard: string;
  text: string;
  source: string;
  /** Numbers of the items that call for it. */
  items: number[];
}

/** Work planned for a day on which something still sets, cures or is under way. */
export interface EarlyPlan {
  task: string;
  plannedOn: string;
  readyOn: string;
  /** `16:00`, where it is planned too early on the day itself. */
  readyAt: string | null;
  waitingFor: string;
  item: number | null;
}

/** What the history adds up to. */
export interface JobState {
  items: Item[];
  order: OrderLine[];
  onHand: OnHand[];
  measurements: Measured[];
  checks: Check[];
  cautions: Caution[];
  early: EarlyPlan[];
  decisions: { what: string; on: string; noteId: string }[];
  spending: { amount: number; currency: string; on: string; for: string | null; noteId: string }[];
  /** One line a day: what was done, found, bought. */
  days: { day: string; notes: number; done: string[]; found: string[]; bought: string[]; spent: number }[];
  /** Open questions, newest first; at most one a note. */
  questions: { noteId: string; ask: string; item: number | null }[];
  /** What the take-offs were reckoned from, so that a corrected size reckons them again. */
  asOf: string;
}

export type { MaterialStatus };
