import { isDoubtful } from '../../parser/doubtful.ts';
import { sameArea, wordsOf } from '../../parser/trade/likeness.ts';
import type { FollowUp, Problem } from '../../parser/types.ts';
import { add, type Board, enter, leave, reword, type Standing, sharing } from './board.ts';
import { isDoubted } from './doubts/index.ts';
import type { Question } from './ledger.ts';
import { type ByRules, type Link, type Linker, sureOf } from './linking/index.ts';
import { isLive } from './live.ts';
import { find, headIn, headOf } from './match.ts';
import { isPartOf, sameBreath, sameThing } from './oneFlaw.ts';
import { assigned, flawOf, moved, NO_NAME, sameWork } from './repairs.ts';
import { isLeftToThem } from './theirs.ts';
import type { Entry, Event, ItemState } from './types.ts';

export function event(entry: Entry, what: string, words: string | null): Event {
  return { at: entry.at, by: entry.by, entry: entry.id, what, words, noteId: entry.source?.noteId ?? null };
}

/** Where a fact stands in its job: the entry that told it, its key, and what a hand has taken apart. */
export interface Telling {
  board: Board;
  entry: Entry;
  /** `noteId/index`. */
  key: string;
  /** True where a hand said that this fact is an item of its own. */
  apart: boolean;
  /** Items that the same note has met so far. */
  met: readonly Standing[];
  /** The words of its sentence up to it, from the last fact on. */
  lead: string;
  /** What its note says right behind it. */
  tail: string;
  /** What the same note told as taken out, verb first; null where nothing was. */
  removed: string | null;
  /** Where a match that is close and not sure is asked about. */
  questions: Question[];
  /** Says what each fact is told of. */
  link: Linker;
}

type Opening = Pick<Standing, 'task' | 'area'> & Partial<Standing>;

export function ask({ entry, questions }: Telling, question: string, item: Standing): void {
  questions.push({ noteId: entry.source?.noteId ?? entry.id, ask: question, item, whileOpen: true });
}

export function open({ board, entry, key, lead }: Telling, from: Opening, quote: string | null): Standing {
  const day = entry.at.slice(0, 10);
  const item: Standing = {
    problem: null,
    thing: null,
    who: null,
    due: null,
    readyOn: null,
    waitingFor: null,
    doubtful: false,
    unsure: false,
    ...from,
    key,
    number: board.nextNumber++,
    state: from.readyOn && from.readyOn > day && from.waitingFor ? 'waiting' : 'open',
    openedOn: day,
    closedOn: null,
    history: [event(entry, 'opened', quote)],
    words: new Set(
      wordsOf(
        from.problem === null || from.problem === undefined
          ? from.task
          : `${from.task} ${from.problem} ${from.thing ?? ''}`,
      ),
    ),
    head: headIn(from.thing ?? from.task, quote ?? '', from.area),
    told: new Set([...wordsOf(quote ?? ''), ...(names(quote, from) ? [] : wordsOf(lead))]),
    met: [key],
  };
  add(board, item);
  return item;
}

/** Brings an item into a state; `what` is what its history calls it, where that is not the state's own name. */
export function setState(
  board: Board,
  item: Standing,
  entry: Entry,
  state: ItemState,
  quote: string | null,
  what: string = isLive(item) || state !== 'open' ? state : 'reopened',
): void {
  if (item.unsure && item.state === state) item.history.push(event(entry, 'kept', quote));
  item.unsure = false;
  if (item.state === state) return;
  item.history.push(event(entry, what, quote));
  leave(board, item);
  item.state = state;
  // Work signed off was finished on the day it was done.
  item.closedOn = isLive(item) ? null : (item.closedOn ?? entry.at.slice(0, 10));
  enter(board, item);
}

/** Takes what a fact says into an item that stands. */
function join({ board, entry, key }: Telling, item: Standing, what: string, quote: string): void {
  item.history.push(event(entry, what, quote));
  item.met.push(key);
  if (item.history[0]!.entry !== entry.id) item.unsure = false;
  tell(board, item, quote);
  board.joined = item;
}

/** The words name the thing themselves; where they only point at it, the ones before them name it. */
const names = (quote: string | null, { thing, task }: Opening) => wordsOf(quote ?? '').has(headOf(thing ?? task));

/** Takes on more words that it is spoken of with. */
export function tell(board: Board, item: Standing, text: string): void {
  const words = wordsOf(text);
  if ([...words].every((word) => item.told.has(word))) return;
  leave(board, item);
  for (const word of words) item.told.add(word);
  enter(board, item);
}

export const nameOf = (item: Standing) => `no. ${item.number} (${item.task}${item.area ? `, ${item.area}` : ''})`;

/** A new item beside one that it may be: opened, and asked about. */
function wonder(telling: Telling, perhaps: Standing | null, item: Standing): Standing {
  if (perhaps && !telling.apart)
    ask(
      telling,
      `Is no. ${item.number} the same as ${nameOf(perhaps)}? Say "${item.number} is the same as ${perhaps.number}".`,
      item,
    );
  return item;
}

const phraseOf = (thing: string, defect: string) =>
  defect.includes(thing) || thing.includes(defect) ? `${thing}` : `${thing}: ${defect}`;

