import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { bagYield, yieldAsked, yieldWords } from '../calculators/concrete.ts';
import { COMPOUND_GALLONS, DRYWALL_SOURCE, SCREWS, TAPE_FEET } from '../calculators/drywall.ts';
import { screwsOfSheet } from '../calculators/fasteners.ts';
import { groutPerFoot } from '../calculators/grout.ts';
import { mortarCoverage, usualNotch } from '../calculators/mortar.ts';
import { show, tape } from '../calculators/reckoned.ts';
import { CARTRIDGE, feetPerTube } from '../calculators/sealant.ts';
import type { Bedding } from './bedding.ts';
import type { Ratio } from './ratios.ts';

/** What a habit may look at. */
export interface Told {
  item: string;
  /** `60 lb`, as the pack was named. */
  packSize: string | null;
  /** Sides of the tile, inches. */
  tile: readonly [Fraction, Fraction] | null;
  bedding: Bedding;
}

/** How goods are taken and sold where nobody said it, with what was taken for granted. A string says what is missing. */
export interface Habit {
  ratios: Ratio[];
  assumptions: string[];
  source: string | null;
}

interface Rule {
  goods: RegExp;
  give: (told: Told) => Habit | string;
}

const ratio = (value: Fraction, unit: string, per: string, note?: string): Ratio => ({
  value,
  unit,
  per,
  at: 0,
  ...(note && { note }),
});
const usual = (value: Fraction | number, unit: string, per: string, assumption: string): Habit => ({
  ratios: [ratio(new Fraction(value), unit, per)],
  assumptions: [assumption],
  source: null,
});

const packPounds = (told: Told): Fraction | null => {
  const [, amount, unit] = /^([\d./]+) (lb|kg)$/.exec(told.packSize ?? '') ?? [];
  return amount ? convert(new Fraction(amount), unit!, 'lb') : null;
};

function concrete(told: Told): Habit | string {
  const holds = bagYield(told.packSize);
  return holds ? usual(holds.yields, 'cu ft', 'bag', yieldWords(holds)) : yieldAsked(told.packSize);
}

/** Joint where nobody said, and how thick a tile is by its size. Common practice, no source. */
const USUAL_JOINT = new Fraction(1, 8);
const thickOf = (longest: Fraction) => (longest.compare(12) >= 0 ? new Fraction(3, 8) : new Fraction(5, 16));

function grout(told: Told): Habit | string {
  if (!told.tile) return 'what size is the tile?';
  const [length, width] = told.tile;
  const longest = length.compare(width) >= 0 ? length : width;
  const { joint, thickness } = told.bedding;
  const deep = thickness ?? thickOf(longest);
  const found = groutPerFoot({ length, width, thickness: deep }, joint ?? USUAL_JOINT);
  if (!found.ok) return found.why;
  const pounds = packPounds(told) ?? new Fraction(25);
  const assumptions: string[] = [];
  if (!joint) assumptions.push(`a joint of ${tape(USUAL_JOINT)} in, common practice`);
  if (!thickness) assumptions.push(`tile ${tape(deep)} in thick, common practice`);
  if (!packPounds(told)) assumptions.push('25 lb bags, common practice');
  return {
    ratios: [ratio(found.value, 'lb', 'sq ft', found.working), ratio(pounds, 'lb', 'bag')],
    assumptions,
    source: "joint volume at 1.6 kg a litre, tilers' reference",
  };
}

function mortar(told: Told): Habit | string {
  const longest = told.tile ? (told.tile[0].compare(told.tile[1]) >= 0 ? told.tile[0] : told.tile[1]) : null;
  const notch = told.bedding.notch ?? (longest && usualNotch(longest));
  if (!notch) return 'what notch, or how much does a bag cover?';
  const pounds = packPounds(told) ?? new Fraction(50);
  const feet = mortarCoverage(notch, pounds, told.bedding.buttered);
  const text = `${tape(notch[0])} x ${tape(notch[1])} in notch`;
  if (!feet) return `how much does a bag cover with a ${text}?`;
  const from = told.bedding.notch ? '' : ' for that tile';
  return usual(
    feet,
    'sq ft',
    'bag',
    `${text}${from}: ${show(feet)} sq ft a bag of ${show(pounds)} lb, the low end of published charts`,
  );
}

