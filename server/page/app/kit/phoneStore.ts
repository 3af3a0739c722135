import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Fact } from '../../../../parser/types.ts';
import type { JobBrief, JobView, NewEntry, NewNote, Talk, TaughtWord } from '../../../http/api.ts';

/** What a hand put right in a note that had not gone out. It follows its note under the id that it was given here. */
export interface Correction {
  id: string;
  /** Local wall time. */
  at: string;
  /** The fact as this phone read it. */
  was: Fact;
  /** Null where it is no fact. */
  fact: Fact | null;
}

/** Something that waits to go to the server. `id` is made once, on the phone, before the first write. */
export type Parcel = {
  id: string;
  jobId: string;
  /** Why the server will not take it as it is; it then waits for the person, in sight. */
  parked: string | null;
} & (
  | { kind: 'note'; note: NewNote; corrections?: Correction[] }
  /** `quiet`: sent only in case the server has what it takes back; nobody waits for it. */
  | { kind: 'entry'; entry: NewEntry; quiet?: true }
  | { kind: 'photo' | 'recording'; data: Blob }
);

/** A picture, or a recording that was ended, which goes with the next note. Its id is the one that it is sent under. */
export interface Taken {
  id: string;
  kind: 'photo' | 'recording';
  data: Blob;
}

/** Choices that belong to this phone and not to the job. */
export interface Settings {
  jobId: string | null;
  /** Whose notes this phone writes. */
  by: string;
  area: string;
  /** Live recognition by the browser; its maker may hear the words. */
  liveWords: boolean;
  /** Black on white whatever the phone is set to: read in the sun. */
  sun: boolean;
  /** Text and draft that was not sent yet. */
  draft: string;
  /** What was typed of recordings and not sent yet, by note. */
  typing: Record<string, string>;
}

export const plainSettings: Settings = {
  jobId: null,
  by: '',
  area: '',
  liveWords: false,
  sun: false,
  draft: '',
  typing: {},
};

interface Phone extends DBSchema {
  outbox: { key: string; value: Parcel };
  jobs: { key: string; value: JobBrief };
  views: { key: string; value: JobView & { id: string } };
  talks: { key: string; value: { id: string; talks: Talk[] } };
  settings: { key: string; value: Settings };
  words: { key: string; value: TaughtWord };
  tray: { key: string; value: Taken };
  /** Pieces of a recording as they come; a recording cut short by a dead battery is put together from them. */
  sound: { key: [string, number]; value: { recordingId: string; n: number; jobId: string; piece: Blob } };
}

let opened: Promise<IDBPDatabase<Phone>> | null = null;

/** The phone's own store. A buffer, not an archive: what is sent is taken out of the outbox. */
export function phoneStore(): Promise<IDBPDatabase<Phone>> {
  opened ??= openDB<Phone>('scratchcoat', 3, {
    upgrade(db, before) {
      if (before < 3) db.createObjectStore('tray', { keyPath: 'id' });
      if (before < 2) db.createObjectStore('words', { keyPath: 'id' });
      if (before >= 1) return;
      db.createObjectStore('outbox', { keyPath: 'id' });
      db.createObjectStore('jobs', { keyPath: 'id' });
      db.createObjectStore('views', { keyPath: 'id' });
      db.createObjectStore('talks', { keyPath: 'id' });
      db.createObjectStore('settings');
      db.createObjectStore('sound', { keyPath: ['recordingId', 'n'] });
    },
  });
  return opened;
}

/** Puts a whole list in the place of the one that was kept, or leaves that as it was. */
export async function keepAll<Name extends 'jobs' | 'words'>(
  name: Name,
  all: readonly Phone[Name]['value'][],
): Promise<void> {
  const work = (await phoneStore()).transaction(name, 'readwrite');
  void work.store.clear();
  for (const one of all) void work.store.put(one);
  await work.done;
}
