import type { Fact } from '../../parser/types.ts';
import { type DangerTold, dangersIn } from '../takeoff/index.ts';
import type { NoteFacts } from '../takeoff/types.ts';
import { countedBehind } from './goods/countedBehind.ts';
import type { Position } from './goods/position.ts';
import { countsAnew } from './goods/recounted.ts';
import { pointsAtGoods } from './goods/told.ts';
import { maybeBack } from './list/backAgain.ts';
import { type Called, calledBy } from './list/called.ts';
import type { Clause } from './list/endings/clauses.ts';
import { type HeardClause, heardIn } from './list/endings/heard.ts';
import { type Handed, handedIn } from './list/handedOver.ts';
import { type Signed, signedIn } from './list/signedOff.ts';
import { asSaid } from './said/asSaid.ts';
import { dropsTold } from './said/dropsTold.ts';
import { type Part, partIn } from './said/partly.ts';
import { isLeftToThem, isTheirPlan } from './said/theirs.ts';
import { leftOut } from './sieve.ts';
import type { Entry, EntryBody } from './types.ts';

/** One fact to be met; `position` where only the list could tell which goods were meant. */
export interface Step {
  fact: Fact;
  /** `noteId/place`, `.1` and on for each further room that it was told of. */
  key: string;
  /** What its note says right behind it, in lower case. */
  tail?: string;
  /** Its own words, with those behind, leave it to somebody else, or name no work. */
  theirs?: boolean;
  /** How it is told as done in part. */
  part?: Part | null;
  /** What it is called on the list. */
  called?: Called;
  position?: Position;
}

/** A note as its words mean it, before the list is asked. */
export interface Meant {
  note: NoteFacts;
  steps: readonly Step[];
  /** Read here and not by the parser: what is dropped, and goods counted behind their place. */
  besides: readonly Step[];
  /** What the reading asks about. */
  ask: string | null;
  /** Its clauses, any of which may tell of an item as finished; and those that may tell a flaw as back. */
  clauses: readonly HeardClause[];
  back: readonly Clause[];
  /** Dangers that it tells. */
  dangers: readonly DangerTold[];
  /** Work accepted, and work given out. */
  signed: readonly Signed[];
  handed: readonly Handed[];
  /** It may tell of goods that stand on the list, and count them anew once its own goods have been met. */
  pointsAtGoods: boolean;
  countsAnew: boolean;
}

type NoteRead = Extract<EntryBody, { kind: 'noteRead' }>;

const known = new WeakMap<NoteRead, { meant: Meant; areas: readonly string[]; at: string }>();

/**
 * What a note means. The same reading means the same, so it is looked at once, however often the history is folded.
 *
 * @param changed facts put right by hand, by their place
 */
export function meantBy(
  entry: Entry,
  what: NoteRead,
  noteId: string,
  areas: readonly string[],
  changed: ReadonlyMap<number, Fact | null> | undefined,
): Meant {
  if (changed) return meaningOf(entry, what, noteId, areas, changed);
  const before = known.get(what);
  if (before && before.areas === areas && before.at === entry.at && before.meant.note.noteId === noteId)
    return before.meant;
  const meant = meaningOf(entry, what, noteId, areas, new Map());
  known.set(what, { meant, areas, at: entry.at });
  return meant;
}

function meaningOf(
  { at }: Entry,
  { facts: read, places, text }: NoteRead,
  noteId: string,
  areas: readonly string[],
  changed: ReadonlyMap<number, Fact | null>,
): Meant {
  const told: { place: number; fact: Fact; byHand: boolean }[] = [];
  for (const [k, one] of read.entries()) {
    const place = places?.[k] ?? k;
    const fact = changed.has(place) ? changed.get(place)! : one;
    if (fact) told.push({ place, fact, byHand: changed.has(place) });
  }
  const facts = told.map(({ fact }) => fact);
  const drops = dropsTold(text, facts);
  // "No way on the cat hole": what is dropped is no flaw.
  const isDropped = ({ kind, start, end }: Fact) =>
    (kind === 'problem' || kind === 'followUp') && drops.some((d) => d.start <= start && end <= d.end);
  const flaws = facts.length < 2 ? [] : beginningsOf(facts);
  const tailOf = ({ start, end }: Fact) => {
    const next = flaws.find((from) => from > start) ?? text.length;
    return text.slice(end, Math.min(next, end + BEHIND)).toLowerCase();
  };
  const steps = told.flatMap(({ place, fact, byHand }): Step[] => {
    // What a hand has put right says what it means.
    const meant = byHand ? fact : asSaid(fact, text, facts, at);
    if (!meant || isDropped(meant)) return [];
    const tail = tailOf(meant);
    const part = tellsWork(meant) ? partIn(text, meant) : null;
    return areasOf(meant, areas).map((area, k) => {
      const fact = area === meant.area ? meant : { ...meant, area };
      const key = k === 0 ? `${noteId}/${place}` : `${noteId}/${place}.${k}`;
      return { tail, theirs: isTheirs(fact, tail), part, fact, key, called: calledBy(fact) };
    });
  });
  const clauses = heardIn(text, facts, areas);
  return {
    note: { noteId, saidAt: at, text, facts },
    steps,
    besides: orNone([
      ...drops.map((fact) => ({ fact, key: `${noteId}/${fact.start}d` })),
      ...countedBehind(text, facts).map((fact) => ({ fact, key: `${noteId}/${fact.start}c` })),
    ]),
    ask: facts.find((fact) => fact.ask)?.ask ?? null,
    clauses,
    back: orNone(clauses.flatMap(({ clause }) => (maybeBack(clause) ? [clause] : []))),
    dangers: orNone(dangersIn(text)),
    signed: orNone(signedIn(text)),
    handed: orNone(handedIn(text)),
    pointsAtGoods: pointsAtGoods(text),
    countsAnew: countsAnew(text),
  };
}

const NONE: readonly never[] = [];
/** Most notes tell of none of these: one empty list stands for all of theirs. */
const orNone = <T>(told: readonly T[]): readonly T[] => (told.length ? told : NONE);

/** So many characters behind a fact may say what it is worth: "but that's hers", "leave it". */
const BEHIND = 90;

/** A flaw or a plan that is left to somebody else, or is no work. */
const isTheirs = (fact: Fact, tail: string): boolean =>
  fact.kind === 'problem'
    ? isLeftToThem(fact.quote + tail)
    : fact.kind === 'followUp' && (leftOut(fact) || isTheirPlan(fact.quote));

/** Finished work, or a flaw put right. */
const tellsWork = (fact: Fact) => fact.kind === 'done' || (fact.kind === 'problem' && fact.state === 'fixed');

/** Where its flaws and its finished work begin. */
const beginningsOf = (facts: readonly Fact[]) =>
  facts.flatMap(({ kind, start }) => (kind === 'problem' || kind === 'done' ? [start] : [])).sort((a, b) => a - b);

/** "Both rooms", "hall and BR3": work that is told once of two rooms is an item in each. */
function areasOf(fact: Fact, areas: readonly string[]): readonly (string | null)[] {
  if ((fact.kind !== 'followUp' && fact.kind !== 'done') || areas.length < 2) return [fact.area];
  const quote = fact.quote.toLowerCase();
  if (areas.length === 2 && /\bboth (?:rooms|sides|areas|of them)\b/.test(quote)) return areas;
  const named = areas.filter((area) => quote.includes(area.toLowerCase()));
  return named.length >= 2 ? named : [fact.area];
}
