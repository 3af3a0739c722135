/**
 * `npx tsx tests/learn/links.ts [--judge]`: learns from the annotated jobs what facts are told of where the rules find no
 * item, and writes `server/jobs/list/linking/table.ts`. With `--judge` it writes nothing, but learns from five sixths of the jobs
 * at a time and counts on the last how often it chooses right. A job's items say in `told` where the notes speak of them.
 */

import { entriesOf } from '../../server/commands/entries.ts';
import { fold } from '../../server/jobs/index.ts';
import type { Standing } from '../../server/jobs/list/board.ts';
import { type Linker, type Option, optionsOf } from '../../server/jobs/list/linking/index.ts';
import { namingOf } from '../../server/jobs/list/linking/signs.ts';
import { type Choice, choose, learn } from './choice.ts';
import { linesOf, writeTable } from './table.ts';
import { hitsOf, noteOf, type ToldJob, toldJobs } from './toldJobs.ts';

const SETTINGS = { epochs: 12, rate: 0.15, shrink: 0.1, atLeast: 3 };
const LEAST = 0.05;
const FOLDS = 6;

/** Folds a job with a teacher who knows its items, and notes down every choice that the rules leave open. */
function choicesOf(job: ToldJob, n: number): Choice[] {
  const choices: Choice[] = [];
  const keys = new Map<number, string>();
  const teacher: Linker = (setting, fact, ruled) => {
    const { board, key } = setting;
    const note = noteOf(setting.entry.id);
    const standing = (i: number): Standing | undefined => board.byKey.get(keys.get(i) ?? '');
    const hits = hitsOf(job, note, fact);
    const naming = namingOf(fact);
    const finished = naming.sort === 'done' || naming.sort === 'fixed';
    const hit = hits.find(({ does }) => (does === 'closes') === finished) ?? hits[0];
    const item = (hit && standing(hit.i)) ?? null;
    const right = item ?? (hit || finished ? 'new' : 'none');
    const isRight = ({ is }: Option) =>
      is === right || (typeof is === 'object' && hits.some(({ i }) => standing(i) === is));
    const options = ruled.item ? [] : optionsOf(setting, naming);
    if (options.some(isRight))
      choices.push({ note: n, answers: options.map((o) => ({ signs: o.signs, worth: isRight(o) ? 1 : 0 })) });
    if (hit && !item) keys.set(hit.i, key);
    return { item, kept: right !== 'none', perhaps: null };
  };
  fold({ areas: job.rooms, builtYear: job.builtYear ?? null, linker: teacher }, entriesOf(job), job.end.asOf);
  return choices;
}

const choices = toldJobs().flatMap(choicesOf);
if (process.argv.includes('--judge')) {
  let right = 0;
  let fresh = 0;
  for (let k = 0; k < FOLDS; k++) {
    const weights = learn(
      choices.filter((c) => c.note % FOLDS !== k),
      SETTINGS,
    );
    for (const choice of choices.filter((c) => c.note % FOLDS === k)) {
      if (choice.answers[choose(choice, weights)]!.worth > 0) right++;
      if (choice.answers[0]!.worth > 0) fresh++;
    }
  }
  const of = (count: number) => (count / choices.length).toFixed(3);
  console.log(`${choices.length} choices: right ${of(right)}; a new item each time would be right in ${of(fresh)}`);
} else {
  writeTable(
    'server/jobs/list/linking/table.ts',
    'LINKS',
    'Written by tests/learn/links.ts: a sign of what a fact is told of, and hundredths for it.',
    linesOf([learn(choices, SETTINGS)], LEAST),
  );
}
