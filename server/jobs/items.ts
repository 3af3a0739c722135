import { keyWords, likeness, sameArea, stem } from '../../parser/trade/likeness.ts';
import type { Done, FollowUp, Problem } from '../../parser/types.ts';
import { type Board, enter, findItem, isLive, leave, type Standing } from './board.ts';
import type { Entry, Event, ItemState } from './types.ts';

export function event(entry: Entry, what: string, words: string | null): Event {
  return { at: entry.at, by: entry.by, entry: entry.id, what, words, noteId: entry.source?.noteId ?? null };
}

interface Opening {
  key: string;
  task: string;
  problem: string | null;
  thing: string | null;
  area: string | null;
  who: string | null;
  due: string | null;
  readyOn: string | null;
  waitingFor: string | null;
  doubtful: boolean;
}

export function open(board: Board, entry: Entry, from: Opening, quote: string | null): Standing {
  const item: Standing = {
    ...from,
    number: board.nextNumber++,
    state: from.readyOn && from.readyOn > entry.at.slice(0, 10) && from.waitingFor ? 'waiting' : 'open',
    openedOn: entry.at.slice(0, 10),
    closedOn: null,
    history: [event(entry, 'opened', quote)],
    words: keyWords(`${from.task} ${from.problem ?? ''}`),
    thingWords: keyWords(from.thing ?? ''),
  };
  board.items.push(item);
  board.byKey.set(item.key, item);
  enter(board, item);
  return item;
}

export function setState(board: Board, item: Standing, entry: Entry, state: ItemState, quote: string | null): void {
  if (item.state === state) return;
  item.history.push(event(entry, state, quote));
  leave(board, item);
  item.state = state;
  enter(board, item);
  item.closedOn = state === 'done' || state === 'dropped' || state === 'signed off' ? entry.at.slice(0, 10) : null;
}

const phraseOf = (thing: string, defect: string) =>
  defect.includes(thing) || thing.includes(defect) ? `${thing}` : `${thing}: ${defect}`;

/** A problem opens an item, joins one that stands, or closes what was put right. */
export function meetProblem(board: Board, entry: Entry, fact: Problem, key: string): Standing {
  const words = keyWords(`${fact.thing} ${fact.defect}`);
  const thing = keyWords(fact.thing);
  const known = findItem(board, words, fact.area, false, 0.75);
  if (known && (isLive(known) || fact.state === 'fixed' || /\bstill\b|\bagain\b/.test(fact.quote))) {
    known.problem ??= fact.defect;
    if (fact.state === 'fixed') setState(board, known, entry, 'done', fact.quote);
    else if (!isLive(known)) setState(board, known, entry, 'open', fact.quote);
    else known.history.push(event(entry, 'said again', fact.quote));
    return known;
  }
  const item = open(
    board,
    entry,
    {
      key,
      task: `${phraseOf(fact.thing, fact.defect)}`,
      problem: fact.defect,
      thing: fact.thing,
      area: fact.area,
      who: null,
      due: null,
      readyOn: null,
      waitingFor: null,
      doubtful: fact.confidence < 0.5 || fact.suspected,
    },
    fact.quote,
  );
  item.thingWords = thing;
  enter(board, item);
  if (fact.state === 'fixed') setState(board, item, entry, 'done', fact.quote);
  return item;
}

/** A follow-up joins the problem it repairs, the item it repeats, or opens its own. */
export function meetFollowUp(
  board: Board,
  entry: Entry,
  fact: FollowUp,
  key: string,
  near: readonly Standing[],
): Standing {
  const words = keyWords(fact.task);
  const problem = near.findLast(
    (item) =>
      isLive(item) &&
      item.problem &&
      item.thingWords.size > 0 &&
      sameArea(item.area, fact.area) &&
      likeness(item.thingWords, words) >= 0.5 &&
      item.task.includes(':'),
  );
  const known = problem ?? findItem(board, words, fact.area, true, 0.66);
  const readyOn = readyDay(fact);
  if (known) {
    if (problem) {
      known.task = fact.task;
      for (const w of words) known.words.add(w);
      enter(board, known);
    }
    known.who = fact.who ?? known.who;
    known.due = fact.due ?? known.due;
    known.readyOn = readyOn ?? known.readyOn;
    known.waitingFor = fact.waitingFor ?? known.waitingFor;
    known.state = fact.waitingFor && readyOn && readyOn > entry.at.slice(0, 10) ? 'waiting' : known.state;
    known.history.push(event(entry, problem ? 'repair named' : 'said again', fact.quote));
    return known;
  }
  return open(
    board,
    entry,
    {
      key,
      task: fact.task,
      problem: null,
      thing: null,
      area: fact.area,
      who: fact.who,
      due: fact.due,
      readyOn,
      waitingFor: fact.waitingFor,
      doubtful: fact.confidence < 0.5,
    },
    fact.quote,
  );
}

const readyDay = (fact: FollowUp) =>
  [fact.due, fact.notBefore]
    .filter((day): day is string => day !== null)
    .sort()
    .at(-1) ?? null;

/** Finished work closes the item that it answers, and only that; else it stands in the day log as its own closed line. */
export function meetDone(board: Board, entry: Entry, fact: Done, key: string): Standing {
  const words = keyWords(fact.task);
  const known =
    findItem(board, words, fact.area, true, 0.6) ??
    findItem(board, objectWords(fact.task), fact.area, true, 0.75) ??
    replacedBy(board, fact);
  if (known) {
    setState(board, known, entry, 'done', fact.quote);
    return known;
  }
  const item = open(
    board,
    entry,
    {
      key,
      task: fact.task,
      problem: null,
      thing: null,
      area: fact.area,
      who: fact.who,
      due: null,
      readyOn: null,
      waitingFor: null,
      doubtful: false,
    },
    fact.quote,
  );
  setState(board, item, entry, 'done', fact.quote);
  return item;
}

/** "Put the stop valve in" answers the one open flaw whose thing is a stop valve. */
function replacedBy(board: Board, fact: Done): Standing | null {
  const closing = /^finish\b/.test(fact.task) && fact.area !== null;
  if (!closing && !/^(?:install|put|replace|swap|change|fit)\b/.test(fact.task)) return null;
  const object = objectWords(fact.task);
  const fits = board.items.filter(
    (item) =>
      isLive(item) && item.problem && item.thing && sameArea(item.area, fact.area) && object.has(headOf(item.thing)),
  );
  return fits.length === 1 ? fits[0]! : null;
}

/** The word that says what a thing is: "toilet shutoff in half bath" is a shutoff. */
const headOf = (thing: string) =>
  stem(
    thing
      .split(/ (?:in|on|at|by|under|behind|of|near|with) /)[0]!
      .split(' ')
      .at(-1)!,
  );

/** A task without its verb: what the work was done to. */
const objectWords = (task: string) => keyWords(task.split(' ').slice(1).join(' '));
