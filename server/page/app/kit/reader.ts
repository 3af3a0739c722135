import type { Answered, Asked } from '../../worker/reader.ts';

let worker: Worker | null = null;
const waiting = new Map<string, (answer: Answered | null) => void>();

/** Asks the phone's own reader. Null where it cannot be had: the server reads every note in any case. */
export function askReader(asked: Asked): Promise<Answered | null> {
  return new Promise((resolve) => {
    const at = readerAtWork();
    if (!at) return resolve(null);
    waiting.set(asked.id, resolve);
    at.postMessage(asked);
  });
}

/** Started when it is first asked and not before: it brings the vocabulary with it. */
function readerAtWork(): Worker | null {
  if (worker || !('Worker' in globalThis)) return worker;
  worker = new Worker('/reader.js');
  worker.onmessage = ({ data }: MessageEvent<Answered>) => {
    waiting.get(data.id)?.(data);
    waiting.delete(data.id);
  };
  worker.onerror = () => {
    worker?.terminate();
    worker = null;
    for (const answer of waiting.values()) answer(null);
    waiting.clear();
  };
  return worker;
}
