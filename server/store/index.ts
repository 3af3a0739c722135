import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import knexOf, { type Knex } from 'knex';
import type { Term } from '../../parser/types.ts';
import type { Entry, Job, Note } from '../jobs/types.ts';
import { migrationSource } from './migrations.ts';

export interface MailRow {
  id: string;
  jobId: string;
  day: string;
  recipients: string[];
  messageId: string;
  subject: string;
  html: string;
  text: string;
  state: 'due' | 'sent' | 'dead';
  attempts: number;
  /** UTC ISO moment before which it is not tried again. */
  nextAt: string;
  sentAs: string | null;
  failure: string | null;
}

/** A word that the firm taught. `holds`: what one of the units it is bought by holds, as written, `20 sq ft`. */
export type OwnWord = Term & { id: string; holds?: string };

/** What is kept, and nothing of what it means. Every call is one short transaction. */
export interface Store {
  putJob(job: Job): Promise<void>;
  job(id: string): Promise<Job | null>;
  jobs(): Promise<Job[]>;
  /** Keeps a note once: `new`, `same` for a repeat, `other` where the id already holds other words. */
  putNote(note: Note): Promise<'new' | 'same' | 'other'>;
  note(id: string): Promise<(Note & { reply: string | null }) | null>;
  notes(jobId: string): Promise<(Note & { reply: string | null })[]>;
  unread(): Promise<Note[]>;
  /** Appends what a note said, in each job that it spoke of, and marks it read, all or nothing. */
  readNote(noteId: string, entries: readonly Entry[], reply: string): Promise<void>;
  /** Appends an entry once; false for a repeat of the same id. */
  putEntry(entry: Entry): Promise<boolean>;
  entries(jobId: string): Promise<Entry[]>;
  /** Entries kept after a place, 0 for all of them, in the order in which they were kept; and the place of the last. */
  entriesAfter(jobId: string, place: number): Promise<{ entries: Entry[]; place: number }>;
  /** The firm's own words, by their ids. */
  words(): Promise<OwnWord[]>;
  /** Keeps a word, or keeps it otherwise; false where it stood already. */
  putWord(id: string, term: Omit<OwnWord, 'id'>): Promise<boolean>;
  dropWord(id: string): Promise<void>;
  /** The firm's price list as it was sent, or none, in place of the one that stands; that one is kept as the one before. */
  putCatalogue(list: { text: string; keptAt: string } | null): Promise<void>;
  catalogue(which?: 'firm' | 'before'): Promise<{ text: string; keptAt: string } | null>;
  /** Keeps a mail once; false where its id stands already. */
  putMail(mail: MailRow): Promise<boolean>;
  mail(id: string): Promise<MailRow | null>;
  dueMail(now: string): Promise<MailRow[]>;
  setMail(
    id: string,
    change: Partial<Pick<MailRow, 'state' | 'attempts' | 'nextAt' | 'sentAs' | 'failure'>>,
  ): Promise<void>;
  close(): Promise<void>;
}

/**
 * Opens the SQLite file in a data folder, made where missing, and migrates it.
 *
 * @param folder where the product keeps everything
 * @throws where the folder cannot be written; nothing is changed then
 */
export async function openStore(folder: string): Promise<Store> {
  mkdirSync(folder, { recursive: true });
  const knex = knexOf({
    client: 'sqlite3',
    connection: { filename: join(folder, 'scratchcoat.sqlite') },
    useNullAsDefault: true,
    // One connection: two requests' statements can never interleave in one transaction.
    pool: {
      min: 1,
      max: 1,
      // biome-ignore lint/suspicious/noExplicitAny: knex hands over the driver's own handle, untyped.
      afterCreate: (handle: any, done: (error: Error | null, handle: unknown) => void) => {
        handle.exec(
          'PRAGMA journal_mode=WAL; PRAGMA foreign_keys=ON; PRAGMA synchronous=FULL; PRAGMA busy_timeout=5000;',
          (error: Error | null) => done(error, handle),
        );
      },
    },
    acquireConnectionTimeout: 15_000,
  });
  await knex.migrate.latest({ migrationSource });
  return storeOn(knex);
}

