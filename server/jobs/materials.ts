import Fraction from 'fraction.js';
import { unitWord } from '../../parser/quantities/containers.ts';
import { likeness, stem, wordsOf } from '../../parser/trade/likeness.ts';
import type { Material } from '../../parser/types.ts';
import { event } from './items.ts';
import { countByPiece, type PacksGot, takePacks } from './packsGot.ts';
import type { Entry, Event } from './types.ts';

/** Everything said of one kind of goods, in its own purchase unit. */
export interface Position {
  key: string;
  item: string;
  size: string | null;
  specs: string[];
  /** What they are for, so far as that was told: `exit sign`. */
  uses: string[];
  unit: string | null;
  counter: string;
  words: Set<string>;
  /** For the whole job, so far as anybody said; null where nobody said how many. */
  need: Fraction | null;
  /** Said of one area: two areas' needs add up, the same area's does not. */
  areaNeeds: Map<string, Fraction>;
  bought: Fraction;
  /** On order with a supplier: neither to buy nor on hand. */
  ordered: Fraction;
  used: Fraction;
  returned: Fraction;
  /** On hand before anything was bought for the job. */
  have: Fraction;
  /** Packs at hand where the goods are wanted by the piece; null where there are none. */
  packs: PacksGot | null;
  /** Needed, but nobody said how many. */
  needUncounted: boolean;
  /** Bought, ordered or used without a count, or by another unit: the need is met. */
  met: boolean;
  dropped: boolean;
  /** How they were told as wanted last; null where they never were. */
  wanted: Wanted | null;
  reasons: string[];
  history: Event[];
}

/** One telling of goods as wanted. */
export type Wanted = Pick<Material, 'quote' | 'rule' | 'confidence'> & Pick<Entry, 'at'>;

/** All goods of a job, found by their words. */
export interface Goods {
  all: Position[];
  byWord: Map<string, Set<Position>>;
}

export const newGoods = (): Goods => ({ all: [], byWord: new Map() });

/** The same goods again, so that folding on leaves the first ones as they were. Fractions never change. */
export function copyGoods(goods: Goods): Goods {
  const twin = new Map(
    goods.all.map((p) => [
      p,
      {
        ...p,
        specs: [...p.specs],
        uses: [...p.uses],
        words: new Set(p.words),
        areaNeeds: new Map(p.areaNeeds),
        reasons: [...p.reasons],
        history: [...p.history],
      },
    ]),
  );
  const byWord = new Map([...goods.byWord].map(([word, ps]) => [word, new Set([...ps].map((p) => twin.get(p)!))]));
  return { all: [...twin.values()], byWord };
}

const ZERO = new Fraction(0);
const most = (a: Fraction, b: Fraction) => (a.compare(b) > 0 ? a : b);
const positive = (f: Fraction) => most(f, ZERO);

type Named = Pick<Material, 'item' | 'size' | 'specs' | 'unit' | 'status'> & Partial<Pick<Material, 'quote'>>;

/** Pieces are counted; a bag, a gallon or a foot is another measure of the same goods. */
const PIECES = new Set(['each', 'piece', 'length', 'stick', 'board', 'pair', 'set', 'kit']);
const sameUnit = (a: string | null, b: string | null) =>
  a === null || b === null || a === b || (PIECES.has(a) && PIECES.has(b));

/** The goods that are meant, by words and size; null where none stand. Two sizes said are two kinds of goods. */
export function findGoods(goods: Goods, fact: Named): Position | null {
  const words = wordsOf(fact.item);
  const known = bestOf(goods, words, fact);
  // "Used one tube", said after shingles: what comes by the tube is meant.
  const byName = fact.quote?.toLowerCase().includes(fact.item.toLowerCase());
  if (
    fact.status !== 'need' &&
    !byName &&
    known &&
    fact.unit &&
    !PIECES.has(fact.unit) &&
    !sameUnit(known.unit, fact.unit)
  ) {
    const pack = stem(fact.unit);
    const packed =
      goods.all.findLast((p) => p.words.has(pack) && openNeed(p)) ??
      goods.all.findLast((p) => p.unit === fact.unit && !p.dropped);
    if (packed) return packed;
  }
  return known;
}

/**
 * The goods that share a word and are worth most; of two alike the one filed last.
 *
 * @param least what they are worth at least
 * @param worth null where they cannot be meant
 */
export function likeliest(
  goods: Goods,
  words: ReadonlySet<string>,
  least: number,
  worth: (p: Position) => number | null,
): Position | null {
  const named = new Set<Position>();
  for (const word of words) for (const p of goods.byWord.get(word) ?? []) named.add(p);
  let best: Position | null = null;
  let most = least;
  for (const p of named) {
    const own = worth(p);
    if (own === null || own < most) continue;
    best = p;
    most = own;
  }
  return best;
}

