import { v7 as newId } from 'uuid';
import type { Fact } from '../../../../parser/types.ts';
import type { JobBrief, JobView, NewEntry, NewNote, NewWord, Talk, TaughtWord } from '../../../http/api.ts';
import { unheardText } from '../../../voice/unheard.ts';
import { jobsCall, Refused, talksCall, viewCall, wordsCall } from './calls.ts';
import { wallTime } from './clock.ts';
import { type Delivered, discard, flush, keep, waiting } from './outbox.ts';
import { keepAll, type Parcel, phoneStore, plainSettings, type Settings } from './phoneStore.ts';
import { askReader } from './reader.ts';

/** Takes back what a tap did. Throws what its call throws. */
export type Undo = () => Promise<void>;

/** Everything that the screens show. Replaced whole at each change, never changed in place. */
export interface Shown {
  started: boolean;
  jobs: JobBrief[];
  view: JobView | null;
  talks: Talk[];
  parcels: Parcel[];
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

/** Opens what the phone kept, shows it, and only then asks the server. */
export async function start(): Promise<void> {
  const db = await phoneStore();
  const settings = { ...plainSettings, ...(await db.get('settings', 'phone')) };
  show({ settings, jobs: await db.getAll('jobs'), words: await db.getAll('words'), parcels: await waiting() });
  markBegun();
  if (settings.jobId) await showKept(settings.jobId);
  await gatherCutRecordings();
  show({ started: true });
  for (const parcel of shown.parcels) if (parcel.kind === 'note') void readHere(parcel.id, parcel.note);
  addEventListener('online', () => void sync());
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void sync());
  let ticks = 0;
  // What waits goes out soon; what another phone changed is fetched every minute while somebody looks.
  setInterval(() => {
    if (shown.parcels.length || (++ticks % 4 === 0 && document.visibilityState === 'visible')) void sync();
  }, 15_000);
  await sync();
}

async function showKept(jobId: string): Promise<void> {
  const db = await phoneStore();
  show({ view: (await db.get('views', jobId)) ?? null, talks: (await db.get('talks', jobId))?.talks ?? [] });
}

/** A choice made, or a note said, before the phone's store is open waits for it. */
let markBegun: () => void;
const begun = new Promise<void>((resolve) => {
  markBegun = resolve;
});

/** The job that is talked about, or null. On a phone's first visit the server has to be asked. */
export async function openJob(): Promise<string | null> {
  await begun;
  if (!shown.settings.jobId) await sync();
  return shown.settings.jobId;
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

async function round(): Promise<void> {
  try {
    await flush(delivered);
    show({ parcels: await waiting() });
    const jobs = await jobsCall();
    const jobId = jobs.find((j) => j.id === shown.settings.jobId)?.id ?? jobs[0]?.id;
    const asked = jobId ? Promise.all([viewCall(jobId), talksCall(jobId), wordsCall()]) : null;
    show({ jobs, reached: true, trouble: null });
    if (jobId && jobId !== shown.settings.jobId) await settle({ jobId });
    const answered = await asked;
    // Shown first and kept then: a thumb waits for the one and not for the other.
    if (answered && shown.settings.jobId === jobId) {
      const [view, talks, words] = answered;
      show({ view, talks, words });
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
    show({ asked: true });
  }
}

async function delivered({ parcel, reply, view }: Delivered): Promise<void> {
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
    parcels: shown.parcels.filter((p) => p.id !== talk.id),
  });
}

async function post(parcel: Parcel): Promise<void> {
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
  await showKept(jobId);
  await sync();
}

/** What comes with the words of a note. */
export interface With {
  photos?: readonly Blob[];
  sound?: { id: string; data: Blob } | null;
  /** A recording that was sent before, whose words are typed only now. */
  recordingId?: string | null;
  /** Local wall time, where it was said earlier than it is sent. */
  saidAt?: string;
  /** Null for talk that names its own areas as it goes; left out, the one chosen on this phone. */
  area?: string | null;
  /** Who said it; left out, whoever speaks on this phone. */
  by?: string | null;
}

/** Keeps a note on the phone with the time it was said, reads it here, and sends it as soon as that can be done. */
export async function sendNote(text: string, given: With = {}): Promise<void> {
  const { photos = [], sound = null, recordingId = null, saidAt } = given;
  const { settings } = shown;
  if (!settings.jobId) return;
  const jobId = settings.jobId;
  const id = newId();
  const photoIds: string[] = [];
  for (const data of photos) {
    const photoId = newId();
    photoIds.push(photoId);
    await keep({ id: photoId, jobId, kind: 'photo', data, parked: null });
  }
  if (sound) await keep({ id: sound.id, jobId, kind: 'recording', data: sound.data, parked: null });
  const note: NewNote = {
    saidAt: saidAt ?? wallTime(zoneOf(jobId)),
    text,
    by: given.by === undefined ? settings.by || null : given.by,
    area: given.area === undefined ? settings.area || null : given.area,
    recordingId: sound?.id ?? recordingId,
    photoIds,
  };
  await post({ id, jobId, kind: 'note', note, parked: null });
  const takeBack = undoOf(id);
  say('Kept on this phone.', takeBack);
  void readHere(id, note);
  await sync();
  const kept = shown.parcels.find((p) => p.id === id);
  if (!kept) say('Sent.', takeBack);
  else if (kept.parked !== null) say('Not taken; it is kept here.');
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
const undoOf =
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

/** Takes back what the status line tells of; where that fails, the line says so and can be tapped again. */
export async function takeBack(): Promise<void> {
  const said = shown.said;
  if (!said?.undo) return;
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
    say('Thrown away.', () => post(parcel));
  } else await keep({ ...parcel, parked: null });
  show({ parcels: await waiting() });
  await sync();
}

/** The job's zone; before the job has been seen, the phone's own. */
export function zoneOf(jobId: string): string {
  const job = shown.jobs.find((j) => j.id === jobId);
  return job?.zone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** Reads a note on the phone. Without the reader at hand the note waits plain. */
async function readHere(id: string, { text, saidAt, area }: NewNote): Promise<void> {
  const { areas = [], crew = [] } = shown.view?.job ?? {};
  const options = { saidAt, areas, area: area ?? null };
  const answer = await askReader({ id, ask: 'facts', text, options, taught: shown.words, crew });
  if (answer?.ask === 'facts') show({ readings: new Map(shown.readings).set(id, answer.facts) });
}

/** A recording that a dead battery or a closed page cut short is kept like any other. */
async function gatherCutRecordings(): Promise<void> {
  const db = await phoneStore();
  const pieces = await db.getAll('sound');
  for (const recordingId of new Set(pieces.map((p) => p.recordingId))) {
    const mine = pieces.filter((p) => p.recordingId === recordingId);
    const jobId = mine[0]!.jobId;
    const data = new Blob(
      mine.map((p) => p.piece),
      { type: mine[0]!.piece.type },
    );
    await keep({ id: recordingId, jobId, kind: 'recording', data, parked: null });
    const note = { saidAt: wallTime(zoneOf(jobId)), text: unheardText, by: shown.settings.by || null, recordingId };
    await post({ id: newId(), jobId, kind: 'note', note, parked: null });
    for (const { n } of mine) await db.delete('sound', [recordingId, n]);
  }
}
