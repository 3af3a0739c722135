/**
 * What a hand or a sentence rules about an earlier fact: it is an item of its own, or it is left out. The fold begins
 * again with it, so that everything after falls into place.
 */
export interface Ruling {
  kind: 'apart' | 'out';
  /** Key of the fact, or id of the entry. */
  key: string;
}

/** Rulings on earlier facts, by what ruled them: an entry's id, or a fact's key. */
export class Rulings {
  readonly #by: Map<string, Ruling>;
  readonly #apart = new Set<string>();
  readonly #out = new Set<string>();

  constructor(by: Map<string, Ruling>) {
    this.#by = by;
    for (const { kind, key } of by.values()) (kind === 'apart' ? this.#apart : this.#out).add(key);
  }

  isApart = (key: string) => this.#apart.size > 0 && this.#apart.has(key);
  isOut = (key: string) => this.#out.size > 0 && this.#out.has(key);

  /** Takes a ruling down; true where it is new, so that the fold has to begin again. */
  rules(by: string, ruling: Ruling | null): boolean {
    if (!ruling || this.#by.has(by)) return false;
    this.#by.set(by, ruling);
    return true;
  }
}
