import type { NoteFacts } from '../takeoff/types.ts';
import type { HandSet } from './goods/byHand.ts';
import { copyGoods, type Goods, newGoods } from './goods/position.ts';
import { type Board, copyBoard, newBoard, type Standing } from './list/board.ts';
import type { Measurements } from './measurements.ts';
import type { JobState } from './types.ts';

/** Everything that stands while a history is being folded. */
export interface Ledger {
  board: Board;
  goods: Goods;
  measurements: Measurements;
  /** What a hand set on an order line, said or reckoned, by the line's key. */
  handOrder: Map<string, HandSet>;
  notes: NoteFacts[];
  decisions: JobState['decisions'];
  spending: JobState['spending'];
  days: Map<string, JobState['days'][number]>;
  questions: Question[];
}

/** Stands while the item that it is about is open. */
export interface Question {
  noteId: string;
  ask: string;
  item: Standing | null;
  /** Left out of the list once its item is closed or was joined to another. */
  whileOpen: boolean;
}

export const newLedger = (): Ledger => ({
  board: newBoard(),
  goods: newGoods(),
  measurements: new Map(),
  handOrder: new Map(),
  notes: [],
  decisions: [],
  spending: [],
  days: new Map(),
  questions: [],
});

/** The same ledger again, so that folding on leaves the first one as it was. */
export function copyLedger(ledger: Ledger): Ledger {
  const { copy: board, twinOf } = copyBoard(ledger.board);
  return {
    board,
    goods: copyGoods(ledger.goods),
    measurements: new Map([...ledger.measurements].map(([file, kept]) => [file, [...kept]])),
    handOrder: new Map(ledger.handOrder),
    notes: [...ledger.notes],
    decisions: [...ledger.decisions],
    spending: [...ledger.spending],
    days: new Map(
      [...ledger.days].map(([day, of]) => [
        day,
        { ...of, done: [...of.done], found: [...of.found], bought: [...of.bought] },
      ]),
    ),
    questions: ledger.questions.map((q) => ({ ...q, item: q.item && twinOf(q.item) })),
  };
}

/** The day's line, made where the day is new. */
export function dayOf(ledger: Ledger, day: string): JobState['days'][number] {
  const known = ledger.days.get(day);
  if (known) return known;
  const made = { day, notes: 0, done: [], found: [], bought: [], spent: 0 };
  ledger.days.set(day, made);
  return made;
}
