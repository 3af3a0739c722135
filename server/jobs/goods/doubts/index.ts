import { dot, hundredths } from '../../../../parser/weights.ts';
import type { Position } from '../position.ts';
import { type Notes, signsOfLine } from './signs.ts';
import { ORDER_DOUBTS } from './table.ts';

/** Says which goods of the order are likelier got by now, or were never to be bought. */
export type OrderDoubts = (position: Position, notes: Notes) => boolean;

/** Under this log of odds a line is kept apart until somebody says that it is still to buy: found by trying on annotated jobs. */
export const DOUBTED = -1;

const weights = hundredths(ORDER_DOUBTS);

/** Goods asked for within so many days are still to buy unless somebody tells otherwise. */
const FRESH = 3;
const DAY = 86_400_000;

/**
 * Whether goods are likelier got by now than still to buy: asked for days ago and not told of since, told in passing,
 * misread. Weighed by a table learned from annotated jobs (`tests/learn/orderDoubts.ts`).
 */
export const isDoubtedLine: OrderDoubts = (position, notes) =>
  position.wanted !== null &&
  daysBetween(position.wanted.at, notes.at(-1)?.saidAt ?? position.wanted.at) > FRESH &&
  dot(weights(), signsOfLine(position, notes)) < DOUBTED;

const daysBetween = (from: string, until: string) =>
  (Date.parse(until.slice(0, 10)) - Date.parse(from.slice(0, 10))) / DAY;
