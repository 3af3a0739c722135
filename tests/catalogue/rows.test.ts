import { describe, expect, it } from 'vitest';
import { readCatalogue } from '../../server/catalogue/rows.ts';

const HEAD = 'item,size,unit,pack,price,supplier\n';
const rowsOf = (text: string) => {
  const read = readCatalogue(text);
  if (!read.ok) throw new Error(read.wrong.join('; '));
  return read.rows.map((r) => [
    r.line,
    r.item,
    r.size,
    r.unit,
    r.pack && `${r.pack.holds.toFraction(true)} ${r.pack.unit}`,
    r.price?.valueOf() ?? null,
    r.supplier,
  ]);
};
const wrongIn = (text: string) => {
  const read = readCatalogue(text);
  return read.ok ? [] : read.wrong;
};

describe('a price list', () => {
  it('is read with its packs, units and prices', () => {
    expect(
      rowsOf(`${HEAD}porcelain floor tile,12x24,bx,11.5 sq ft,$41.90,Stone Barn
thinset,50 lb,bags,,18,Stone Barn
"screws, deck",2-1/2 in,box,350,"1,029.50",Ridge Lumber
drywall,4x8,sheet,32 sqft,,Ridge Lumber
`),
    ).toEqual([
      [2, 'porcelain floor tile', '12x24', 'box', '11 1/2 sq ft', 41.9, 'Stone Barn'],
      [3, 'thinset', '50 lb', 'bag', null, 18, 'Stone Barn'],
      [4, 'screws, deck', '2-1/2 in', 'box', '350 each', 1029.5, 'Ridge Lumber'],
      [5, 'drywall', '4x8', 'sheet', '32 sq ft', null, 'Ridge Lumber'],
    ]);
  });

  it.each([
    [
      'semicolons and decimal commas',
      'Item;Unit;Price;Supplier\ngrout;bag;12,50;Shop\n',
      [2, 'grout', null, 'bag', null, 12.5, 'Shop'],
    ],
    [
      'tabs, columns turned round',
      'Vendor\tCost\tDescription\nShop\t3.20\tcaulk\n',
      [2, 'caulk', null, 'each', null, 3.2, 'Shop'],
    ],
    [
      'a mark at the start of the file, blank lines',
      `\ufeff${HEAD}\n\ncaulk,,tube,,4,Shop\n\n`,
      [4, 'caulk', null, 'tube', null, 4, 'Shop'],
    ],
    ['an inch mark in quotes', `${HEAD}"12"" tile",,box,,9,Shop\n`, [2, '12" tile', null, 'box', null, 9, 'Shop']],
    [
      'columns of no interest',
      'sku,item,price,supplier,notes\n77,caulk,4,Shop,good\n',
      [2, 'caulk', null, 'each', null, 4, 'Shop'],
    ],
  ])('%s', (_, text, row) => {
    expect(rowsOf(text)).toEqual([row]);
  });

  it.each([
    ['no item', `${HEAD}grout,,bag,,9,Shop\n,,bag,,9,Shop\n`, /^line 3: no item\. Name the goods/],
    ['no supplier', `${HEAD}grout,,bag,,9,\n`, /^line 2: no supplier for grout/],
    [
      'a price that is words',
      `${HEAD}grout,,bag,,call us,Shop\n`,
      /^line 2: the price "call us" of grout is no amount. Write 12\.50/,
    ],
    ['a negative price', `${HEAD}grout,,bag,,-4,Shop\n`, /^line 2: the price "-4"/],
    ['a pack that is words', `${HEAD}grout,,bag,lots,9,Shop\n`, /^line 2: the pack "lots" of grout cannot be read/],
    ['a stray comma', `${HEAD}screws, deck,,box,350,9,Shop\n`, /^line 2: 7 cells where the first line has 6/],
    ['the same twice', `${HEAD}grout,,bag,,9,Shop\ngrout,,bag,,8,Shop\n`, /^line 3: the same as line 2/],
    ['a quote that does not close', `${HEAD}"12" tile,,box,,9,Shop\n`, /line \d+: the quotes/],
    ['no price column', 'item,supplier\ngrout,Shop\n', /^line 1: no column called price/],
    ['nothing', '', /^The file is empty/],
  ])('%s is refused with its line and what to do', (_, text, wrong) => {
    expect(wrongIn(text)).toEqual([expect.stringMatching(wrong)]);
  });

  it('names every wrong line, up to a screenful', () => {
    expect(wrongIn(HEAD + 'grout,,bag,,x,Shop\n'.repeat(20))).toHaveLength(13);
  });
});
