import type { Fact } from '../../../../parser/types.ts';
import type { JobView, NewEntry, Talk } from '../../../http/api.ts';
import { isLive } from '../../../jobs/live.ts';
import type { Item, OrderLine } from '../../../jobs/types.ts';
import { withoutTyped } from '../../../voice/unheard.ts';
import { corrected } from './corrections.ts';
import type { Parcel } from './phoneStore.ts';

type Change = NewEntry['what'];

/** The job as it will stand once the changes made by hand on this phone have gone out. The server's own answer replaces it. */
export function withPending(view: JobView, parcels: readonly Parcel[]): JobView {
  const changes = pendingChanges(parcels, view.job.id);
  if (!changes.length) return view;
  const { state } = view;
  return {
    ...view,
    state: {
      ...state,
      items: state.items.map(
        (item): Item => Object.assign({}, item, ...changes.map((change) => onItem(item, change, view.today))),
      ),
      order: state.order.map(
        (line): OrderLine => Object.assign({}, line, ...changes.map((change) => onLine(line, change))),
      ),
    },
  };
}

function onItem(item: Item, change: Change, today: string): Partial<Item> {
  if (change.kind === 'setState' && change.item === item.key)
    return { state: change.state, closedOn: isLive(change) ? null : (item.closedOn ?? today) };
  return change.kind === 'editItem' && change.item === item.key ? change.change : {};
}

function onLine(line: OrderLine, change: Change): Partial<OrderLine> {
  if (change.kind !== 'setOrder' || change.line !== line.key) return {};
  return { state: change.state ?? line.state, quantity: change.quantity ?? line.quantity };
}

function factsNow(talk: Talk, changes: readonly Change[]): (Fact | null)[] {
  const facts: (Fact | null)[] = [...talk.reply.facts];
  for (const { index, fact } of talk.corrected ?? []) facts[index] = fact;
  for (const change of changes)
    if (change.kind === 'correctFact' && change.noteId === talk.id) facts[change.index] = change.fact;
  return facts;
}

function pendingChanges(parcels: readonly Parcel[], jobId: string): Change[] {
  const entries = parcels.flatMap((p) => (p.kind === 'entry' && p.jobId === jobId && p.parked === null ? [p] : []));
  // The latest first: an undo that was itself undone takes nothing back.
  const undone = new Set<string>();
  for (const { id, entry } of [...entries].reverse())
    if (entry.what.kind === 'undo' && !undone.has(id)) undone.add(entry.what.entry);
  return entries.flatMap(({ id, entry }) => (undone.has(id) ? [] : [entry.what]));
}

/** A note of this phone, shown before the server has read it. */
export interface ShownTalk extends Talk {
  /** Still on the phone, waiting or refused with a reason: the parcel. */
  unsent: Extract<Parcel, { kind: 'note' }> | null;
  /** What was understood as it stands now, each at its first place; null where a hand said that it was no fact. */
  facts: (Fact | null)[];
}

/** What was said, oldest first: the server's notes, then those that wait here with the phone's own reading. */
export function talksShown(
  talks: readonly Talk[],
  parcels: readonly Parcel[],
  jobId: string,
  readings: ReadonlyMap<string, Fact[]>,
): ShownTalk[] {
  const known = new Set(talks.map((t) => t.id));
  const mine = parcels.flatMap((parcel): ShownTalk[] => {
    if (parcel.kind !== 'note' || parcel.jobId !== jobId || known.has(parcel.id)) return [];
    const { note } = parcel;
    return [
      {
        id: parcel.id,
        saidAt: note.saidAt,
        by: note.by ?? null,
        text: note.text,
        area: note.area ?? null,
        recordingId: note.recordingId ?? null,
        photoIds: note.photoIds ?? [],
        reply: { noteId: parcel.id, facts: [], lines: [], ask: null, unread: false },
        unsent: parcel,
        facts: corrected(readings.get(parcel.id) ?? [], parcel.corrections),
      },
    ];
  });
  const changes = pendingChanges(parcels, jobId);
  const undone = new Set(changes.flatMap((change) => (change.kind === 'undo' ? change.entry : [])));
  const all = [
    ...talks.map((talk): ShownTalk => ({ ...talk, unsent: null, facts: factsNow(talk, changes) })),
    ...mine,
  ].map((talk) => (undone.has(talk.id) ? { ...talk, takenBack: true } : talk));
  return withoutTyped(all).sort((a, b) => (a.saidAt < b.saidAt ? -1 : a.saidAt > b.saidAt ? 1 : 0));
}
