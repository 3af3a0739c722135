import type { Span } from '../../types.ts';
import { type Chunk, isSubjectPronoun } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { clauseAt, wordOf } from '../spans/features.ts';
import { rangeIn, type Talk } from '../talk.ts';
import { type Candidate, candidatesFor } from './candidates.ts';

/** A plan whose days are sought, among what else the note tells. */
export interface Place {
  /** The talk with clauses ended at every plan. */
  talk: Talk;
  plan: Span;
  /** The other plans, and what is finished or amiss. */
  plans: readonly Span[];
  rest: readonly Span[];
}

/** One way to date a plan: a day it is due, a day before which it may not begin, both or neither; with what speaks for it. */
export interface Answer {
  due: Candidate | null;
  notBefore: Candidate | null;
  signs: string[];
}

/** Every way to date a plan from the days told near it. */
export function answersFor(place: Place): Answer[] {
  const candidates = [null, ...candidatesFor(place.talk, place.plan)];
  const own = planSigns(place);
  const told = candidates.map((c) => (c ? candidateSigns(place, c, own) : [...own, 'any'].map((s) => `none ${s}`)));
  const as = (role: string, k: number) => told[k]!.map((sign) => `${role} ${sign}`);
  const due = candidates.map((_, k) => as('D', k));
  const held = candidates.map((_, k) => as('N', k));
  return candidates.flatMap((d, i) =>
    candidates.flatMap((n, j) =>
      d && n && n.first > d.last ? [] : [{ due: d, notBefore: n, signs: [...due[i]!, ...held[j]!, ...together(d, n)] }],
    ),
  );
}

/** How two days go together. */
function together(due: Candidate | null, notBefore: Candidate | null): string[] {
  if (!due || !notBefore) return [];
  if (due === notBefore) return [`both same ${due.where}`, `both same ${due.time.relation}`, 'both'];
  return ['both', `both ${due.where} ${notBefore.where}`, `both waits ${notBefore.time.hours !== undefined}`];
}

/** Words that tell what sort of day a plan may have. */
const TELLING =
  /^(?:then|that|it|once|after|afterward|afterwards|before|b4|until|till|til|when|while|if|can|can't|cant|could|won't|don't|dont|not|no|nobody|nothing|wait|waits|waiting|hold|keep|leave|let|earliest|soonest|sooner|latest|by|so|first|back|same|day|figure|call|maybe|coming|comes|come|should|supposed|gonna|tell|ask|says|said|said|they|he|she|he'll|he's|they're|i'll|we'll)$/;

