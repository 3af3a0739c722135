/**
 * How long a long price list takes to be looked up: `tsx tests/bench/prices.ts`. For 2,000 and 20,000 rows it prints the
 * milliseconds to make the list ready, to price an order of 60 lines for the first time and again, and what a plain
 * scan of every row would take; medians of five runs.
 */
import Fraction from 'fraction.js';
import { keyWords, likeness } from '../../parser/trade/likeness.ts';
import { catalogueOf, matchesOf } from '../../server/catalogue/match.ts';
import { pricesOf } from '../../server/catalogue/prices.ts';
import type { CatalogueRow } from '../../server/catalogue/rows.ts';
import type { OrderLine } from '../../server/jobs/types.ts';

const KINDS =
  'floor tile,wall tile,drywall,drywall screw,deck board,deck screw,joist hanger,pex pipe,copper elbow,ball valve,outlet,switch plate,wire nut,cable,wall paint,primer,thinset,grout,baseboard,door casing,hinge,cabinet pull,wax ring,closet bolt,insulation batt'.split(
    ',',
  );
const FINISHES = 'white,gray,black,oak,brass,chrome,primed,galvanized,matte,satin'.split(',');
const SIZES = '12x24,6x24,3x6,4x8,1/2 in,3/4 in,1 in,2-1/2 in,8 ft,16 ft'.split(',');
const SUPPLIERS = ['Ridge', 'Stone Barn', 'Volt House', 'Hue'];
const at = <T>(list: readonly T[], k: number): T => list[k % list.length]!;

const listOf = (rows: number): CatalogueRow[] =>
  Array.from({ length: rows }, (_, k) => ({
    line: k + 2,
    item: `${at(FINISHES, k >> 2)} ${at(KINDS, k)} ${String.fromCharCode(97 + ((k >> 6) % 26))}${k >> 9}`,
    size: at(SIZES, k >> 1),
    unit: k % 3 ? 'each' : 'box',
    pack: k % 3 ? null : { holds: new Fraction(25), unit: 'each' },
    price: new Fraction(k % 97, 4),
    supplier: at(SUPPLIERS, k),
  }));

const ORDER = Array.from(
  { length: 60 },
  (_, k): OrderLine => ({
    key: String(k),
    item: k % 2 ? at(KINDS, k) : `${at(FINISHES, k)} ${at(KINDS, k)}`,
    size: k % 4 ? at(SIZES, k) : null,
    specs: [],
    quantity: '30',
    unit: 'each',
    state: 'to buy',
    because: '',
    counter: 'general',
    history: [],
  }),
);

const timed = (work: () => unknown) => {
  const start = performance.now();
  work();
  return performance.now() - start;
};
const median = (work: () => unknown) =>
  Array.from({ length: 5 }, () => timed(work))
    .sort((a, b) => a - b)[2]!
    .toFixed(1);

for (const size of [2000, 20_000]) {
  const rows = listOf(size);
  const ready = median(() => catalogueOf(rows));
  const first = median(() => pricesOf(ORDER, catalogueOf(rows)));
  const catalogue = catalogueOf(rows);
  pricesOf(ORDER, catalogue);
  const again = median(() => pricesOf(ORDER, catalogue));
  const words = rows.map((row) => keyWords(row.item));
  const scan = median(() =>
    ORDER.map(({ item }) => keyWords(item)).map((wanted) => words.filter((w) => likeness(wanted, w) >= 0.6).length),
  );
  const found = ORDER.filter((line) => matchesOf(catalogue, line).length > 0).length;
  process.stdout.write(
    `${size} rows: made ready ${ready} ms, ready and first priced ${first} ms, priced again ${again} ms; scanning every row ${scan} ms; ${found} of 60 lines found\n`,
  );
}
