import type Fraction from 'fraction.js';
import { figureAt, type Said, saying } from '../reading/said.ts';
import type { Row } from './line.ts';

const MADE = saying('\\bmake (?:that|it|them) <N> (?:shelves|walls|runs|rows|sides|sections)\\b');

/** "Make that four shelves, same length": as many runs as are now told, where all are alike. */
export function madeMore(row: Row, said: Said): boolean {
  const m = MADE.exec(said.words);
  const count = m ? figureAt(said, m[1]).value : null;
  const [run, ...others] = row.runs;
  if (!run || count?.d !== 1n || count.compare(20) > 0 || !others.every((r) => r.equals(run))) return false;
  row.runs = Array<Fraction>(count.valueOf()).fill(run);
  row.noteIds.push(said.noteId);
  return true;
}
