import type { SiteFacts } from '../takeoff/types.ts';
import type { OrderDoubts } from './goods/doubts/index.ts';
import type { Ledger } from './ledger.ts';
import type { Standing } from './list/board.ts';
import type { Endings } from './list/endings/index.ts';
import type { Telling } from './list/items.ts';
import type { Linker } from './list/linking/index.ts';
import type { Rulings } from './rulings.ts';
import type { Entry, Job, JobState } from './types.ts';

/** What the fold must know of a job; with a price list, how its goods are sold. */
export type Site = Pick<Job, 'areas' | 'builtYear' | 'crew'> &
  Pick<SiteFacts, 'packFor'> & {
    /** Another judge of what facts are told of: the teacher, when the weights are learned. */
    linker?: Linker;
    /** Another judge of what notes tell of as finished: for the same use. */
    endings?: Endings;
    /** Another judge of which goods are still to buy: for the same use. */
    orderDoubts?: OrderDoubts;
  };

/** A note while it is met: what it has touched so far. */
export interface Meeting {
  ledger: Ledger;
  entry: Entry;
  noteId: string;
  text: string;
  /** The day's line. */
  day: JobState['days'][number];
  met: Standing[];
  /** Up to where its words have been met. */
  told: number;
  /** The work last told of that took something out, verb first. */
  removed: string | null;
  rulings: Rulings;
  link: Linker;
}

/** How words of a note stand in its meeting: where they were told, and what a hand ruled on them. */
export const tellingOf = (
  { ledger, entry, met, removed, rulings, link }: Meeting,
  key: string,
  { lead, tail, theirs, part, called }: Pick<Telling, 'lead' | 'tail' | 'theirs' | 'part' | 'called'>,
): Telling => ({
  board: ledger.board,
  entry,
  key,
  apart: rulings.isApart(key),
  met,
  removed,
  questions: ledger.questions,
  link,
  lead,
  tail,
  theirs,
  part,
  called,
});

/** The words of the same sentence before a place in the note, from another place on. */
export const leadOf = (text: string, from: number, start: number) =>
  start <= from
    ? ''
    : text
        .slice(Math.max(from, start - 60), start)
        .split(/[.;!?\n]/)
        .at(-1)!
        .toLowerCase();

/** Where the sentence begins that a place stands in. */
export const sentenceFrom = (said: string, at: number): number =>
  Math.max(said.lastIndexOf('.', at), said.lastIndexOf('\n', at)) + 1;
