/**
 * `npx tsx tests/learn/misheard.ts [folder of ordinary English]`: learns when words are a misheard name of the trade, and
 * writes `parser/hearing/weights.ts`.
 *
 * Yes: the phrases of `fixtures/hearing` that may be looked at, and the vocabulary's listed mishearings put in the place
 * of their names in annotated notes; the list is not told of the very mishearing in question. No: every other name that
 * some words there sound like, and those of ordinary English (npm package `nlp-corpus`, MIT, its `builds` folder).
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { meantOf } from '../../parser/hearing/meant.ts';
import { signsOf } from '../../parser/hearing/signs.ts';
import { type Candidate, candidatesAt } from '../../parser/hearing/stretches.ts';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { ENOUGH, weightOf } from '../../parser/hearing/weights.ts';
import { builtIn } from '../../parser/trade/index.ts';
import type { Token } from '../../parser/types.ts';
import { readHalf } from '../score/lib/corpus.ts';
import { dice, shuffled } from './common.ts';
import { type HeardPair, heardPairs } from './heardPairs.ts';

export interface Row {
  names: readonly string[];
  values: number[];
  yes: boolean;
  weight: number;
  /** What it was, to look at. */
  about: string;
  english: boolean;
}

const HEARING = join(import.meta.dirname, '../../parser/hearing');
const vocabulary = builtIn();
const squeezed = (text: string) =>
  text
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/s$/, '');
const random = dice(7);
const RATE = 0.1;
/** Names that ordinary English may sound enough like, in 5,000 words; several may be for the same words, of which one is taken. */
const ALARMS = 1.7;

export function* candidatesIn(text: string): Generator<{ candidate: Candidate; tokens: Token[] }> {
  const tokens = tokenise(text);
  for (let i = 0; i < tokens.length; i++)
    for (const candidate of candidatesAt(tokens, i, vocabulary)) yield { candidate, tokens };
}

function row(candidate: Candidate, tokens: Token[], yes: boolean, weight: number, english = false): Row | null {
  const meant = meantOf(candidate.way);
  const { signs, because } = signsOf(candidate, meant, tokens, vocabulary);
  if (!because) return null;
  const heard = tokens
    .slice(candidate.from, candidate.until)
    .map((t) => t.word)
    .join(' ');
  return {
    names: signs.map(([name]) => name),
    values: signs.map(([, value]) => value),
    yes,
    weight,
    english,
    about: `${heard} > ${meant} (${because})`,
  };
}

/** A phrase whose misheard words are known. */
function fromPair({ text, heard, meant }: HeardPair, weight: number, out: Row[], unlisted = true): void {
  const start = text.toLowerCase().indexOf(heard.toLowerCase());
  const end = start + heard.length;
  for (const { candidate, tokens } of candidatesIn(text)) {
    const { way } = candidate;
    const [from, until] = [tokens[candidate.from]!.start, tokens[candidate.until - 1]!.end];
    const touches = from < end && until > start;
    if (unlisted && way.listed && touches && (heard.includes(way.listed) || way.listed.includes(heard))) continue;
    const own = squeezed(meantOf(way));
    const right =
      touches && (own.includes(squeezed(meant)) || squeezed(meant).includes(own) || way.term.name === meant);
    // A shorter stretch for the same name is neither right nor wrong, nor is a longer one whose other words are the name's.
    const covers = from <= start && until >= end - 1;
    const beyond = tokens.slice(candidate.from, candidate.until).filter((t) => t.end <= start || t.start >= end);
    const isLonger = beyond.some((t) => !meantOf(way).includes(t.word));
    if (right && !isLonger && (!covers || beyond.length)) continue;
    const made = row(candidate, tokens, right && !isLonger, weight);
    if (made) out.push(made);
  }
}

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

