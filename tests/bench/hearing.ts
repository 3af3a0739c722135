/**
 * Misheard trade words put right, and plain English wrongly turned into trade words.
 *
 * The phrases: `seen` while the rules were written, `unseen` before the sounds were tuned, `fresh` after it. Then 58 more,
 * most of them plain English in the place of the trade's words: 19 were put right at first sight. Half of them were then
 * `opened` and their causes mended, half stay `sealed`: their misses are never printed.
 * The halves of 60 more, `opened-2` and `sealed-2`: 16 of 30 and 18 of 30 put right at first sight.
 * The halves of 81 more, `opened-3` and `sealed-3`: 14 of 41 and 13 of 40 put right at first sight.
 * The halves of 60 more, `opened-4` and `sealed-4`, and of 250 more written before names were weighed, `opened-5` and
 * `sealed-5`: the rules that then stood put right 76 of 125 of the last, the weights at first sight 93 of 125.
 * Then 563 more ways in which dictation writes names were listed and the names weighed anew: of the 254 sealed phrases 178 were
 * put right before and 179 after, with 33 and 32 wrong repairs in talk. Their totals were looked at eight times meanwhile.
 * What crews say and mean: the annotated notes that may be looked at, every repair made there judged by hand in `talk`.
 * Ordinary English for the false repairs: the npm package `nlp-corpus` (MIT), whose `builds` folder can be named.
 *
 *   npx tsx tests/bench/hearing.ts [folder of .json or .txt files of ordinary English]
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { hear } from '../../parser/hearing/index.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { heardTalk, judge, squeezed } from '../learn/heardTalk.ts';

const vocabulary = builtIn();

for (const name of readdirSync(new URL('../../fixtures/hearing/', import.meta.url))
  .map((file) => file.replace('.jsonl', ''))
  .filter((file) => file !== 'talk')) {
  const lines = readFileSync(new URL(`../../fixtures/hearing/${name}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n');
  const missed = lines
    .map((line) => JSON.parse(line) as { text: string; heard: string; meant: string })
    .filter(({ text, meant }) => {
      const { tokens } = hear(text, vocabulary);
      return !squeezed(tokens.map((t) => (t.skip ? '' : t.word)).join(' ')).includes(squeezed(meant));
    });
  console.log(`Put right, ${name}: ${lines.length - missed.length} of ${lines.length}`);
  if (name.startsWith('sealed')) continue;
  for (const { heard, meant } of missed) console.log(`  missed: ${heard} for ${meant}`);
}

const judged = { right: 0, harmless: 0, wrong: 0, unjudged: 0 };
let [talkWords, misheard] = [0, 0];
for (const note of heardTalk()) {
  talkWords += note.text.split(/\s+/).length;
  misheard += note.judged.filter(({ meant }) => meant).length;
  for (const repair of hear(note.text, vocabulary).repairs) {
    const worth = judge(note.judged, repair) ?? 'unjudged';
    judged[worth]++;
    if (worth === 'right' || worth === 'harmless') continue;
    const near = note.text.slice(Math.max(0, repair.start - 40), repair.end + 30).replaceAll('\n', ' ');
    console.log(`  ${worth}: ${repair.heard} to ${repair.meant} | ${near}`);
  }
}
const per5000 = (count: number, words: number) => ((5000 * count) / words).toFixed(2);
console.log(
  `Trade talk: ${judged.right} of ${misheard} put right, ${judged.harmless} harmless, ${judged.wrong} wrong and ` +
    `${judged.unjudged} not judged in ${talkWords} words: ${per5000(judged.wrong + judged.unjudged, talkWords)} wrong per 5,000`,
);

const folder = process.argv[2];
if (folder) {
  let words = 0;
  let repairs = 0;
  for (const file of readdirSync(folder)) {
    const raw = readFileSync(join(folder, file), 'utf8');
    const texts: unknown[] = file.endsWith('.json') ? [JSON.parse(raw)].flat() : [raw];
    for (const text of texts) {
      if (typeof text !== 'string') continue;
      words += text.split(/\s+/).length;
      repairs += hear(text, vocabulary).repairs.length;
    }
  }
  console.log(`False repairs: ${repairs} in ${words} words, ${per5000(repairs, words)} per 5,000`);
}