interface NoteRow {
  id: string;
  job_id: string;
  said_at: string;
  stored_at: string;
  by: string | null;
  text: string;
  area: string | null;
  state: Note['state'];
  reply: string | null;
  recording_id: string | null;
  photo_ids: string;
}

const noteOf = (r: NoteRow) => ({
  id: r.id,
  jobId: r.job_id,
  saidAt: r.said_at,
  storedAt: r.stored_at,
  by: r.by,
  text: r.text,
  area: r.area,
  state: r.state,
  reply: r.reply,
  recordingId: r.recording_id,
  photoIds: JSON.parse(r.photo_ids) as string[],
});

interface JobRow {
  id: string;
  name: string;
  zone: string;
  start: string;
  areas: string;
  crew: string;
  built_year: number | null;
  mail_to: string;
  mail_at: string;
}

const jobOf = (r: JobRow): Job => ({
  id: r.id,
  name: r.name,
  zone: r.zone,
  start: r.start,
  areas: JSON.parse(r.areas),
  crew: JSON.parse(r.crew),
  builtYear: r.built_year,
  mailTo: JSON.parse(r.mail_to),
  mailAt: r.mail_at,
});
const jobRow = (j: Job): JobRow => ({
  id: j.id,
  name: j.name,
  zone: j.zone,
  start: j.start,
  areas: JSON.stringify(j.areas),
  crew: JSON.stringify(j.crew ?? []),
  built_year: j.builtYear,
  mail_to: JSON.stringify(j.mailTo),
  mail_at: j.mailAt,
});

interface EntryRow {
  id: string;
  job_id: string;
  note_id: string | null;
  at: string;
  by: string | null;
  source: string | null;
  what: string;
}

const entryOf = (r: EntryRow): Entry => ({
  id: r.id,
  jobId: r.job_id,
  at: r.at,
  by: r.by,
  source: r.source ? JSON.parse(r.source) : null,
  what: JSON.parse(r.what),
});
const entryRow = (e: Entry): EntryRow => ({
  id: e.id,
  job_id: e.jobId,
  note_id: e.source?.noteId ?? null,
  at: e.at,
  by: e.by,
  source: e.source ? JSON.stringify(e.source) : null,
  what: JSON.stringify(e.what),
});

interface MailRecord extends Omit<MailRow, 'jobId' | 'recipients' | 'messageId' | 'nextAt' | 'sentAs'> {
  job_id: string;
  recipients: string;
  message_id: string;
  next_at: string;
  sent_as: string | null;
}

const mailOf = ({ job_id, recipients, message_id, next_at, sent_as, ...r }: MailRecord): MailRow => ({
  ...r,
  jobId: job_id,
  recipients: JSON.parse(recipients),
  messageId: message_id,
  nextAt: next_at,
  sentAs: sent_as,
});
const mailRecord = ({ jobId, recipients, messageId, nextAt, sentAs, ...r }: MailRow): MailRecord => ({
  ...r,
  job_id: jobId,
  recipients: JSON.stringify(recipients),
  message_id: messageId,
  next_at: nextAt,
  sent_as: sentAs,
});

