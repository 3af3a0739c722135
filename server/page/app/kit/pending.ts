import type { Fact } from '../../../../parser/types.ts';
import type { JobView, NewEntry, Talk } from '../../../http/api.ts';
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
      items: state.items.map((item) => {
        const mine = changes.filter((c) => 'item' in c && c.item === item.key);
        return mine.reduce((now, change) => {
          if (change.kind === 'setState') return { ...now, state: change.state };
          if (change.kind === 'editItem') return { ...now, ...change.change };
          return now;
        }, item);
      }),
      order: state.order.map((line) => {
        const mine = changes.filter((c) => c.kind === 'setOrder' && c.line === line.key);
        return mine.reduce(
          (now, change) =>
            change.kind === 'setOrder'
              ? { ...now, state: change.state ?? now.state, quantity: change.quantity ?? now.quantity }
              : now,
          line,
        );
      }),
    },
  };
}

function pendingChanges(parcels: readonly Parcel[], jobId: string): Change[] {
  const entries = parcels.filter((p) => p.kind === 'entry' && p.jobId === jobId && p.parked === null);
  const undone = new Set(
    entries.map((p) => (p.kind === 'entry' && p.entry.what.kind === 'undo' ? p.entry.what.entry : '')),
  );
  return entries.flatMap((p) => (p.kind === 'entry' && !undone.has(p.id) ? [p.entry.what] : []));
}

/** A note of this phone, shown before the server has read it. */
export interface ShownTalk extends Talk {
  /** Still on the phone: waiting, or refused with a reason. */
  unsent: 'waiting' | { refused: string } | null;
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
        recordingId: note.recordingId ?? null,
        photoIds: note.photoIds ?? [],
        reply: { noteId: parcel.id, facts: readings.get(parcel.id) ?? [], lines: [], ask: null, unread: false },
        unsent: parcel.parked === null ? 'waiting' : { refused: parcel.parked },
      },
    ];
  });
  const all = [...talks.map((talk): ShownTalk => ({ ...talk, unsent: null })), ...mine];
  return all.sort((a, b) => (a.saidAt < b.saidAt ? -1 : a.saidAt > b.saidAt ? 1 : 0));
}
