/**
 * `npx tsx tests/learn/goods.ts`: learns from the annotated notes what tells goods (`parser/facts/goods`) and writes the
 * two tables of weights. With `--check` it writes nothing: it learns from seven eighths of the notes at a
 * time and counts how the last eighth is read, by the same rules as `npm run score`.
 */
import { FATES } from '../../parser/facts/goods/fates.ts';
import { readMaterials } from '../../parser/facts/goods/index.ts';
import { f1, judge, unscored } from '../score/lib/tally.ts';
import { laidOpen } from './corpus.ts';
import { lessonOf } from './goodsExamples.ts';
import { learnGoods, SMALL } from './goodsWeights.ts';
import { linesOf, writeTable } from './table.ts';

const FOLDS = 8;

const laid = await laidOpen();
const lessons = laid.map(({ note, talk }) => lessonOf(talk, note.gold.materials));

if (process.argv.includes('--check')) {
  const score = unscored();
  for (let fold = 0; fold < FOLDS; fold++) {
    const weights = learnGoods(lessons.filter((_, i) => i % FOLDS !== fold));
    lessons.forEach(({ talk }, i) => {
      if (i % FOLDS === fold) judge('materials', laid[i]!.note, readMaterials(talk, weights).facts, score);
    });
  }
  const t = score.lists.materials;
  console.log(`${laid.length} notes: found ${f1(t.found, t).toFixed(3)}, strict ${f1(t.strict, t).toFixed(3)}`);
} else {
  const { naming, fates } = learnGoods(lessons);
  writeTable(
    'parser/facts/goods/weights/naming.ts',
    'NAMING',
    'Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one.',
    linesOf([naming], SMALL.naming),
  );
  writeTable(
    'parser/facts/goods/weights/fates.ts',
    'FATE',
    `Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of ${FATES.join(', ')}.`,
    linesOf(
      FATES.map((fate) => fates[fate]),
      SMALL.fates,
    ),
  );
}
