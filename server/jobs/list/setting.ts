import type { Entry } from '../types.ts';
import type { Board, Standing } from './board.ts';

/** Where a fact is told: the list as it stands, the entry and its key there, what the note has met, the words around. */
export interface Setting {
  board: Board;
  entry: Entry;
  /** `noteId/index`. */
  key: string;
  /** Items that the same note has met so far. */
  met: readonly Standing[];
  /** The words of its sentence up to it, from the last fact on. */
  lead: string;
  /** What its note says right behind it. */
  tail: string;
}
