import Fraction from 'fraction.js';
import { stem, wordsOf } from '../../parser/trade/likeness.ts';
import type { Decision, Fact, FollowUp, Material } from '../../parser/types.ts';
import type { SiteFacts } from '../takeoff/types.ts';
import { isLive, type Standing } from './board.ts';
import { meetDone } from './closing.ts';
import { obey } from './commands.ts';
import { isBare, isPackWord } from './goodsAsSaid.ts';
import { goodsTold } from './goodsTold.ts';
import { handOver } from './handedOver.ts';
import { event, meetFollowUp, meetProblem, setState, type Telling, tell } from './items.ts';
import { dayOf, type Ledger } from './ledger.ts';
import { type Linker, link } from './linking/index.ts';
import { find } from './match.ts';
import {
  dropGoods,
  dropPosition,
  findGoods,
  meetMaterial,
  onHandOf,
  openNeed,
  type Position,
  positionOf,
} from './materials.ts';
import type { Meant, Step } from './meant.ts';
import { measure } from './measurements.ts';
import { tellsOfSupply } from './noItem.ts';
import type { Rulings } from './rulings.ts';
import { fixedBy, isOthers, isPurchase, leftOut, settledIn } from './sieve.ts';
import { signOff } from './signedOff.ts';
import { isTheirPlan } from './theirs.ts';
import type { Entry, Job } from './types.ts';
import { dropsTold, tellsWell, workTold } from './workTold.ts';

/** What the fold must know of a job; with a price list, how its goods are sold. */
export type Site = Pick<Job, 'areas' | 'builtYear' | 'crew'> &
  Pick<SiteFacts, 'packFor'> & {
    /** Another judge of what facts are told of: the teacher, when the weights are learned. */
    linker?: Linker;
  };

/** A note while it is met: what it has touched so far. */
interface Meeting {
  ledger: Ledger;
  entry: Entry;
  noteId: string;
  text: string;
  met: Standing[];
  /** Where its flaws and its finished work begin. */
  flaws: readonly number[];
  /** Up to where its words have been met. */
  told: number;
  /** The work last told of that took something out, verb first. */
  removed: string | null;
  rulings: Rulings;
  link: Linker;
}

/** Takes a note's facts into the ledger, in the order of their words. True where it rules on an earlier fact. */
export function meetNote(
  ledger: Ledger,
  job: Site,
  entry: Entry,
  { note, steps: meant }: Meant,
  rulings: Rulings,
): boolean {
  const { noteId, text, facts } = note;
  dayOf(ledger, entry.at.slice(0, 10)).notes++;
  ledger.notes.push(note);
  const meeting: Meeting = {
    ledger,
    entry,
    noteId,
    text,
    met: [],
    flaws: facts.length < 2 ? [] : beginningsOf(facts),
    told: 0,
    removed: null,
    rulings,
    link: job.linker ?? link,
  };
  const byList: Step[] = [];
  for (const fact of workTold(text, facts, ledger.board)) byList.push({ fact, key: `${noteId}/${fact.start}w` });
  const drops = dropsTold(text, facts);
  for (const fact of drops) byList.push({ fact, key: `${noteId}/${fact.start}d` });
  const { told, read } = goodsTold(text, facts, ledger.goods);
  for (const { position, fact, drops } of told) {
    if (drops) dropPosition(position, entry, fact.quote);
    else byList.push({ fact, key: `${noteId}/${fact.start}`, position });
  }
  const own = meant.flatMap((step): Step[] => {
    const { kind, start, end } = step.fact;
    // "No way on the cat hole": what is dropped is no flaw.
    if ((kind === 'problem' || kind === 'followUp') && drops.some((d) => d.start <= start && end <= d.end)) return [];
    const fact = step.fact.kind === 'material' ? read(step.fact) : step.fact;
    return fact ? [{ ...step, fact }] : [];
  });
  const steps = byList.length ? [...own, ...byList].sort((a, b) => a.fact.start - b.fact.start) : own;
  for (const { fact, key, position } of steps) {
    if (rulings.isOut(key)) continue;
    if (position ? takeGoods(meeting, position, fact as Material) : meetFact(meeting, fact, key)) return true;
    meeting.told = Math.max(meeting.told, fact.end);
  }
  for (const item of settledIn(ledger.board, text, meeting.met, entry.at, job.areas))
    setState(ledger.board, item, entry, 'done', null);
  signOff(ledger.board, entry, text, job.areas);
  handOver({ board: ledger.board, entry, noteId, questions: ledger.questions }, text, job.crew ?? []);
  const asked = facts.find((fact) => fact.ask);
  if (asked?.ask) ledger.questions.push({ noteId, ask: asked.ask, item: meeting.met.at(-1) ?? null, whileOpen: false });
  return false;
}

