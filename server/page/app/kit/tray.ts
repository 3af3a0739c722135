import { hush, now, openJob, say, show } from './model.ts';
import { phoneStore, type Taken } from './phoneStore.ts';
import { record } from './recorder.ts';

/** What goes with the next note lies in the phone's own store, so that it outlasts the page. */
export const trayNow = async (): Promise<Taken[]> => (await phoneStore()).getAll('tray');

/** Lays pictures or a recording beside the words that are being written. */
export async function layIn(taken: readonly Taken[]): Promise<void> {
  const work = (await phoneStore()).transaction('tray', 'readwrite');
  for (const one of taken) void work.store.put(one);
  await work.done;
  show({ tray: await trayNow() });
}

export async function takeOut(one: Taken): Promise<void> {
  await (await phoneStore()).delete('tray', one.id);
  show({ tray: await trayNow() });
  say(one.kind === 'photo' ? 'Photo taken out.' : 'Recording dropped.', async () => {
    await layIn([one]);
    hush();
  });
}

/** Records until it is ended, also while another screen is looked at. */
export async function startRecording(): Promise<void> {
  try {
    const jobId = await openJob();
    if (!jobId) return say('No job is open on this phone yet.');
    show({ recorder: await record(jobId) });
    say('Recording. Send keeps it with the note.');
  } catch {
    say('The microphone was not given. Type, or use the keyboard’s own dictation.');
  }
}

/** Ends the recording, if there is one; it is under way until it lies in the tray, so that no other begins before. */
export async function endRecording(): Promise<Taken | null> {
  const { recorder } = now();
  if (!recorder) return null;
  const taken = await recorder.stop();
  show({ recorder: null, tray: await trayNow() });
  return taken;
}
