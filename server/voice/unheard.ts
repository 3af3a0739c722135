/** Stands for the words of a recording that nobody has typed yet. Said by the phone, known to the server. */
export const unheardText = 'Recording, not typed yet.';

type Spoken = { text: string; recordingId?: string | null };

export const isUnheard = (note: Spoken): boolean => Boolean(note.recordingId) && note.text === unheardText;

/** Notes without the recordings that were typed since: those are heard with their words, and wait no longer. */
export function withoutTyped<T extends Spoken>(notes: readonly T[]): T[] {
  const typed = new Set(notes.flatMap((note) => (isUnheard(note) ? [] : (note.recordingId ?? []))));
  return notes.filter((note) => !isUnheard(note) || !typed.has(note.recordingId!));
}