/** Listed mishearings in the place of their names. */
function planted(out: Row[]): void {
  const byWord = new Map<string, { heard: string; name: string }[]>();
  for (const term of vocabulary.terms)
    for (const heard of term.misheard ?? []) {
      const name = meantOf({ words: heard, term, sounds: '', listed: heard, isPart: false, order: 0 });
      const list = byWord.get(name) ?? [];
      byWord.set(name, list);
      list.push({ heard, name });
    }
  const planted = new Map<string, number>();
  for (const { text } of readHalf('seen'))
    for (const [name, list] of byWord) {
      const match = new RegExp(`(?<![a-z-])${name.replace(/[^a-z ]/g, '.')}(s?)(?![a-z-])`).exec(text);
      if (!match) continue;
      const { heard } = list[Math.floor(random() * list.length)]!;
      const count = planted.get(heard) ?? 0;
      if (count >= 4) continue;
      planted.set(heard, count + 1);
      const from = Math.max(0, match.index - 150);
      fromPair(
        {
          text:
            text.slice(from, match.index) +
            heard +
            match[1] +
            text.slice(match.index + match[0].length, match.index + 150),
          heard,
          meant: name,
        },
        1,
        out,
        random() < 0.75,
      );
    }
}

/** The note itself is one of those counted. */
function withoutOwn(made: Row | null): Row | null {
  if (!made) return null;
  const at = made.names.indexOf('said so by crews');
  if (made.values[at] === 1) made.values[at] = 0;
  return made;
}

/** Notes as they stand: crews that were heard right, but where an answer names what the note has not. */
function notesAsTheyStand(out: Row[]): void {
  for (const { text, gold } of readHalf('seen')) {
    const answers = JSON.stringify(gold).toLowerCase();
    for (const { candidate, tokens } of candidatesIn(text)) {
      const meant = meantOf(candidate.way);
      if (meant.split(/[ -]/).some((word) => answers.includes(word) && !text.toLowerCase().includes(word))) continue;
      const made = withoutOwn(row(candidate, tokens, false, 2));
      // What is no English there was typed wrong, more often than not.
      if (made && !made.values[made.names.indexOf('no English')]) out.push(made);
    }
  }
}

/** Ordinary English, sentence by sentence: every other file is counted, the rest learned from. */
function* sentences(folder: string, odd: number, files: number): Generator<string> {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();
  for (const file of names.filter((_, k) => k % 2 === odd).slice(0, files))
    yield* [JSON.parse(readFileSync(join(folder, file), 'utf8'))].flat() as string[];
}

function english(folder: string, out: Row[]): number {
  let count = 0;
  for (const text of sentences(folder, 1, 16)) {
    count += text.split(/\s+/).length;
    for (const { candidate, tokens } of candidatesIn(text)) {
      const made = row(candidate, tokens, false, 1, true);
      if (made) out.push(made);
    }
  }
  return count;
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
  writeFileSync(
    join(HEARING, 'saidSoTable.ts'),
    `/** Words that sound like a name of the trade and were said and meant: by crews in annotated notes, and by others in ordinary English, 1 for twice and one more each time it doubles. Written by \`tests/learn/misheard.ts count\`. */\nexport const SAID_SO = \`\n${lines.join('\n')}\n\`;\n`,
  );
  console.log('said so', lines.length, lines.join('\n').length);
  process.exit();
}
const rows: Row[] = [];
for (const pair of heardPairs()) fromPair(pair, 4, rows);
console.log('pairs', rows.filter((r) => r.yes).length, rows.length);
planted(rows);
console.log('planted', rows.filter((r) => r.yes).length, rows.length);
notesAsTheyStand(rows);
console.log('notes', rows.length);
const words = english(folder, rows);
console.log('english', words, rows.length);

const weights = learn(rows);
const score = ({ values }: Row) => values.reduce((sum, value, k) => sum + value * weights[k]!, 0);
const alarms = rows
  .filter((r) => r.english)
  .map(score)
  .sort((a, b) => b - a);
const enough = alarms[Math.round((words * ALARMS) / 5000)]!;
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
