import type { Fact } from '../../types.ts';
import { columns, dot, type Weights } from '../../weights.ts';
import { type Chunk, isNounTerm } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';
import { clauseAt, KINDS, type SpanKind, sortOf, wordOf } from './features.ts';
import type { Proposal, Range } from './likely.ts';
import { noteSignsIn } from './noteSigns.ts';
import { WHOLES } from './wholeTable.ts';

let weights: Record<SpanKind, Weights> | undefined;

/** A proposal that holds, with how sure it is that a fact stands there: 0.5 to 1. */
export interface Held extends Proposal {
  confidence: number;
}

/** The proposals that hold once each is weighed as a whole, beside all others of the note. */
export function held(talk: Talk, byRule: readonly Fact[], proposals: readonly Proposal[]): Held[] {
  weights ??= columns(WHOLES, KINDS);
  const own = weights;
  const signs = wholeSigns(talk, byRule, proposals);
  return proposals.flatMap((proposal, i) => {
    const weight = dot(own[proposal.kind], signs[i]!);
    return weight > 0 ? [{ ...proposal, confidence: 1 / (1 + Math.exp(-weight)) }] : [];
  });
}

/**
 * What speaks for a fact at each proposal, once both its ends are known: its first and last words and those around it, its
 * clauses and verbs, what the rules read there, and what else the note tells.
 *
 * @returns a list of names a proposal; `wholeTable.ts` has a line a name
 */
export function wholeSigns(talk: Talk, byRule: readonly Fact[], proposals: readonly Proposal[]): string[][] {
  const { chunks, frames } = talk;
  const sorts = chunks.map(sortOf);
  const words = chunks.map(wordOf);
  const clauses = clauseAt(chunks, frames);
  const inNote = noteSignsIn(proposals);
  return proposals.map((own) => {
    const { from, until } = own;
    const inside = [...new Set(clauses.slice(from, until))].filter((k) => k >= 0);
    const predicate = frames[inside[0]!]?.predicate ?? 'none';
    const edge = (k: number) => clauses[k - 1] !== clauses[k];
    const size = until - from;
    return [
      ...new Set([
        'any',
        `size=${size < 6 ? size : size < 8 ? 6 : size < 12 ? 8 : size < 20 ? 12 : 20}`,
        `edges=${edge(from)}|${edge(until)}`,
        ...clauseSigns(frames, inside),
        ...edgeSigns(words, sorts, own, predicate),
        ...insideSigns(chunks.slice(from, until), sorts.slice(from, until), predicate),
        ...verbSigns(chunks, words, sorts, own, predicate),
        ...ruleSigns(byRule, chunks[from]!.start, chunks[until - 1]!.end),
        ...inNote(own, predicate),
      ]),
    ];
  });
}

/** How its clauses say it, the first by itself. */
function clauseSigns(frames: readonly Frame[], inside: readonly number[]): string[] {
  const out = [
    `clauses=${Math.min(inside.length, 4)}`,
    `predicates=${inside
      .slice(0, 3)
      .map((k) => `${frames[k]!.predicate}${frames[k]!.negative ? '-' : ''}`)
      .join('>')}`,
    `quarter=${inside[0] === undefined ? 'none' : inside[0] === 0 ? 'first' : inside[0] === frames.length - 1 ? 'last' : Math.floor((4 * inside[0]) / frames.length)}`,
  ];
  inside.slice(0, 4).forEach((k, nth) => {
    const { predicate: p, use, negative, chunks, lemma, subject, openers, joinedBy } = frames[k]!;
    const flawed = chunks.some((c) => c.term?.kind === 'defect');
    const dated = chunks.some((c) => c.time);
    const which = nth === 0 ? 'first' : 'later';
    out.push(
      `${which} p=${p}`,
      `${which} use=${p}|${use}`,
      `${which} has=${p}|${negative}|${flawed}|${dated}`,
      `${which} lemma=${lemma ?? ''}`,
      `${which} lemma=${lemma ?? ''}|${p}`,
      `${which} subject=${subject[0]?.word ?? ''}|${p}`,
      `${which} opener=${openers.at(-1) ?? ''}|${p}`,
      `${which} joined=${joinedBy}|${p}`,
    );
  });
  return out;
}

