/**
 * `npx tsx tests/learn/goods.ts`: learns from the annotated notes what tells goods (`parser/facts/goods`) and writes the
 * two tables of weights. With `--check` it writes nothing: it learns from seven eighths of the notes at a
 * time and counts how the last eighth is read, by the same rules as `npm run score`.
 */
import { FATES, type FateWeights } from '../../parser/facts/goods/fates.ts';
import { readMaterials } from '../../parser/facts/goods/index.ts';
import { f1, judge, unscored } from '../score/lib/tally.ts';
import { laidOpen } from './corpus.ts';
import { choicesIn, examplesIn, type Lesson, lessonOf } from './goodsExamples.ts';
import { classify, rank } from './softmax.ts';
import { linesOf, writeTable } from './table.ts';

const NAMING = { epochs: 15, rate: 0.1, pull: 0.05, thin: 0, least: 3 };
const FATE = { epochs: 12, rate: 0.05, pull: 0.01, thin: 0.02, least: 4 };
/** Weights nearer to nought are left out of the tables. */
const SMALL = { naming: 0.02, fates: 0.04 };
/** A miss costs as much as a false find: how much less sure than "nothing" a find may be, as a log of odds. */
const READINESS = 0.8;
const FOLDS = 8;

const laid = await laidOpen();
const lessons = laid.map(({ note, talk }) => lessonOf(talk, note.gold.materials));

/** Weights to two decimals, without the small ones. */
const pruned = (weights: ReadonlyMap<string, number>, least: number): Map<string, number> =>
  new Map([...weights].filter(([, w]) => Math.abs(w) >= least).map(([f, w]) => [f, Number(w.toFixed(2))]));

function learn(from: readonly Lesson[]) {
  const naming = pruned(
    rank(
      from.flatMap((l) => choicesIn(l)),
      NAMING,
    ),
    SMALL.naming,
  );
  const examples = from.flatMap((l) => examplesIn(l, naming));
  const learnt = classify(examples, FATES.length, FATE).map((w) => pruned(w, SMALL.fates));
  const fates = Object.fromEntries(FATES.map((f, i) => [f, learnt[i]!])) as Record<
    keyof FateWeights,
    Map<string, number>
  >;
  fates.none.set('any', Number(((fates.none.get('any') ?? 0) - READINESS).toFixed(2)));
  return { naming, fates };
}

if (process.argv.includes('--check')) {
  const score = unscored();
  for (let fold = 0; fold < FOLDS; fold++) {
    const weights = learn(lessons.filter((_, i) => i % FOLDS !== fold));
    lessons.forEach(({ talk }, i) => {
      if (i % FOLDS === fold) judge('materials', laid[i]!.note, readMaterials(talk, weights).facts, score);
    });
  }
  const t = score.lists.materials;
  console.log(`${laid.length} notes: found ${f1(t.found, t).toFixed(3)}, strict ${f1(t.strict, t).toFixed(3)}`);
} else {
  const { naming, fates } = learn(lessons);
  writeTable(
    'goods/weights/naming.ts',
    'NAMING',
    'Written by tests/learn/goods.ts: something seen of a name, and hundredths for its being the one.',
    linesOf([naming], SMALL.naming),
  );
  writeTable(
    'goods/weights/fates.ts',
    'FATE',
    `Written by tests/learn/goods.ts: something seen of a lot, and hundredths for each of ${FATES.join(', ')}.`,
    linesOf(
      FATES.map((fate) => fates[fate]),
      SMALL.fates,
    ),
  );
}
