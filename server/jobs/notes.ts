import { shared } from '../../parser/facts/spans/cut.ts';
import { shownOf } from '../../parser/shown.ts';
import { wordsOf } from '../../parser/trade/likeness.ts';
import type { Decision, FollowUp, Material } from '../../parser/types.ts';
import { event } from './event.ts';
import { dropGoods, dropPosition } from './goods/dropped.ts';
import { positionOf } from './goods/found.ts';
import { isBare, isPackWord } from './goods/kinds.ts';
import { inFull, kindOf, made, packsOf, putIn, takeGoods } from './goods/met.ts';
import { goodsTold, NOTHING_TOLD, recountedBehind, type ToldOfGoods } from './goods/told.ts';
import { dayOf, type Ledger } from './ledger.ts';
import { reopenToldBack } from './list/backAgain.ts';
import type { Standing } from './list/board.ts';
import { NO_ITEM } from './list/called.ts';
import { meetDone } from './list/closing.ts';
import { joinItems, obey } from './list/commands.ts';
import { openDangers } from './list/dangersTold.ts';
import type { HeardClause } from './list/endings/heard.ts';
import { type Endings, endingsIn, TAKEN } from './list/endings/index.ts';
import { meetProblem } from './list/flawsMet.ts';
import { handOver } from './list/handedOver.ts';
import { dangersOf, endByWords } from './list/hazardous.ts';
import { setState, type Telling } from './list/items.ts';
import { isToldInPart, leaveOpen } from './list/leftOpen.ts';
import { link } from './list/linking/index.ts';
import { find } from './list/match.ts';
import { wonderIfDone } from './list/perhapsDone.ts';
import { meetFollowUp } from './list/plansMet.ts';
import { signOff } from './list/signedOff.ts';
import { isLive } from './live.ts';
import type { Meant, Step } from './meant.ts';
import { measure } from './measurements.ts';
import { leadOf, type Meeting, type Site, tellingOf } from './meeting.ts';
import type { Rulings } from './rulings.ts';
import { tellsOfSupply } from './said/noItem.ts';
import { fetchedIn, isFetching } from './said/notDone.ts';
import { partIn } from './said/partly.ts';
import { isOthers, isPurchase } from './sieve.ts';
import type { Entry } from './types.ts';

/** Takes a note's facts into the ledger, in the order of their words. True where it rules on an earlier fact. */
export function meetNote(
  ledger: Ledger,
  job: Site,
  entry: Entry,
  { note, steps: meant, besides, ask, clauses, back, dangers, signed, handed, pointsAtGoods, countsAnew }: Meant,
  rulings: Rulings,
): boolean {
  const { noteId, text, facts } = note;
  const day = dayOf(ledger, entry.at.slice(0, 10));
  day.notes++;
  ledger.notes.push(note);
  const meeting: Meeting = {
    ledger,
    entry,
    noteId,
    text,
    day,
    met: [],
    told: 0,
    removed: null,
    rulings,
    link: job.linker ?? link,
  };
  const { told, read } = pointsAtGoods ? goodsTold(text, facts, ledger.goods) : NOTHING_TOLD;
  const byList: Step[] = [];
  for (const { position, fact, drops } of told) {
    if (drops) dropPosition(position, entry, fact.quote);
    else byList.push({ fact, key: `${noteId}/${fact.start}`, position });
  }
  const own = read ? meant.flatMap((step) => readByList(step, read)) : meant;
  const steps =
    besides.length || byList.length ? [...own, ...besides, ...byList].sort((a, b) => a.fact.start - b.fact.start) : own;
  const fetched = fetchedIn(steps);
  for (const step of steps) {
    const { fact, key, position } = step;
    if (rulings.isOut(key) || isFetching(fact, fetched)) continue;
    if (position ? takeGoods(meeting, position, fact as Material) : meetFact(meeting, step)) return true;
    meeting.told = Math.max(meeting.told, fact.end);
  }
  if (countsAnew)
    for (const { position, fact } of recountedBehind(text, ledger.goods)) takeGoods(meeting, position, fact);
  openDangers(meeting, dangers, facts, job.areas);
  takeEndings(meeting, job.endings ?? endingsIn, clauses, steps, fetched);
  reopenToldBack(meeting, back, job.areas);
  signOff(ledger.board, entry, signed, job.areas);
  handOver({ board: ledger.board, entry, noteId, questions: ledger.questions }, handed, job.crew ?? []);
  if (ask !== null) ledger.questions.push({ noteId, ask, item: meeting.met.at(-1) ?? null, whileOpen: false });
  return false;
}

