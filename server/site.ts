import { createHash } from 'node:crypto';
import { readNote } from '../parser/index.ts';
import { localTime } from '../parser/times/days.ts';
import { builtIn, withTerms } from '../parser/trade/index.ts';
import type { Fact, Vocabulary } from '../parser/types.ts';
import { KeptCatalogue } from './catalogue/kept.ts';
import { packsOf, pricesOf } from './catalogue/prices.ts';
import { packsTaught } from './catalogue/taught.ts';
import { type Desk, fileNote } from './filing.ts';
import { Histories } from './histories.ts';
import type {
  CatalogueView,
  JobView,
  NewEntry,
  NewNote,
  NewWord,
  Reply,
  RereadingView,
  SummaryView,
  Talk,
  TaughtWord,
} from './http/api.ts';
import { bringOf } from './jobs/bring.ts';
import {
  beforeReading,
  type Entry,
  factsOtherwise,
  type Job,
  type JobState,
  type Note,
  noteOf,
  type Rereading,
  reread,
  standing,
} from './jobs/index.ts';
import {
  attempt,
  dayKey,
  due,
  type MailSettings,
  mailRow,
  type Sent,
  type Summary,
  sameWords,
  summaryOf,
  wordsKey,
} from './mail/index.ts';
import type { MailRow, Store } from './store/index.ts';
import { firstOf } from './takeoff/packs/index.ts';
import type { Enclosures } from './voice/enclosures.ts';
import { isUnheard, withoutTyped } from './voice/unheard.ts';
import { atCounters, inOwnNames, ownTerms } from './words/own.ts';

export interface SiteParts {
  store: Store;
  now: () => Date;
  mail: MailSettings;
  enclosures: Enclosures;
  /** Reads a note; handed in so that a test can make reading fail. */
  read?: typeof readNote;
}

export type Taken = { taken: 'new' | 'same'; reply: Reply } | { taken: 'other'; keptAs: string; reply: Reply };

/** What the product does with a job, whoever asks: the rooms put together. */
export class Site {
  readonly #store: Store;
  readonly #now: () => Date;
  readonly #mail: MailSettings;
  readonly #read: typeof readNote;
  /** Recordings and photos, kept as they came. */
  readonly enclosures: Enclosures;
  #ticking: Promise<void> | null = null;
  /** Built when a note is read, and again only when a word was taught or a name came. */
  #vocabulary: { of: string; words: Vocabulary } | null = null;
  readonly #catalogue: KeptCatalogue;
  readonly #histories: Histories;
  readonly #desk: Desk;

