import type { Entry, Event } from './types.ts';

/** A line of the history of an item or of goods: what an entry did, and the words of its note that told it. */
export function event(entry: Entry, what: string, words: string | null): Event {
  return { at: entry.at, by: entry.by, entry: entry.id, what, words, noteId: entry.source?.noteId ?? null };
}
