/**
 * Learns where problems, plans and finished work stand, from the annotated notes: first what each chunk says, then what
 * speaks for each span that the chunks propose. The second learns from spans proposed by weights that never met their
 * note, since those are as often wrong as they are in notes to come.
 * `npx tsx tests/learn/spans.ts` writes `table.ts` and `wholeTable.ts` in `parser/facts/spans`; with `--folds` it only
 * tells how well notes left out of the learning are read.
 */
import { KINDS } from '../../parser/facts/spans/features.ts';
import { readTable } from '../../parser/facts/spans/weights.ts';
import { dot } from '../../parser/weights.ts';
import { chunkTable } from './chunkTable.ts';
import { lessons } from './corpus.ts';
import { linesOf, writeTable } from './table.ts';
import { pairs, type Whole, weighWholes, wholesOf } from './wholes.ts';

/** Weights of whole spans under this are left out of their table. */
const LEAST_OF_WHOLE = 0.03;

/** By weights learned from the other files: a file is by one hand. */
const FOLDS = 5;
const notes = await lessons();
const wholes: Whole[][] = notes.map(() => []);
for (let k = 0; k < FOLDS; k++) {
  const weights = readTable(chunkTable(notes.filter(({ file }) => file % FOLDS !== k)));
  notes.forEach((note, i) => {
    if (note.file % FOLDS === k) wholes[i] = wholesOf(note, weights);
  });
}
if (process.argv.includes('--folds')) judge();
else {
  writeTable(
    'parser/facts/spans/table.ts',
    'TABLE',
    'Written by tests/learn/spans.ts: `weights.ts` says how it is laid out.',
    chunkTable(notes).split('\n'),
  );
  writeTable(
    'parser/facts/spans/wholeTable.ts',
    'WHOLES',
    'Written by tests/learn/spans.ts: a sign of a span, and hundredths for its telling of a problem, a plan, finished work.',
    linesOf(weighWholes(wholes.flat()), LEAST_OF_WHOLE),
  );
}

/** Spans met, of those wanted and of those given, in files that the weights of whole spans were not learned from. */
function judge() {
  const sums = KINDS.map(() => ({ wanted: 0, given: 0, met: 0 }));
  for (let k = 0; k < FOLDS; k++) {
    const weights = weighWholes(wholes.filter((_, i) => notes[i]!.file % FOLDS !== k).flat());
    notes.forEach(({ file, tuned, answers }, i) => {
      // Rules fitted to a note say nothing of how unseen ones are read.
      if (tuned || file % FOLDS !== k) return;
      KINDS.forEach((kind, j) => {
        const given = wholes[i]!.filter((w) => w.kind === kind && dot(weights[j]!, w.signs) > 0);
        const met = pairs(answers[kind], given);
        const free = met.filter(([, { optional }]) => optional).length;
        sums[j]!.wanted += answers[kind].filter(({ optional }) => !optional).length;
        sums[j]!.given += given.length - free;
        sums[j]!.met += met.length - free;
      });
    });
  }
  KINDS.forEach((kind, j) => {
    const { wanted, given, met } = sums[j]!;
    const of = (a: number, b: number) => (b ? a / b : 1).toFixed(3);
    console.log(
      `${kind.padEnd(9)} F1 ${of(2 * met, wanted + given)} precision ${of(met, given)} recall ${of(met, wanted)}`,
    );
  });
}
