import { v7 as newId } from 'uuid';
import type { NewEntry, NewNote } from '../../../http/api.ts';
import { wallTime } from './clock.ts';
import { now, say, show, sync, undoOf, zoneOf } from './model.ts';
import { exchange, waiting } from './outbox.ts';
import type { Parcel, Taken } from './phoneStore.ts';
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
  const other = again(waits, { ...waits.note, ...change });
  await replace(waits, other);
  say('Note changed.', () => reword(other, { text: waits.note.text, area: waits.note.area ?? null }));
  await sync();
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
