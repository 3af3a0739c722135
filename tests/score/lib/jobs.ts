import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { wordsOf } from '../../../parser/trade/likeness.ts';

/** How much of what was worked out by hand a replayed job shows: hits, and out of how many. */
export type JobTally = Map<string, [hit: number, of: number]>;

export interface Line {
  task?: string;
  item?: string;
  problem?: string | null;
  area?: string | null;
  size?: string | null;
  quantity?: number | null;
  /** What the order says of goods besides: their kind, what they are for. */
  specs?: readonly string[];
}
interface End {
  open: Line[];
  closed: Line[];
  order: Line[];
  notOrder?: Line[];
}

const FOLDER = join(import.meta.dirname, '../../../fixtures/jobs');
const REPLAY = join(import.meta.dirname, '../../../server/commands/replay.ts');

/** Share of the wanted words that another text holds. */
function covered(wanted: string, text: string): number {
  const words = [...wordsOf(wanted)];
  const have = wordsOf(text);
  return words.length ? words.filter((word) => have.has(word)).length / words.length : 1;
}

const textOf = ({ task, item, problem, area, size, specs = [] }: Line) =>
  [task, item, problem, area, size, ...specs].filter(Boolean).join(' ');

/** Pairs wanted and shown one to one, the best first; half of the wanted words must be there. */
export function paired(wanted: readonly Line[], shown: readonly Line[]): [Line, Line][] {
  const all = wanted.flatMap((want) =>
    shown.map((got) => ({
      want,
      got,
      score: covered(want.task ?? want.item ?? '', textOf(got)) + (want.area && want.area === got.area ? 0.3 : 0),
    })),
  );
  const out: [Line, Line][] = [];
  const used = new Set<Line>();
  for (const { want, got, score } of all.sort((a, b) => b.score - a.score)) {
    if (score < 0.5 || used.has(want) || used.has(got)) continue;
    used.add(want).add(got);
    out.push([want, got]);
  }
  return out;
}

/** Replays every job of a half (`''` for the seen, `unseen`) and tallies its end state against the one worked out by hand. */
export function scoreJobs(half: '' | 'unseen'): JobTally {
  const folder = join(FOLDER, half);
  const tally: JobTally = new Map();
  const add = (name: string, hit: number, of: number) => {
    const [h, o] = tally.get(name) ?? [0, 0];
    tally.set(name, [h + hit, o + of]);
  };
  for (const file of readdirSync(folder).filter((name) => name.endsWith('.json'))) {
    const path = join(folder, file);
    const { end } = JSON.parse(readFileSync(path, 'utf8')) as { end: End };
    const state = JSON.parse(
      execFileSync(process.execPath, ['--import', 'tsx', REPLAY, path], { encoding: 'utf8' }),
    ) as End;
    const open = paired(end.open, state.open);
    add('open recall', open.length, end.open.length);
    add('open precision', open.length, state.open.length);
    add('closed recall', paired(end.closed, state.closed).length, end.closed.length);
    const order = paired(end.order, state.order);
    add('order recall', order.length, end.order.length);
    add('order precision', order.length, state.order.length);
    add('order quantity', order.filter(([want, got]) => want.quantity === got.quantity).length, order.length);
    const bought = new Set(order.map(([, got]) => got));
    const rest = state.order.filter((line) => !bought.has(line));
    const kept = (end.notOrder ?? []).filter(
      (no) => !rest.some((line) => covered(no.item ?? '', textOf(line)) >= 0.75),
    );
    add('kept off the order', kept.length, end.notOrder?.length ?? 0);
  }
  return tally;
}
