/**
 * `npx tsx tests/learn/misheard.ts <folder of ordinary English>`: learns when words are a misheard name of the trade, and
 * writes `parser/hearing/weights.ts`. With `count` behind it: counts what sounds like a name and was said and meant, and
 * writes `parser/hearing/saidSoTable.ts`; that is done first, and `soundCosts.ts` and `company.ts` before it.
 *
 * Yes: the phrases of `fixtures/hearing` that may be looked at, what was judged a mishearing in annotated notes, and the vocabulary's listed mishearings put in the place
 * of their names in annotated notes; the list is not told of the very mishearing in question. No: every other name that
 * some words there sound like, and those of ordinary English (npm package `nlp-corpus`, MIT, its `builds` folder).
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ENOUGH, weightOf } from '../../parser/hearing/weights.ts';
import { readHalf } from '../score/lib/corpus.ts';
import { shuffled } from './common.ts';
import { heardPairs } from './heardPairs.ts';
import {
  candidatesIn,
  fromEnglish,
  fromPair,
  notesAsTheyStand,
  planted,
  type Row,
  random,
  row,
  sentences,
} from './misheardRows.ts';
import { writeTable } from './table.ts';

const HEARING = join(import.meta.dirname, '../../parser/hearing');
const RATE = 0.1;
/** Names that words may sound enough like, in 5,000 of them; several may be for the same words, of which one is taken. */
const ENGLISH_ALARMS = 1.6;
const TALK_ALARMS = 2.5;

/** Logistic regression by stochastic gradient, each weight with a step of its own. */
function learn(lessons: readonly Row[], rounds = 25, decay = 3e-4): Float64Array {
  const width = lessons[0]!.values.length;
  const weights = new Float64Array(width);
  const squares = new Float64Array(width).fill(1e-3);
  for (let round = 0; round < rounds; round++)
    for (const { values, yes, weight } of shuffled(lessons, random)) {
      let sum = 0;
      for (let k = 0; k < width; k++) sum += weights[k]! * values[k]!;
      const off = weight * ((yes ? 1 : 0) - 1 / (1 + Math.exp(-sum)));
      for (let k = 0; k < width; k++) {
        const gradient = off * values[k]! - decay * weights[k]!;
        squares[k]! += gradient * gradient;
        weights[k]! += (RATE * gradient) / Math.sqrt(squares[k]!);
      }
    }
  return weights;
}

const scoreOf = (r: Row) => r.values.reduce((sum, value, k) => sum + value * weightOf(r.names[k]!), 0);
/** Words are kept that are this near to being taken for a name. */
const TEMPTING = 4;

/** Counts what sounds like a name, and was said and meant. */
function countSaidSo(folder: string): { crews: Map<string, number>; others: Map<string, number> } {
  const counts = { crews: new Map<string, number>(), others: new Map<string, number>() };
  const tempting = new Set<string>();
  const count = (text: string, map: Map<string, number>) => {
    const said = new Set<string>();
    for (const { candidate, tokens } of candidatesIn(text)) {
      const words = tokens
        .slice(candidate.from, candidate.until)
        .map((t) => t.word)
        .join(' ');
      said.add(words);
      if (tempting.has(words)) continue;
      const made = row(candidate, tokens, false, 1);
      if (made && scoreOf(made) > ENOUGH - TEMPTING) tempting.add(words);
    }
    for (const words of said) map.set(words, (map.get(words) ?? 0) + 1);
  };
  for (const { text, gold } of readHalf('seen')) {
    const answers = JSON.stringify(gold).toLowerCase();
    const missing = answers.match(/[a-z]{4,}/g)!.some((word) => !text.toLowerCase().includes(word.slice(0, 4)));
    // A note whose answers name what it does not say may hold mishearings.
    if (!missing || !/fix|dictat|phone|mis/.test(answers)) count(text, counts.crews);
  }
  for (const text of sentences(folder, 0, 20)) count(text, counts.others);
  for (const map of [counts.crews, counts.others])
    for (const words of map.keys()) if (!tempting.has(words)) map.delete(words);
  return counts;
}

const tier = (count: number) => (count < 2 ? 0 : Math.floor(Math.log2(count)));

const folder = process.argv[2]!;
if (process.argv[3] === 'count') {
  const { crews, others } = countSaidSo(folder);
  const lines = [...new Set([...crews.keys(), ...others.keys()])]
    .sort()
    .map((words) => [words, tier(crews.get(words) ?? 0), tier(others.get(words) ?? 0)] as const)
    .filter(([, a, b]) => a + b)
    .map((cells) => cells.join('\t'));
  writeTable(
    'parser/hearing/saidSoTable.ts',
    'SAID_SO',
    'Words that sound like a name of the trade and were said and meant: by crews in annotated notes, and by others in ordinary English, 1 for twice and one more each time it doubles. Written by `tests/learn/misheard.ts count`.',
    lines,
  );
  process.exit();
}
const rows: Row[] = [];
for (const pair of heardPairs()) fromPair(pair, 8, rows);
console.log('pairs', rows.filter((r) => r.yes).length, rows.length);
planted(rows);
console.log('planted', rows.filter((r) => r.yes).length, rows.length);
const noteWords = notesAsTheyStand(rows);
console.log('notes', noteWords, rows.length);
const words = fromEnglish(folder, rows);
console.log('english', words, rows.length);

const weights = learn(rows);
const score = ({ values }: Row) => values.reduce((sum, value, k) => sum + value * weights[k]!, 0);
/** The least that no more than `per5000` alarms in 5,000 words come up to. */
function enoughFor(from: Row['from'], inWords: number, per5000: number): number {
  const alarms = rows.filter((r) => r.from === from && !r.yes).map(score);
  return alarms.sort((a, b) => b - a)[Math.round((inWords * per5000) / 5000)]!;
}
const enough = Math.max(enoughFor('english', words, ENGLISH_ALARMS), enoughFor('notes', noteWords, TALK_ALARMS));
writeFileSync(
  join(HEARING, 'weights.ts'),
  `/** Weights of the signs (\`signs.ts\`) that words were a misheard name of the trade, in hundredths. Written by \`tests/learn/misheard.ts\`. */
const WEIGHTS: Readonly<Record<string, number>> = {
${rows[0]!.names.map((name, k) => `  ${JSON.stringify(name)}: ${Math.round(100 * weights[k]!)},`).join('\n')}
};

/** What the weighed signs must add up to. */
export const ENOUGH = ${enough.toFixed(2)};

export const weightOf = (sign: string): number => (WEIGHTS[sign] ?? 0) / 100;
`,
);
console.log(`weights.ts: from ${enough.toFixed(2)} on`);