function storeOn(knex: Knex): Store {
  return {
    async putJob(job) {
      await knex('job').insert(jobRow(job)).onConflict('id').merge();
    },
    async job(id) {
      const row = await knex<JobRow>('job').where({ id }).first();
      return row ? jobOf(row) : null;
    },
    async jobs() {
      return (await knex<JobRow>('job').orderBy('start', 'desc')).map(jobOf);
    },
    async putNote(note) {
      return knex.transaction(async (trx) => {
        const row: NoteRow = {
          id: note.id,
          job_id: note.jobId,
          said_at: note.saidAt,
          stored_at: note.storedAt,
          by: note.by,
          text: note.text,
          area: note.area ?? null,
          state: note.state,
          reply: null,
          recording_id: note.recordingId,
          photo_ids: JSON.stringify(note.photoIds),
        };
        const [inserted] = await trx('note').insert(row).onConflict('id').ignore().returning('id');
        if (inserted) return 'new';
        const known = await trx<NoteRow>('note').where({ id: note.id }).first();
        return known?.text === note.text && known.job_id === note.jobId ? 'same' : 'other';
      });
    },
    async note(id) {
      const row = await knex<NoteRow>('note').where({ id }).first();
      return row ? noteOf(row) : null;
    },
    async notes(jobId) {
      return (
        await knex<NoteRow>('note')
          .where({ job_id: jobId })
          .orderBy([{ column: 'said_at' }, { column: 'id' }])
      ).map(noteOf);
    },
    async unread() {
      return (await knex<NoteRow>('note').where({ state: 'unread' }).orderBy('said_at')).map(noteOf);
    },
    async readNote(noteId, entries, reply) {
      await knex.transaction(async (trx) => {
        for (const entry of entries) await trx('entry').insert(entryRow(entry)).onConflict('id').ignore();
        await trx('note').where({ id: noteId }).update({ state: 'read', reply });
      });
    },
    async putEntry(entry) {
      const [inserted] = await knex('entry').insert(entryRow(entry)).onConflict('id').ignore().returning('id');
      return Boolean(inserted);
    },
    async entries(jobId) {
      return (
        await knex<EntryRow>('entry')
          .where({ job_id: jobId })
          .orderBy([{ column: 'at' }, { column: 'id' }])
      ).map(entryOf);
    },
    async entriesAfter(jobId, place) {
      // Entries are only ever appended, so SQLite's own row numbers tell what came since.
      const rows = await knex<EntryRow & { rowid: number }>('entry')
        .select('rowid', '*')
        .where({ job_id: jobId })
        .andWhere('rowid', '>', place)
        .orderBy('rowid');
      return { entries: rows.map(entryOf), place: rows.at(-1)?.rowid ?? place };
    },
    async words() {
      const rows = await knex<{ id: string; term: string }>('word').orderBy('id');
      return rows.map((r) => ({ ...(JSON.parse(r.term) as Omit<OwnWord, 'id'>), id: r.id }));
    },
    async putWord(id, term) {
      return knex.transaction(async (trx) => {
        const known = await trx('word').where({ id }).first();
        await trx('word')
          .insert({ id, term: JSON.stringify(term) })
          .onConflict('id')
          .merge();
        return !known;
      });
    },
    async dropWord(id) {
      await knex('word').where({ id }).delete();
    },
    async putCatalogue(list) {
      await knex.transaction(async (trx) => {
        const lists = () => trx<{ id: string; text: string; kept_at: string }>('catalogue');
        // Sent again, it takes the place of no other.
        if (list && (await lists().where({ id: 'firm', text: list.text }).first())) return;
        if (await lists().where({ id: 'firm' }).first()) {
          await lists().where({ id: 'before' }).delete();
          await lists().where({ id: 'firm' }).update({ id: 'before' });
        }
        if (list) await lists().insert({ id: 'firm', text: list.text, kept_at: list.keptAt });
      });
    },
    async catalogue(which = 'firm') {
      const row = await knex<{ id: string; text: string; kept_at: string }>('catalogue').where({ id: which }).first();
      return row ? { text: row.text, keptAt: row.kept_at } : null;
    },
    async putMail(mail) {
      const [inserted] = await knex('mail').insert(mailRecord(mail)).onConflict('id').ignore().returning('id');
      return Boolean(inserted);
    },
    async mail(id) {
      const row = await knex<MailRecord>('mail').where({ id }).first();
      return row ? mailOf(row) : null;
    },
    async dueMail(now) {
      return (await knex<MailRecord>('mail').where({ state: 'due' }).andWhere('next_at', '<=', now)).map(mailOf);
    },
    async setMail(id, { nextAt, sentAs, ...rest }) {
      await knex('mail')
        .where({ id })
        .update({
          ...rest,
          ...(nextAt !== undefined && { next_at: nextAt }),
          ...(sentAs !== undefined && { sent_as: sentAs }),
        });
    },
    close: () => knex.destroy(),
  };
}
