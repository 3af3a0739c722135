import type { Span } from '../../types.ts';
import { type Chunk, isSubjectPronoun } from '../chunks.ts';
import { clauseAt } from '../spans/features.ts';
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

/** Words of a plan that tell what sort of day it may have. */
const POINTS =
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
  const frames = talk.frames.slice(...rangeIn(talk.frames, plan));
  const frame = frames[0];
  const dated = chunks.filter((c) => c.time && !c.time.past);
  return [
    `p=${frame?.predicate}${frame?.negative ? '-' : ''}`,
    `lemma=${frame?.lemma}`,
    `use=${frame?.use}`,
    `open=${frame?.openers[0] ?? ''}`,
    `dated=${Math.min(dated.length, 2)}`,
    `first=${chunks[0]?.word}`,
    `lead=${plainWord(talk.chunks[from - 1])}`,
    ...pointing(talk.chunks.slice(from, until)),
    ...new Set(chunks.flatMap((c) => (POINTS.test(c.word) ? [`has=${c.word}`] : []))),
    ...new Set(chunks.flatMap((c, k) => (POINTS.test(c.word) ? [`has2=${c.word} ${plainWord(chunks[k + 1])}`] : []))),
  ];
}

const bucket = (n: number) =>
  n <= 3 ? `${n}` : n <= 5 ? '4-5' : n <= 8 ? '6-8' : n <= 14 ? '9-14' : n <= 25 ? '15-25' : '26+';
const plainWord = (c: Chunk | undefined) =>
  !c ? '#' : c.kind === 'quantity' ? '<q>' : c.kind === 'time' ? '<t>' : c.kind === 'number' ? '<n>' : c.word;

function candidateSigns({ talk, plan, plans, rest }: Place, c: Candidate, own: readonly string[]): string[] {
  const { chunks, frames } = talk;
  const { time, at, where } = c;
  const [from, until] = rangeIn(chunks, plan);
  const clauses = clauseAt(chunks, frames);
  const frame = frames[clauses[at]!];
  const home = frames[clauses.slice(from, until).find((k) => k >= 0) ?? -1];
  const gap =
    where === 'before'
      ? chunks.slice(at + 1, from)
      : where === 'after'
        ? chunks.slice(until, at)
        : chunks.slice(from, at);
  const between = where === 'in' ? [] : gap;
  const inSpan = (spans: readonly Span[]) => spans.some((s) => s.start <= time.start && time.end <= s.end);
  const nearer = (spans: readonly Span[]) =>
    spans.filter((s) => between.length && s.start >= between[0]!.start && s.end <= between.at(-1)!.end).length;
  const sort = `${time.relation}${time.hours !== undefined ? 'h' : ''}${time.to ? 's' : ''}${c.begins ? 'b' : ''}`;
  const mine = inSpan(plans) ? 'other' : inSpan(rest) ? 'told' : 'free';
  const breaks = between.filter((b) => b.kind === 'break' || /^[.;!?]$/.test(b.word)).length;
  const spot = where === 'in' ? 'in' : `${where}${c.nth}${mine}`;
  const before1 = plainWord(chunks[at - 1]);
  const before2 = plainWord(chunks[at - 2]);
  const after1 = plainWord(chunks[at + 1]);
  const after2 = plainWord(chunks[at + 2]);
  const subject = frame?.subject.length
    ? (frame.subject.find((s) => s.term)?.term?.kind ??
      (isSubjectPronoun(frame.subject[0]) ? frame.subject[0]!.word : 'w'))
    : '0';
  const key = `${where}|${mine}`;
  const base = [
    `s=${sort}`,
    `s=${sort}|${key}`,
    `spot=${spot}`,
    `spot=${spot}|${sort}`,
    `nth=${where}${c.nth}`,
    `gap=${where}|${bucket(between.length)}`,
    `gap=${key}|${bucket(between.length)}|${sort}`,
    `frames=${where}|${bucket(Math.abs((clauses[at] ?? 0) - (home ? frames.indexOf(home) : 0)))}|${mine}`,
    `breaks=${where}|${Math.min(breaks, 2)}`,
    `breaks=${key}|${Math.min(breaks, 2)}|${bucket(between.length)}`,
    `near=${where}|${Math.min(nearer(plans), 2)}|${Math.min(nearer(rest), 2)}`,
    `w-1=${before1}|${where}`,
    `w-1=${before1}|${sort}`,
    `w-1=${before1}`,
    `w-2=${before2} ${before1}`,
    `w-2=${before2}|${where}`,
    `w+1=${after1}|${where}`,
    `w+1=${after1}`,
    `w+2=${after1} ${after2}`,
    `rule=${time.rule}`,
    `rule=${time.rule}|${where}`,
    `tp=${frame?.predicate}${frame?.negative ? '-' : ''}|${where}`,
    `tl=${frame?.lemma}|${where}`,
    `tu=${frame?.use}|${where}`,
    `ts=${subject}|${key}`,
    `to=${frame?.openers[0] ?? ''}|${where}`,
    `same=${frame === home}|${where}`,
    `pred=${home?.predicate}|${frame?.predicate}|${key}`,
    ...new Set(gap.flatMap((g) => (POINTS.test(g.word) ? [`g=${g.word}|${where}`, `g=${g.word}|${sort}`] : []))),
    ...own.map((sign) => `${sign}|${where}`),
    ...own.filter((sign) => /^(?:p|has|dated|open|ref|lead)=/.test(sign)).map((sign) => `${sign}|${spot}|${sort}`),
  ];
  return base;
}
