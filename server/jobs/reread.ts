import type { Fact } from '../../parser/types.ts';
import { fold } from './fold.ts';
import { noteOf, standing, versionOf } from './history.ts';
import type { Site } from './meeting.ts';
import type { Entry, EntryBody, JobState } from './types.ts';

/** A note to be read again. */
export interface Told {
  noteId: string;
  text: string;
  /** Local wall time. */
  saidAt: string;
}

/** What reading all notes again would change, and the entries that make it so. Nothing is kept until they are appended. */
export interface Rereading {
  entries: Entry[];
  /** One line each, `+` for what would be on the list or the order, `-` for what would not. */
  difference: string[];
}

/**
 * Reads a job's notes again, as after a change of the parser. Every correction by hand holds: a fact keeps the place of
 * the one that it reads anew, and one that a hand has touched stays even where the new reading lacks it.
 *
 * @param read the new reading of a note's words, which the entry holds
 */
export function reread(job: Site, entries: readonly Entry[], read: (told: Told) => Fact[], asOf: string): Rereading {
  const touched = touchedByHand(entries);
  const parser = nextReading(entries);
  const again = standing(entries, asOf).flatMap((entry): Entry[] => {
    if (entry.what.kind !== 'noteRead') return [];
    const { what } = entry;
    const facts = read({ noteId: noteOf(entry), text: what.text, saidAt: entry.at });
    const anew = readAnew(entry, what, { facts, text: what.text, parser }, touched.get(noteOf(entry)));
    return anew ? [anew] : [];
  });
  return { entries: again, difference: between(fold(job, entries, asOf), fold(job, [...entries, ...again], asOf)) };
}

type NoteRead = Extract<EntryBody, { kind: 'noteRead' }>;

/** The entry by which a note stands as read anew, each fact at the place of the one that it reads anew; null where nothing changes. */
export function readAnew(
  entry: Entry,
  was: NoteRead,
  { facts: fresh, text, parser }: Pick<NoteRead, 'facts' | 'text' | 'parser'>,
  touched: ReadonlySet<number> = new Set(),
): Entry | null {
  const [facts, places] = placed(fresh, placesOf(was), touched);
  if (JSON.stringify(facts) === JSON.stringify(was.facts) && text === was.text) return null;
  return { ...entry, id: `${entry.id}@${parser}`, what: { ...was, facts, places, text, parser } };
}

/**
 * The entries by which each note stands as it did before a reading; none for notes that were read again since, or where
 * that reading was taken back already. What a hand has put right since stays.
 */
export function beforeReading(entries: readonly Entry[], reading: string): Entry[] {
  const touched = touchedByHand(entries);
  const parser = nextReading(entries);
  const readings = readingsByNote(entries);
  const firsts = entries.filter(({ what }) => what.kind === 'noteRead' && !what.places);
  return firsts.flatMap((first): Entry[] => {
    const [before, latest] = readings.get(noteOf(first))!.slice(-2);
    if (!before || latest?.parser !== reading) return [];
    const was = placesOf(before);
    const known = new Set(was.map((o) => o.place));
    const byHand = touched.get(noteOf(first));
    const put = placesOf(latest).filter(({ place }) => byHand?.has(place) && !known.has(place));
    const [facts, places] = inPlaces([...was, ...put]);
    return [{ ...first, id: `${first.id}@${parser}`, what: { ...before, facts, places, parser } }];
  });
}

/** Every reading of each note, the first one first. */
function readingsByNote(entries: readonly Entry[]): Map<string, NoteRead[]> {
  const out = new Map<string, NoteRead[]>();
  for (const entry of entries) {
    if (entry.what.kind !== 'noteRead') continue;
    const noteId = noteOf(entry);
    out.set(noteId, [...(out.get(noteId) ?? []), entry.what]);
  }
  for (const readings of out.values())
    readings.sort(
      (a, b) => Number(Boolean(a.places)) - Number(Boolean(b.places)) || versionOf(a.parser) - versionOf(b.parser),
    );
  return out;
}

/** A number higher than any reading's before, so that this one stands. */
export const nextReading = (entries: readonly Entry[]): string =>
  String(
    1 + entries.reduce((most, { what }) => Math.max(most, what.kind === 'noteRead' ? versionOf(what.parser) : 0), 0),
  );

/** Places of facts that a hand has corrected, ticked, split or joined, by note. */
function touchedByHand(entries: readonly Entry[]): Map<string, Set<number>> {
  const out = new Map<string, Set<number>>();
  const touch = (noteId: string, place: number) => out.set(noteId, (out.get(noteId) ?? new Set()).add(place));
  for (const { what } of entries) {
    if (what.kind === 'correctFact') touch(what.noteId, what.index);
    const keys = 'item' in what ? [what.item, ...('as' in what ? [what.as] : [])] : 'line' in what ? [what.line] : [];
    for (const key of keys) {
      const [, noteId, place] = /^(.*)\/(\d+)(?:\.\d+)?$/.exec(key) ?? [];
      if (noteId) touch(noteId, Number(place));
    }
  }
  return out;
}

type Placed = { fact: Fact; place: number };

/** A reading's facts, each with its place. */
const placesOf = ({ facts, places }: NoteRead): Placed[] => facts.map((fact, k) => ({ fact, place: places?.[k] ?? k }));

/** New facts at the places of the old ones that they read anew, in the order of their words. */
function placed(fresh: readonly Fact[], old: readonly Placed[], touched: ReadonlySet<number>): [Fact[], number[]] {
  const left = new Set(old);
  let next = Math.max(-1, ...old.map((o) => o.place)) + 1;
  const out: Placed[] = fresh.map((fact) => {
    const same = [...left].find((o) => o.fact.kind === fact.kind && o.fact.start < fact.end && fact.start < o.fact.end);
    if (same) left.delete(same);
    return { fact, place: same?.place ?? next++ };
  });
  for (const lost of left) if (touched.has(lost.place)) out.push(lost);
  return inPlaces(out);
}

/** In the order of their words, apart from their places. */
function inPlaces(all: readonly Placed[]): [Fact[], number[]] {
  const out = [...all].sort((a, b) => a.fact.start - b.fact.start || a.place - b.place);
  return [out.map((o) => o.fact), out.map((o) => o.place)];
}

function between(before: JobState, after: JobState): string[] {
  const lines = (state: JobState) => [
    ...state.items.map((i) => `${i.task}${i.area ? ` (${i.area})` : ''}: ${i.state}`),
    ...state.order.map((l) => `${l.state}: ${l.quantity ?? 'some'} ${l.unit ?? ''} ${l.item}`.replace(/ +/g, ' ')),
  ];
  const [was, is] = [lines(before), lines(after)];
  return [
    ...was.filter((line) => !is.includes(line)).map((line) => `- ${line}`),
    ...is.filter((line) => !was.includes(line)).map((line) => `+ ${line}`),
  ];
}
