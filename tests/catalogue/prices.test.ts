import { describe, expect, it } from 'vitest';
import { catalogueOf, matchesOf } from '../../server/catalogue/match.ts';
import { packsOf, pricesOf } from '../../server/catalogue/prices.ts';
import { readCatalogue } from '../../server/catalogue/rows.ts';
import type { OrderLine } from '../../server/jobs/types.ts';

const read = readCatalogue(`item,size,unit,pack,price,supplier
porcelain floor tile,12x24,box,11.5 sq ft,40,Stone Barn
porcelain floor tile,6x24,box,10 sq ft,30,Stone Barn
subway tile,3x6,box,10 sq ft,22,Stone Barn
thinset,50 lb,bag,,18,Stone Barn
thinset,50 lb,bag,,16,Ridge Lumber
drywall screws,1-1/4 in,box,500,9.25,Ridge Lumber
drywall,4x12,sheet,48 sq ft,21,Ridge Lumber
gfci outlet,20 A,each,,24.99,Volt House
primer,,gal,,,Hue
`);
if (!read.ok) throw new Error(read.wrong.join());
const catalogue = catalogueOf(read.rows);
const best = (item: string, size: string | null = null) => {
  const [match] = matchesOf(catalogue, { item, size });
  return match ? `${match.row.item} ${match.row.size ?? ''} ${match.row.supplier} ${match.score}` : null;
};
const line = (
  item: string,
  quantity: string | null,
  unit: string | null,
  more: Partial<OrderLine> = {},
): OrderLine => ({
  key: item,
  item,
  size: null,
  specs: [],
  quantity,
  unit,
  state: 'to buy',
  because: '',
  counter: 'general',
  history: [],
  ...more,
});

describe('matching an order line to the list', () => {
  it.each<[string, string | null, string | null]>([
    ['floor tile', '12x24', 'porcelain floor tile 12x24 Stone Barn 0.99'],
    ['floor tile', '12" x 24"', 'porcelain floor tile 12x24 Stone Barn 0.99'],
    ['subway tile', '3x6', 'subway tile 3x6 Stone Barn 1'],
    ['thinset', null, 'thinset 50 lb Ridge Lumber 0.9'],
    ['gfci receptacle', '20 A', 'gfci outlet 20 A Volt House 1'],
    ['floor tile', '18x18', null],
    ['toilet', null, null],
    ['screws', '3 in', null],
  ])('%s %s', (item, size, expected) => {
    expect(best(item, size)).toBe(expected);
  });

  it('of two suppliers alike the cheaper stands first', () => {
    expect(matchesOf(catalogue, { item: 'thinset', size: '50 lb' }).map((m) => m.row.supplier)).toEqual([
      'Ridge Lumber',
      'Stone Barn',
    ]);
  });
});

describe('prices of an order', () => {
  it('counts whole units, by the pack where the order is in what a pack holds', () => {
    const { lines, total } = pricesOf(
      [
        line('floor tile', '3', 'box', { size: '12x24' }),
        line('floor tile', '101', 'sq ft', { key: 'b', size: '12x24' }),
        line('drywall screws', '1200', 'each'),
      ],
      catalogue,
    );
    expect(lines.map((l) => [l.quantity, l.cost, l.why])).toEqual([
      ['3', '120.00', null],
      ['9', '360.00', null],
      ['3', '27.75', null],
    ]);
    expect(total).toBe('507.75');
  });

  it('says why there is no cost, and shows how sure the match is', () => {
    const { lines, total } = pricesOf(
      [
        line('toilet', '1', 'each'),
        line('thinset', null, 'bag'),
        line('primer', '2', 'gal'),
        line('gfci outlet', '2', 'case', { size: '20 A' }),
      ],
      catalogue,
    );
    expect(lines.map((l) => [l.match?.score ?? null, l.cost, l.why])).toEqual([
      [null, null, 'not in the price list'],
      [0.9, null, 'nobody said how many'],
      [1, null, 'the price list has no price for it'],
      [1, null, 'sold by the piece, ordered by the case: say in the list what one piece holds'],
    ]);
    expect(total).toBe('0.00');
  });

  it('totals by the kind of supplier; what is bought already is left out', () => {
    const { totals } = pricesOf(
      [
        line('floor tile', '2', 'box', { size: '12x24', counter: 'tile' }),
        line('thinset', '1', 'bag', { counter: 'tile' }),
        line('toilet', '1', 'each', { counter: 'plumbing' }),
        line('drywall screws', '1', 'box', { counter: 'drywall', state: 'bought' }),
      ],
      catalogue,
    );
    expect(totals).toEqual([
      { kind: 'tile', suppliers: ['Ridge Lumber', 'Stone Barn'], cost: '96.00', lines: 2, unpriced: 0 },
      { kind: 'plumbing', suppliers: [], cost: '0.00', lines: 1, unpriced: 1 },
    ]);
  });
});

it('gives the pack in which goods are sold', () => {
  const packFor = packsOf(catalogue);
  expect(packFor('drywall', null, 'sq ft')).toMatchObject({ unit: 'sheet', supplier: 'Ridge Lumber' });
  expect(packFor('drywall', null, 'lb')).toBeNull();
  expect(packFor('gravel', null, 'cu ft')).toBeNull();
});
