import type { Fact, Span } from '../../types.ts';
import { type Chunk, isNounTerm } from '../chunks.ts';
import { type Candidate, candidatesIn } from '../naming/candidates.ts';
import { joinSigns, type Place, signsOf } from '../naming/features.ts';
import { flawIn, POINTS } from '../naming/meant.ts';
import { wordsOfName } from '../naming/rank.ts';
import { cutAtTime } from '../plans/told.ts';
import { isPerson, isPointer, phrase, type Talk } from '../talk.ts';
import { type SpanKind, sortOf } from './features.ts';
import type { Lead } from './leads.ts';

/** What the name of a span may be about, besides its verb. */
export interface Thing {
  words: string;
  /** Which way it was found. */
  from: 'phrase' | 'here' | 'pair' | 'far' | 'far+here' | 'far+phrase' | 'told';
  signs: readonly string[];
  /** Chunk at which it begins, for what stands in the span. */
  start: number | null;
}

/** What is known around a span whose name is sought. */
export interface Scene {
  cut: Talk;
  span: Span;
  kind: SpanKind;
  /** Positions of the clauses that the span lies in. */
  clauses: readonly number[];
  /** Facts that the note tells besides: goods, and flaws and finished work read before. */
  others: readonly Fact[];
}

/** How many clauses back a thing is looked for. */
const BACK = 5;
/** So many things on each side are weighed alone, and so many as the whole that something belongs to. */
const MOST = 12;
const WHOLES = 4;

interface Noun {
  candidate: Candidate;
  inside: boolean;
  thing: Thing;
}

/** Every thing that a name may be about whatever its verb, and how much the span itself names. */
export function thingsAround(scene: Scene): { things: Thing[]; lacks: string } {
  const place = placeIn(scene.cut, scene.span, scene.kind, scene.clauses);
  const pointer = scene.cut.frames[place.at]!.chunks[place.k]!.word;
  const points = POINTS.test(pointer) ? pointer : 'nothing';
  const nouns = nounsAround(scene, place, points);
  const here = nouns.filter((n) => n.inside);
  const far = nouns.filter((n) => !n.inside);
  const out = nouns.map((n) => n.thing);
  const { cut } = scene;
  for (const part of here.slice(0, 4)) {
    for (const whole of here)
      if (whole !== part && whole.candidate.from < part.candidate.from) out.push(pairOf(cut, whole, part));
    for (const whole of far.slice(0, WHOLES)) out.push(joined(cut, part, whole, 'far+here'));
  }
  // Two things told elsewhere are one name only where one clause told both.
  if (here.length === 0 || scene.kind === 'problem')
    for (const part of far)
      for (const whole of far)
        if (whole.candidate.at === part.candidate.at && whole.candidate.from < part.candidate.from)
          out.push({ ...pairOf(cut, whole, part), from: 'far', start: null });
  return {
    things: [...out, ...toldBefore(scene)],
    lacks: `${points === 'nothing' ? 'none' : 'points'} ${Math.min(here.length, 3)}`,
  };
}

