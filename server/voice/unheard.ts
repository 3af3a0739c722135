/** Stands for the words of a recording that nobody has typed yet. Said by the phone, known to the server. */
export const unheardText = 'Recording, not typed yet.';

export const isUnheard = (note: { text: string; recordingId?: string | null }): boolean =>
  Boolean(note.recordingId) && note.text === unheardText;
