import { readNote } from '../../parser/index.ts';
import type { Entry } from '../jobs/index.ts';
import { loadWordClass } from '../words/wordClass.ts';

/** A job as it stands in a file: its notes in order of time. */
export interface NotesOfJob {
  id: string;
  rooms: readonly string[];
  notes: readonly { saidAt: string; text: string; by?: string | null | undefined }[];
}

const wordClass = await loadWordClass();

/** A job's notes as they are read today; their ids end in the note's number. */
export const entriesOf = (job: NotesOfJob): Entry[] =>
  job.notes.map((note, k) => {
    const noteId = `${job.id}-${String(k).padStart(4, '0')}`;
    const { facts } = readNote(note.text, { saidAt: note.saidAt, areas: job.rooms, wordClass });
    return {
      id: noteId,
      jobId: job.id,
      at: note.saidAt,
      by: note.by ?? null,
      source: { noteId, start: 0, end: note.text.length },
      what: { kind: 'noteRead', facts, text: note.text, parser: '1' },
    };
  });