/** Goods as a list of what was fetched tells of them; nothing where the list says it better. */
function readByList(step: Step, read: NonNullable<ToldOfGoods['read']>): Step[] {
  const fact = step.fact.kind === 'material' ? read(step.fact) : step.fact;
  return fact ? [{ ...step, fact }] : [];
}

/** So much of a clause is goods that it tells of nothing else. */
const ALL_OF_IT = 0.8;

/** Items that the note tells of as finished, in whatever words; not by goods fetched, nor by words that a hand has taken back. */
function takeEndings(
  meeting: Meeting,
  endings: Endings,
  clauses: readonly HeardClause[],
  steps: readonly Step[],
  fetched: readonly Material[],
): void {
  const { ledger, entry, noteId, text, day, met, rulings } = meeting;
  const { board } = ledger;
  const ended = endings({ board, entry, text, clauses, met });
  if (!ended.length) return;
  const back = steps.filter(({ key }) => rulings.isOut(key) || rulings.isApart(key)).map(({ fact }) => fact);
  for (const ending of ended) {
    const { item, sure, start, end, quote } = ending;
    const key = `${noteId}/${start}e`;
    if (rulings.isOut(key) || back.some((fact) => fact.start < end && start < fact.end)) continue;
    if (fetched.some((goods) => shared(goods, { start, end }) >= ALL_OF_IT)) continue;
    if (isToldInPart(item, entry)) continue;
    const part = partIn(text, { start, end });
    if (part) {
      if (!met.includes(item) && wordsOf(quote).has(item.head)) leaveOpen(board, item, entry, quote, part.left);
      continue;
    }
    if (!sure) {
      if (!met.includes(item)) wonderIfDone(item, entry, key, quote);
      continue;
    }
    if (!endByWords(board, item, entry, key, ending, TAKEN)) continue;
    item.met.push(key);
    day.done.push(shownOf(item));
    putIn(meeting, item.task, quote);
    // "The drain runs clear": what was read as a flaw of the same thing is that it has none.
    for (const flaw of met.filter((other) => other.head === item.head && isToldIn(other, entry, quote)))
      joinItems(board, entry, flaw, item, null);
  }
}

/** An item that this note opened as a flaw, with nothing but words of a stretch. */
const isToldIn = ({ problem, history }: Standing, entry: Entry, stretch: string): boolean =>
  problem !== null &&
  history[0]!.entry === entry.id &&
  history.every(({ words }) => words !== null && stretch.includes(words));

const TAKES_OUT = /^(?:take|remove|pull|cut|tear|demo|strip|dig|knock|bust|rip)\b/;

