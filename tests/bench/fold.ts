/**
 * How long a long history takes to fold: `tsx tests/bench/fold.ts`. Prints milliseconds for 5,000, 10,000 and 20,000
 * entries: the median of five runs, folding from nothing, and folding one more note on from a snapshot.
 */
import { fold, foldFrom } from '../../server/jobs/index.ts';
import { JOB } from '../jobs/made.ts';
import { history } from './history.ts';

const END = '2036-01-01T00:00:00';
const median = (times: number[]) => [...times].sort((a, b) => a - b)[times.length >> 1]!;
const timed = (work: () => unknown) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

for (const size of [5000, 10_000, 20_000]) {
  const entries = history(size);
  const first = timed(() => fold(JOB, entries, END));
  const again = median(Array.from({ length: 5 }, () => timed(() => fold(JOB, entries, END))));
  const { snapshot } = foldFrom(JOB, null, entries.slice(0, -1), END);
  const on = median(Array.from({ length: 5 }, () => timed(() => foldFrom(JOB, snapshot, entries.slice(-1), END))));
  process.stdout.write(
    `${size} entries: ${Math.round(again)} ms (the first time, with the words still to be read, ${Math.round(first)} ms); one note on from a snapshot ${Math.round(on)} ms\n`,
  );
}
