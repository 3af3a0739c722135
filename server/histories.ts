import { type Entry, foldFrom, type Job, type JobState, type Snapshot } from './jobs/index.ts';
import type { Site as FoldSite } from './jobs/meeting.ts';
import type { Store } from './store/index.ts';

type At = Job & Pick<FoldSite, 'packFor'>;

interface Kept {
  /** The rooms that it was folded with: other rooms file work otherwise. */
  areas: string[];
  snapshot: Snapshot;
  /** Place in the store of the last entry that is in the snapshot. */
  place: number;
}

/** Every job's history as it stood last, in memory: a request reads and folds only the entries that came since. */
export class Histories {
  readonly #store: Pick<Store, 'entriesAfter'>;
  readonly #kept = new Map<string, Kept>();

  constructor(store: Pick<Store, 'entriesAfter'>) {
    this.#store = store;
  }

  /** The list as it stood at a moment, local wall time. */
  async state(job: At, asOf: string): Promise<JobState> {
    return (await this.#stand(job, asOf)).state;
  }

  /** The list before and after entries that are not kept yet. */
  async withMore(job: At, more: readonly Entry[], asOf: string): Promise<{ before: JobState; after: JobState }> {
    const { state, snapshot, site } = await this.#stand(job, asOf);
    return { before: state, after: foldFrom(site, snapshot, more, asOf).state };
  }

  /** Every entry kept so far, in the order in which they were kept. */
  async entries(job: Pick<Job, 'id'>): Promise<readonly Entry[]> {
    const known = this.#kept.get(job.id);
    const { entries } = await this.#store.entriesAfter(job.id, known?.place ?? 0);
    return known ? [...known.snapshot.entries, ...entries] : entries;
  }

  async #stand(job: At, asOf: string): Promise<{ state: JobState; snapshot: Snapshot; site: At }> {
    const before = this.#kept.get(job.id);
    const known = before && before.areas.join('\n') === job.areas.join('\n') ? before : null;
    // The same list of rooms by identity: what was worked out with it holds.
    const areas = known?.areas ?? job.areas;
    const site = { ...job, areas };
    const { entries, place } = await this.#store.entriesAfter(job.id, known?.place ?? 0);
    const { state, snapshot } = foldFrom(site, known?.snapshot ?? null, entries, asOf);
    // A look back is kept too: from an earlier day the rest is folded on, and a phone whose clock runs ahead spoils nothing.
    this.#kept.set(job.id, { areas, snapshot, place });
    return { state, snapshot, site };
  }
}