/** Noun phrases in the span, then those before it, the nearest first, then those of the clause after. */
function nounsAround({ cut, span, clauses, others }: Scene, place: Place, points: string): Noun[] {
  const first = clauses[0]!;
  const last = Math.min(clauses.at(-1)! + 1, cut.frames.length - 1);
  const all: Candidate[] = [];
  for (let at = Math.max(0, first - BACK); at <= last; at++) all.push(...candidatesIn(cut, at));
  const startOf = (c: Candidate) => c.chunks[0]!.start;
  const [from, until] = [cut.frames[Math.max(0, first - BACK)]!.start, cut.frames[last]!.end];
  const near = others.filter((f) => f.start < until && from < f.end);
  const here = all.filter((c) => startOf(c) >= span.start && startOf(c) < span.end);
  const before = all
    .filter((c) => startOf(c) < span.start)
    .reverse()
    .slice(0, MOST);
  const after = all.filter((c) => startOf(c) >= span.end).slice(0, 3);
  const sides = [
    ['here', here],
    ['before', before],
    ['after', after],
  ] as const;
  return sides.flatMap(([side, list]) =>
    list.map((candidate, rank): Noun => {
      const inside = side === 'here';
      const signs = [
        ...signsOf(cut, place, candidate, rank),
        `stands ${side}`,
        `stands ${side} ${Math.min(rank, 4)} of ${Math.min(here.length, 3)}`,
        `stands ${side} points ${points}`,
        `stands ${side} has ${Math.min(here.length, 3)}`,
        `head ${candidate.head.word}`,
        ...coveredBy(candidate, near, side),
      ];
      const thing: Thing = {
        words: phrase(candidate.chunks),
        from: inside ? 'here' : 'far',
        signs: [...signs, ...plainSigns(candidate.chunks)],
        start: inside ? startOf(candidate) : null,
      };
      return { candidate, inside, thing };
    }),
  );
}

/** Where the span points, or tells what is amiss, or says its work. */
function placeIn(cut: Talk, span: Span, kind: SpanKind, clauses: readonly number[]): Place {
  const inside = (c: Chunk) => c.start >= span.start && c.start < span.end;
  if (kind === 'problem') {
    const at =
      clauses.find((k) => cut.frames[k]!.chunks.some((c) => c.term?.kind === 'defect' && inside(c))) ?? clauses[0]!;
    return { use: 'flaw', at, k: flawIn(cut, at) };
  }
  for (const at of clauses) {
    const k = cut.frames[at]!.chunks.findIndex((c) => POINTS.test(c.word) && inside(c));
    if (k >= 0) return { use: 'pointer', at, k };
  }
  const at = clauses[0]!;
  return { use: 'pointer', at, k: Math.max(0, cut.frames[at]!.verbAt) };
}

/** What other facts make of a thing: goods to buy, a flaw, finished work. */
function coveredBy(candidate: Candidate, others: readonly Fact[], side: string): string[] {
  const { start } = candidate.chunks[0]!;
  return others.flatMap((f) =>
    f.start <= start && start < f.end
      ? [`told as ${f.kind === 'material' ? f.status : f.kind === 'problem' ? f.state : f.kind} ${side}`]
      : [],
  );
}

/** Words of a name that are no name of a thing, and how it opens and ends: each speaks for or against it. */
function plainSigns(chunks: readonly Chunk[]): string[] {
  const out: string[] = [];
  for (const c of chunks) {
    if (isNounTerm(c)) continue;
    out.push(`word ${c.kind === 'word' ? c.word : (c.term?.kind ?? c.quantity?.unitKind ?? c.kind)}`);
    if (c.kind === 'word') out.push(`sort ${sortOf(c)}`);
  }
  const [first, last] = [chunks[0], chunks.at(-1)];
  if (first && last)
    out.push(
      `opens ${sortOf(first)}`,
      `ends ${sortOf(last)}`,
      `ends ${last.verb && !isNounTerm(last) ? 'verb' : 'plain'}`,
    );
  if (isPerson(chunks)) out.push('person');
  return out;
}

/** Two things of a span: as said where they stand in a clause ("gap at ceiling"), else the one before the other. */
function pairOf(cut: Talk, whole: Noun, part: Noun): Thing {
  const [a, b] = [whole.candidate, part.candidate];
  const { chunks } = cut.frames[a.at]!;
  const between = a.at === b.at ? chunks.slice(a.until, b.from) : [];
  const asSaid = a.at === b.at && between.length <= 3 && !between.some((c) => c.verb || isPointer([c]));
  return {
    words: asSaid ? phrase(chunks.slice(a.from, b.until)) : wordsOfName({ part: b, whole: a }),
    from: 'pair',
    signs: [
      ...part.thing.signs,
      ...whole.thing.signs.map((s) => `whole ${s}`),
      ...joinSigns(cut, b, a),
      `pair ${asSaid}`,
      ...between.map((c) => `pair by ${c.kind === 'word' ? c.word : c.kind}`),
    ],
    start: whole.thing.start,
  };
}

