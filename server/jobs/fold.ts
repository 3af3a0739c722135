import { wordsOf } from '../../parser/trade/likeness.ts';
import { event } from './event.ts';
import { setAlso } from './goods/byHand.ts';
import { type Corrections, correctionsIn, inOrder, inTime, noteOf, standingOf, upTo } from './history.ts';
import { copyLedger, type Ledger, newLedger } from './ledger.ts';
import { reword } from './list/board.ts';
import { joinItems, rulesOnFacts, splitOff } from './list/commands.ts';
import { setState } from './list/items.ts';
import { meantBy } from './meant.ts';
import type { Site } from './meeting.ts';
import { meetNote } from './notes.ts';
import { type Ruling, Rulings } from './rulings.ts';
import { stateOf } from './state.ts';
import type { Entry, JobState } from './types.ts';

/** What a history had added up to at a moment, to fold on from. Opaque; never changed by folding on. */
export interface Snapshot {
  readonly asOf: string;
  /** Every entry delivered so far, each once. */
  readonly entries: readonly Entry[];
  readonly ledger: Ledger;
  /** Entries delivered and later than `asOf`: not in the ledger yet. */
  readonly held: readonly Entry[];
  /** Entries and notes that an undo or a correction among the entries speaks of, delivered yet or not. */
  readonly awaited: ReadonlySet<string>;
  /** The last entry in the ledger, null where it is empty. */
  readonly last: Entry | null;
}

/**
 * What a job's history adds up to at `asOf` (local wall time). Pure: the same entries give the same list whatever
 * order or how often they were delivered.
 */
export const fold = (job: Site, entries: readonly Entry[], asOf: string): JobState =>
  foldFrom(job, null, entries, asOf).state;

/**
 * The same from a snapshot and what came since: equal to folding everything from nothing. Only what is later than the
 * snapshot is folded on; where something reaches back (an undo, a correction, a note delivered late), all is folded again.
 */
export function foldFrom(
  job: Site,
  snapshot: Snapshot | null,
  entries: readonly Entry[],
  asOf: string,
): { state: JobState; snapshot: Snapshot } {
  const on = snapshot && asOf >= snapshot.asOf ? foldedOn(job, snapshot, entries, asOf) : null;
  const next = on ?? foldedAnew(job, snapshot ? [...snapshot.entries, ...entries] : entries, asOf);
  return { state: stateOf(next.ledger, job, asOf), snapshot: next };
}

function foldedAnew(job: Site, entries: readonly Entry[], asOf: string): Snapshot {
  const once = inTime(entries);
  const told = upTo(once, asOf);
  const history = standingOf(told);
  const awaited = awaitedBy(once);
  const corrections: Corrections = awaited.size ? correctionsIn(history) : new Map();
  const rulings = new Map<string, Ruling>();
  for (;;) {
    const ledger = newLedger();
    const ruled = new Rulings(rulings);
    const ruling = history.some((entry) => apply(ledger, job, entry, corrections, ruled));
    if (!ruling)
      return {
        asOf,
        entries: [...once],
        ledger,
        held: once.slice(told.length),
        awaited,
        last: told.at(-1) ?? null,
      };
  }
}

function foldedOn(job: Site, from: Snapshot, entries: readonly Entry[], asOf: string): Snapshot | null {
  if (!entries.length && asOf === from.asOf) return from;
  const delivered = notKnown(from, inTime(entries));
  const waiting = [...from.held, ...delivered];
  const fresh = waiting.filter((entry) => entry.at <= asOf).sort(inOrder);
  const { awaited } = from;
  if (fresh.some((entry) => awaited.has(entry.id) || awaited.has(noteOf(entry)) || reachesBack(entry, from)))
    return null;
  const ledger = copyLedger(from.ledger);
  const ruled = new Rulings(new Map());
  for (const entry of fresh) if (apply(ledger, job, entry, new Map(), ruled)) return null;
  return {
    asOf,
    entries: [...from.entries, ...delivered],
    ledger,
    held: waiting.filter((entry) => entry.at > asOf),
    awaited: new Set([...awaited, ...awaitedBy(delivered)]),
    last: fresh.at(-1) ?? from.last,
  };
}

/** Those that were not delivered before: what is later than all that was folded can only have been held. */
function notKnown({ entries: before, held, last }: Snapshot, entries: readonly Entry[]): readonly Entry[] {
  const later = last !== null && entries.every((entry) => inOrder(entry, last) > 0);
  const ids = new Set(entries.map(({ id }) => id));
  for (const { id } of later ? held : before) ids.delete(id);
  return ids.size === entries.length ? entries : entries.filter(({ id }) => ids.has(id));
}

function reachesBack(entry: Entry, { last, asOf }: Snapshot): boolean {
  if (entry.at <= asOf && (!last || inOrder(entry, last) <= 0)) return true;
  const { what } = entry;
  if (what.kind === 'undo' || what.kind === 'correctFact' || what.kind === 'split') return true;
  return what.kind === 'noteRead' && (what.places !== undefined || rulesOnFacts(what.facts));
}

/** Entries and notes that an undo or a correction speaks of, delivered yet or not. */
function awaitedBy(entries: readonly Entry[]): Set<string> {
  const out = new Set<string>();
  for (const { what } of entries) {
    if (what.kind === 'undo') out.add(what.entry);
    else if (what.kind === 'correctFact') out.add(what.noteId);
  }
  return out;
}

/** True where a ruling on an earlier fact was made: the fold begins again with it. */
function apply(ledger: Ledger, job: Site, entry: Entry, corrections: Corrections, rulings: Rulings): boolean {
  const { what } = entry;
  const { board } = ledger;
  if (rulings.isOut(entry.id)) return false;
  const item = 'item' in what ? board.byKey.get(what.item) : undefined;
  switch (what.kind) {
    case 'noteRead': {
      const noteId = noteOf(entry);
      return meetNote(ledger, job, entry, meantBy(entry, what, noteId, job.areas, corrections.get(noteId)), rulings);
    }
    case 'setState':
      if (item) {
        setState(board, item, entry, what.state, null);
        item.met.push(entry.id);
      }
      return false;
    case 'editItem':
      if (item) {
        Object.assign(item, what.change, { unsure: false });
        if (what.change.task) {
          Object.assign(item, { left: null, wording: null });
          reword(board, item, wordsOf(what.change.task));
        }
        item.history.push(event(entry, 'put right by hand', null));
        item.met.push(entry.id);
      }
      return false;
    case 'sameAs': {
      const other = board.byKey.get(what.as);
      if (item && other) joinItems(board, entry, item, other, null);
      return false;
    }
    case 'split':
      return rulings.rules(entry.id, splitOff(item ?? null));
    case 'setOrder': {
      const position = ledger.goods.all.find((p) => p.key === what.line);
      ledger.handOrder.set(what.line, setAlso(ledger.handOrder.get(what.line), what, position));
      if (position) position.history.push(event(entry, what.state ?? 'put right by hand', null));
      return false;
    }
    case 'correctFact':
    case 'undo':
      return false;
  }
}