const bestOf = (goods: Goods, words: ReadonlySet<string>, fact: Named): Position | null =>
  likeliest(goods, words, 0.75, (p) => {
    if (p.size && fact.size && sizeKey(p.size) !== sizeKey(fact.size)) return null;
    const same = likeness(words, p.words);
    if (same < 0.75) return null;
    return (
      same +
      (p.size && fact.size ? 0.1 : 0) +
      (p.words.size === words.size ? 0.05 : 0) +
      (fact.status !== 'need' && openNeed(p) ? 0.04 : 0)
    );
  });

/** Finds the goods' position or makes one. */
export function positionOf(goods: Goods, fact: Named, key: string): Position {
  const best = findGoods(goods, fact);
  if (best) {
    best.size ??= fact.size;
    best.unit ??= fact.unit;
    for (const spec of fact.specs) if (fact.status === 'need' && !best.specs.includes(spec)) best.specs.push(spec);
    if (best.unit === 'each' && fact.unit && fact.unit !== 'each' && best.need === null) best.unit = fact.unit;
    return best;
  }
  const made: Position = {
    key,
    item: fact.item,
    size: fact.size,
    specs: [...fact.specs],
    uses: [],
    unit: fact.unit,
    counter: 'general',
    words: new Set(wordsOf(fact.item)),
    need: null,
    areaNeeds: new Map(),
    bought: ZERO,
    ordered: ZERO,
    used: ZERO,
    returned: ZERO,
    have: ZERO,
    packs: null,
    needUncounted: false,
    met: false,
    dropped: false,
    wanted: null,
    reasons: [],
    history: [],
  };
  goods.all.push(made);
  for (const word of made.words) {
    const filed = goods.byWord.get(word) ?? new Set();
    goods.byWord.set(word, filed.add(made));
  }
  return made;
}

