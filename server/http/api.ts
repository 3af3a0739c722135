/**
 * The shapes that travel between the page and the server. Everything is JSON; ids are made by the phone.
 *
 * | call | body | answer |
 * |---|---|---|
 * | GET /healthz | | `{ok, mode}` |
 * | GET /api/jobs | | `JobBrief[]` |
 * | PUT /api/jobs/:id | `NewJob` | 201/200 `JobBrief` |
 * | GET /api/jobs/:id | | `JobView` |
 * | PUT /api/jobs/:id/notes/:noteId | `NewNote` | 201 first time, 200 for a repeat, 409 same id with other words: `Reply` |
 * | GET /api/jobs/:id/notes | | `Talk[]`, oldest first |
 * | PUT /api/jobs/:id/entries/:entryId | `NewEntry` | 201/200 `JobView` |
 * | GET /api/jobs/:id/rereading | | `RereadingView` |
 * | POST /api/jobs/:id/rereading | | the same, and it is changed; what a hand put right stays |
 * | DELETE /api/jobs/:id/rereading/:reading | | `RereadingView`: each note as it stood before that reading |
 * | GET /api/jobs/:id/walk-through.pdf | | the list to walk through and sign, on paper |
 * | GET /api/jobs/:id/shopping.pdf | | the order, on paper |
 * | PUT /api/catalogue | a price list as a CSV file | `CatalogueView`, 422 naming the lines that are wrong |
 * | GET /api/catalogue | | `CatalogueView` |
 * | DELETE /api/catalogue | | `CatalogueView` of none |
 * | POST /api/catalogue/before | | `CatalogueView`: the list from before stands, and the one that stood is the one before |
 * | GET /api/catalogue/file.csv | | the price list as it was sent |
 * | POST /api/reckon | `Form`: a calculator's kind and sizes | `FormAnswer`, 422 with the reason in words |
 * | POST /api/reckon/check | `CheckForm`: a fit check and the sizes that are known | `CheckAnswer`, 422 with the reason in words |
 * | GET /api/words | | `TaughtWord[]` |
 * | PUT /api/words/:wordId | `NewWord` | 201/200 `TaughtWord[]` |
 * | DELETE /api/words/:wordId | | `TaughtWord[]` |
 * | GET /api/jobs/:id/summary?day= | | `SummaryView` |
 * | POST /api/jobs/:id/summary/send | `{day}` | `{sent: 'smtp', to} or {sent: 'file', path}` |
 * | PUT /api/jobs/:id/recordings/:recordingId | raw audio | 201/200 |
 * | GET /api/jobs/:id/recordings/:recordingId | | the sound |
 * | PUT /api/jobs/:id/photos/:photoId | image/jpeg | 201/200 |
 * | GET /api/jobs/:id/photos/:photoId | | the picture |
 *
 * Every error is `ApiProblem` with the status of its code.
 */
import type { Fact } from '../../parser/types.ts';
import type { Prices } from '../catalogue/prices.ts';
import type { BringList } from '../jobs/bring.ts';
import type { EntryBody, Job, JobState } from '../jobs/types.ts';
import type { OwnWord } from '../store/index.ts';

export type { CheckAnswer, CheckForm, Form, FormAnswer } from '../takeoff/form/index.ts';

export type JobBrief = Job & { open: number; toBuy: number; lastNoteAt: string | null };
export type NewJob = Pick<Job, 'name' | 'zone' | 'start' | 'areas' | 'crew' | 'builtYear' | 'mailTo' | 'mailAt'>;

export interface JobView {
  job: Job;
  state: JobState;
  /** Today at the job. */
  today: string;
  bring: BringList;
  /** What is still to be bought, by the firm's price list; null while there is none. */
  prices: Prices | null;
}

/** The firm's price list: columns item, size, unit, pack, price, supplier, in any order; item, price and supplier must be there. */
export interface CatalogueView {
  rows: number;
  suppliers: string[];
  /** UTC moment at which it was sent; null where there is none. */
  keptAt: string | null;
  /** The list that stood before this one, which can be put back. */
  before: { rows: number; suppliers: string[] } | null;
}

export interface NewNote {
  /** Local wall time, ISO without zone. */
  saidAt: string;
  text: string;
  by?: string | null;
  /** Where the speaker stood, as chosen on the phone; what the words themselves place stays there. */
  area?: string | null;
  /** Sound kept with the note (uploaded on its own). */
  recordingId?: string | null;
  photoIds?: string[];
}

/** What the note changed, in words short enough to read on a ladder. */
export interface Reply {
  noteId: string;
  /** Facts with offsets into the note, for underlining. */
  facts: Fact[];
  /** One short line each: opened, closed, changed, to buy, check, caution. */
  lines: {
    kind: 'opened' | 'closed' | 'changed' | 'buy' | 'check' | 'caution' | 'answer';
    text: string;
    item: number | null;
  }[];
  /** The one question, or null. */
  ask: string | null;
  /** True where reading threw: stored, shown as unread, read again later. */
  unread: boolean;
}

/** A note with its reply. */
export interface Talk {
  id: string;
  saidAt: string;
  by: string | null;
  text: string;
  area?: string | null;
  recordingId: string | null;
  photoIds: string[];
  reply: Reply;
  /** A hand or a later sentence took the whole note back: its words stay, nothing of it counts. */
  takenBack?: boolean;
  /** Facts put right by hand or read anew, by their place in `reply.facts` or beyond it; null: there is no such fact. */
  corrected?: { index: number; fact: Fact | null }[];
}

/** One line each, `+ ` for what reading the notes again would bring, `- ` for what it would take away. */
export interface RereadingView {
  difference: string[];
  /** What was changed, by the number with which it can be taken back; null where nothing was. */
  reading: string | null;
}

export interface NewEntry {
  at: string;
  by?: string | null;
  what: Exclude<EntryBody, { kind: 'noteRead' }>;
}

/** A word of the firm's own, read from the next note on like those that ship with the product. */
export type NewWord = Pick<OwnWord, 'name' | 'kind' | 'also' | 'counter' | 'soldBy' | 'holds'>;
export type TaughtWord = NewWord & { id: string };

export interface SummaryView {
  day: string;
  subject: string;
  html: string;
  text: string;
  /** How it would go out, and when. */
  delivery: {
    way: 'smtp' | 'file';
    to: string[];
    at: string;
    note: string;
    /** How the mail of these very words fares; null where there is none yet. `nextAt`: local time of the next try. */
    last: { state: 'due' | 'sent' | 'dead'; failure: string | null; nextAt: string | null } | null;
  };
}

/** What went wrong and what to do about it. */
export interface ApiProblem {
  code: string;
  message: string;
  /** May the phone try the same again by itself? */
  retry: boolean;
}
