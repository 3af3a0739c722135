import { dot, onDemand, rowsOf, type Weights } from '../../../parser/facts/weights.ts';
import { isLive, type Standing, sharing } from '../board.ts';
import type { Telling } from '../items.ts';
import { type Naming, namingOf, signsOfEnd, signsOfItem, signsOfNew, signsOfNone, type Told } from './signs.ts';
import { LINKS } from './table.ts';

/** What a fact is told of: an item that stands, a new one, or none. */
export interface Link {
  item: Standing | null;
  /** False for what is no item of any list. */
  kept: boolean;
  /** The fact finishes the work. */
  ends: boolean;
  /** An item that it may be as well. */
  perhaps: Standing | null;
}

export interface Option {
  is: Standing | 'new' | 'none';
  signs: readonly string[];
}

/** Everything that a fact may be told of. */
export function optionsOf(telling: Telling, naming: Naming, ruled: Standing | null): Option[] {
  const { board, met } = telling;
  const near = new Set<Standing>(met.slice(-4));
  if (ruled) near.add(ruled);
  let k = 0;
  for (const item of sharing(board, naming.said, 'live')) if (k++ < MOST) near.add(item);
  for (const item of sharing(board, naming.words, 'closed')) if (k++ < MOST) near.add(item);
  if (naming.points) for (const item of board.items.slice(-3)) near.add(item);
  const out: Option[] = [{ is: 'new', signs: signsOfNew(naming, ruled) }];
  if (naming.sort !== 'done' && naming.sort !== 'fixed') out.push({ is: 'none', signs: signsOfNone(naming, telling) });
  for (const item of near) out.push({ is: item, signs: signsOfItem(telling, naming, item, ruled) });
  return out;
}
const MOST = 24;

export type Linker = (telling: Telling, fact: Told, ruled: Standing | null) => Link;

let weights: Weights | undefined;
const shipped = () => {
  weights ??= onDemand(rowsOf(LINKS), ([cell]) => Number(cell) / 100);
  return weights;
};

/** A wrong join loses work, and so does a wrong leaving out: either must be this much likelier than a new item, as a log of odds. */
const CARE = { get join() { return +(process.env.CJ ?? 0); }, get none() { return +(process.env.CN ?? 0); } };
/** Nearer than this to the choice, an item is asked about. */
const CLOSE = 1;

export const link: Linker = (telling, fact, ruled) => {
  const table = shipped();
  const naming = namingOf(fact);
  let best: Option | null = null;
  let most = Number.NEGATIVE_INFINITY;
  let next: Standing | null = null;
  let second = Number.NEGATIVE_INFINITY;
  for (const option of optionsOf(telling, naming, ruled)) {
    const weight = dot(table, option.signs, option.is === 'new' ? 0 : option.is === 'none' ? -CARE.none : -CARE.join);
    if (weight > most) {
      if (best && typeof best.is === 'object') [next, second] = [best.is, most];
      [best, most] = [option, weight];
    } else if (typeof option.is === 'object' && weight > second) [next, second] = [option.is, weight];
  }
  const is = best?.is ?? 'new';
  const item = typeof is === 'object' ? is : null;
  return {
    item,
    kept: is !== 'none',
    ends: dot(table, signsOfEnd(naming, item, telling.tail)) > (naming.sort === 'plan' || naming.sort === 'flaw' ? +(process.env.CE ?? 0) : +(process.env.CD ?? 0)),
    perhaps: is === 'new' && next && isLive(next) && most - second < CLOSE ? next : null,
  };
};
