import type { Fact } from '../../parser/types.ts';
import { takesBack } from './list/commands.ts';
import type { Entry } from './types.ts';

/** The order in which things were said; ties by id, so that two phones agree. */
export const inOrder = (a: Pick<Entry, 'at' | 'id'>, b: Pick<Entry, 'at' | 'id'>): number =>
  a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

/** The entries that count, in the order in which things were said: each once, up to `asOf`, those undone left out. */
export const standing = (entries: readonly Entry[], asOf: string): readonly Entry[] =>
  standingOf(upTo(inTime(entries), asOf));

/** Each entry once, however often it was delivered, in the order in which things were said; most histories come so. */
export function inTime(entries: readonly Entry[]): readonly Entry[] {
  if (entries.every((entry, k) => k === 0 || inOrder(entries[k - 1]!, entry) < 0)) return entries;
  return [...new Map(entries.map((entry) => [entry.id, entry])).values()].sort(inOrder);
}

/** Those said up to a moment, of entries in order. */
export const upTo = (entries: readonly Entry[], asOf: string): readonly Entry[] =>
  entries.slice(0, entries.findLastIndex(({ at }) => at <= asOf) + 1);

/** `standing` of entries in order, each there once. */
export function standingOf(told: readonly Entry[]): readonly Entry[] {
  if (!told.some(changesOthers)) return told;
  const history = latestReadings(told);
  const undone = new Set<string>();
  for (let k = history.length - 1; k >= 0; k--) {
    const { id, what } = history[k]!;
    if (what.kind === 'undo' && !undone.has(id)) undone.add(what.entry);
  }
  const latest: string[] = [];
  const takes = history.some(({ what }) => what.kind === 'noteRead' && takesBack(what.facts));
  for (const { id, what } of takes ? history : []) {
    if (undone.has(id)) continue;
    const taken = what.kind === 'noteRead' && takesBack(what.facts) ? latest.pop() : undefined;
    if (taken) undone.add(taken);
    else if (what.kind !== 'undo') latest.push(id);
  }
  return undone.size ? history.filter((entry) => entry.what.kind !== 'undo' && !undone.has(entry.id)) : history;
}

/** Takes an entry back, or is another reading of a note. Few do. */
const changesOthers = ({ what }: Entry): boolean =>
  what.kind === 'undo' || (what.kind === 'noteRead' && (what.places !== undefined || takesBack(what.facts)));

export const noteOf = (entry: Entry): string => entry.source?.noteId ?? entry.id;

/** A note read again stands as it was read last; it keeps the id and the place of its first reading. */
function latestReadings(history: readonly Entry[]): readonly Entry[] {
  const again = new Map<string, Entry>();
  for (const entry of history) {
    if (entry.what.kind !== 'noteRead' || !entry.what.places) continue;
    const known = again.get(noteOf(entry));
    if (!known || isLater(entry, known)) again.set(noteOf(entry), entry);
  }
  if (!again.size) return history;
  return history.flatMap((entry) => {
    if (entry.what.kind !== 'noteRead') return [entry];
    if (entry.what.places) return [];
    const later = again.get(noteOf(entry));
    return [later ? { ...entry, what: later.what } : entry];
  });
}

export const versionOf = (parser: string): number => Number.parseFloat(parser) || 0;
const readingOf = ({ what }: Entry) => (what.kind === 'noteRead' ? versionOf(what.parser) : 0);
const isLater = (a: Entry, b: Entry) => readingOf(a) > readingOf(b) || (readingOf(a) === readingOf(b) && a.id > b.id);

/** Facts put right by hand, by note and place. */
export type Corrections = Map<string, Map<number, Fact | null>>;

export function correctionsIn(history: readonly Entry[]): Corrections {
  const out: Corrections = new Map();
  for (const { what } of history) {
    if (what.kind !== 'correctFact') continue;
    const facts = out.get(what.noteId) ?? new Map<number, Fact | null>();
    facts.set(what.index, what.fact);
    out.set(what.noteId, facts);
  }
  return out;
}
