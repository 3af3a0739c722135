import { wordsOf } from '../../../parser/trade/likeness.ts';
import type { Command, Fact } from '../../../parser/types.ts';
import { event } from '../event.ts';
import type { Ruling } from '../rulings.ts';
import type { Entry } from '../types.ts';
import { type Board, enter, leave, type Standing, underNumber } from './board.ts';
import { setState } from './items.ts';
import { find } from './match.ts';

/** A sentence to the list: by number, by its words, or to the item last opened. Answers a ruling where one is called for. */
export function obey(board: Board, entry: Entry, command: Command): Ruling | null {
  const item = meant(board, command);
  if (command.verb === 'split') return splitOff(command.number === null ? board.joined : item);
  if (command.verb === 'undo') return command.number === null ? null : takeOff(item);
  if (!item) return null;
  if (command.verb === 'done') setState(board, item, entry, 'done', command.quote);
  else if (command.verb === 'reopen') setState(board, item, entry, 'open', command.quote);
  else if (command.verb === 'drop') setState(board, item, entry, 'dropped', command.quote);
  else if (command.verb === 'same') {
    const other = command.to === null ? null : underNumber(board, Number(command.to));
    if (other) joinItems(board, entry, item, other, command.quote);
  } else if (command.verb === 'move' && command.to) {
    item.area = command.to;
    item.unsure = false;
    item.history.push(event(entry, `moved to ${command.to}`, command.quote));
  } else if (command.verb === 'reschedule' && command.to) {
    item.unsure = false;
    const day = /^\d{4}-\d\d-\d\d$/.test(command.to);
    if (day) item.readyOn = command.to;
    else item.who = command.to;
    item.history.push(event(entry, `moved to ${command.to}`, command.quote));
  }
  return null;
}

/** The fact that joined an item last stands on its own from now on. */
export const splitOff = (item: Standing | null): Ruling | null =>
  item && item.met.length > 1 ? { kind: 'apart', key: item.met.at(-1)! } : null;

/** What was done to an item last is taken back. */
const takeOff = (item: Standing | null): Ruling | null =>
  item?.met.length ? { kind: 'out', key: item.met.at(-1)! } : null;

/** Two items are one: the second keeps its number, the first is found under it. */
export function joinItems(board: Board, entry: Entry, item: Standing, other: Standing, quote: string | null): void {
  if (item === other) return;
  // The lower number is the older: it is the one that people know.
  const [gone, kept] = item.number < other.number && quote !== null ? [other, item] : [item, other];
  leave(board, gone);
  leave(board, kept);
  kept.words = new Set([...kept.words, ...gone.words]);
  kept.told = new Set([...kept.told, ...gone.told]);
  enter(board, kept);
  kept.unsure = false;
  kept.problem ??= gone.problem;
  kept.readyOn ??= gone.readyOn;
  kept.due ??= gone.due;
  kept.who ??= gone.who;
  kept.left ??= gone.left;
  board.byNumber[gone.number] = kept;
  board.byKey.set(gone.key, kept);
  kept.met.push(...gone.met);
  kept.history.push(...gone.history, event(entry, `same as no. ${gone.number}`, quote));
  board.items.splice(board.items.indexOf(gone), 1);
  if (board.joined === gone) board.joined = kept;
}

/** A number that is not on the list means nothing; words that fit no item do not fall on another one. */
function meant(board: Board, { number, about, area, quote }: Command): Standing | null {
  if (number !== null) return underNumber(board, number);
  if (about && wordsOf(about).size)
    return (
      find(board, { words: wordsOf(about), area, quote }, { where: ['live', 'closed'], sure: 0.6, anyOf: false })
        ?.item ?? null
    );
  return board.items.at(-1) ?? null;
}

/** "Undo that", said to the list as a whole. */
export function takesBack(facts: readonly Fact[]): boolean {
  for (const fact of facts) if (fact.kind === 'command' && fact.verb === 'undo' && fact.number === null) return true;
  return false;
}

/** Said to the list about an earlier fact: it may begin the fold again. */
export const rulesOnFacts = (facts: readonly Fact[]) =>
  facts.some((fact) => fact.kind === 'command' && (fact.verb === 'split' || fact.verb === 'undo'));