function sealant(told: Told): Habit | string {
  const [, amount, unit] = /^([\d./]+) ((?:fl )?oz|ml|L)$/.exec(told.packSize ?? '') ?? [];
  const said = amount && convert(new Fraction(amount), unit === 'oz' ? 'fl oz' : unit!, 'fl oz');
  const bead = told.bedding.bead ?? { leg: new Fraction(1, 4) };
  const found = feetPerTube(bead, said || CARTRIDGE);
  if (!found.ok) return found.why;
  return {
    ratios: [ratio(found.feet, 'ft', 'tube', `${found.working}: ${show(found.feet)} ft a tube`)],
    assumptions: [
      ...(told.bedding.bead ? [] : ['a 1/4 in fillet, common practice']),
      ...(said ? [] : [`${tape(CARTRIDGE)} oz tubes`]),
    ],
    source: 'volume of the bead; 231/128 cu in a fluid ounce',
  };
}

/** Trade tip on tile substrate (wconline.com/articles/84477): 8 in apart; a floor takes it both ways, a wall on studs fewer. */
const BACKER = {
  sheet: [new Fraction(36), new Fraction(60)],
  spacing: new Fraction(8),
  feet: new Fraction(15),
} as const;

function backerScrews(): Habit | string {
  const found = screwsOfSheet(BACKER.sheet, [BACKER.spacing, BACKER.spacing]);
  if (!found.ok) return found.why;
  return {
    ratios: [ratio(new Fraction(found.count).div(BACKER.feet), 'each', 'sq ft', `${found.working} of 3x5`)],
    assumptions: ['screws 8 in apart both ways, edges too; a wall on studs 16 in apart takes fewer'],
    source: 'trade tip on tile substrate, wconline.com/articles/84477',
  };
}

const boardTrade = (ratios: Ratio[], assumption: string): Habit => ({
  ratios,
  assumptions: [assumption],
  source: DRYWALL_SOURCE,
});

/** The first that fits speaks. Each is the safe end of what is published, named in the working. */
const RULES: readonly Rule[] = [
  { goods: /drywall screw/, give: () => boardTrade([ratio(SCREWS, 'each', 'sq ft')], 'one screw a square foot') },
  {
    goods: /(?:drywall|paper|mesh) tape/,
    give: () =>
      boardTrade(
        [ratio(TAPE_FEET, 'ft', 'sq ft', '0.5 ft a sq ft'), ratio(new Fraction(500), 'ft', 'roll')],
        '500 ft of tape for 1,000 sq ft, 500 ft rolls',
      ),
  },
  {
    goods: /joint compound/,
    give: () =>
      boardTrade(
        [ratio(COMPOUND_GALLONS, 'gal', 'sq ft', '0.01 gal a sq ft'), ratio(new Fraction('4.5'), 'gal', 'bucket')],
        'a gallon for 100 sq ft, 4-1/2 gal buckets',
      ),
  },
  { goods: /backer board screw/, give: backerScrews },
  { goods: /grout/, give: grout },
  { goods: /thinset|tile mortar|^mortar/, give: mortar },
  { goods: /caulk|silicone|sealant/, give: sealant },
  { goods: /concrete/, give: concrete },
  {
    goods: /primer/,
    give: () => usual(200, 'sq ft', 'gal', 'primer at 200 sq ft a gallon, the low end for new board'),
  },
  { goods: /paint/, give: () => usual(350, 'sq ft', 'gal', 'paint at 350 sq ft a gallon, the low end') },
  { goods: /backer|cement board/, give: () => usual(15, 'sq ft', 'sheet', '3x5 sheets') },
  {
    goods: /drywall|moisture board|plywood|osb|sheathing|bead ?board|foam board/,
    give: () => usual(32, 'sq ft', 'sheet', '4x8 sheets'),
  },
  { goods: /shingle/, give: () => usual(3, 'bundle', 'square', 'three bundles to the square') },
  {
    goods: /gravel|mulch|sand|stone|soil|dirt|base|compost/,
    give: () => usual(27, 'cu ft', 'cu yd', 'by the cubic yard'),
  },
];

/** Null where the trade has no habit for such goods. */
export function habitOf(told: Told): Habit | string | null {
  return RULES.find((rule) => rule.goods.test(told.item))?.give(told) ?? null;
}

/** Waste where nobody said any, by layout and goods. */
export function usualWaste(item: string, words: string): { share: Fraction; why: string } | null {
  if (/tile|mosaic|subway|porcelain|ceramic/.test(item)) {
    if (/herring|chevron/.test(words))
      return { share: new Fraction(15, 100), why: '15 % waste for herringbone, the low end, common practice' };
    if (/\bdiagonal|on the (?:diagonal|bias)|45/.test(words))
      return { share: new Fraction(15, 100), why: '15 % waste for a diagonal layout (how-to article)' };
    return { share: new Fraction(1, 10), why: '10 % waste for a straight layout, common practice' };
  }
  if (/plank|laminate|hardwood|flooring/.test(item))
    return { share: new Fraction(1, 10), why: '10 % waste, common practice' };
  return null;
}
