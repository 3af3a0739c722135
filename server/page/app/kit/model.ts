import { v7 as newId } from 'uuid';
import type { Fact } from '../../../../parser/types.ts';
import type { JobBrief, JobView, NewEntry, NewWord, Talk, TaughtWord } from '../../../http/api.ts';
import { jobsCall, Refused, talksCall, viewCall, wordsCall } from './calls.ts';
import { wallTime } from './clock.ts';
import { type Delivered, discard, flush, keep, waiting } from './outbox.ts';
import { keepAll, type Parcel, phoneStore, plainSettings, type Settings, type Taken } from './phoneStore.ts';
import type { Recorder } from './recorder.ts';

/** Takes back what a tap did. Throws what its call throws. */
export type Undo = () => Promise<void>;

/** Everything that the screens show. Replaced whole at each change, never changed in place. */
export interface Shown {
  started: boolean;
  jobs: JobBrief[];
  view: JobView | null;
  talks: Talk[];
  parcels: Parcel[];
  /** What goes with the next note. */
  tray: Taken[];
  /** A recording under way, whichever screen is looked at. */
  recorder: Recorder | null;
  /** The phone's own reading of notes that wait, by note. */
  readings: ReadonlyMap<string, Fact[]>;
  settings: Settings;
  /** The firm's own words. */
  words: TaughtWord[];
  /** Has the server been asked yet, since the page was opened? */
  asked: boolean;
  /** Did the server answer the last time? */
  reached: boolean;
  /** What the server said against us, in its own words. */
  trouble: string | null;
  /** Short words for the status line; `undo` takes back what they tell of. */
  said: { text: string; undo: Undo | null } | null;
  /** A word that the firm may want to teach, after a correction. */
  offer: NewWord | null;
}

let shown: Shown = {
  started: false,
  jobs: [],
  view: null,
  talks: [],
  parcels: [],
  tray: [],
  recorder: null,
  readings: new Map(),
  settings: plainSettings,
  words: [],
  asked: false,
  reached: true,
  trouble: null,
  said: null,
  offer: null,
};
const watchers = new Set<() => void>();

export const now = () => shown;

export function watch(watcher: () => void): () => void {
  watchers.add(watcher);
  return () => watchers.delete(watcher);
}

export function show(change: Partial<Shown>): void {
  shown = { ...shown, ...change };
  for (const watcher of watchers) watcher();
}

/** A job as this phone kept it last. */
export async function keptJob(jobId: string): Promise<Pick<Shown, 'view' | 'talks'>> {
  const db = await phoneStore();
  const [view, talks] = await Promise.all([db.get('views', jobId), db.get('talks', jobId)]);
  return { view: view ?? null, talks: talks?.talks ?? [] };
}

/** A choice made, or a note said, before the phone's store is open waits for it. */
export let markBegun: () => void;
const begun = new Promise<void>((resolve) => {
  markBegun = resolve;
});

/** The job that is talked about, or null. On a phone's first visit the server has to be asked. */
export async function openJob(): Promise<string | null> {
  await begun;
  if (!shown.settings.jobId) await sync();
  return shown.settings.jobId;
}

let early: Promise<JobBrief[]> | null = null;

/** Asks which jobs there are before the phone's store is open; the first round takes the answer. */
export function askEarly(): void {
  early = jobsCall();
  // Whoever waits for it is told.
  early.catch(() => undefined);
}

let syncing: Promise<void> | null = null;
let again = false;

/** Sends what waits, then fetches what stands. Calls made meanwhile are one more round, not one more at a time. */
export function sync(): Promise<void> {
  if (syncing) {
    again = true;
    return syncing;
  }
  syncing = round().finally(() => {
    syncing = null;
    if (!again) return;
    again = false;
    void sync();
  });
  return syncing;
}

const allOf = (jobId: string) => Promise.all([viewCall(jobId), talksCall(jobId), wordsCall()]);

