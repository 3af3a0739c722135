/**
 * `npx tsx tests/learn/said.ts`: counts in how many annotated notes each word is said, and writes the words that crews
 * say often to `parser/hearing/said.ts`.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { readFiles } from '../score/lib/corpus.ts';

/** Said in fewer notes than this, a word tells nothing. */
const LEAST = 4;
const FILE = join(import.meta.dirname, '../../parser/hearing/said.ts');

const counts = new Map<string, number>();
const notes = readFiles('seen').flatMap((file) => file.notes);
for (const { text } of notes) {
  const words = tokenise(text).filter(({ kind, word }) => kind === 'word' && /^[a-z]{2,}$/.test(word));
  for (const word of new Set(words.map(({ word }) => word))) counts.set(word, (counts.get(word) ?? 0) + 1);
}
const tiers: string[][] = [];
for (const [word, count] of [...counts].sort(([a], [b]) => (a < b ? -1 : 1))) {
  if (count < LEAST) continue;
  const tier = Math.floor(Math.log2(count)) - Math.log2(LEAST);
  tiers[tier] ??= [];
  tiers[tier].push(word);
}
const lines = tiers.map((words) => `  '${words.join(' ')}',`);
writeFileSync(
  FILE,
  `/** Words that crews say, from the ${notes.length} annotated notes: each line those said twice as often as the line before, the first in ${LEAST} notes. Written by \`tests/learn/said.ts\`. */
const TIERS = [
${lines.join('\n')}
];

const DOUBLINGS: ReadonlyMap<string, number> = new Map(
  TIERS.flatMap((words, tier) => words.split(' ').map((word): [string, number] => [word, tier + 1])),
);

/** How often crews say a word: 0 hardly ever, and one more each time it doubles, up to 9 for "the". */
export const said = (word: string): number => DOUBLINGS.get(word) ?? 0;
`,
);
console.log(`${FILE}: ${lines.length} tiers`);
