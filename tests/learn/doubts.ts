/**
 * `npx tsx tests/learn/doubts.ts [--judge]`: learns from the annotated jobs which flaws and plans are no item of the list,
 * or one that stands already, and writes `server/jobs/list/doubts/table.ts`. With `--judge` it writes nothing, but learns from five
 * sixths of the jobs at a time and counts on the last: of items opened, how many are real among those that are doubted, and
 * among the others.
 */

import { dot } from '../../parser/weights.ts';
import { entriesOf } from '../../server/commands/entries.ts';
import { fold } from '../../server/jobs/index.ts';
import { isPlain } from '../../server/jobs/list/doubts/index.ts';
import { signsOfDoubt } from '../../server/jobs/list/doubts/signs.ts';
import { type Linker, link } from '../../server/jobs/list/linking/index.ts';
import { namingOf } from '../../server/jobs/list/linking/signs.ts';
import { type Example, learnYes } from './logistic.ts';
import { linesOf, writeTable } from './table.ts';
import { hitsOf, noteOf, type ToldJob, toldJobs } from './toldJobs.ts';

const SETTINGS = { rounds: 15, decay: 0, pull: 8, rate: 0.1, start: 1, seenAtLeast: 3 };
const LEAST = 0.05;
const FOLDS = 6;
const BARS = [-1, -0.6, -0.3, 0, 0.3];

interface Opened extends Example {
  job: number;
}

/** Every item that a flaw or a plan opens, and whether it is real: the first told of an item that the annotation knows. */
function openedIn(job: ToldJob, n: number): Opened[] {
  const told = new Map<string, { item: number | null; features: string[] }>();
  const recorder: Linker = (setting, fact, ruled) => {
    const { sort } = namingOf(fact);
    const hit = hitsOf(job, noteOf(setting.entry.id), fact)[0];
    if (!told.has(setting.key))
      told.set(setting.key, {
        item: hit?.i ?? null,
        features: fact.kind !== 'done' && sort !== 'fixed' && !isPlain(setting) ? signsOfDoubt(setting, fact) : [],
      });
    return link(setting, fact, ruled);
  };
  const { items } = fold(
    { areas: job.rooms, builtYear: job.builtYear ?? null, linker: recorder },
    entriesOf(job),
    job.end.asOf,
  );
  const known = new Set<number>();
  return items.flatMap(({ key }) => {
    const { item = null, features = [] } = told.get(key) ?? {};
    const yes = item !== null && !known.has(item);
    if (item !== null) known.add(item);
    return features.length ? [{ job: n, features, yes }] : [];
  });
}

const opened = toldJobs().flatMap(openedIn);
if (process.argv.includes('--judge')) {
  const weighed = opened.map((one) => ({ ...one, odds: 0 }));
  for (let k = 0; k < FOLDS; k++) {
    const weights = learnYes(
      opened.filter(({ job }) => job % FOLDS !== k),
      SETTINGS,
    );
    for (const one of weighed) if (one.job % FOLDS === k) one.odds = dot(weights, one.features);
  }
  const real = (list: readonly Opened[]) => `${list.filter(({ yes }) => yes).length} of ${list.length}`;
  for (const bar of BARS)
    console.log(
      `under ${bar}: real ${real(weighed.filter(({ odds }) => odds < bar))}; others ${real(weighed.filter(({ odds }) => odds >= bar))}`,
    );
} else
  writeTable(
    'server/jobs/list/doubts/table.ts',
    'DOUBTS',
    'Written by tests/learn/doubts.ts: a sign that words open an item of the list, and hundredths for it.',
    linesOf([learnYes(opened, SETTINGS)], LEAST),
  );
