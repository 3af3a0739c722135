import { sameArea } from '../../../../parser/trade/likeness.ts';
import { dot, hundredths } from '../../../../parser/weights.ts';
import { isLive } from '../../live.ts';
import { isWeighed } from '../../said/noItem.ts';
import { stems, verbOf } from '../../said/verbs.ts';
import { isWork, type Standing } from '../board.ts';
import { numbersClash, placesClash } from '../match.ts';
import type { Setting } from '../setting.ts';
import { type Naming, namingOf, signsOfItem, signsOfNew, signsOfNone, type Told } from './signs.ts';
import { LINKS } from './table.ts';

/** What a fact is told of: an item that stands, a new one, or none. */
export interface Link {
  item: Standing | null;
  /** False for what is no item of any list: seen, explained, somebody else's. */
  kept: boolean;
  /** An item that it may be as well: asked about. */
  perhaps: Standing | null;
}

/** The item that the rules take a fact for, if any, or else one that comes near. */
export type ByRules = Pick<Link, 'item' | 'perhaps'>;

export const sureOf = (item: Standing): ByRules => ({ item, perhaps: null });

/** Says what a fact is told of. */
export type Linker = (setting: Setting, fact: Told, ruled: ByRules) => Link;

export interface Option {
  is: Standing | 'new' | 'none';
  signs: readonly string[];
}

/** So many items are weighed; a word that more than `COMMON` of them share tells nothing. */
const MOST = 12;
const COMMON = 30;

/** Items that a fact may be told of: just met, or with a word in common; never of another room, place or number. */
function itemsNear({ board, met, entry }: Setting, naming: Naming): Set<Standing> {
  const { words, points } = naming;
  const near = new Set<Standing>();
  const add = (item: Standing) => {
    if (near.size < MOST && mayBe(naming, item)) near.add(item);
  };
  for (const item of met.slice(-4).reverse()) add(item);
  if (points && !met.length) for (const item of board.items.slice(-3)) if (item.history[0]!.at < entry.at) add(item);
  for (const shelf of [board.live, board.closed])
    for (const word of words) {
      const filed = isWork(word) ? undefined : shelf.get(word);
      if (filed && filed.size <= COMMON) for (const item of filed) add(item);
    }
  return near;
}

const LOOKS = stems('measure look check mark price order buy walk call text ask email photograph');

function mayBe({ fact, sort, words, verb }: Naming, item: Standing): boolean {
  if (!sameArea(fact.area, item.area) || numbersClash(words, item.words)) return false;
  // Measuring it ends nothing.
  if (sort === 'done' && LOOKS.has(verb) && verb !== verbOf(item.task)) return false;
  return !placesClash({ words, area: fact.area, quote: fact.quote }, item);
}

/** Everything that a fact may be told of, with what speaks for each. */
export function optionsOf(setting: Setting, naming: Naming): Option[] {
  const out: Option[] = [{ is: 'new', signs: signsOfNew(naming) }];
  // Only what weights read may be left out: what a rule read was said plainly, and finished work has its line in the day's log.
  if ((naming.sort === 'plan' || naming.sort === 'flaw') && isWeighed(naming.fact))
    out.push({ is: 'none', signs: signsOfNone(naming, setting) });
  for (const item of itemsNear(setting, naming)) out.push({ is: item, signs: signsOfItem(setting, naming, item) });
  return out;
}

const weights = hundredths(LINKS);

/**
 * A wrong join loses work, and so does a wrong leaving out: either must be this much likelier than a new item, as a log
 * of odds. Found by trying on annotated jobs.
 */
const CARE = { join: 1.5, none: 0.5 };
/** Nearer than this to a new item, an item is asked about; two nearer than `MARGIN` cannot be told apart. */
const CLOSE = 1;
const MARGIN = 0.3;

/**
 * What a rule read was said plainly, and what the rules take a fact for stands. Of what weights read, where the rules find
 * no item, weights learned from annotated jobs decide.
 */
export const link: Linker = (setting, fact, ruled) => {
  if (ruled.item || !isWeighed(fact))
    return { item: ruled.item, kept: true, perhaps: ruled.item ? null : ruled.perhaps };
  let best: Standing | null = null;
  let join = Number.NEGATIVE_INFINITY;
  let second = Number.NEGATIVE_INFINITY;
  let open = 0;
  let none = Number.NEGATIVE_INFINITY;
  for (const { is, signs } of optionsOf(setting, namingOf(fact))) {
    const weight = dot(weights(), signs);
    if (is === 'new') open = weight;
    else if (is === 'none') none = weight - CARE.none;
    else if (weight - CARE.join > join) [best, second, join] = [is, join, weight - CARE.join];
    else second = Math.max(second, weight - CARE.join);
  }
  if (none > open && none > join) return { item: null, kept: false, perhaps: null };
  if (best && join > open && join - second >= MARGIN) return { item: best, kept: true, perhaps: null };
  return { item: null, kept: true, perhaps: best && isLive(best) && join > open - CLOSE ? best : null };
};