/** The words and sorts of words where it begins and ends, and around it. */
function edgeSigns(words: readonly string[], sorts: readonly string[], own: Range, predicate: string): string[] {
  const { from, until } = own;
  const w = (k: number) => words[k] ?? '#';
  const c = (k: number) => sorts[k] ?? '#';
  return [
    `w(0=${w(from)}`,
    `w(0=${w(from)}|${predicate}`,
    `c(0=${c(from)}`,
    `w0)=${w(until - 1)}`,
    `w0)=${w(until - 1)}|${predicate}`,
    `c0)=${c(until - 1)}`,
    `ww(0=${w(from)}|${w(from + 1)}`,
    `w-1(=${w(from - 1)}`,
    `c-1(=${c(from - 1)}`,
    `ww-1(=${w(from - 1)}|${w(from)}`,
    `ww-2(=${w(from - 2)}|${w(from - 1)}`,
    `cc-2(=${c(from - 2)}|${c(from - 1)}`,
    `w)1=${w(until)}`,
    `c)1=${c(until)}`,
    `cc)0=${c(until - 1)}|${c(until)}`,
    `ww)1=${w(until)}|${w(until + 1)}`,
    `cc)1=${c(until)}|${c(until + 1)}`,
    `cccc=${c(from - 1)}|${c(from)}|${c(until - 1)}|${c(until)}`,
    ...[2, 3, 4].flatMap((d) => [`before=${w(from - d)}`, `after=${w(until + d - 1)}`]),
  ];
}

/** What it holds, whatever the order. */
function insideSigns(chunks: readonly Chunk[], sorts: readonly string[], predicate: string): string[] {
  const out = [
    `time=${chunks.some((c) => c.time)}`,
    `figure=${chunks.some((c) => c.quantity)}`,
    `nouns=${Math.min(3, chunks.filter(isNounTerm).length)}`,
    `kinds=${[...new Set(chunks.flatMap((c) => c.term?.kind ?? []))].sort()}|${predicate}`,
  ];
  chunks.forEach((c, k) => {
    out.push(`w=${wordOf(c)}`);
    if (k) out.push(`ww=${wordOf(chunks[k - 1]!)}|${wordOf(c)}`);
    if (c.term) out.push(`k=${c.term.kind}|${predicate}`);
    if (c.verb) out.push(`l=${c.verb.lemma}`, `lc=${c.verb.lemma}|${sorts[k]}`);
  });
  return out;
}

/** Its first verb, and what stands beside that. */
function verbSigns(
  chunks: readonly Chunk[],
  words: readonly string[],
  sorts: readonly string[],
  { from, until }: Range,
  predicate: string,
): string[] {
  const k = chunks.findIndex((c, at) => at >= from && at < until && c.verb);
  if (k < 0) return [`verb=none|${predicate}`];
  return [
    `verb=${chunks[k]!.verb!.lemma}|${predicate}`,
    `verb c=${sorts[k]}|${predicate}`,
    `verb before=${words[k - 1] ?? '#'}|${sorts[k]}`,
    `verb after=${sorts[k]}|${sorts[k + 1] ?? '#'}`,
  ];
}

/** Which rules read something here, and how much of it. */
function ruleSigns(byRule: readonly Fact[], start: number, end: number): string[] {
  const out: string[] = [];
  const kinds = new Set<string>();
  for (const fact of byRule) {
    const both = Math.min(end, fact.end) - Math.max(start, fact.start);
    if (both <= 0) continue;
    kinds.add(fact.kind);
    out.push(`r=${fact.kind}|${both >= 0.6 * (end - start) ? 'all' : 'part'}`, `rr=${fact.rule}`);
    if (fact.kind === 'problem') out.push(`rs=${fact.kind}|${fact.state}`);
    if (fact.kind === 'material') out.push(`rs=${fact.kind}|${fact.status}`);
    if (Math.abs(fact.start - start) < 2) out.push(`rb=${fact.kind}`);
  }
  return [...out, `rk=${[...kinds].sort()}`];
}
