/**
 * Learns from the annotated notes which words of a span name its thing or its work, and writes
 * `parser/facts/spans/namesTable.ts`.
 */
import { KINDS } from '../../parser/facts/spans/features.ts';
import { named } from './corpus.ts';
import { learnYes } from './logistic.ts';
import { linesOf, writeTable } from './table.ts';

const LEAST = 0.1;

const columns: ReadonlyMap<string, number>[] = [];
for (const kind of KINDS) columns.push(learnYes(await named(kind), { rounds: 6, rate: 0.1, seenAtLeast: 4 }));
writeTable(
  'spans/namesTable.ts',
  'NAMES',
  'Written by tests/learn/names.ts: a feature of a chunk, and hundredths for its naming a problem, a plan, finished work.',
  linesOf(columns, LEAST),
);
