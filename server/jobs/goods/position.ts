/** What is known of the goods of a job while its history is being folded. */
import type Fraction from 'fraction.js';
import { wordsOf } from '../../../parser/trade/likeness.ts';
import type { Material } from '../../../parser/types.ts';
import type { Entry, Event } from '../types.ts';
import { NONE } from './amounts.ts';

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
  /** Where they were told as wanted, counted or not. */
  rooms: Set<string>;
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

/** Packs at hand of goods that are wanted by the piece. */
export interface PacksGot {
  unit: string;
  count: Fraction;
  /** The note that told of them last. */
  noteId: string;
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
        rooms: new Set(p.rooms),
        reasons: [...p.reasons],
        history: [...p.history],
      },
    ]),
  );
  const byWord = new Map([...goods.byWord].map(([word, ps]) => [word, new Set([...ps].map((p) => twin.get(p)!))]));
  return { all: [...twin.values()], byWord };
}

/** Goods told of for the first time, nothing wanted and nothing there, filed under their words. */
export function newPosition(
  goods: Goods,
  { item, size, specs, unit }: Pick<Material, 'item' | 'size' | 'specs' | 'unit'>,
  key: string,
): Position {
  const made: Position = {
    key,
    item,
    size,
    specs: [...specs],
    uses: [],
    unit,
    counter: 'general',
    words: new Set(wordsOf(item)),
    need: null,
    areaNeeds: new Map(),
    rooms: new Set(),
    bought: NONE,
    ordered: NONE,
    used: NONE,
    returned: NONE,
    have: NONE,
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
