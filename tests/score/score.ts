/**
 * `npm run score`: how much of what people said the parser understood, against answers worked out by hand.
 * Exit status 1 where the unseen half stays under its bars. `-- --misses` lists each miss of the seen half; those of
 * the unseen half are never shown, so that no rule can be written for them.
 */
import { under } from './lib/bars.ts';
import { HALVES, LISTS, readHalf } from './lib/corpus.ts';
import { scoreJobs } from './lib/jobs.ts';
import { f1, type Miss, precision, recall, type Score, scoreNotes, type Tally } from './lib/tally.ts';

const row = (name: string, t: Tally) =>
  [
    name.padEnd(13),
    String(t.gold).padStart(5),
    String(t.got).padStart(5),
    ...[f1(t.found, t), f1(t.strict, t), precision(t), recall(t)].map((x) => x.toFixed(3).padStart(10)),
  ].join(' ');

const table = (score: Score) =>
  [
    'list           gold   got   found-F1  strict-F1  precision     recall',
    ...LISTS.map((list) => row(list, score.lists[list])),
    row('all', score.all),
  ].join('\n');

const told = ({ note, list, sort, wanted, got }: Miss) =>
  [`${sort} ${note} ${list}`, wanted && `  want ${JSON.stringify(wanted)}`, got && `  got  ${JSON.stringify(got)}`]
    .filter(Boolean)
    .join('\n');

for (const half of HALVES) {
  const notes = readHalf(half);
  const score = scoreNotes(notes);
  if (half === 'seen' && process.argv.includes('--misses')) console.log(`${score.misses.map(told).join('\n')}\n`);
  console.log(`${half}: ${notes.length} notes\n${table(score)}\n`);
  if (half !== 'unseen') continue;
  const short = under(score);
  for (const line of short) console.error(line);
  if (short.length > 0) process.exitCode = 1;
}

/** Jobs played from their notes; bars of the unseen half, each share of what was worked out by hand. */
const JOB_BAR = 0.9;
for (const half of ['', 'unseen'] as const) {
  const tally = scoreJobs(half);
  console.log(`jobs, ${half || 'seen'}`);
  for (const [name, [hit, of]] of tally) {
    const share = of ? hit / of : 1;
    console.log(`${name.padEnd(20)} ${`${hit}/${of}`.padStart(7)} ${share.toFixed(3).padStart(8)}`);
    if (half !== 'unseen' || share >= JOB_BAR) continue;
    console.error(`${name} ${share.toFixed(3)} is under ${JOB_BAR}`);
    process.exitCode = 1;
  }
  console.log('');
}