const beginningsOf = (facts: readonly Fact[]) =>
  facts.flatMap(({ kind, start }) => (kind === 'problem' || kind === 'done' ? [start] : [])).sort((a, b) => a - b);

/** The words of the same sentence before a place in the note, from another place on. */
const leadOf = (text: string, from: number, start: number) =>
  start <= from
    ? ''
    : text
        .slice(Math.max(from, start - 60), start)
        .split(/[.;!?\n]/)
        .at(-1)!
        .toLowerCase();

/** So many characters behind a fact may say what it is worth: "but that's hers", "leave it". */
const BEHIND = 90;

const TAKES_OUT = /^(?:take|remove|pull|cut|tear|demo|strip|dig|knock|bust|rip)\b/;

function meetFact(meeting: Meeting, fact: Fact, key: string): boolean {
  const { ledger, entry, noteId, text, met, rulings } = meeting;
  const { board } = ledger;
  const day = dayOf(ledger, entry.at.slice(0, 10));
  const next = meeting.flaws.find((start) => start > fact.start) ?? text.length;
  const telling: Telling = {
    board,
    entry,
    key,
    apart: rulings.isApart(key),
    met,
    lead: leadOf(text, meeting.told, fact.start),
    tail: text.slice(fact.end, Math.min(next, fact.end + BEHIND)).toLowerCase(),
    removed: meeting.removed,
    questions: ledger.questions,
    link: meeting.link,
  };
  switch (fact.kind) {
    case 'problem': {
      const well = fact.state === 'open' && tellsWell(fact.quote);
      if (well) {
        meetDone(telling, { ...fact, kind: 'done', task: `finish ${fact.thing}`, who: null });
        break;
      }
      const item = meetProblem(telling, fact);
      if (item) {
        met.push(item);
        day.found.push(item.task);
      }
      break;
    }
    case 'followUp':
      meetPlan(meeting, telling, fact);
      break;
    case 'done': {
      const item = meetDone(telling, fact);
      day.done.push(item.task);
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
  if (leftOut(fact) || isTheirPlan(fact.quote)) return;
  if (isPurchase(fact, ledger.goods)) return;
  const sent = isOthers(fact, telling.lead);
  if (sent === 'not ours') {
    // "Her nephew's gonna do it": what stood on our list for it is ours no more.
    const theirs = find(
      ledger.board,
      { words: wordsOf(fact.task), area: fact.area, quote: fact.quote },
      { anyOf: false },
    );
    if (theirs?.sure && wordsOf(fact.task).has(theirs.item.head) && !met.includes(theirs.item))
      setState(ledger.board, theirs.item, entry, 'dropped', fact.quote);
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

/** "Two pieces", "a can and a half": of the goods that come so, else of the thing just spoken of. */
function packsOf({ ledger, met }: Meeting, fact: Material): Material | null {
  const known = ledger.goods.all.findLast((p) => p.unit === fact.unit && fact.unit !== 'each' && !p.dropped);
  if (known) return { ...fact, item: known.item, size: fact.size ?? known.size };
  const thing = met.at(-1)?.thing;
  return thing && fact.status === 'need' ? { ...fact, item: stemless(thing, met.at(-1)!.area) } : null;
}

/** "Screen door closer is shot, one black": of the thing just spoken of, and of what kind it is to be. */
function kindOf({ met }: Meeting, fact: Material): Material | null {
  const last = met.at(-1);
  if (fact.status !== 'need') return fact;
  return last?.thing ? { ...fact, item: stemless(last.thing, last.area), specs: [...fact.specs, fact.item] } : null;
}

/** "Dishwasher door gasket's torn, need one gasket": goods named in one word go by the fuller name of the flaw. */
function inFull({ met, text }: Meeting, fact: Material): Material {
  const last = met.at(-1);
  if (fact.status !== 'need' || fact.item.includes(' ') || !last?.thing || !sameSentence(text, last, fact.start))
    return fact;
  const words = stemless(last.thing, last.area).split(' ');
  if (words.length < 2 || stem(words.at(-1)!) !== stem(fact.item)) return fact;
  return { ...fact, item: [...words.slice(0, -1), fact.item].join(' ') };
}

/** A thing without its room: `laundry baseboard` in the laundry room is `baseboard`. */
const stemless = (thing: string, area: string | null) =>
  thing
    .split(' ')
    .filter((word) => area === null || !area.toLowerCase().split(' ').includes(word.toLowerCase()))
    .join(' ') || thing;

function takeGoods({ ledger, entry, text, met }: Meeting, position: Position, fact: Material): boolean {
  const before = openNeed(position);
  const short = /^[^.;!?\n]*\b(?:we're|i'm|still) short\b/i.test(text.slice(fact.end)) ? ' short' : '';
  meetMaterial(position, fact, entry, leadOf(text, 0, fact.start) + short);
  if (fact.status === 'bought' || (before && fact.status === 'have'))
    dayOf(ledger, entry.at.slice(0, 10)).bought.push(`${fact.quantity ?? ''} ${fact.item}`.trim());
  // "It has no ground so that gets a gfci": the part is tied to the flaw of the same sentence.
  const item = met.at(-1);
  if (fact.status === 'need' && item && isLive(item) && sameSentence(text, item, fact.start))
    tell(ledger.board, item, fact.item);
  return false;
}

function sameSentence(text: string, item: Standing, start: number): boolean {
  const quote = item.history.at(-1)?.words;
  const at = quote ? text.indexOf(quote) : -1;
  return at >= 0 && at <= start && !/[.;!?\n]\s/.test(text.slice(at, start));
}

/** "Dimmer's in", with no buying told: what was put in was there, so it is not to buy. */
function putIn({ ledger, entry }: Meeting, task: string, quote: string): void {
  const goods = fixedBy(task);
  if (!goods) return;
  const position = findGoods(ledger.goods, { item: goods, size: null, specs: [], unit: null, status: 'used' });
  if (!position || !openNeed(position) || position.bought.compare(0) > 0 || position.need === null) return;
  const count = Number(/\b(\d+)\b/.exec(quote)?.[1] ?? Number.NaN);
  const rest = position.need.sub(position.have);
  const stock = onHandOf(position);
  if (Number.isNaN(count) && stock.compare(0) > 0) return;
  const put = Number.isNaN(count) || rest.compare(count) < 0 ? rest : new Fraction(count);
  position.used = position.used.add(put);
  // What the stock does not hold was there all the same.
  if (put.compare(stock) > 0) position.have = position.have.add(put.sub(stock));
  position.reasons.push(`put in ${entry.at.slice(0, 10)}`);
  position.history.push(event(entry, 'used', quote));
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
      ask: `Is no. ${match.item.number} (${match.item.task}) dropped? Say "drop ${match.item.number}".`,
      item: match.item,
      whileOpen: true,
    });
}

const DROPPING = /^(?:skip|scratch|forget|scrap|lose|cancel|drop|never mind|nevermind)\b(?: about)?(?: the| that)?/;

/** "Make it three", a note of its own: the count of the goods named last. */
function made(ledger: Ledger, entry: Entry, to: string | null, text: string): boolean {
  const count = /^make (?:it|that|them)\b/i.test(text.trim()) ? /^(\d+|[a-z]+)\b/i.exec(to ?? '')?.[1] : undefined;
  const number = count === undefined ? -1 : /^\d+$/.test(count) ? Number(count) : COUNTS.indexOf(count.toLowerCase());
  const position = ledger.goods.all.findLast((p) => p.need !== null && !p.dropped);
  if (number < 1 || !position) return false;
  position.reasons.push(`${position.need!.toFraction(true)} made ${number} ${entry.at.slice(0, 10)}`);
  position.need = new Fraction(number);
  position.history.push(event(entry, 'need', text));
  return false;
}

const COUNTS = 'zero one two three four five six seven eight nine ten eleven twelve'.split(' ');
