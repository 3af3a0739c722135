import { keyWords, likeness, sameArea, stem } from '../../parser/trade/likeness.ts';
import type { Fact } from '../../parser/types.ts';
import { compute, concerns } from '../takeoff/index.ts';
import type { ComputedWait, NoteFacts, SiteFacts } from '../takeoff/types.ts';
import { type Board, enter, findItem, isLive, leave, newBoard, reword, type Standing } from './board.ts';
import { obey, takesBack } from './commands.ts';
import { earlyPlans } from './early.ts';
import { event, meetDone, meetFollowUp, meetProblem, setState } from './items.ts';
import { leftOvers } from './leftOvers.ts';
import { meetMaterial, type Position, positionOf, settle } from './materials.ts';
import { type Measurements, measure } from './measurements.ts';
import type { Entry, EntryBody, Item, Job, JobState } from './types.ts';

/** What the fold must know of a job; with a price list, how its goods are sold. */
type Site = Pick<Job, 'areas' | 'builtYear'> & Pick<SiteFacts, 'packFor'>;

/** Everything that stands while a history is being folded. */
interface Ledger {
  board: Board;
  positions: Position[];
  measurements: Measurements;
  /** What a hand set on an order line, said or reckoned, by the line's key. */
  handOrder: Map<string, Extract<EntryBody, { kind: 'setOrder' }>>;
  notes: NoteFacts[];
  decisions: JobState['decisions'];
  spending: JobState['spending'];
  days: Map<string, JobState['days'][number]>;
  questions: JobState['questions'];
}

/**
 * What a job's history adds up to at `asOf` (local wall time). Pure: the same entries give the same list whatever
 * order or how often they were delivered.
 */
export function fold(job: Site, entries: readonly Entry[], asOf: string): JobState {
  const ledger: Ledger = {
    board: newBoard(),
    positions: [],
    measurements: new Map(),
    handOrder: new Map(),
    notes: [],
    decisions: [],
    spending: [],
    days: new Map(),
    questions: [],
  };
  const history = standing(entries, asOf);
  const corrections = correctionsIn(history);
  for (const entry of history) apply(ledger, job, entry, corrections);
  return stateOf(ledger, job, asOf);
}

/** The entries that count, in the order in which things were said: each once, up to `asOf`, those undone left out. */
export function standing(entries: readonly Entry[], asOf: string): Entry[] {
  const byId = new Map<string, Entry>();
  for (const entry of entries) if (entry.at <= asOf) byId.set(entry.id, entry);
  const history = [...byId.values()].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.id < b.id ? -1 : 1));
  const undone = new Set<string>();
  for (let k = history.length - 1; k >= 0; k--) {
    const { id, what } = history[k]!;
    if (what.kind === 'undo' && !undone.has(id)) undone.add(what.entry);
  }
  const latest: string[] = [];
  for (const { id, what } of history) {
    if (undone.has(id)) continue;
    const taken = what.kind === 'noteRead' && takesBack(what.facts) ? latest.pop() : undefined;
    if (taken) undone.add(taken);
    else if (what.kind !== 'undo') latest.push(id);
  }
  return history.filter((entry) => entry.what.kind !== 'undo' && !undone.has(entry.id));
}

type Corrections = Map<string, Map<number, Fact | null>>;

function correctionsIn(history: readonly Entry[]): Corrections {
  const out: Corrections = new Map();
  for (const { what } of history) {
    if (what.kind !== 'correctFact') continue;
    const facts = out.get(what.noteId) ?? new Map<number, Fact | null>();
    facts.set(what.index, what.fact);
    out.set(what.noteId, facts);
  }
  return out;
}

function apply(ledger: Ledger, job: Pick<Job, 'areas' | 'builtYear'>, entry: Entry, corrections: Corrections): void {
  const { what } = entry;
  const { board } = ledger;
  const item = 'item' in what ? board.byKey.get(what.item) : undefined;
  switch (what.kind) {
    case 'noteRead': {
      const noteId = entry.source?.noteId ?? entry.id;
      const changed = corrections.get(noteId);
      const facts = what.facts.map((fact, k) => (changed?.has(k) ? changed.get(k)! : fact));
      meetNote(ledger, job, entry, noteId, what.text, facts);
      break;
    }
    case 'setState':
      if (item) setState(board, item, entry, what.state, null);
      break;
    case 'editItem':
      if (item) {
        Object.assign(item, what.change);
        if (what.change.task) reword(board, item, what.change.task);
        item.history.push(event(entry, 'put right by hand', null));
      }
      break;
    case 'sameAs': {
      const other = board.byKey.get(what.as);
      if (item && other && item !== other) {
        leave(board, item);
        for (const word of item.words) other.words.add(word);
        enter(board, other);
        board.byNumber.set(item.number, other);
        other.history.push(...item.history, event(entry, `same as no. ${item.number}`, null));
        board.items = board.items.filter((i) => i !== item);
        board.byKey.set(item.key, other);
      }
      break;
    }
    case 'setOrder': {
      ledger.handOrder.set(what.line, { ...ledger.handOrder.get(what.line), ...what });
      const position = ledger.positions.find((p) => p.key === what.line);
      if (position) {
        position.history.push(event(entry, what.state ?? 'put right by hand', null));
      }
      break;
    }
    case 'split':
    case 'correctFact':
    case 'undo':
      break;
  }
}

