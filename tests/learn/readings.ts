/**
 * Learns from the annotated notes which figures are readings, and in which unit those are that were told without one, and
 * writes `parser/facts/measurements/table.ts`. With `--folds` it only tells how the notes of hands left out of the learning
 * are read.
 */

import { readMaterials } from '../../parser/facts/goods/index.ts';
import { COLUMNS } from '../../parser/facts/measurements/answers.ts';
import { readMeasurements } from '../../parser/facts/measurements/index.ts';
import { f1, judge, precision, recall, unscored } from '../score/lib/tally.ts';
import { laidOpen } from './corpus.ts';
import { readingChoices } from './readingExamples.ts';
import { LEAST, learnReadings } from './readingWeights.ts';
import { linesOf, writeTable } from './table.ts';

const FOLDS = 6;

const laid = (await laidOpen()).map((l, n) => {
  const { used } = readMaterials(l.talk);
  return { ...l, used, choices: readingChoices(l.talk, l.note, n, used) };
});
const learnt = (from: typeof laid) => learnReadings(from.flatMap((l) => l.choices));
if (process.argv.includes('--folds')) {
  const score = unscored();
  for (let fold = 0; fold < FOLDS; fold++) {
    const weights = learnt(laid.filter((l) => l.file % FOLDS !== fold));
    for (const { note, talk, used, file, tuned } of laid)
      if (file % FOLDS === fold && !tuned) judge('measurements', note, readMeasurements(talk, used, weights), score);
  }
  const t = score.lists.measurements;
  const told = { found: f1(t.found, t), strict: f1(t.strict, t), precision: precision(t), recall: recall(t) };
  console.log(`notes no rule was written beside, hands left out: ${t.gold} measurements`);
  for (const [name, share] of Object.entries(told)) console.log(`${name} ${share.toFixed(3)}`);
} else {
  const weights = learnt(laid);
  writeTable(
    'parser/facts/measurements/table.ts',
    'READINGS',
    `Written by tests/learn/readings.ts: what is seen of a figure, and hundredths for ${COLUMNS.join(', ')}.`,
    linesOf(
      COLUMNS.map((column) => weights[column]),
      LEAST,
    ),
  );
}
