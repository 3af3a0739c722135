import { keyWords } from '../../parser/trade/likeness.ts';
import type { Command, Fact } from '../../parser/types.ts';
import { type Board, findItem, type Standing } from './board.ts';
import { event, setState } from './items.ts';
import type { Entry } from './types.ts';

/** A sentence to the list: by number, by its words, or to the item last opened. */
export function obey(board: Board, entry: Entry, command: Command): void {
  const item = meant(board, command);
  if (!item) return;
  if (command.verb === 'done') setState(board, item, entry, 'done', command.quote);
  else if (command.verb === 'reopen') setState(board, item, entry, 'open', command.quote);
  else if (command.verb === 'drop') setState(board, item, entry, 'dropped', command.quote);
  else if (command.verb === 'move' && command.to) {
    item.area = command.to;
    item.history.push(event(entry, `moved to ${command.to}`, command.quote));
  } else if (command.verb === 'reschedule' && command.to && /^\d{4}-\d\d-\d\d$/.test(command.to)) {
    item.readyOn = command.to;
    item.history.push(event(entry, `moved to ${command.to}`, command.quote));
  }
}

/** A number that is not on the list means nothing; words that fit no item do not fall on another one. */
function meant(board: Board, { number, about, area }: Command): Standing | null {
  if (number !== null) return board.byNumber.get(number) ?? null;
  if (about && keyWords(about).size) return findItem(board, keyWords(about), area, false);
  return board.items.at(-1) ?? null;
}

/** "Undo that", said to the list as a whole. */
export const takesBack = (facts: readonly Fact[]) =>
  facts.some((fact) => fact.kind === 'command' && fact.verb === 'undo' && fact.number === null);