function meetFact(meeting: Meeting, step: Step): boolean {
  const { fact, key, tail = '', theirs = false, part = null, called = NO_ITEM } = step;
  const { ledger, entry, noteId, text, day, met, rulings } = meeting;
  const { board } = ledger;
  const telling = tellingOf(meeting, key, { lead: leadOf(text, meeting.told, fact.start), tail, theirs, part, called });
  switch (fact.kind) {
    case 'problem': {
      const item = meetProblem(telling, fact);
      if (item) {
        met.push(item);
        day.found.push(shownOf(item));
      }
      break;
    }
    case 'followUp':
      meetPlan(meeting, telling, fact);
      break;
    case 'done': {
      const item = meetDone(telling, fact);
      // What was done of work that stays open is told as it was told; what is only wished for was not done.
      if (!isLive(item)) day.done.push(shownOf(item));
      else if (isToldInPart(item, entry)) day.done.push(shownOf(fact));
      if (TAKES_OUT.test(fact.task)) meeting.removed = fact.task;
      putIn(meeting, fact.task, fact.quote);
      break;
    }
    case 'material': {
      const goods = isPackWord(fact.item) ? packsOf(meeting, fact) : isBare(fact.item) ? kindOf(meeting, fact) : fact;
      const named = goods && inFull(meeting, goods);
      if (named && named.status !== 'mentioned') takeGoods(meeting, positionOf(ledger.goods, named, key), named);
      break;
    }
    case 'measurement':
      measure(ledger.measurements, entry, fact, key, noteId);
      break;
    case 'decision':
      ledger.decisions.push({ what: fact.what, on: entry.at.slice(0, 10), noteId });
      if (fact.drops) drop(meeting, fact);
      break;
    case 'spending': {
      const { amount, currency } = fact;
      ledger.spending.push({ amount, currency, on: entry.at.slice(0, 10), for: fact.on, noteId });
      day.spent += amount;
      break;
    }
    case 'command':
      return rulings.rules(key, obey(board, entry, fact)) || made(ledger, entry, fact.to, text);
  }
  return false;
}

/** A step still to do: unless it is buying, which lives in the order, or another's business. */
function meetPlan(meeting: Meeting, telling: Telling, fact: FollowUp): void {
  const { ledger, entry, met } = meeting;
  if (telling.theirs) return;
  if (isPurchase(fact, ledger.goods)) return;
  const sent = isOthers(fact, telling.lead);
  if (sent === 'not ours') {
    // "Her nephew's gonna do it": what stood on our list for it is ours no more.
    const theirs = find(
      ledger.board,
      { words: wordsOf(fact.task), area: fact.area, quote: fact.quote },
      { anyOf: false },
    );
    const ours = theirs?.sure && wordsOf(fact.task).has(theirs.item.head) && !met.includes(theirs.item);
    // Who sees to a danger does not end it.
    if (ours && dangersOf(theirs.item).length === 0) setState(ledger.board, theirs.item, entry, 'dropped', fact.quote);
    return;
  }
  if (sent === 'comes to us') {
    // Goods that another sends: the work that wants them waits for the day.
    const words = wordsOf(fact.task);
    const named = find(ledger.board, { words, area: fact.area, quote: fact.quote });
    const waiting = tellsOfSupply(fact) ? (named?.sure ? named.item : undefined) : (met.at(-1) ?? named?.item);
    if (waiting && isLive(waiting)) {
      waiting.readyOn = fact.due ?? fact.notBefore ?? waiting.readyOn;
      waiting.waitingFor = fact.quote;
      waiting.history.push(event(entry, 'waits for a part', fact.quote));
      if (waiting.readyOn && waiting.readyOn > entry.at.slice(0, 10))
        setState(ledger.board, waiting, entry, 'waiting', null);
    }
    return;
  }
  const item = meetFollowUp(telling, fact);
  if (item) met.push(item);
}

/** What the owner or the crew dropped: the item and its goods. */
function drop({ ledger, entry, noteId }: Meeting, fact: Decision): void {
  const words = wordsOf(fact.drops!.replace(DROPPING, ''));
  if (!words.size) return;
  const match = find(ledger.board, { words, area: fact.area, quote: fact.quote }, { sure: 0.6 });
  const goods = dropGoods(ledger.goods, words, entry, fact.quote);
  if (match?.sure) setState(ledger.board, match.item, entry, 'dropped', fact.quote);
  else if (match && !goods)
    ledger.questions.push({
      noteId,
      ask: `Is no. ${match.item.number} (${shownOf(match.item)}) dropped? Say "drop ${match.item.number}".`,
      item: match.item,
      whileOpen: true,
    });
}

const DROPPING = /^(?:skip|scratch|forget|scrap|lose|cancel|drop|never mind|nevermind)\b(?: about)?(?: the| that)?/;
