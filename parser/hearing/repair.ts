import { JaroWinklerDistance } from 'natural/lib/natural/distance/index.js';
import { DoubleMetaphone } from 'natural/lib/natural/phonetics/index.js';
import type { Repair, Term, Token, Vocabulary } from '../types.ts';
import { COMMON } from './common.ts';

interface Mishearing {
  words: string[];
  meant: string;
  term: Term;
}

interface Index {
  byFirst: Map<string, Mishearing[]>;
  bySound: Map<string, { word: string; term: Term }[]>;
}

const indexes = new WeakMap<Vocabulary, Index>();
const metaphone = new DoubleMetaphone();
const soundOf = (word: string) => metaphone.process(word)[0] ?? '';

function indexOf(vocabulary: Vocabulary): Index {
  const known = indexes.get(vocabulary);
  if (known) return known;
  const index: Index = { byFirst: new Map(), bySound: new Map() };
  for (const term of vocabulary.terms) {
    for (const heard of term.misheard ?? []) {
      const words = heard.toLowerCase().split(/[\s-]+/);
      const list = index.byFirst.get(words[0]!) ?? [];
      list.push({ words, meant: meantBy(heard, term), term });
      list.sort((a, b) => b.words.length - a.words.length);
      index.byFirst.set(words[0]!, list);
    }
    if (GOODS.has(term.kind)) {
      for (const way of [term.name, ...(term.also ?? [])]) {
        if (way.length < 6 || /[^a-z]/.test(way)) continue;
        const list = index.bySound.get(soundOf(way)) ?? [];
        list.push({ word: way, term });
        index.bySound.set(soundOf(way), list);
      }
    }
  }
  indexes.set(vocabulary, index);
  return index;
}

const GOODS = new Set(['material', 'part', 'fixture', 'tool']);

/** The form of the term that sounds most like what was heard: "pecks elbows" is `pex elbows`, not `elbow`. */
function meantBy(heard: string, term: Term): string {
  const ways = [term.name, ...(term.also ?? [])];
  const count = heard.split(/[\s-]+/).length;
  const same = ways.filter((w) => w.split(/[\s-]+/).length === count);
  return (same.length ? same : ways).reduce((best, way) =>
    JaroWinklerDistance(way, heard) > JaroWinklerDistance(best, heard) ? way : best,
  );
}

const SUPPORT_WORDS = new Set(
  'bag bags box boxes tube tubes roll rolls tub bead gallon piece pieces sheet sheets inch half install installed set grouted pulled hang hung cut need bought used under sink toilet leak leaking crimp fitting joint seal wall floor tile plumber electrician order bottom top paint primer drain ring new two three four solder bathroom kitchen shower tub valve pipe around along behind bucket bags, sanded unsanded white clear paintable gray drop sanitary spread mixed mix'.split(
    ' ',
  ),
);

/** Something within six words that belongs to the trade: what lets a word be put right. Never the word itself. */
function supported(tokens: readonly Token[], from: number, until: number, vocabulary: Vocabulary): string | null {
  for (let d = 1; d <= 6; d++) {
    for (const k of [from - d, until - 1 + d]) {
      const token = tokens[k];
      if (token?.kind !== 'word') continue;
      if (SUPPORT_WORDS.has(token.word)) return token.word;
      const term = vocabulary.match(tokens, k)?.term;
      if (term && term.kind !== 'area' && term.kind !== 'role') return token.word;
    }
  }
  return null;
}

/**
 * Puts misheard trade words right: by the vocabulary's own lists of mishearings, then by sound for words that are
 * neither English nor trade. Both need a neighbour that supports the repair.
 */
export function repair(
  tokens: readonly Token[],
  text: string,
  vocabulary: Vocabulary,
): { tokens: Token[]; repairs: Repair[] } {
  const index = indexOf(vocabulary);
  const out: Token[] = [];
  const repairs: Repair[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i]!;
    const found =
      token.kind === 'word' && !token.skip
        ? (listed(tokens, i, index, vocabulary) ?? bySound(tokens, i, index, vocabulary))
        : null;
    if (!found) {
      out.push(token);
      i++;
      continue;
    }
    const [start, end] = [token.start, tokens[found.until - 1]!.end];
    const heard = text.slice(start, end);
    repairs.push({ start, end, heard, meant: found.meant, because: found.because });
    // The meant words share the heard span; the last one carries a plural or possessive as heard.
    const words = found.meant.split(/[\s-]+/);
    words.forEach((word, k) => {
      const own = words.length === found.until - i ? tokens[i + k]! : null;
      out.push({
        kind: 'word',
        text: own?.text ?? heard,
        word: k === words.length - 1 ? withEnding(word, heard) : word,
        start: own?.start ?? start,
        end: own?.end ?? end,
        spaced: own?.spaced ?? (k === 0 ? token.spaced : true),
      });
    });
    i = found.until;
  }
  return { tokens: out, repairs };
}

const withEnding = (word: string, heard: string) => (/'s$/i.test(heard) && !word.endsWith("'s") ? `${word}'s` : word);

function listed(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary) {
  const word = tokens[i]!.word.replace(/'s$/, '');
  for (const way of index.byFirst.get(word) ?? []) {
    if (
      !way.words.every(
        (w, k) =>
          tokens[i + k]?.word === w || (k === way.words.length - 1 && tokens[i + k]?.word.replace(/'s$|s$/, '') === w),
      )
    )
      continue;
    const until = i + way.words.length;
    const because = supported(tokens, i, until, vocabulary);
    if (because) return { until, meant: way.meant, because };
  }
  return null;
}

function bySound(tokens: readonly Token[], i: number, index: Index, vocabulary: Vocabulary) {
  const { word } = tokens[i]!;
  if (word.length < 5 || COMMON.has(word) || vocabulary.has(word) || /[^a-z]/.test(word)) return null;
  const near = (index.bySound.get(soundOf(word)) ?? [])
    .filter((c) => JaroWinklerDistance(c.word, word) > 0.86)
    .sort((a, b) => JaroWinklerDistance(b.word, word) - JaroWinklerDistance(a.word, word))[0];
  if (!near || near.word === word || near.word === `${word}s` || `${near.word}s` === word) return null;
  const because = supported(tokens, i, i + 1, vocabulary);
  return because ? { until: i + 1, meant: near.word, because } : null;
}
