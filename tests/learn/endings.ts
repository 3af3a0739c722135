/**
 * `npx tsx tests/learn/endings.ts [--judge]`: learns from the annotated jobs how a note tells that an open item is finished,
 * and writes `server/jobs/list/endings/table.ts`. With `--judge` it writes nothing, but learns from five sixths of the jobs at a
 * time and counts on the last: endings told, endings taken, and how many of those are right.
 */

import { entriesOf } from '../../server/commands/entries.ts';
import { fold } from '../../server/jobs/index.ts';
import type { Standing } from '../../server/jobs/list/board.ts';
import { candidatesOf, type Endings } from '../../server/jobs/list/endings/index.ts';
import { namesOf } from '../../server/jobs/list/endings/signs.ts';
import { type Choice, choose, learn } from './choice.ts';
import { linesOf, writeTable } from './table.ts';
import { hitsOf, noteOf, type ToldJob, toldJobs } from './toldJobs.ts';

const SETTINGS = { epochs: 15, rate: 0.3, shrink: 0, pull: 5, mean: true, atLeast: 3 };
const LEAST = 0.05;
const FOLDS = 6;

/** Whether a clause ends an item; `place` says which item in which note. */
interface Example extends Choice {
  place: string;
}

const ends = ({ does }: { does: string }) => does === 'closes' || does === 'drops';

const NOT: Choice['answers'][number] = { signs: [], worth: 0 };

/** Every clause that may end an item, with whether it does. What nobody annotated teaches little and is left out. */
function examplesOf(job: ToldJob, n: number): Example[] {
  const examples: Example[] = [];
  const ended = [...job.end.open, ...job.end.closed].map((item) => item.told.filter(ends).map(({ note }) => note));
  const about = (item: Standing) =>
    new Set(
      item.history.flatMap(({ entry, words }) => {
        const start = words === null ? -1 : job.notes[noteOf(entry)]!.text.indexOf(words);
        return start < 0 ? [] : hitsOf(job, noteOf(entry), { start, end: start + words!.length }).map(({ i }) => i);
      }),
    );
  const teacher: Endings = (told) => {
    const { entry } = told;
    const note = noteOf(entry.id);
    for (const { item, clause, signs } of candidatesOf(told)) {
      const items = about(item);
      const here = hitsOf(job, note, clause).some((hit) => items.has(hit.i) && ends(hit));
      const elsewhere = [...items].some((i) => ended[i]!.includes(note));
      if (!items.size || (elsewhere && !here)) continue;
      const worth = here ? 1 : 0;
      const answers = [
        { signs: [...namesOf(signs), ...clause.signs], worth },
        { ...NOT, worth: 1 - worth },
      ];
      examples.push({ note: n, place: `${entry.id} ${item.key}`, answers });
    }
    return [];
  };
  fold({ areas: job.rooms, builtYear: job.builtYear ?? null, endings: teacher }, entriesOf(job), job.end.asOf);
  return examples;
}

const examples = toldJobs().flatMap(examplesOf);
if (process.argv.includes('--judge')) {
  const due = new Set(examples.flatMap(({ answers, place }) => (answers[0]!.worth ? [place] : [])));
  const taken = new Set<string>();
  for (let k = 0; k < FOLDS; k++) {
    const weights = learn(
      examples.filter(({ note }) => note % FOLDS !== k),
      SETTINGS,
    );
    for (const example of examples)
      if (example.note % FOLDS === k && choose(example, weights) === 0) taken.add(example.place);
  }
  const right = [...taken].filter((place) => due.has(place)).length;
  console.log(`${due.size} endings told, ${taken.size} taken, ${right} of them right`);
} else {
  writeTable(
    'server/jobs/list/endings/table.ts',
    'ENDINGS',
    'Written by tests/learn/endings.ts: a sign that a clause tells of an item as finished, and hundredths for it.',
    linesOf([learn(examples, SETTINGS)], LEAST),
  );
}