  constructor({ store, now, mail, enclosures, read = readNote }: SiteParts) {
    this.enclosures = enclosures;
    this.#store = store;
    this.#catalogue = new KeptCatalogue(store);
    this.#histories = new Histories(store);
    this.#desk = {
      store,
      histories: this.#histories,
      readingOf: (job) => this.#readingOf(job),
      atPacks: (job) => this.#atPacks(job),
      today: (job) => this.today(job),
    };
    this.#now = now;
    this.#mail = mail;
    this.#read = read;
  }

  get store(): Store {
    return this.#store;
  }

  today(job: Job): string {
    return localTime(this.#now(), job.zone).slice(0, 10);
  }

  /** The list as it stands at the end of a day, today where none is given. */
  async state(job: Job, day = this.today(job)): Promise<JobState> {
    const state = await this.#histories.state(await this.#atPacks(job), `${day}T23:59:59`);
    return { ...state, order: atCounters(state.order, await this.#vocabularyOf(job)) };
  }

  /** A job as the page shows it: the list, what to bring, and what the order costs by the firm's list. */
  async view(job: Job): Promise<JobView> {
    const state = await this.state(job);
    const catalogue = await this.#catalogue.now();
    return {
      job,
      state,
      today: this.today(job),
      bring: bringOf(state, await this.#vocabularyOf(job)),
      prices: catalogue.rows.length ? pricesOf(state.order, catalogue) : null,
    };
  }

  keepCatalogue(text: string): Promise<CatalogueView | { wrong: string[] }> {
    return this.#catalogue.put(text, this.#now().toISOString());
  }

  dropCatalogue(): Promise<CatalogueView> {
    return this.#catalogue.drop();
  }

  putCatalogueBack(): Promise<CatalogueView | null> {
    return this.#catalogue.putBack();
  }

  catalogueView(): Promise<CatalogueView> {
    return this.#catalogue.view();
  }

  /** The job with the packs in which the firm's own words and list say that goods are sold. */
  async #atPacks(job: Job) {
    const catalogue = await this.#catalogue.now();
    return { ...job, packFor: firstOf(packsTaught(await this.#store.words()), packsOf(catalogue)) };
  }

  /** Keeps a note, then reads it. The same id again changes nothing; the same id with other words keeps both. */
  async take(job: Job, noteId: string, given: NewNote): Promise<Taken> {
    const note: Note = {
      id: noteId,
      jobId: job.id,
      saidAt: given.saidAt,
      storedAt: this.#now().toISOString(),
      by: given.by ?? null,
      text: given.text,
      area: given.area ?? null,
      recordingId: given.recordingId ?? null,
      photoIds: given.photoIds ?? [],
      state: 'unread',
    };
    const taken = await this.#store.putNote(note);
    if (taken === 'same') return { taken, reply: await this.#replyOf(job, noteId) };
    if (taken === 'other') {
      // Made from the words, so that sending them again keeps no third copy.
      const keptAs = `${noteId.slice(0, 40)}-${createHash('sha256').update(given.text).digest('hex').slice(0, 16)}`;
      const second = await this.take(job, keptAs, given);
      return { taken, keptAs, reply: second.reply };
    }
    const reply = await this.#readNow(job, note);
    if (!reply.unread) await this.readUnread();
    return { taken, reply };
  }

  async #replyOf(job: Job, noteId: string): Promise<Reply> {
    const note = await this.#store.note(noteId);
    if (note?.reply) return JSON.parse(note.reply) as Reply;
    return note ? this.#readNow(job, note) : unreadReply(noteId);
  }

  async #readNow(job: Job, note: Note): Promise<Reply> {
    try {
      const { entries, reply } = await fileNote(this.#desk, job, note);
      await this.#store.readNote(note.id, entries, JSON.stringify(reply));
      return reply;
    } catch {
      // The note stands; it is read again at the next start or the next note.
      return unreadReply(note.id);
    }
  }

  /** Reads what could not be read before. */
  async readUnread(): Promise<void> {
    for (const note of await this.#store.unread()) {
      const job = await this.#store.job(note.jobId);
      if (job) await this.#readNow(job, note);
    }
  }

  words(): Promise<TaughtWord[]> {
    return this.#store.words();
  }

  /** Teaches a word, or teaches it otherwise; false where it was known. Notes read before stay as they were read. */
  teach(id: string, word: NewWord): Promise<boolean> {
    return this.#store.putWord(id, word);
  }

  forget(id: string): Promise<void> {
    return this.#store.dropWord(id);
  }

  /** The trade's words, the firm's own, and the names of the crew, to whom work is given. */
  async #vocabularyOf(job: Job): Promise<Vocabulary> {
    const own = ownTerms(await this.#store.words(), job.crew ?? []);
    const of = JSON.stringify(own);
    if (this.#vocabulary?.of !== of)
      this.#vocabulary = { of, words: own.length ? withTerms(builtIn(), own) : builtIn() };
    return this.#vocabulary.words;
  }

  /** What reading every note of a job again would change, as after a new version; nothing is kept. */
  async rereading(job: Job): Promise<Rereading> {
    const areas = new Map((await this.#store.notes(job.id)).map((note) => [note.id, note.area ?? null]));
    const reading = await this.#readingOf(job);
    const entries = await this.#histories.entries(job);
    return reread(
      job,
      entries,
      ({ noteId, text, saidAt }) => reading(text, saidAt, areas.get(noteId) ?? null),
      `${this.today(job)}T23:59:59`,
    );
  }

  /** Reads every note of a job again and keeps it; what a hand put right stays. */
  async readAgain(job: Job): Promise<RereadingView> {
    const { difference, entries } = await this.rereading(job);
    return { difference, reading: await this.#keepReading(entries) };
  }

  /** Each note stands as it did before a reading, with what a hand put right since; a taking back is taken back alike. */
  async takeReadingBack(job: Job, reading: string): Promise<RereadingView> {
    const entries = beforeReading(await this.#histories.entries(job), reading);
    return { difference: [], reading: await this.#keepReading(entries) };
  }

  /** @returns the number by which the reading can be taken back; null where nothing was read otherwise. */
  async #keepReading(entries: readonly Entry[]): Promise<string | null> {
    for (const entry of entries) await this.#store.putEntry(entry);
    const [one] = entries;
    return one?.what.kind === 'noteRead' ? one.what.parser : null;
  }

  /** Reads words as this job's notes are read: with its rooms and crew, the trade's words and the firm's own. */
  async #readingOf(job: Job): Promise<(text: string, saidAt: string, area: string | null) => Fact[]> {
    const vocabulary = await this.#vocabularyOf(job);
    const own = await this.#store.words();
    return (text, saidAt, area) =>
      inOwnNames(this.#read(text, { saidAt, areas: job.areas, area, vocabulary }).facts, own, job.crew ?? []);
  }

  async talk(job: Job): Promise<Talk[]> {
    const notes = await this.#store.notes(job.id);
    const entries = await this.#histories.entries(job);
    const otherwise = factsOtherwise(entries);
    const counts = new Set(standing(entries, '9999').map(noteOf));
    return notes.map((n) => ({
      id: n.id,
      saidAt: n.saidAt,
      by: n.by,
      text: n.text,
      area: n.area ?? null,
      recordingId: n.recordingId,
      photoIds: n.photoIds,
      ...(n.state === 'read' && !counts.has(n.id) && { takenBack: true }),
      ...(otherwise.has(n.id) && {
        corrected: Array.from(otherwise.get(n.id)!, ([index, fact]) => ({ index, fact })),
      }),
      reply: n.reply ? (JSON.parse(n.reply) as Reply) : unreadReply(n.id),
    }));
  }

  /** A tick or correction by hand; a repeat of the same id changes nothing. */
  async put(job: Job, entryId: string, given: NewEntry): Promise<boolean> {
    return this.#store.putEntry({
      id: entryId,
      jobId: job.id,
      at: given.at,
      by: given.by ?? null,
      source: null,
      what: given.what,
    });
  }

  async summary(job: Job, day: string): Promise<SummaryView> {
    const summary = await this.#summaryOf(job, day);
    const kept = await this.#mailOf(job, day, summary);
    const way = this.#mail.smtpUrl ? 'smtp' : 'file';
    const note =
      way === 'smtp'
        ? 'Goes out through your mail server.'
        : `No mail server is set (SMTP_URL): the mail is written as an .eml file in ${this.#mail.folder}.`;
    return {
      day,
      ...summary,
      delivery: { way, to: job.mailTo, at: job.mailAt, note, last: kept && lastOf(kept, job) },
    };
  }

  async #summaryOf(job: Job, day: string): Promise<Summary> {
    const state = await this.state(job, day);
    const untyped = withoutTyped(await this.#store.notes(job.id)).filter(
      (n) => isUnheard(n) && n.saidAt.startsWith(day),
    );
    return summaryOf(job, state, day, bringOf(state, await this.#vocabularyOf(job)), untyped.length);
  }

  /** Sends a day's summary now: the very mail that stands, or, where other words have come, a mail of its own. */
  async send(job: Job, day: string): Promise<Sent | { failed: string }> {
    const now = this.#now();
    const summary = await this.#summaryOf(job, day);
    const kept = await this.#mailOf(job, day, summary);
    if (kept) return attempt(this.#store, kept, this.#mail, now);
    const row = mailRow(wordsKey(job, day, summary), job, day, summary, now);
    await this.#store.putMail(row);
    return attempt(this.#store, row, this.#mail, now);
  }

  /** The mail that has these words, the day's own or one sent by hand. */
  async #mailOf(job: Job, day: string, summary: Summary) {
    const own = await this.#store.mail(dayKey(job, day));
    return own && sameWords(own, summary) ? own : this.#store.mail(wordsKey(job, day, summary));
  }

  /** One tick of the clock: makes the rows that are due, then tries every row that waits. A tick under way is not begun again. */
  mailTick(): Promise<void> {
    this.#ticking ??= this.#tick().finally(() => {
      this.#ticking = null;
    });
    return this.#ticking;
  }

  async #tick(): Promise<void> {
    const now = this.#now();
    for (const { job, day } of due(await this.#store.jobs(), now)) {
      if (await this.#store.mail(dayKey(job, day))) continue;
      const summary = await this.#summaryOf(job, day);
      // Sent by hand already, and nothing has come since.
      if (await this.#mailOf(job, day, summary)) continue;
      await this.#store.putMail(mailRow(dayKey(job, day), job, day, summary, now));
    }
    for (const row of await this.#store.dueMail(now.toISOString())) await attempt(this.#store, row, this.#mail, now);
  }
}

/** How the mail of these words fares, its next try in the job's own time. */
const lastOf = ({ state, failure, nextAt }: MailRow, job: Job): NonNullable<SummaryView['delivery']['last']> => ({
  state,
  failure,
  nextAt: state === 'due' ? localTime(new Date(nextAt), job.zone) : null,
});

const unreadReply = (noteId: string): Reply => ({
  noteId,
  facts: [],
  lines: [{ kind: 'answer', text: 'Kept, but not read yet. It is read again later; nothing is lost.', item: null }],
  ask: null,
  unread: true,
});
