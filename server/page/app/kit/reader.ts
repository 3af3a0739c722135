import type { Fact } from '../../../../parser/types.ts';
import type { ToRead } from '../../worker/reader.ts';

type Answer = { id: string; facts: Fact[] };

let worker: Worker | null = null;
const asked = new Map<string, (facts: Fact[] | null) => void>();

/** The phone's own reading of a note. Null where the reader cannot be had: the server reads the note in any case. */
export function readOnPhone(toRead: ToRead): Promise<Fact[] | null> {
  return new Promise((resolve) => {
    asked.set(toRead.id, resolve);
    readerAtWork()?.postMessage(toRead);
    if (!worker) giveUp();
  });
}

/** Started at the first note and not before: it brings the vocabulary with it. */
function readerAtWork(): Worker | null {
  if (worker || !('Worker' in globalThis)) return worker;
  worker = new Worker('/reader.js');
  worker.onmessage = ({ data }: MessageEvent<Answer>) => {
    asked.get(data.id)?.(data.facts);
    asked.delete(data.id);
  };
  worker.onerror = () => {
    worker?.terminate();
    worker = null;
    giveUp();
  };
  return worker;
}

function giveUp(): void {
  for (const answer of asked.values()) answer(null);
  asked.clear();
}