function meetNote(
  ledger: Ledger,
  job: Pick<Job, 'areas' | 'builtYear'>,
  entry: Entry,
  noteId: string,
  text: string,
  facts: readonly (Fact | null)[],
): void {
  const day = dayOf(ledger, entry.at.slice(0, 10));
  day.notes++;
  const kept = facts.filter((fact): fact is Fact => fact !== null);
  ledger.notes.push({ noteId, saidAt: entry.at, text, facts: kept });
  const met: Standing[] = [];
  facts.forEach((fact, k) => {
    if (!fact) return;
    const key = `${noteId}/${k}`;
    for (const [j, area] of areasOf(fact, job.areas).entries()) {
      const own = { ...fact, area } as Fact;
      meetFact(ledger, entry, own, j === 0 ? key : `${key}.${j}`, noteId, met, day);
    }
  });
  const asked = kept.find((fact) => fact.ask);
  if (asked?.ask) ledger.questions.push({ noteId, ask: asked.ask, item: met.at(-1)?.number ?? null });
}

/** "Both rooms", "hall and BR3": work that is told once of two rooms is an item in each. */
function areasOf(fact: Fact, areas: readonly string[]): (string | null)[] {
  if (
    (fact.kind === 'followUp' || fact.kind === 'done') &&
    areas.length === 2 &&
    /\bboth (?:rooms|sides|areas|of them)\b/.test(fact.quote.toLowerCase())
  )
    return [...areas];
  if (fact.kind === 'followUp' || fact.kind === 'done') {
    const named = areas.filter((a) => fact.quote.toLowerCase().includes(a.toLowerCase()));
    if (named.length >= 2) return named;
  }
  return [fact.area];
}

function dayOf(ledger: Ledger, day: string): JobState['days'][number] {
  const known = ledger.days.get(day);
  if (known) return known;
  const made = { day, notes: 0, done: [], found: [], bought: [], spent: 0 };
  ledger.days.set(day, made);
  return made;
}

function meetFact(
  ledger: Ledger,
  entry: Entry,
  fact: Fact,
  key: string,
  noteId: string,
  met: Standing[],
  day: JobState['days'][number],
): void {
  const { board } = ledger;
  switch (fact.kind) {
    case 'problem': {
      const item = meetProblem(board, entry, fact, key);
      met.push(item);
      day.found.push(item.task);
      break;
    }
    case 'followUp':
      met.push(meetFollowUp(board, entry, fact, key, [...board.items.slice(-12), ...met]));
      break;
    case 'done': {
      const item = meetDone(board, entry, fact, key);
      day.done.push(item.task);
      break;
    }
    case 'material':
      meetMaterial(positionOf(ledger.positions, fact, key), fact, entry);
      if (fact.status === 'bought') day.bought.push(`${fact.quantity ?? ''} ${fact.item}`.trim());
      break;
    case 'measurement':
      measure(ledger.measurements, entry, fact, key, noteId);
      break;
    case 'decision':
      ledger.decisions.push({ what: fact.what, on: entry.at.slice(0, 10), noteId });
      if (fact.drops) drop(ledger, entry, fact.drops, fact.area, fact.quote);
      break;
    case 'spending':
      ledger.spending.push({
        amount: fact.amount,
        currency: fact.currency,
        on: entry.at.slice(0, 10),
        for: fact.on,
        noteId,
      });
      day.spent += fact.amount;
      break;
    case 'command':
      obey(ledger.board, entry, fact);
      break;
  }
}

function drop(ledger: Ledger, entry: Entry, what: string, area: string | null, quote: string): void {
  const words = keyWords(what);
  const item = findItem(ledger.board, words, area, true, 0.6);
  if (item) setState(ledger.board, item, entry, 'dropped', quote);
  for (const position of ledger.positions) {
    if (likeness(words, position.words) < 0.75) continue;
    position.dropped = true;
    position.history.push(event(entry, 'dropped', quote));
  }
}

