import { v7 as newId } from 'uuid';
import { phoneStore, type Taken } from './phoneStore.ts';

export interface Recorder {
  /** Ends the recording and lays what was kept into the tray; null where nothing was heard at all. Ended again, the same. */
  stop(): Promise<Taken | null>;
}

export const canRecord = () => 'MediaRecorder' in globalThis && Boolean(navigator.mediaDevices);

const kinds = ['audio/webm;codecs=opus', 'audio/mp4'];

/** Records speech; every second goes into the phone's store, so that a closed page loses one second and not the note. */
export async function record(jobId: string): Promise<Recorder> {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
  const mimeType = kinds.find((kind) => MediaRecorder.isTypeSupported(kind));
  const recorder = new MediaRecorder(stream, { ...(mimeType && { mimeType }), audioBitsPerSecond: 24_000 });
  const db = await phoneStore();
  const recordingId = newId();
  const kept: Promise<unknown>[] = [];
  const pieces: Blob[] = [];
  recorder.ondataavailable = ({ data }) => {
    if (!data.size) return;
    kept.push(db.put('sound', { recordingId, n: pieces.length, jobId, piece: data }));
    pieces.push(data);
  };
  recorder.start(1000);
  const end = async (): Promise<Taken | null> => {
    const ended = new Promise((done) => recorder.addEventListener('stop', done, { once: true }));
    recorder.stop();
    await ended;
    for (const track of stream.getTracks()) track.stop();
    await Promise.all(kept);
    if (!pieces.length) return null;
    const taken: Taken = { id: recordingId, kind: 'recording', data: new Blob(pieces, { type: recorder.mimeType }) };
    const work = db.transaction(['sound', 'tray'], 'readwrite');
    for (let n = 0; n < pieces.length; n++) void work.objectStore('sound').delete([recordingId, n]);
    void work.objectStore('tray').put(taken);
    await work.done;
    return taken;
  };
  let ending: Promise<Taken | null> | null = null;
  return {
    stop: () => {
      ending ??= end();
      return ending;
    },
  };
}
