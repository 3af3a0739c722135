/**
 * `npx tsx tests/learn/orderDoubts.ts [--judge]`: learns from the annotated jobs which lines of the order are still to buy at a
 * job's end, and writes `server/jobs/goods/doubts/table.ts`. With `--judge` it writes nothing, but learns without the jobs of
 * one writer at a time and counts on those: lines wanted, shown and right, as all are shown and as the doubted are kept apart.
 */

import { dot } from '../../parser/weights.ts';
import { entriesOf } from '../../server/commands/entries.ts';
import { DOUBTED, type OrderDoubts } from '../../server/jobs/goods/doubts/index.ts';
import { signsOfLine } from '../../server/jobs/goods/doubts/signs.ts';
import { fold } from '../../server/jobs/index.ts';
import { usesText } from '../../server/talk/wording.ts';
import { paired } from '../score/lib/jobs.ts';
import { type Example, learnYes } from './logistic.ts';
import { linesOf, writeTable } from './table.ts';
import { type ToldJob, toldJobs } from './toldJobs.ts';

const SETTINGS = { rounds: 15, decay: 0, pull: 8, rate: 0.1, start: 1, seenAtLeast: 3 };
const LEAST = 0.05;
/** What is tried besides, to see what each costs and brings. */
const BARS = [DOUBTED - 0.5, DOUBTED, DOUBTED + 0.5];

interface Shown extends Example {
  /** Whose hand wrote the job: `j3` of `j3-5`. */
  writer: string;
}

/** Lines of the order at a job's end as if nothing were doubted, and how many are wanted; reckoned lines stand by their own figures. */
function shownIn(job: ToldJob): { lines: Shown[]; wanted: number } {
  const signs = new Map<string, string[]>();
  const recorder: OrderDoubts = (position, notes) => {
    if (position.wanted) signs.set(position.key, signsOfLine(position, notes));
    return false;
  };
  const site = { areas: job.rooms, builtYear: job.builtYear ?? null, orderDoubts: recorder };
  const { order } = fold(site, entriesOf(job), job.end.asOf);
  const lines = order
    .filter(({ state }) => state === 'to buy')
    .map(({ key, item, size, specs, uses }) => ({ key, item, size, specs: [...specs, usesText(uses)] }));
  const right = new Set<unknown>(paired(job.end.order, lines).map(([, line]) => line));
  return {
    wanted: job.end.order.length,
    lines: lines.map((line) => ({
      writer: job.id.split('-')[0]!,
      features: signs.get(line.key) ?? [],
      yes: right.has(line),
    })),
  };
}

const jobs = toldJobs().map(shownIn);
const lines = jobs.flatMap((job) => job.lines);
const judged = lines.filter(({ features }) => features.length > 0);
if (process.argv.includes('--judge')) {
  const odds = new Map<Shown, number>();
  for (const writer of new Set(judged.map((line) => line.writer))) {
    const weights = learnYes(
      judged.filter((line) => line.writer !== writer),
      SETTINGS,
    );
    for (const line of judged) if (line.writer === writer) odds.set(line, dot(weights, line.features));
  }
  const wanted = jobs.reduce((sum, job) => sum + job.wanted, 0);
  const tell = (name: string, shown: readonly Shown[]) => {
    const right = shown.filter(({ yes }) => yes).length;
    console.log(
      `${name}: ${wanted} wanted, ${shown.length} shown, ${right} right; precision ${(right / shown.length).toFixed(3)}, recall ${(right / wanted).toFixed(3)}`,
    );
  };
  tell('all', lines);
  for (const bar of BARS)
    tell(
      `without those under ${bar}`,
      lines.filter((line) => (odds.get(line) ?? 0) >= bar),
    );
} else
  writeTable(
    'server/jobs/goods/doubts/table.ts',
    'ORDER_DOUBTS',
    'Written by tests/learn/orderDoubts.ts: a sign that a line of the order is still to buy, and hundredths for it.',
    linesOf([learnYes(judged, SETTINGS)], LEAST),
  );