/**
 * Puts a reckoned wait on the item of its next step. Where the notes named the step ("grout is next") and no item
 * stands for it, open or done, it opens one.
 */
function heldItem(ledger: Ledger, wait: ComputedWait, k: number): Item[] {
  // The step's own verb must be in it: a flaw of the same floor waits for nothing.
  const verb = stem(wait.task.split(' ')[0]!);
  const words = keyWords(wait.task);
  const named = (i: Standing) => likeness(words, i.words) >= 0.5 || i.history.some((h) => h.noteId === wait.namedIn);
  const same = ledger.board.items.filter((i) => i.words.has(verb) && sameArea(i.area, wait.area) && named(i));
  const item = same.findLast((i) => i.state === 'open' || i.state === 'waiting');
  if (item) {
    if (!item.readyOn || !item.waitingFor || wait.source.startsWith('label'))
      Object.assign(item, { readyOn: wait.readyOn, waitingFor: wait.waitingFor });
    return [];
  }
  if (same.length) return [];
  const note = ledger.notes.find((n) => n.noteId === wait.noteId);
  return [
    {
      key: `${wait.noteId}/wait${k}`,
      number: ledger.board.nextNumber + k,
      task: wait.task,
      problem: null,
      thing: null,
      area: wait.area,
      who: null,
      state: 'open',
      due: null,
      readyOn: wait.readyOn,
      waitingFor: wait.waitingFor,
      openedOn: note?.saidAt.slice(0, 10) ?? wait.readyOn,
      closedOn: null,
      doubtful: false,
      history: [],
    },
  ];
}

/** Everything said of an item: its task, its flaw, and the words of its history. */
function wordsOf(items: readonly Item[], number: number): string {
  const item = items.find((i) => i.number === number)!;
  return [item.task, item.problem, ...item.history.map((h) => h.words)].filter(Boolean).join('. ');
}

function stateOf(ledger: Ledger, job: Site, asOf: string): JobState {
  const computed = compute(ledger.notes, job);
  const today = asOf.slice(0, 10);
  const opened = computed.waits.flatMap((wait, k) => heldItem(ledger, wait, k));
  const items = ledger.board.items.map(({ words: _words, thingWords: _thing, ...item }): Item => {
    const waits = item.waitingFor !== null && item.readyOn !== null;
    if (item.state === 'open' && waits && item.readyOn! > today) return { ...item, state: 'waiting' };
    return item.state === 'waiting' && (!item.readyOn || item.readyOn <= today) ? { ...item, state: 'open' } : item;
  });
  items.push(...opened.map((item): Item => (item.readyOn! > today ? { ...item, state: 'waiting' } : item)));
  const { order, onHand } = settle(ledger.positions, computed.lines);
  const ofNote = new Map<string, number[]>();
  for (const item of items)
    for (const noteId of new Set(item.history.map((h) => h.noteId)))
      if (noteId) ofNote.set(noteId, [...(ofNote.get(noteId) ?? []), item.number]);
  const live = new Set(items.filter(isLive).map((i) => i.number));
  return {
    items,
    order: order.map((line) => {
      const { state = line.state, quantity = line.quantity, unit = line.unit } = ledger.handOrder.get(line.key) ?? {};
      return { ...line, state, quantity, unit };
    }),
    onHand: [...onHand, ...leftOvers(order, ledger.handOrder)],
    measurements: [...ledger.measurements.values()]
      .flat()
      .sort((x, y) => (x.on < y.on ? -1 : x.on > y.on ? 1 : x.key < y.key ? -1 : 1)),
    checks: computed.checks.map(({ noteId, area: _area, ...check }) => ({
      ...check,
      item: ofNote.get(noteId)?.[0] ?? null,
    })),
    cautions: computed.cautions.map(({ noteIds, ...caution }) => ({
      ...caution,
      items: [...new Set(noteIds.flatMap((id) => ofNote.get(id) ?? []))]
        .filter((n) => live.has(n) && concerns(caution.hazard, wordsOf(items, n)))
        .sort((x, y) => x - y),
    })),
    early: earlyPlans(items, computed.waits),
    decisions: ledger.decisions,
    spending: ledger.spending,
    days: [...ledger.days.values()],
    questions: [...computed.questions.map((q) => ({ ...q, item: null })), ...ledger.questions].reverse(),
    asOf,
  };
}
