import { KINDS, type SpanKind } from './features.ts';
import { TABLE } from './table.ts';

/** How much a feature speaks for a fact of a kind beginning at a chunk, and for one going on there. */
export interface Pull {
  begin: number;
  goOn: number;
}

/** The weights of one kind: a pull a feature, and what is gained or lost where one chunk's place follows another's. */
export interface Weights {
  pulls: ReadonlyMap<string, Pull>;
  /** `out>begin`, `begin>goOn` and so on. */
  steps: Readonly<Record<string, number>>;
}

/**
 * Reads the table: a line a feature, then hundredths of `begin` and `goOn` for each kind in the order of `KINDS`,
 * empty for none. Lines that begin with `>` hold the steps.
 */
export function readTable(table: string): Record<SpanKind, Weights> {
  const out = KINDS.map(() => ({ pulls: new Map<string, Pull>(), steps: {} as Record<string, number> }));
  for (const line of table.split('\n')) {
    if (!line) continue;
    const [name, ...cells] = line.split('\t');
    KINDS.forEach((_, k) => {
      if (name!.startsWith('>')) {
        out[k]!.steps[name!.slice(1)] = Number(cells[k]) / 100;
        return;
      }
      const [begin, goOn] = [Number(cells[2 * k] || 0) / 100, Number(cells[2 * k + 1] || 0) / 100];
      if (begin || goOn) out[k]!.pulls.set(name!, { begin, goOn });
    });
  }
  const [problem, followUp, done] = out;
  return { problem: problem!, followUp: followUp!, done: done! };
}

let known: Record<SpanKind, Weights> | undefined;
/** The weights that the product ships with. */
export const shipped = (): Record<SpanKind, Weights> => {
  known ??= readTable(TABLE);
  return known;
};
