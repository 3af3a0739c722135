import type { JobView, Reply } from '../../../http/api.ts';
import { call, Refused } from './calls.ts';
import { following, unplaced } from './corrections.ts';
import { type Parcel, phoneStore } from './phoneStore.ts';

/** What came back for a parcel that the server took, and what goes out after it. */
export type Delivered = { parcel: Parcel; reply?: Reply; view?: JobView } & HandedOver;

interface HandedOver {
  next: Parcel[];
  /** Words of what a hand put right, where the server read nothing. */
  lost: string[];
}

/** Words first: sound and pictures are big, and a note must not wait behind them. */
const rank = (parcel: Parcel) => (parcel.kind === 'photo' || parcel.kind === 'recording' ? 1 : 0);

export async function waiting(): Promise<Parcel[]> {
  const all = await (await phoneStore()).getAll('outbox');
  return all.sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
}

export async function keep(parcel: Parcel): Promise<void> {
  await (await phoneStore()).put('outbox', parcel);
}

export async function discard(id: string): Promise<void> {
  await (await phoneStore()).delete('outbox', id);
}

/** All or nothing: parcels, or what lies in the tray, leave by their ids, and others are put into the outbox. */
export async function exchange(out: readonly string[], into: readonly Parcel[]): Promise<void> {
  const work = (await phoneStore()).transaction(['outbox', 'tray'], 'readwrite');
  for (const id of out) {
    void work.objectStore('tray').delete(id);
    void work.objectStore('outbox').delete(id);
  }
  for (const parcel of into) void work.objectStore('outbox').put(parcel);
  await work.done;
}

/** One that was withdrawn while another went out is neither sent nor parked. */
const stillWaits = async (id: string) => (await (await phoneStore()).getKey('outbox', id)) !== undefined;

/**
 * Sends what waits, in order, and stops at the first parcel that finds no server. A parcel leaves the phone only when
 * the server says that it has it; one that the server refuses is parked with the reason. Two open tabs take turns.
 */
export async function flush(onDelivered: (delivered: Delivered) => Promise<void>): Promise<void> {
  // Only secure pages have Web Locks; without them ids that the server knows again keep a double send harmless.
  if (navigator.locks)
    await navigator.locks.request('outbox', { ifAvailable: true }, (lock) => (lock ? send() : undefined));
  else await send();

  async function send(): Promise<void> {
    const queue = await waiting();
    for (let parcel = queue.shift(); parcel; parcel = queue.shift()) {
      if (parcel.parked !== null || !(await stillWaits(parcel.id))) continue;
      try {
        const delivered = await deliver(parcel);
        const handed = await handOver(parcel.id, delivered.reply);
        await onDelivered({ ...delivered, ...handed });
        queue.unshift(...handed.next);
      } catch (error) {
        if (!(error instanceof Refused) || error.retry) return;
        // The server has this id with other words and keeps these too, as a note of their own.
        if (error.status === 409) await discard(parcel.id);
        else if (await stillWaits(parcel.id)) await keep({ ...parcel, parked: error.message });
      }
    }
  }
}

/** Takes out what the server has, and puts in what follows it; what a hand put right meanwhile is among it. */
async function handOver(id: string, reply: Reply | undefined): Promise<HandedOver> {
  const work = (await phoneStore()).transaction('outbox', 'readwrite');
  const parcel = await work.store.get(id);
  const note = reply && parcel?.kind === 'note' ? parcel : null;
  const next = note ? following(note, reply!.facts) : [];
  void work.store.delete(id);
  for (const one of next) void work.store.put(one);
  await work.done;
  return { next, lost: note ? unplaced(note, reply!.facts) : [] };
}

async function deliver(parcel: Parcel): Promise<Omit<Delivered, keyof HandedOver>> {
  const job = `jobs/${encodeURIComponent(parcel.jobId)}`;
  switch (parcel.kind) {
    case 'note':
      return { parcel, reply: await call<Reply>('PUT', `${job}/notes/${parcel.id}`, parcel.note) };
    case 'entry':
      return { parcel, view: await call<JobView>('PUT', `${job}/entries/${parcel.id}`, parcel.entry) };
    default:
      await call('PUT', `${job}/${parcel.kind}s/${parcel.id}`, parcel.data);
      return { parcel };
  }
}
