import Fraction from 'fraction.js';
import type { OrderLine } from '../jobs/types.ts';
import type { PackFor } from '../takeoff/types.ts';
import { type Catalogue, type Match, matchesOf } from './match.ts';
import type { CatalogueRow } from './rows.ts';

/** An order line at the price of the row that it matches best; all money as text with two decimals. */
export interface PricedLine {
  /** The order line's key. */
  line: string;
  item: string;
  /** Null where nothing in the list is like it. */
  match: {
    item: string;
    size: string | null;
    supplier: string;
    unit: string;
    holds: string | null;
    price: string | null;
    score: number;
  } | null;
  /** Whole units of the row to buy; null where the order's unit and the row's do not meet. */
  quantity: string | null;
  cost: string | null;
  /** Why there is no cost, in words; null where there is one. */
  why: string | null;
}

export interface Prices {
  lines: PricedLine[];
  /** By the kind of supplier (the counter), dearest first. */
  totals: { kind: string; suppliers: string[]; cost: string; lines: number; unpriced: number }[];
  total: string;
}

const money = (amount: Fraction): string => amount.round(2).valueOf().toFixed(2);

/** What is still to be bought, priced from the firm's list. */
export function pricesOf(order: readonly OrderLine[], catalogue: Catalogue): Prices {
  const kinds = new Map<string, { suppliers: Set<string>; cost: Fraction; lines: number; unpriced: number }>();
  let total = new Fraction(0);
  const lines = order
    .filter((line) => line.state === 'to buy' || line.state === 'ordered')
    .map((line): PricedLine => {
      const { priced, cost } = priceOf(line, catalogue);
      const kind = kinds.get(line.counter) ?? { suppliers: new Set(), cost: new Fraction(0), lines: 0, unpriced: 0 };
      kinds.set(line.counter, kind);
      kind.lines++;
      if (cost) {
        kind.cost = kind.cost.add(cost);
        kind.suppliers.add(priced.match!.supplier);
        total = total.add(cost);
      } else kind.unpriced++;
      return priced;
    });
  const totals = [...kinds]
    .sort(([, a], [, b]) => b.cost.compare(a.cost))
    .map(([kind, { suppliers, cost, ...counts }]) => ({
      kind,
      suppliers: [...suppliers].sort(),
      cost: money(cost),
      ...counts,
    }));
  return { lines, totals, total: money(total) };
}

function priceOf(line: OrderLine, catalogue: Catalogue): { priced: PricedLine; cost: Fraction | null } {
  const matches = matchesOf(catalogue, line);
  const best = matches.find((m) => m.score === matches[0]!.score && unitsOf(line, m.row) !== null) ?? matches[0];
  const base = { line: line.key, item: line.item };
  if (!best)
    return { priced: { ...base, match: null, quantity: null, cost: null, why: 'not in the price list' }, cost: null };
  const { row } = best;
  const quantity = unitsOf(line, row);
  const cost = quantity && row.price ? quantity.mul(row.price) : null;
  const why = cost
    ? null
    : line.quantity === null
      ? 'nobody said how many'
      : quantity === null
        ? `sold by the ${called(row.unit)}, ordered by the ${called(line.unit)}: say in the list what one ${called(row.unit)} holds`
        : 'the price list has no price for it';
  const shown = { ...base, match: shownMatch(best), quantity: quantity?.toFraction() ?? null };
  return { priced: { ...shown, cost: cost && money(cost), why }, cost };
}

const called = (unit: string | null): string => (unit === null || unit === 'each' ? 'piece' : unit);

const shownMatch = ({ row, score }: Match): NonNullable<PricedLine['match']> => ({
  item: row.item,
  size: row.size,
  supplier: row.supplier,
  unit: row.unit,
  holds: row.pack && `${row.pack.holds.toFraction(true)} ${row.pack.unit}`,
  price: row.price && money(row.price),
  score,
});

/** Whole units of a row that an order line comes to; null where their units do not meet. */
function unitsOf(line: Pick<OrderLine, 'quantity' | 'unit'>, row: CatalogueRow): Fraction | null {
  if (line.quantity === null) return null;
  const quantity = new Fraction(line.quantity);
  const unit = line.unit ?? 'each';
  if (unit === row.unit) return quantity.ceil();
  return row.pack?.unit === unit ? quantity.div(row.pack.holds).ceil() : null;
}

/** As sure as this a row must be the goods, before it changes what they are bought by. */
const SURE = 0.8;

/**
 * How the firm's own list sells goods needed in `unit`: it stands before a usual pack. Goods that the list sells by
 * that unit itself need no pack.
 */
export const packsOf =
  (catalogue: Catalogue): PackFor =>
  (item, size, unit) => {
    const meets = ({ row, score }: Match) =>
      score >= SURE && (row.pack?.unit === unit || (row.pack === null && row.unit === unit));
    const row = matchesOf(catalogue, { item, size }).find(meets)?.row;
    return row?.pack ? { unit: row.unit, holds: row.pack.holds, supplier: row.supplier } : null;
  };