function joined(cut: Talk, part: Noun, whole: Noun, from: Thing['from']): Thing {
  return {
    words: wordsOfName({ part: part.candidate, whole: whole.candidate }),
    from,
    signs: [
      ...part.thing.signs,
      ...whole.thing.signs.map((s) => `whole ${s}`),
      ...joinSigns(cut, part.candidate, whole.candidate),
    ],
    start: part.thing.start,
  };
}

/** The thing of the flaw told last, and of the work finished last: a repair is of the one, a next step of the other. */
function toldBefore({ span, others }: Scene): Thing[] {
  const out: Thing[] = [];
  for (const kind of ['problem', 'done'] as const) {
    const told = others
      .filter((f) => f.kind === kind && f.start < span.start)
      .slice(-2)
      .reverse();
    told.forEach((fact, rank) => {
      const words =
        fact.kind === 'problem'
          ? fact.thing
          : fact.kind === 'done'
            ? fact.task.replace(/^\S+ (?:(?:in|on|up|down|off|out|back) )?/, '')
            : '';
      const gap = span.start - fact.end;
      const near = gap < 0 ? 'over' : gap < 8 ? 'touches' : gap < 60 ? 'near' : 'far';
      out.push({
        words,
        from: 'told',
        signs: [
          `told ${kind}`,
          `told ${kind} ${rank} ${near}`,
          `told size ${Math.min(words.split(' ').length, 4)}`,
          ...(fact.kind === 'problem' ? [`told ${fact.state} ${near}`] : []),
        ],
        start: null,
      });
    });
  }
  return out;
}

/**
 * What a verb's own clause says that it is done to: the words behind it, the subject of a passive, both; and, where
 * they only point, those words behind each thing that may be meant ("move it to the corner").
 */
export function thingsOf(scene: Scene, lead: Lead, around: readonly Thing[]): Thing[] {
  if (!lead.place) return [];
  const { cut, span } = scene;
  const { at, until } = lead.place;
  const frame = cut.frames[at]!;
  const inside = (c: Chunk) => c.start >= span.start && c.end <= span.end;
  const behind = cutAtTime(frame.chunks.slice(until).filter(inside)).filter((c) => !lead.words.endsWith(` ${c.word}`));
  const points = behind.find((c) => POINTS.test(c.word));
  const said = phrase(behind);
  const subject =
    frame.subject.length && !isPerson(frame.subject) && !isPointer(frame.subject) ? frame.subject.filter(inside) : [];
  const nouns = behind.filter(isNounTerm).length;
  const signs = [
    `phrase nouns ${Math.min(nouns, 3)}`,
    `phrase points ${points?.word ?? 'nothing'} ${Math.min(nouns, 2)}`,
    `phrase opens ${behind[0] ? (behind[0].kind === 'word' ? behind[0].word : behind[0].kind) : 'nothing'}`,
    `phrase size ${Math.min(said ? said.split(' ').length : 0, 7)}`,
    ...plainSigns(behind),
  ];
  const out: Thing[] = [];
  const add = (words: string, how: string, from: Thing['from'], more: readonly string[] = []) => {
    if (words) out.push({ words, from, signs: [...signs, `phrase ${how}`, ...more], start: behind[0]?.start ?? null });
  };
  add(said, 'behind', 'phrase');
  if (subject.length) {
    const own = phrase(subject);
    add(own, `subject ${frame.predicate}`, 'phrase', plainSigns(subject));
    if (said) add(`${own} ${said}`, `subject and behind ${frame.predicate}`, 'phrase', plainSigns(subject));
  }
  if (said && said.split(' ').length <= 4)
    for (const thing of around.filter((t) => t.from === 'far' || t.from === 'told').slice(0, WHOLES))
      add(`${thing.words} ${said}`, 'behind far', 'far+phrase', thing.signs);
  return out;
}
