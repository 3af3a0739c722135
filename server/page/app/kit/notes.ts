import { v7 as newId } from 'uuid';
import type { Fact } from '../../../../parser/types.ts';
import type { NewEntry, NewNote } from '../../../http/api.ts';
import { wallTime } from './clock.ts';
import { fitting, following } from './corrections.ts';
import { now, post, say, show, sync, undoOf, zoneOf } from './model.ts';
import { exchange, waiting } from './outbox.ts';
import { type Correction, type Parcel, phoneStore, type Taken } from './phoneStore.ts';
import { askReader } from './reader.ts';
import { trayNow } from './tray.ts';

/** What comes with the words of a note. */
export interface With {
  /** Pictures, and one recording at most. */
  taken?: readonly Taken[];
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
  const { taken = [], recordingId = null, saidAt } = given;
  const { settings } = now();
  if (!settings.jobId) return;
  const jobId = settings.jobId;
  const id = newId();
  const note: NewNote = {
    saidAt: saidAt ?? wallTime(zoneOf(jobId)),
    text,
    by: given.by === undefined ? settings.by || null : given.by,
    area: given.area === undefined ? settings.area || null : given.area,
    recordingId: taken.find((one) => one.kind === 'recording')?.id ?? recordingId,
    photoIds: taken.filter((one) => one.kind === 'photo').map((one) => one.id),
  };
  const enclosed = taken.map((one): Parcel => ({ ...one, jobId, parked: null }));
  await put(
    taken.map((one) => one.id),
    [{ id, jobId, kind: 'note', note, parked: null }, ...enclosed],
  );
  const takeBack = undoOf(id);
  say('Kept on this phone.', takeBack);
  await sync();
  // What a tap did meanwhile is told by now, and stays told.
  if (now().said?.undo !== takeBack) return;
  // One that was thrown away meanwhile is in neither.
  if (now().talks.some((t) => t.id === id)) say('Sent.', takeBack);
  else if (now().parcels.some((p) => p.id === id && p.parked !== null)) say('Not taken; it is kept here.');
}

type Waiting = Extract<Parcel, { kind: 'note' }>;

/** Takes a note that waits off this phone before it goes out, with its pictures and its sound; one tap brings it back. */
export async function withdraw(waits: Waiting): Promise<void> {
  const ids = new Set([...(waits.note.photoIds ?? []), waits.note.recordingId]);
  const enclosed = now().parcels.filter((p) => ids.has(p.id));
  await replace(waits, null, enclosed);
  say('Note taken out.', async () => {
    await put([], [again(waits, waits.note), ...enclosed]);
    say('The note waits again.');
    await sync();
  });
  await sync();
}

/** Puts other words in the place of a note that waits; when it was said, by whom and what came with it stay. */
export async function reword(waits: Waiting, change: Pick<NewNote, 'text' | 'area'>): Promise<void> {
  const other = {
    ...again(waits, { ...waits.note, ...change }),
    corrections: fitting(waits.corrections, change.text),
  };
  await replace(waits, other);
  await changed(other, waits);
}

/** Says that a note which waits stands otherwise now; taken back and brought again by turns. */
async function changed(other: Waiting, before: Waiting): Promise<void> {
  say('Note changed.', async () => {
    const back = again(before, before.note);
    await replace(other, back);
    await changed(back, other);
  });
  await sync();
}

/** Puts a fact of a note that waits right; what the phone's own reading made of the words is told by its place. */
export async function correctWaiting(waits: Waiting, index: number, fact: Fact | null, words: string): Promise<void> {
  const was = now().readings.get(waits.id)?.[index];
  if (!was) return;
  const correction: Correction = { id: newId(), at: wallTime(zoneOf(waits.jobId)), was, fact };
  // The note may have gone out while the sheet was open.
  const there = await keepCorrections(waits.id, (all) => [...all, correction]);
  if (!there) {
    const sent = now().talks.find((talk) => talk.id === waits.id);
    const [entry] = sent ? following({ ...waits, corrections: [correction] }, sent.reply.facts) : [];
    if (entry) await post(entry);
  }
  say(words, async () => {
    if (await keepCorrections(waits.id, (all) => all.filter((c) => c.id !== correction.id))) say('Taken back.');
    else await undoOf(correction.id)();
  });
  await sync();
}

/** Changes what was put right in a note that waits. False where it waits no more. */
async function keepCorrections(id: string, change: (all: Correction[]) => Correction[]): Promise<boolean> {
  const work = (await phoneStore()).transaction('outbox', 'readwrite');
  const parcel = await work.store.get(id);
  if (parcel?.kind === 'note') void work.store.put({ ...parcel, corrections: change(parcel.corrections ?? []) });
  await work.done;
  show({ parcels: await waiting() });
  return parcel?.kind === 'note';
}

/** The same note under another id. */
const again = (waits: Waiting, note: NewNote): Waiting => ({ ...waits, id: newId(), note, parked: null });

/**
 * What waits may have reached the server though its answer was lost: whatever takes its place has an id of its own, and
 * the first is taken back in any case.
 */
async function replace(waits: Waiting, other: Waiting | null, enclosed: readonly Parcel[] = []): Promise<void> {
  const { id, jobId } = waits;
  const entry: NewEntry = { at: wallTime(zoneOf(jobId)), by: waits.note.by ?? null, what: { kind: 'undo', entry: id } };
  const inCase: Parcel = { id: newId(), jobId, kind: 'entry', entry, quiet: true, parked: null };
  await put([id, ...enclosed.map((p) => p.id)], other ? [inCase, other] : [inCase]);
}

/** Changes what waits, all or nothing, and reads here the notes that came. */
async function put(out: readonly string[], into: readonly Parcel[]): Promise<void> {
  await exchange(out, into);
  show({ parcels: await waiting(), tray: await trayNow() });
  for (const parcel of into) if (parcel.kind === 'note') void readHere(parcel.id, parcel.note);
}

/** Reads a note on the phone. Without the reader at hand the note waits plain. */
export async function readHere(id: string, { text, saidAt, area }: NewNote): Promise<void> {
  const { areas = [], crew = [] } = now().view?.job ?? {};
  const options = { saidAt, areas, area: area ?? null };
  const answer = await askReader({ id, ask: 'facts', text, options, taught: now().words, crew });
  if (answer?.ask === 'facts') show({ readings: new Map(now().readings).set(id, answer.facts) });
}