const POINTING = /^(?:then|that|this|it|he|she|they|he's|she's|they're)$/;
const JOINT = /^(?:until|till|til|before|b4|by|after|afterward|afterwards|once|when)$/;
const NOT = /^(?:no|nobody|nothing|not|don't|dont|can't|cant|won't|wont|never|keep|leave|wait|waits|hold)$/;

/** "Before that", "till he does", "by then", "after": a day told elsewhere is spoken of; and whether work is held back. */
function pointing(chunks: readonly Chunk[]): string[] {
  const held = chunks.some((c) => NOT.test(c.word)) ? '-' : '';
  const then = chunks[0]?.word === 'then' || chunks[0]?.word === 'so' ? [`${chunks[0]!.word}${held}`] : [];
  const joints = chunks.flatMap((c, k) => {
    if (!JOINT.test(c.word) || chunks.slice(k, k + 6).some((d) => d.time)) return [];
    const next = chunks[k + 1];
    return [`${c.word}${!next || next.kind === 'mark' ? '.' : POINTING.test(next.word) ? ' it' : ' ~'}${held}`];
  });
  return [...new Set([...then, ...joints])].map((sign) => `ref=${sign}`);
}

function planSigns({ talk, plan }: Place): string[] {
  const [from, until] = rangeIn(talk.chunks, plan);
  const chunks = talk.chunks.slice(from, until);
  const [frame] = talk.frames.slice(...rangeIn(talk.frames, plan));
  const days = chunks.filter((c) => c.time && !c.time.past).length;
  return [
    `p=${frame?.predicate}${frame?.negative ? '-' : ''}`,
    `lemma=${frame?.lemma}`,
    `use=${frame?.use}`,
    `open=${frame?.openers[0] ?? ''}`,
    `dated=${Math.min(days, 2)}`,
    `first=${chunks[0]?.word}`,
    `lead=${wordAt(talk.chunks, from - 1)}`,
    ...pointing(chunks),
    ...new Set(chunks.flatMap((c) => (TELLING.test(c.word) ? [`has=${c.word}`] : []))),
    ...new Set(chunks.flatMap((c, k) => (TELLING.test(c.word) ? [`has2=${c.word} ${wordAt(chunks, k + 1)}`] : []))),
  ];
}

const bucket = (n: number) =>
  n <= 3 ? `${n}` : n <= 5 ? '4-5' : n <= 8 ? '6-8' : n <= 14 ? '9-14' : n <= 25 ? '15-25' : '26+';
const few = (n: number) => Math.min(n, 2);
const wordAt = (chunks: readonly Chunk[], at: number) => (chunks[at] ? wordOf(chunks[at]) : '#');

/** What speaks for a day being the plan's: what sort it is, how far off and behind what it stands, and how it is told. */
function candidateSigns(place: Place, c: Candidate, own: readonly string[]): string[] {
  const { chunks, frames } = place.talk;
  const { time, at, where } = c;
  const [from, until] = rangeIn(chunks, place.plan);
  const gap = where === 'before' ? chunks.slice(at + 1, from) : chunks.slice(where === 'after' ? until : from, at);
  const clauses = clauseAt(chunks, frames);
  const frame = frames[clauses[at]!];
  const homeAt = clauses.slice(from, until).find((k) => k >= 0) ?? -1;
  const home = frames[homeAt];
  const sort = `${time.relation}${time.hours !== undefined ? 'h' : ''}${time.to ? 's' : ''}${c.begins ? 'b' : ''}`;
  const key = `${where}|${whoseWords(place, c)}`;
  const spot = where === 'in' ? 'in' : `${key}|${c.nth}`;
  const between = where === 'in' ? [] : gap;
  const breaks = few(between.filter((b) => b.kind === 'break' || /^[.;!?]$/.test(b.word)).length);
  const told = few(passed(between, place.rest));
  return [
    `s=${sort}`,
    `s=${sort}|${key}`,
    `spot=${spot}`,
    `spot=${spot}|${sort}`,
    `nth=${where}${c.nth}`,
    `gap=${where}|${bucket(between.length)}`,
    `gap=${key}|${bucket(between.length)}|${sort}`,
    `frames=${bucket(Math.abs(Math.max(clauses[at]!, 0) - Math.max(homeAt, 0)))}|${key}`,
    `breaks=${where}|${breaks}`,
    `breaks=${key}|${breaks}|${bucket(between.length)}`,
    `near=${where}|${few(passed(between, place.plans))}|${told}`,
    `rule=${time.rule}`,
    `rule=${time.rule}|${where}`,
    `tp=${frame?.predicate}${frame?.negative ? '-' : ''}|${where}`,
    `tl=${frame?.lemma}|${where}`,
    `tu=${frame?.use}|${where}`,
    `ts=${doer(frame)}|${key}`,
    `to=${frame?.openers[0] ?? ''}|${where}`,
    `same=${frame === home}|${where}`,
    `pred=${home?.predicate}|${frame?.predicate}|${key}`,
    ...wordSigns(chunks, at, where, sort),
    ...new Set(gap.flatMap((g) => (TELLING.test(g.word) ? [`g=${g.word}|${where}`, `g=${g.word}|${sort}`] : []))),
    ...own.map((sign) => `${sign}|${where}`),
    ...own.filter((sign) => /^(?:p|has|dated|open|ref|lead)=/.test(sign)).map((sign) => `${sign}|${spot}|${sort}`),
  ];
}

/** The words right before and behind a day. */
function wordSigns(chunks: readonly Chunk[], at: number, where: string, sort: string): string[] {
  const [before, first, next, second] = [-2, -1, 1, 2].map((k) => wordAt(chunks, at + k));
  return [
    `w-1=${first}`,
    `w-1=${first}|${where}`,
    `w-1=${first}|${sort}`,
    `w-2=${before} ${first}`,
    `w+1=${next}`,
    `w+1=${next}|${where}`,
    `w+2=${next} ${second}`,
  ];
}

/** Is the day told in the words of another plan, of something finished or amiss, or of none? */
function whoseWords({ plans, rest }: Place, { time }: Candidate): string {
  const holds = (s: Span) => s.start <= time.start && time.end <= s.end;
  return plans.some(holds) ? 'other' : rest.some(holds) ? 'told' : 'free';
}

/** How many of the spans stand whole between a plan and a day. */
const passed = (between: readonly Chunk[], spans: readonly Span[]) =>
  spans.filter((s) => between.length > 0 && between[0]!.start <= s.start && s.end <= between.at(-1)!.end).length;

/** Who or what a clause is about, by sort. */
function doer(frame: Frame | undefined): string {
  if (!frame?.subject.length) return '0';
  const named = frame.subject.find((c) => c.term)?.term?.kind;
  return named ?? (isSubjectPronoun(frame.subject[0]) ? frame.subject[0]!.word : 'w');
}
