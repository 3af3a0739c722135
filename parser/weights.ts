/** Weights by the name of a feature. A feature that is not there weighs nothing. */
export type Weights = Pick<ReadonlyMap<string, number>, 'get'>;

/** The sum of the weights of what was seen, on top of a lean. */
export function dot(weights: Weights, features: readonly string[], lean = 0): number {
  let sum = lean;
  for (const feature of features) sum += weights.get(feature) ?? 0;
  return sum;
}

/** A table's lines by the name each starts with, and its cells where one is asked for. */
export interface Rows {
  /** The cells of a line, or nothing where the table has no such name. */
  cells: (name: string) => readonly string[] | undefined;
}

/**
 * Lays out a table of weights: a line a feature, its name, then cells after tabs. Only names are taken up: a note has few
 * of a table's thousands of features, and reading all their figures took longer than reading the note.
 */
export function rowsOf(table: string): Rows {
  const rows = new Map<string, number>();
  for (let at = 0; at < table.length; ) {
    const end = endOf(table, at);
    const cut = table.indexOf('\t', at);
    if (cut > at && cut < end) rows.set(table.slice(at, cut), cut + 1);
    at = end + 1;
  }
  return {
    cells: (name) => {
      const from = rows.get(name);
      return from === undefined ? undefined : table.slice(from, endOf(table, from)).split('\t');
    },
  };
}

function endOf(table: string, from: number): number {
  const end = table.indexOf('\n', from);
  return end < 0 ? table.length : end;
}

/** What `read` makes of a name, worked out when first asked for; names that the table lacks are not kept. */
export function onDemand<T>(rows: Rows, read: (cells: readonly string[]) => T | undefined) {
  const known = new Map<string, { value: T | undefined }>();
  return {
    get: (name: string): T | undefined => {
      const said = known.get(name);
      if (said) return said.value;
      const cells = rows.cells(name);
      if (!cells) return undefined;
      const value = read(cells);
      known.set(name, { value });
      return value;
    },
  };
}

/** A table of one figure a line, in hundredths, laid out when first asked for. */
export function hundredths(table: string): () => Weights {
  let laid: Weights | undefined;
  return () => {
    laid ??= onDemand(rowsOf(table), ([cell]) => Number(cell) / 100);
    return laid;
  };
}

/** Reads a table of weights: a line a feature, then hundredths for each of `kinds`, empty for none. */
export function columns<K extends string>(table: string, kinds: readonly K[]): Record<K, Weights> {
  const rows = rowsOf(table);
  return Object.fromEntries(
    kinds.map((kind, k) => [kind, onDemand(rows, (cells) => (cells[k] ? Number(cells[k]) / 100 : undefined))]),
  ) as Record<K, Weights>;
}
