import { clausesIn, talkOf } from './facts/clauses.ts';
import { readFacts } from './facts/index.ts';
import type { Talk } from './facts/talk.ts';
import { hear } from './hearing/index.ts';
import { readQuantities } from './quantities/index.ts';
import { readTimes } from './times/index.ts';
import { builtIn } from './trade/index.ts';
import { mentionsIn } from './trade/mentions.ts';
import { numberedRooms } from './trade/numberedRooms.ts';
import { isTranscript, readTranscript } from './transcript/index.ts';
import type { Fact, NoteReading, ReadOptions } from './types.ts';

export type * from './types.ts';

/**
 * Reads one note: talk in, facts out. A timed transcript is read passage by passage, and its facts carry their second.
 *
 * @param text the note as said, dictated or typed, any length; never changed
 * @param options when it was said, the job's areas, the words that the firm uses
 * @returns facts in the order of their words, and what each floor found on the way. Never throws on any text.
 */
export const readNote = (text: string, options: ReadOptions): NoteReading =>
  isTranscript(text) ? readTranscript(text, options, readTalk) : readTalk(text, options);

function readTalk(text: string, options: ReadOptions): NoteReading {
  const talk = layOpen(text, options);
  return { ...talk.reading, clauses: clausesIn(talk), facts: standingIn(options.area ?? null, readFacts(talk)) };
}

/** A note up to its clauses, before anybody asks for facts. */
export function layOpen(text: string, options: ReadOptions): Talk {
  const vocabulary = options.vocabulary ?? builtIn();
  const heard = hear(text, vocabulary);
  const rooms = numberedRooms(heard.tokens, text, options.areas ?? []);
  const { quantities, notQuantities } = readQuantities(heard.tokens, text, rooms);
  const times = readTimes(heard.tokens, text, { now: options.saidAt, quantities }).filter(
    ({ start, end }) => !rooms.some((room) => room.start < end && start < room.end),
  );
  const terms = [...rooms, ...mentionsIn(heard.tokens, text, vocabulary)];
  const reading = { heard, quantities, notQuantities, times, terms };
  return talkOf(text, reading, options.areas ?? [], options.wordClass);
}

/** An instruction to the list is about the whole job unless it names a room itself. */
const standingIn = (area: string | null, facts: Fact[]): Fact[] =>
  area ? facts.map((f) => (f.area === null && f.kind !== 'command' ? { ...f, area } : f)) : facts;
