import { v7 as newId } from 'uuid';
import { unheardText } from '../../../voice/unheard.ts';
import { wallTime } from './clock.ts';
import { askEarly, keptJob, markBegun, now, post, show, sync, zoneOf } from './model.ts';
import { readHere } from './notes.ts';
import { keep, waiting } from './outbox.ts';
import { phoneStore, plainSettings } from './phoneStore.ts';
import { trayNow } from './tray.ts';

/** Opens what the phone kept and shows it, while the server is asked. */
export async function start(): Promise<void> {
  askEarly();
  const db = await phoneStore();
  const [kept, jobs, words, parcels, tray, cut] = await Promise.all([
    db.get('settings', 'phone'),
    db.getAll('jobs'),
    db.getAll('words'),
    waiting(),
    trayNow(),
    db.count('sound'),
  ]);
  const settings = { ...plainSettings, ...kept };
  const job = settings.jobId ? await keptJob(settings.jobId) : {};
  show({ settings, jobs, words, parcels, tray, ...job });
  markBegun();
  if (cut) await gatherCutRecordings();
  show({ started: true });
  for (const parcel of now().parcels) if (parcel.kind === 'note') void readHere(parcel.id, parcel.note);
  addEventListener('online', () => void sync());
  document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && void sync());
  let ticks = 0;
  // What waits goes out soon; what another phone changed is fetched every minute while somebody looks.
  setInterval(() => {
    if (now().parcels.length || (++ticks % 4 === 0 && document.visibilityState === 'visible')) void sync();
  }, 15_000);
  await sync();
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
    const note = { saidAt: wallTime(zoneOf(jobId)), text: unheardText, by: now().settings.by || null, recordingId };
    await post({ id: newId(), jobId, kind: 'note', note, parked: null });
    for (const { n } of mine) await db.delete('sound', [recordingId, n]);
  }
}
