import { v7 as newId } from 'uuid';
import { phoneStore } from '../kit/phoneStore.ts';

export interface Recorder {
  /** Ends the recording and hands over what was kept; null where nothing was heard at all. */
  stop(): Promise<{ id: string; data: Blob } | null>;
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
  return {
    async stop() {
      const ended = new Promise((done) => recorder.addEventListener('stop', done, { once: true }));
      recorder.stop();
      await ended;
      for (const track of stream.getTracks()) track.stop();
      await Promise.all(kept);
      for (let n = 0; n < pieces.length; n++) await db.delete('sound', [recordingId, n]);
      return pieces.length ? { id: recordingId, data: new Blob(pieces, { type: recorder.mimeType }) } : null;
    },
  };
}