export const sizeKey = (size: string) =>
  size
    .toLowerCase()
    .replace(/["”″]|\bin\b\.?|\s+/g, '')
    .replace(/×/g, 'x');

/** Bought or had, less what went back: that much of the need is met. */
const covered = (p: Position) => positive(p.bought.add(p.have).sub(p.returned));

/** What is left in the van: had or bought, less what was used or went back. */
export const onHandOf = (p: Position): Fraction => positive(p.have.add(p.bought).sub(p.used).sub(p.returned));

/** What has still to be bought of said needs, in whole purchase units; null where nobody said how many. */
export function toBuy(p: Position): Fraction | null {
  if (p.need === null) return null;
  if (p.met) return ZERO;
  return positive(p.need.sub(covered(p)).sub(p.ordered)).ceil();
}

/** Goods wanted and not yet bought, had or on order. */
export function openNeed(p: Position): boolean {
  if (p.dropped || p.met) return false;
  const left = toBuy(p);
  return left === null ? p.needUncounted && !covered(p).compare(0) && !p.ordered.compare(0) : left.compare(0) > 0;
}

const shown = (amount: Fraction, unit: string | null) =>
  `${amount.toFraction(true)}${unit && unit !== 'each' ? ` ${unitWord(unit, amount.compare(1) > 0)}` : ''}`;

/**
 * One statement about goods meets what stands: a need said twice is one need, "one more" adds, "make it three" replaces.
 *
 * @param lead the words of the sentence before the goods, lower case
 */
export function meetMaterial(position: Position, fact: Material, entry: Entry, lead: string): void {
  const amount = fact.exact ? new Fraction(fact.exact) : fact.quantity !== null ? new Fraction(fact.quantity) : null;
  const day = entry.at.slice(0, 10);
  const status = fetched(position, fact, lead) ? 'bought' : fact.status;
  const still = /\b(?:still|short)\b/.test(lead);
  position.history.push(event(entry, status, fact.quote));
  const because = (text: string) => position.reasons.push(`${text} ${day}`);
  if (status === 'mentioned') return;
  const noteId = entry.source?.noteId ?? entry.id;
  countByPiece(position, fact, onHandOf(position), noteId);
  if (takePacks(position, { ...fact, status }, amount, noteId)) {
    because(`${shown(amount!, fact.unit)} ${status === 'have' ? 'on hand' : status}`);
    return;
  }
  if (status === 'need') {
    position.wanted = { at: entry.at, quote: fact.quote, rule: fact.rule, confidence: fact.confidence };
    if (position.dropped) Object.assign(position, { dropped: false, need: null, areaNeeds: new Map() });
    if (amount) {
      const before = position.need;
      position.need = needAfter(position, amount, fact, still);
      position.met = false;
      because(needWords(before, position.need, amount, fact));
    } else {
      position.needUncounted = true;
      because(position.need === null ? 'needed, no count said' : 'said again');
    }
    return;
  }
  // A foot of what comes by the roll, a sheet of what was counted in feet: how much of it is not known.
  const known = amount !== null && sameUnit(position.unit, fact.unit);
  const rest = toBuy(position);
  const count = known ? amount : rest !== null && rest.compare(0) > 0 && amount === null ? rest : new Fraction(1);
  switch (status) {
    case 'bought':
      if (known || position.need !== null) {
        position.bought = position.bought.add(known || amount === null ? count : (rest ?? count));
        position.ordered = position.need
          ? most(ZERO, least(position.ordered, position.need.sub(covered(position))))
          : ZERO;
      } else position.met = true;
      because(`${amount ? shown(amount, fact.unit) : count.toFraction(true)} bought`);
      break;
    case 'ordered':
      position.ordered = position.ordered.add(known ? amount : (rest ?? count));
      if (position.need === null) position.met = true;
      because(`${known ? `${shown(amount, fact.unit)} ` : ''}ordered`);
      break;
    case 'used':
      if (!known && amount !== null) break;
      position.used = position.used.add(known ? amount : most(onHandOf(position), new Fraction(1)));
      // What was used was there.
      position.have = most(position.have, position.used.add(position.returned).sub(position.bought));
      because(`${known ? shown(amount, fact.unit) : 'all'} used`);
      break;
    case 'returned':
      position.returned = position.returned.add(count);
      because(`${shown(count, fact.unit)} taken back`);
      break;
    case 'have':
      // What is said to be on hand is counted, whatever was bought and used before.
      if (known) recount(position, amount);
      else if (position.need !== null) position.met = true;
      because(`${amount ? shown(amount, fact.unit) : 'some'} on hand`);
      break;
  }
}

/** One statement of a need, told so that whoever adds the statements up comes to what is needed. */
function needWords(before: Fraction | null, after: Fraction, amount: Fraction, { unit, counts }: Material): string {
  const said = shown(amount, unit);
  if (before === null || after.equals(before.add(amount)))
    return `${said}${before || counts === 'more' ? ' more' : ''} needed, said`;
  if (after.equals(before)) return `${amount.equals(before) ? '' : `${said} of them `}said again`;
  if (after.equals(amount)) return `${shown(before, null)} made ${said}`;
  return `${said} needed, said: ${shown(after, unit)} in all`;
}

/** So much is there: what is missing of what was had or bought is used up, what is more was there before. */
function recount(position: Position, amount: Fraction): void {
  const short = onHandOf(position).sub(amount);
  if (short.compare(0) > 0) position.used = position.used.add(short);
  else position.have = position.have.sub(short);
}

const least = (a: Fraction, b: Fraction) => (a.compare(b) < 0 ? a : b);

/** "Got the two hoses" tells of buying where hoses were wanted; "got a board at the shop" tells of stock. */
const fetched = (position: Position, fact: Material, lead: string) =>
  fact.status === 'have' &&
  openNeed(position) &&
  /(?:^|[^'e] )got\b/.test(lead) &&
  !/\b(?:left|still|half|extra|spare|on hand|back at|at the shop|in the (?:van|truck)|on the truck)\b/.test(
    lead + fact.quote,
  );

/** What is needed in all, now that this was said. */
function needAfter(p: Position, amount: Fraction, fact: Material, still: boolean): Fraction {
  const before = p.need;
  const fresh = fact.area !== null && !p.areaNeeds.has(fact.area);
  const inArea = fresh && p.areaNeeds.size > 0;
  if (fact.counts === 'total') p.areaNeeds.clear();
  else if (fact.area) p.areaNeeds.set(fact.area, amount);
  if (fact.counts === 'total') return amount;
  const have = covered(p);
  // "One more goes by the bar, that's the one we're short": the rest of what was wanted, told again.
  if (still && before?.sub(have).sub(p.ordered).compare(amount) === 0) return before;
  if (fact.counts === 'more') return (before ?? have).add(amount);
  if (before === null) return p.used.compare(0) > 0 ? have.add(amount) : amount;
  const left = before.sub(have).sub(p.ordered);
  if (amount.compare(left) === 0 || (still && left.compare(0) > 0)) return before;
  // Another room's need comes on top; a room's share of what was said for all of them does not.
  if (inArea) return before.add(amount);
  // All that was wanted is there: this is a new need. Some of it is there: all of it was said again, or still so many.
  if (left.compare(0) <= 0) return have.add(p.ordered).add(amount);
  if (have.compare(0) > 0) return amount.compare(before) === 0 ? before : have.add(amount);
  if (fresh) return most(before, amount);
  // Said again of one room among several: the others' needs stand.
  return fact.area && p.areaNeeds.size > 1 ? [...p.areaNeeds.values()].reduce((sum, one) => sum.add(one)) : amount;
}

/** What stands in one place is dropped with it. */
export function dropGoods(goods: Goods, words: ReadonlySet<string>, entry: Entry, quote: string): boolean {
  let any = false;
  for (const position of goods.all) {
    if (likeness(words, position.words) < 0.75) continue;
    dropPosition(position, entry, quote);
    any = true;
  }
  return any;
}

/** Goods that nobody has to buy any more. */
export function dropPosition(position: Position, entry: Entry, quote: string): void {
  position.dropped = true;
  position.reasons.push(`dropped ${entry.at.slice(0, 10)}`);
  position.history.push(event(entry, 'dropped', quote));
}