/** The item that the rules take a problem for, or the one that it may be. */
function problemByRules(telling: Telling, fact: Problem): ByRules {
  const { board } = telling;
  const sought = {
    words: wordsOf(`${fact.thing} ${fact.defect}`),
    area: fact.area,
    quote: `${telling.lead} ${fact.quote}`,
    head: headIn(fact.thing, fact.quote, fact.area),
  };
  const fits = (item: Standing) => sameThing(item, sought.head, sought.words);
  const again = /\b(?:still|again|back)\b/.test(fact.quote.toLowerCase());
  const same = sameBreath(telling, fact);
  if (same) return sureOf(same);
  const live = find(board, sought, { fits, sure: fact.state === 'fixed' ? 0.6 : undefined });
  if (live?.sure) return sureOf(live.item);
  const closed = again || fact.state === 'fixed' ? find(board, sought, { where: ['closed'], fits }) : null;
  if (closed?.sure) return sureOf(closed.item);
  return { item: fact.state === 'fixed' ? soleFlaw(board, fact) : null, perhaps: live?.item ?? null };
}

/** A problem opens an item, joins one that stands, or closes what was put right; null where it is no item. */
export function meetProblem(telling: Telling, fact: Problem): Standing | null {
  const { board, entry, apart } = telling;
  const { item: known, kept, perhaps } = apart ? ALONE : telling.link(telling, fact, problemByRules(telling, fact));
  if (!kept || (!known && !apart && fact.state === 'open' && isLeftToThem(fact.quote + telling.tail))) return null;
  const over = fact.state === 'fixed';
  if (known) {
    if (over) setState(board, known, entry, 'done', fact.quote);
    else if (!isLive(known)) setState(board, known, entry, 'open', fact.quote);
    known.problem ??= fact.defect;
    if (!over && isPartOf(fact, known) && ![...wordsOf(fact.thing)].every((word) => known.words.has(word))) {
      const why = `${fact.thing} ${fact.defect}`;
      known.problem += `, ${why}`;
      if (known.task.includes(':')) known.task += `, ${why}`;
      reword(board, known, new Set([...known.words, ...wordsOf(why)]));
    }
    join(telling, known, 'said again', fact.quote);
    return known;
  }
  const item = open(
    telling,
    {
      task: phraseOf(fact.thing, fact.defect),
      problem: fact.defect,
      thing: fact.thing,
      area: fact.area,
      doubtful: fact.suspected || isDoubtful(fact),
      unsure: isDoubted(telling, fact),
    },
    fact.quote,
  );
  if (over) setState(board, item, entry, 'done', fact.quote);
  return wonder(telling, perhaps, item);
}

/** What a hand has taken apart is an item of its own. */
export const ALONE: Link = { item: null, kept: true, perhaps: null };

/** "Disposal was just jammed, freed it": what was put right is the one flaw that stands of that thing, or of that kind. */
function soleFlaw(board: Board, { thing, defect, area }: Problem): Standing | null {
  const flaws = (words: ReadonlySet<string>) =>
    [...sharing(board, words, 'live')].filter((item) => item.problem && sameArea(item.area, area));
  const head = headOf(thing);
  const ofThing = flaws(new Set([head])).filter((item) => item.thing && item.head === head);
  if (ofThing.length) return ofThing.length === 1 ? ofThing[0]! : null;
  const kind = wordsOf(defect);
  const ofKind = kind.size ? flaws(kind).filter((item) => [...kind].every((word) => item.words.has(word))) : [];
  return ofKind.length === 1 ? ofKind[0]! : null;
}

/** The flaw that a plan repairs, the item it repeats, or the one it gives out, by the rules. */
function planByRules(telling: Telling, fact: FollowUp, words: ReadonlySet<string>): ByRules {
  const flaw = flawOf(telling, fact, words);
  if (flaw) return sureOf(flaw);
  const match = find(
    telling.board,
    { words, area: fact.area, quote: fact.quote },
    { fits: (item) => sameWork(item, fact.task) },
  );
  if (match?.sure) return sureOf(match.item);
  return { item: assigned(telling, fact, words) ?? moved(telling, fact), perhaps: match?.item ?? null };
}

/** A follow-up joins the problem it repairs, the item it repeats, or opens its own; null where it is no item. */
export function meetFollowUp(telling: Telling, fact: FollowUp): Standing | null {
  const { board, entry, apart } = telling;
  const words = wordsOf(fact.task);
  const readyOn = readyDay(fact);
  const { item: known, kept, perhaps } = apart ? ALONE : telling.link(telling, fact, planByRules(telling, fact, words));
  if (!kept) return null;
  if (!known)
    return wonder(
      telling,
      perhaps,
      open(
        telling,
        {
          task: fact.task,
          area: fact.area,
          who: fact.who,
          due: fact.due,
          readyOn,
          waitingFor: fact.waitingFor,
          doubtful: isDoubtful(fact),
          unsure: isDoubted(telling, fact),
        },
        fact.quote,
      ),
    );
  if (!isLive(known)) setState(board, known, entry, 'open', fact.quote);
  const flaw = known.problem !== null;
  const first = flaw && known.task.includes(':') && !NO_NAME.test(fact.task);
  if (first) {
    known.task = words.has(known.head) ? fact.task : `${fact.task} ${known.thing ?? ''}`.trim();
    reword(board, known, new Set([...known.words, ...words]));
  } else if (flaw && NO_NAME.test(fact.task)) reword(board, known, new Set([...known.words, ...words]));
  known.who = fact.who ?? known.who;
  known.due = fact.due ?? known.due;
  known.readyOn = readyOn ?? known.readyOn;
  known.waitingFor = fact.waitingFor ?? known.waitingFor;
  if (fact.waitingFor && readyOn && readyOn > entry.at.slice(0, 10))
    setState(board, known, entry, 'waiting', fact.quote);
  join(telling, known, first ? 'repair named' : 'said again', fact.quote);
  return known;
}

const readyDay = (fact: FollowUp) =>
  [fact.due, fact.notBefore]
    .filter((day): day is string => day !== null)
    .sort()
    .at(-1) ?? null;
