import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { meantBy, meantOf } from '../../parser/hearing/meant.ts';
import type { Candidate } from '../../parser/hearing/nearest.ts';
import { signsOf } from '../../parser/hearing/signs.ts';
import { candidatesAt } from '../../parser/hearing/stretches.ts';
import { tokenise } from '../../parser/hearing/tokens.ts';
import { builtIn } from '../../parser/trade/index.ts';
import type { Token } from '../../parser/types.ts';
import { readHalf } from '../score/lib/corpus.ts';
import { dice } from './common.ts';
import type { HeardPair } from './heardPairs.ts';
import { heardTalk, judge } from './heardTalk.ts';

/** One candidate to learn from. */
export interface Row {
  names: readonly string[];
  values: number[];
  yes: boolean;
  weight: number;
  /** Where it was said: ordinary English, and notes whose words nobody put there, raise the alarms that are counted. */
  from: 'pairs' | 'notes' | 'english';
}

const vocabulary = builtIn();
const squeezed = (text: string) =>
  text
    .toLowerCase()
    .replace(/[^a-z]/g, '')
    .replace(/s$/, '');
export const random = dice(7);

/** Every name that some words of a text may have been. */
export function* candidatesIn(text: string): Generator<{ candidate: Candidate; tokens: Token[] }> {
  const tokens = tokenise(text);
  for (let i = 0; i < tokens.length; i++)
    for (const candidate of candidatesAt(tokens, i, vocabulary)) yield { candidate, tokens };
}

/** What is known of one candidate; null where nothing supports it. */
export function row(
  candidate: Candidate,
  tokens: Token[],
  yes: boolean,
  weight: number,
  said: Row['from'] = 'pairs',
): Row | null {
  const { signs, because } = signsOf(candidate, meantOf(candidate.way), tokens, vocabulary);
  if (!because) return null;
  return {
    names: signs.map(([name]) => name),
    values: signs.map(([, value]) => value),
    yes,
    weight,
    from: said,
  };
}

/** A phrase whose misheard words are known. */
export function fromPair({ text, heard, meant }: HeardPair, weight: number, out: Row[], unlisted = true): void {
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

/** Listed mishearings are made up by the thousand: each counts for less than what was heard. */
const LISTED = 0.3;

/** Listed mishearings in the place of their names. */
export function planted(out: Row[]): void {
  const byName = new Map<string, string[]>();
  for (const term of vocabulary.terms)
    for (const heard of term.misheard ?? []) {
      const name = meantBy(heard, term);
      byName.set(name, [...(byName.get(name) ?? []), heard]);
    }
  const planted = new Map<string, number>();
  for (const { text } of readHalf('seen'))
    for (const [name, list] of byName) {
      const match = new RegExp(`(?<![a-z-])${name.replace(/[^a-z ]/g, '.')}(s?)(?![a-z-])`).exec(text);
      if (!match) continue;
      const heard = list[Math.floor(random() * list.length)]!;
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
        LISTED,
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

/** What was judged by hand counts for more than what nobody looked at. */
const JUDGED = 6;
const UNJUDGED = 3;

/** Notes as they stand: what was judged by hand, and everything else as heard right. */
export function notesAsTheyStand(out: Row[]): number {
  let count = 0;
  for (const { text, judged } of heardTalk()) {
    count += text.split(/\s+/).length;
    for (const { candidate, tokens } of candidatesIn(text)) {
      const [start, end] = [tokens[candidate.from]!.start, tokens[candidate.until - 1]!.end];
      const meant = meantOf(candidate.way);
      const worth = judge(judged, { start, end, meant });
      if (worth === 'harmless') continue;
      const own = judged.find((one) => start < one.end && end > one.start);
      const covers = own && start <= own.start && end >= own.end;
      if (worth === 'right' && !covers) continue;
      const beyond =
        own && tokens.slice(candidate.from, candidate.until).some((t) => t.end <= own.start || t.start >= own.end);
      const yes = worth === 'right' && !beyond;
      const made = withoutOwn(row(candidate, tokens, yes, worth ? JUDGED : UNJUDGED, 'notes'));
      // What is no English, and nobody judged, was typed wrong more often than not.
      if (made && (worth || !made.values[made.names.indexOf('no English')])) out.push(made);
    }
  }
  return count;
}

/** Ordinary English, sentence by sentence: every other file is counted, the rest learned from. */
export function* sentences(folder: string, odd: number, files: number): Generator<string> {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort();
  for (const file of names.filter((_, k) => k % 2 === odd).slice(0, files))
    yield* [JSON.parse(readFileSync(join(folder, file), 'utf8'))].flat() as string[];
}

export function fromEnglish(folder: string, out: Row[]): number {
  let count = 0;
  for (const text of sentences(folder, 1, 16)) {
    count += text.split(/\s+/).length;
    for (const { candidate, tokens } of candidatesIn(text)) {
      const made = row(candidate, tokens, false, 1, 'english');
      if (made) out.push(made);
    }
  }
  return count;
}
