/**
 * `npm run score`: how much of what people said the parser understood, against answers worked out by hand.
 * Exit status 1 where the unseen half stays under its bars. `-- --misses` lists each miss of the seen half; those of
 * the unseen half are never shown, so that no rule can be written for them.
 */
import { under } from './lib/bars.ts';
import { HALVES, LISTS, readHalf } from './lib/corpus.ts';
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
