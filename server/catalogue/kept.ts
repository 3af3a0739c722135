import type { CatalogueView } from '../http/api.ts';
import type { Store } from '../store/index.ts';
import { type Catalogue, catalogueOf } from './match.ts';
import { readCatalogue } from './rows.ts';

/** The firm's price list, read from the store once, and again only when a list was sent. */
export class KeptCatalogue {
  readonly #store: Pick<Store, 'catalogue' | 'putCatalogue'>;
  #read: Promise<Catalogue> | null = null;

  constructor(store: Pick<Store, 'catalogue' | 'putCatalogue'>) {
    this.#store = store;
  }

  /** Keeps a list in place of the one before, or says which lines are wrong and keeps the one before. */
  async put(text: string, keptAt: string): Promise<CatalogueView | { wrong: string[] }> {
    const read = readCatalogue(text);
    if (!read.ok) return { wrong: read.wrong };
    await this.#store.putCatalogue({ text, keptAt });
    this.#read = null;
    return this.view();
  }

  /** From now on there is none. */
  async drop(): Promise<CatalogueView> {
    await this.#store.putCatalogue(null);
    this.#read = null;
    return this.view();
  }

  /** The list from before, in place of the one that stands; null where there is none. */
  async putBack(): Promise<CatalogueView | null> {
    const before = await this.#store.catalogue('before');
    if (!before) return null;
    await this.#store.putCatalogue(before);
    this.#read = null;
    return this.view();
  }

  async view(): Promise<CatalogueView> {
    const { rows } = await this.now();
    const [kept, before] = await Promise.all([this.#store.catalogue(), this.#store.catalogue('before')]);
    const read = before && readCatalogue(before.text);
    return {
      ...counted(rows),
      keptAt: kept?.keptAt ?? null,
      before: read?.ok ? counted(read.rows) : null,
    };
  }

  now(): Promise<Catalogue> {
    this.#read ??= this.#store.catalogue().then(
      (kept) => {
        const read = kept ? readCatalogue(kept.text) : null;
        return catalogueOf(read?.ok ? read.rows : []);
      },
      (error: unknown) => {
        // Not remembered: the store is asked again the next time.
        this.#read = null;
        throw error;
      },
    );
    return this.#read;
  }
}

const counted = (rows: readonly { supplier: string }[]) => ({
  rows: rows.length,
  suppliers: [...new Set(rows.map((r) => r.supplier))].sort(),
});
