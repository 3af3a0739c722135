/**
 * Learns from the annotated notes when a flaw was put right, and writes `parser/facts/spans/repairedTable.ts`.
 * With `--folds` it only tells how often flaws left out of the learning are judged rightly.
 */
import { dot } from '../../parser/weights.ts';
import { flaws } from './corpus.ts';
import { learnYes } from './logistic.ts';
import { linesOf, writeTable } from './table.ts';

const LEAST = 0.08;
const HOW = { rounds: 20, decay: 0, pull: 3, seenAtLeast: 4 };

const all = await flaws();
if (process.argv.includes('--folds')) {
  // A file is by one hand.
  const FOLDS = 8;
  let [right, byRule, judged] = [0, 0, 0];
  for (let k = 0; k < FOLDS; k++) {
    const weights = learnYes(
      all.filter(({ file }) => file % FOLDS !== k),
      HOW,
    );
    for (const { features, yes } of all.filter(({ file, tuned }) => file % FOLDS === k && !tuned)) {
      judged++;
      if (dot(weights, features) > 0 === yes) right++;
      if (features.includes('rule=true') === yes) byRule++;
    }
  }
  console.log(
    `${judged} flaws: rightly judged ${(right / judged).toFixed(3)}, by rule alone ${(byRule / judged).toFixed(3)}`,
  );
} else {
  writeTable(
    'parser/facts/spans/repairedTable.ts',
    'REPAIRED',
    'Written by tests/learn/repaired.ts: a feature of a flaw, and hundredths for its having been put right.',
    linesOf([learnYes(all, HOW)], LEAST),
  );
}
