import { onDemand, rowsOf } from '../../weights.ts';
import { KINDS, type SpanKind } from './features.ts';
import { TABLE } from './table.ts';

/** How much a feature speaks for a fact of a kind beginning at a chunk, and for one going on there. */
export interface Pull {
  begin: number;
  goOn: number;
}

/** The weights of one kind: a pull a feature, and what is gained or lost where one chunk's place follows another's. */
export interface Weights {
  pulls: Pick<ReadonlyMap<string, Pull>, 'get'>;
  /** `out>begin`, `begin>goOn` and so on. */
  steps: Readonly<Record<string, number>>;
}

/**
 * Reads the table: a line a feature, then hundredths of `begin` and `goOn` for each kind in the order of `KINDS`,
 * empty for none. Lines that begin with `>` hold the steps.
 */
export function readTable(table: string): Record<SpanKind, Weights> {
  const rows = rowsOf(table);
  const said = table.match(/^>[^\t\n]+/gm) ?? [];
  const [problem, followUp, done] = KINDS.map((_, k): Weights => {
    const steps: Record<string, number> = {};
    for (const name of said) steps[name.slice(1)] = Number(rows.cells(name)![k]) / 100;
    return { pulls: onDemand(rows, (cells) => pullIn(cells, k)), steps };
  });
  return { problem: problem!, followUp: followUp!, done: done! };
}

function pullIn(cells: readonly string[], kind: number): Pull | undefined {
  const [begin, goOn] = [Number(cells[2 * kind] || 0) / 100, Number(cells[2 * kind + 1] || 0) / 100];
  return begin || goOn ? { begin, goOn } : undefined;
}

let known: Record<SpanKind, Weights> | undefined;
/** The weights that the product ships with. */
export const shipped = (): Record<SpanKind, Weights> => {
  known ??= readTable(TABLE);
  return known;
};