async function round(): Promise<void> {
  const jobsAsked = early ?? jobsCall();
  early = null;
  jobsAsked.catch(() => undefined);
  try {
    await flush(delivered);
    show({ parcels: await waiting() });
    // The job that is open is asked about beside the list of jobs, which may hold it no more.
    const opened = shown.settings.jobId;
    const asked = opened ? allOf(opened) : null;
    asked?.catch(() => undefined);
    const jobs = await jobsAsked;
    const jobId = jobs.find((j) => j.id === shown.settings.jobId)?.id ?? jobs[0]?.id;
    show({ jobs, reached: true, trouble: null });
    const [answered] = await Promise.all([
      jobId === opened ? asked : jobId ? allOf(jobId) : null,
      jobId && jobId !== shown.settings.jobId ? settle({ jobId }) : null,
    ]);
    // Shown first and kept then: a thumb waits for the one and not for the other.
    if (answered && shown.settings.jobId === jobId) {
      const [view, talks, words] = answered;
      show({ view, talks, words, asked: true });
    }
    await keepAll('jobs', jobs);
    if (!jobId || !answered) return;
    const [view, talks, words] = answered;
    const db = await phoneStore();
    await db.put('views', { ...view, id: jobId });
    await db.put('talks', { id: jobId, talks });
    await keepAll('words', words);
  } catch (error) {
    show({ reached: error instanceof Refused, trouble: error instanceof Refused ? error.message : null });
  } finally {
    if (!shown.asked) show({ asked: true });
  }
}

async function delivered({ parcel, reply, view, next, lost }: Delivered): Promise<void> {
  if (view && view.job.id === shown.settings.jobId) show({ view });
  if (parcel.kind !== 'note' || !reply || parcel.jobId !== shown.settings.jobId) return;
  const { saidAt, text, by, area, recordingId, photoIds } = parcel.note;
  const talk = {
    id: parcel.id,
    saidAt,
    text,
    by: by ?? null,
    area: area ?? null,
    recordingId: recordingId ?? null,
    photoIds: photoIds ?? [],
    reply,
  };
  show({
    talks: [...shown.talks.filter((t) => t.id !== talk.id), talk],
    parcels: [...shown.parcels.filter((p) => p.id !== talk.id), ...next],
  });
  if (lost.length) say(`The server read nothing at “${lost.join('”, “')}”. Say it in a note of its own.`);
}

/** Keeps a parcel until it has gone out. Sending is `sync`. */
export async function post(parcel: Parcel): Promise<void> {
  await keep(parcel);
  show({ parcels: await waiting() });
}

export async function settle(change: Partial<Settings>): Promise<void> {
  await begun;
  const settings = { ...shown.settings, ...change };
  show({ settings });
  await (await phoneStore()).put('settings', settings, 'phone');
}

export async function chooseJob(jobId: string): Promise<void> {
  await settle({ jobId, area: '' });
  show(await keptJob(jobId));
  await sync();
}

/** A change made by hand. Shown at once, sent like a note, and taken back by one tap. */
export async function change(what: NewEntry['what'], words: string): Promise<void> {
  const { jobId, by } = shown.settings;
  if (!jobId) return;
  const id = newId();
  const entry: NewEntry = { at: wallTime(zoneOf(jobId)), by: by || null, what };
  await post({ id, jobId, kind: 'entry', entry, parked: null });
  say(words, undoOf(id));
  await sync();
}

/** A note or a change by hand is taken back by an entry of its own. */
export const undoOf =
  (entry: string): Undo =>
  () =>
    change({ kind: 'undo', entry }, 'Taken back.');

/** Words for the status line; after a while they make room again. */
export function say(text: string, undo: Undo | null = null): void {
  const said = { text, undo };
  show({ said });
  setTimeout(() => shown.said === said && hush(), undo === null ? sayFor : undoFor);
}

/** What went wrong, in words for the one who holds the phone. */
export const wordsOf = (error: unknown) =>
  error instanceof Error ? error.message : 'Try again where there is signal.';

/** Milliseconds: long enough to be read twice; long enough to see on another screen what a tap did. */
const sayFor = 10_000;
const undoFor = 120_000;

export const hush = () => show({ said: null });

/**
 * Takes back what the status line tells of; where that fails, the line says so and can be tapped again. Until then
 * there is nothing to tap: a thumb that taps twice would take back the same thing twice.
 */
export async function takeBack(): Promise<void> {
  const said = shown.said;
  if (!said?.undo) return;
  say(said.text);
  try {
    await said.undo();
  } catch (error) {
    say(`Not taken back. ${wordsOf(error)}`, said.undo);
  }
}

/** A parcel that the server refused: tried again, or thrown away by the person and nobody else. */
export async function release(id: string, how: 'again' | 'away'): Promise<void> {
  const parcel = shown.parcels.find((p) => p.id === id);
  if (!parcel) return;
  if (how === 'away') {
    await discard(id);
    say('Thrown away.', async () => {
      await post(parcel);
      say('Kept here again.');
    });
  } else await keep({ ...parcel, parked: null });
  show({ parcels: await waiting() });
  await sync();
}

/** The job's zone; before the job has been seen, the phone's own. */
export function zoneOf(jobId: string): string {
  const job = shown.jobs.find((j) => j.id === jobId);
  return job?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
}
