import { shownOf } from '../../parser/shown.ts';
import { likeness, sameArea, wordsOf } from '../../parser/trade/likeness.ts';
import { compute } from '../takeoff/index.ts';
import type { ComputedWait } from '../takeoff/types.ts';
import { earlyPlans } from './early.ts';
import { asSet } from './goods/byHand.ts';
import { isDoubtedLine } from './goods/doubts/index.ts';
import { leftOvers } from './goods/leftOvers.ts';
import { settle } from './goods/order.ts';
import type { Ledger } from './ledger.ts';
import type { Standing } from './list/board.ts';
import { isAbout } from './list/hazardous.ts';
import { isLive } from './live.ts';
import { measuredIn } from './measurements.ts';
import type { Site } from './meeting.ts';
import { verbOf } from './said/verbs.ts';
import type { Item, JobState } from './types.ts';

/** What a ledger shows at a moment: the list, the order, the measurements, and what the trade reckons from the notes. */
export function stateOf(ledger: Ledger, job: Site, asOf: string): JobState {
  const computed = compute(ledger.notes, job);
  const today = asOf.slice(0, 10);
  const held = new Map<string, Pick<Item, 'readyOn' | 'waitingFor'>>();
  const opened = computed.waits.flatMap((wait, k) => heldItem(ledger, wait, k, held));
  const items = ledger.board.items.map(
    ({ words: _words, told: _told, head: _head, met: _met, made: _made, left, unsure, wording, ...item }): Item => {
      const live = isLive(item);
      item.history = [...item.history];
      const waits = held.get(item.key);
      if (waits) Object.assign(item, waits);
      item.task = shownOf({ ...item, wording });
      if (left !== null && live) item.task += `, ${left}`;
      // What a wait holds was meant.
      if (unsure && live && !waits) return { ...item, state: 'unsure' };
      const ahead = item.readyOn !== null && item.readyOn > today;
      if (item.state === 'open' && item.waitingFor !== null && ahead) item.state = 'waiting';
      else if (item.state === 'waiting' && !ahead) item.state = 'open';
      return item;
    },
  );
  items.push(...opened.map((item): Item => (item.readyOn! > today ? { ...item, state: 'waiting' } : item)));
  const { order, onHand, questions } = settle(
    ledger.goods.all,
    computed,
    ledger.board,
    (position) => (job.orderDoubts ?? isDoubtedLine)(position, ledger.notes),
    ledger.notes,
  );
  const { checks, cautions } = computed;
  const ofNote = itemsOf(items, new Set([...checks.map((c) => c.noteId), ...cautions.flatMap((c) => c.noteIds)]));
  return {
    items,
    order: order.map((line) => ({ ...asSet(line, ledger.handOrder.get(line.key)), history: [...line.history] })),
    onHand: [...onHand, ...leftOvers(order, ledger.handOrder)],
    measurements: measuredIn(ledger.measurements),
    checks: checks.map(({ noteId, area: _area, ...check }) => ({
      ...check,
      item: ofNote.get(noteId)?.[0]?.number ?? null,
    })),
    cautions: cautions.map(({ noteIds, ...caution }) => ({
      ...caution,
      items: [...new Set(noteIds.flatMap((id) => ofNote.get(id) ?? []))]
        .filter((item) => isLive(item) && isAbout(item, caution.hazard))
        .map((item) => item.number)
        .sort((x, y) => x - y),
    })),
    early: earlyPlans(items, computed.waits),
    decisions: [...ledger.decisions],
    spending: [...ledger.spending],
    days: [...ledger.days.values()].map((d) => ({
      ...d,
      done: [...d.done],
      found: [...d.found],
      bought: [...d.bought],
    })),
    questions: questionsOf(ledger, [...computed.questions, ...questions]),
    asOf,
  };
}

/** Items in whose history each of these notes stands. */
function itemsOf(items: readonly Item[], notes: ReadonlySet<string>): Map<string, Item[]> {
  const out = new Map<string, Item[]>();
  if (notes.size === 0) return out;
  for (const item of items)
    for (const { noteId } of item.history) {
      if (noteId === null || !notes.has(noteId)) continue;
      const known = out.get(noteId) ?? [];
      if (known.at(-1) !== item) known.push(item);
      out.set(noteId, known);
    }
  return out;
}

/** Newest first, one a note; what was settled since is asked no more. */
function questionsOf(ledger: Ledger, reckoned: readonly { noteId: string; ask: string }[]): JobState['questions'] {
  const out = new Map<string, JobState['questions'][number]>();
  for (const { noteId, ask, item, whileOpen } of ledger.questions) {
    const settled = whileOpen && item && (!isLive(item) || ledger.board.byKey.get(item.key) !== item);
    if (!settled && !out.has(noteId)) out.set(noteId, { noteId, ask, item: item?.number ?? null });
  }
  for (const { noteId, ask } of reckoned) if (!out.has(noteId)) out.set(noteId, { noteId, ask, item: null });
  if (out.size < 2) return [...out.values()];
  const at = new Map<string, number>();
  for (const [k, { noteId }] of ledger.notes.entries()) if (out.has(noteId)) at.set(noteId, k);
  return [...out.values()].sort((a, b) => (at.get(b.noteId) ?? 0) - (at.get(a.noteId) ?? 0));
}

/**
 * Puts a reckoned wait on the item of its next step. Where the notes named the step ("grout is next") and no item
 * stands for it, open or done, it opens one.
 */
function heldItem(
  ledger: Ledger,
  wait: ComputedWait,
  k: number,
  held: Map<string, Pick<Item, 'readyOn' | 'waitingFor'>>,
): Item[] {
  // The step's own verb must be in it: a flaw of the same floor waits for nothing.
  const verb = verbOf(wait.task);
  const words = wordsOf(wait.task);
  // "Install" and its like are left out of what items are known by.
  const tells = (i: Standing) => i.words.has(verb) || !words.has(verb);
  const named = (i: Standing) =>
    likeness(words, i.words) >= 0.5 || (words.has(verb) && i.history.some((h) => h.noteId === wait.namedIn));
  const same = ledger.board.items.filter((i) => tells(i) && sameArea(i.area, wait.area) && named(i));
  const item = same.findLast((i) => isLive(i) && i.problem === null) ?? same.findLast(isLive);
  if (item) {
    if (!item.readyOn || !item.waitingFor || wait.source.startsWith('label'))
      held.set(item.key, { readyOn: wait.readyOn, waitingFor: wait.waitingFor });
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
