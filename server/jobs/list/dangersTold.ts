/** A danger that a note tells stands on the list, whatever its words were read as: people tell of it in passing. */
import { shownOf } from '../../../parser/shown.ts';
import { sameArea, wordsOf } from '../../../parser/trade/likeness.ts';
import type { Fact } from '../../../parser/types.ts';
import { type DangerTold, dangersIn } from '../../takeoff/index.ts';
import { event } from '../event.ts';
import { isLive } from '../live.ts';
import { type Meeting, tellingOf } from '../meeting.ts';
import type { Entry } from '../types.ts';
import { reword, type Standing, sharing } from './board.ts';
import { flawCalled } from './called.ts';
import { type Clause, clausesOf } from './endings/clauses.ts';
import { dangersOf, isDealtWith } from './hazardous.ts';
import { join, open, setState, type Telling } from './items.ts';

/** Opens an item for each danger of a note that none of its facts has put on the list; a name that does not tell of it does from now on. */
export function openDangers(
  meeting: Meeting,
  dangers: readonly DangerTold[],
  facts: readonly Fact[],
  areas: readonly string[],
): void {
  const { ledger, entry, noteId, text, day, met, rulings } = meeting;
  const { board } = ledger;
  for (const danger of dangers) {
    const key = `${noteId}/${danger.start}h`;
    if (rulings.isOut(key) || isNotItself(danger, text, facts)) continue;
    const told = clausesOf(text).filter(({ start, end }) => start < danger.end && end > danger.start);
    const [first] = told;
    if (!first || isOver(danger, first, text)) continue;
    const last = told.at(-1)!;
    const quote = text.slice(first.whole, last.end).trim();
    const name = nameOf(text, danger, first.whole, last.end);
    const area = areas.find((room) => quote.toLowerCase().includes(room.toLowerCase())) ?? roomBefore(facts, last.end);
    const flaw = { task: name, problem: text.slice(danger.start, danger.end).toLowerCase(), thing: null, area };
    const called = flawCalled(flaw, quote);
    const telling = tellingOf(meeting, key, { lead: '', tail: '', theirs: false, part: null, called });
    const tellsIt = (item: Standing) => dangersOf(item).some(({ hazard }) => hazard === danger.hazard);
    const here =
      met.find((item) => (isLive(item) || item.unsure) && tellsIt(item)) ??
      met.find((item) => (isLive(item) || item.unsure) && isToldIn(item, entry, text, danger));
    if (here) {
      if (!tellsIt(here)) here.history.push(event(entry, 'said again', quote));
      if (here.unsure) setState(board, here, entry, 'open', quote);
      if (here.history[0]!.entry === entry.id) nameBy(telling, here, danger, name);
      continue;
    }
    const words = new Set(told.flatMap((clause) => [...clause.words]));
    const known = [...sharing(board, words, 'live')].find((item) => tellsIt(item) && sameArea(item.area, area));
    if (known && !telling.apart) {
      join(telling, known, 'said again', quote);
      met.push(known);
      continue;
    }
    const item = open(telling, flaw, quote);
    met.push(item);
    day.found.push(shownOf(item));
  }
}

/** Goods of that name, what somebody decided, and what is asked or looked for. */
function isNotItself({ start, end }: DangerTold, text: string, facts: readonly Fact[]): boolean {
  const stop = /[.!?\n]/.exec(text.slice(end));
  return (
    stop?.[0] === '?' ||
    LOOKED_FOR.test(text.slice(0, start).toLowerCase()) ||
    facts.some(
      (f) => f.start < end && f.end > start && (f.kind === 'material' || f.kind === 'decision' || f.kind === 'command'),
    )
  );
}

/** "Check for gas leaks": work that stands by itself. */
const LOOKED_FOR =
  /\b(?:check|checked|checking|look|looked|looking|test|tested|testing|sniff|sniffed|sample|sampled)(?: \w+)? for(?: \w+){0,2} $/;

/** So far behind it a note may tell that it was dealt with: "drain smells, trap dry, filled it". */
const BEHIND = 90;

const isOver = (danger: DangerTold, first: Clause, text: string): boolean =>
  clausesOf(text).some(
    ({ said, start }) => start >= first.start && start < danger.end + BEHIND && isDealtWith(danger, said),
  );

const roomBefore = (facts: readonly Fact[], end: number): string | null =>
  facts.findLast(({ start }) => start < end)?.area ?? null;

/** Read from words among which the danger stands: "union bubbling, shut it off", where gas was named before. */
const isToldIn = (item: Standing, entry: Entry, text: string, { start, end }: DangerTold): boolean =>
  item.history.some(({ entry: by, words }) => {
    const at = by === entry.id && words !== null ? text.indexOf(words) : -1;
    return at >= 0 && at < end && start < at + words!.length;
  });

/** "Attic: loose gray pebbly" does not tell of insulation: it goes by the words that tell of the danger, unless work on it was named. */
function nameBy({ board }: Telling, item: Standing, { hazard }: DangerTold, name: string): void {
  const { task, problem, thing } = item;
  if (problem === null || item.history.some(({ what }) => what === 'repair named')) return;
  const names = [task.replace(/[:(),]/g, ''), `${thing ?? ''} is ${problem}`, `${task} ${problem}`];
  if (names.some((words) => dangersIn(words).some((told) => told.hazard === hazard))) return;
  Object.assign(item, { task: name, wording: null });
  reword(board, item, new Set([...item.words, ...wordsOf(name)]));
}

const BEFORE_IT =
  /^(?:(?:and|so|but|also|oh|well|um|uh|okay|ok|now|there's|theres|there is|there are|(?:we |i )?found|we've got|she's got|the|an?|that) )+/;
/** Talk without stops runs on: so much before the words that tell of a danger, and behind them, still is about it. */
const NEAR = 30;
const RUNS_ON = / (?:that|that's|which|i|i'm|we|he|he's|she|they|it|it's|when|where|so|and|but|right)(?= )/;

const POINTS = /^[ ,]*(?:and |so |but )*(?:it|that|this|they|those|these)(?:'s|'re| is| are| was| were)?\b/;

/** The danger as it was said, without what leads up to it and what comes behind. */
function nameOf(text: string, { start, end }: DangerTold, from: number, until: number): string {
  const sentence = /[^.!?\n]*$/.exec(text.slice(0, start))!;
  // "Barn door paint came up red, it's lead": what it is said of stands before, in the same sentence.
  const points = POINTS.test(text.slice(from, end).toLowerCase()) && start - sentence.index <= 2 * NEAR;
  const begins = points ? sentence.index : start - from > NEAR ? start : from;
  const behind = text.slice(end, until).toLowerCase();
  const short = behind.slice(0, RUNS_ON.exec(behind)?.index ?? behind.length);
  const tail = short.length > NEAR ? short.slice(0, short.lastIndexOf(' ', NEAR)) : short;
  return `${text.slice(begins, end).toLowerCase()}${tail}`.trim().replace(BEFORE_IT, '');
}
