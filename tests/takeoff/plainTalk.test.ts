import { expect, it } from 'vitest';
import { orderOf } from './order.ts';

const AREAS = ['bath', 'kitchen', 'hall', 'den', 'bedroom', 'basement', 'deck'];

// Answers by hand: extent x (1 + waste) / pack, up; members: bays + 1.
it.each<[string, string[]]>([
  // 42 / (3 x 6 / 144) = 336, x 1.15 = 386.4; / 80. The square feet are the tile's own.
  [
    "bath walls, i need tile, it's a three by six subway, forty two square feet plus fifteen percent, comes 80 pieces a box",
    ['subway tile 3x6: 5 box'],
  ],
  // The tile stands for its size only. 107 x 0.84375 x 0.0578 = 5.2 lb.
  [
    'need grout for the kitchen floor, a hundred and seven feet of 12x24 at three eighths thick with an eighth inch joint, ten pound bags',
    ['grout 10 lb: 1 bag'],
  ],
  ['sanded grout for the hall, 99 square feet, 18 by 18 tile, 3/16 joints, 25 lb bag', ['sanded grout 25 lb: 1 bag']],
  [
    'thin set for the hall floor, ninety square feet, quarter inch square notch, figure fifty pounders',
    ['thinset 50 lb: 2 bag'],
  ],
  // 45.56 cu in a sq ft x 30 x 0.0578 = 79 lb; / 25.
  [
    'need grout for the den hearth, 30 square feet of 4x8 brick pavers 2 1/4 thick, 3/8 joint, 25 lb bags',
    ['grout 25 lb: 4 bag'],
  ],
  // 150 in of 1/4 in fillet is 12.5 ft; x 8 tubs = 100; / 48.6.
  ['need silicone, four hundred plus four hundred plus four hundred inches, quarter inch bead', ['silicone: 3 tube']],
  // 2 x 26 x 8 + 168 = 584; x 1.1 / 48 = 13.4.
  [
    'bedroom drywall, 12 by 14 by 8 high, walls and lid, 4 by 12 sheets, ten percent, need screws too',
    ['drywall 4x12: 14 sheet', 'drywall screw: 643 each'],
  ],
  ['hang the basement wall, 40 feet long 8 feet tall, half inch 4x8, how many sheets', ['drywall 4x8: 10 sheet']],
  // (144 + 1/8) / (5-1/2 + 1/8) = 25.6; 192 / 16 + 1; 26 x 13 x 2.
  [
    'deck is 12 by 16, five quarter by six boards running 16, eighth inch gap, joists 16 on center, two screws a crossing, need boards and screws',
    ['deck board 5/4x6: 26 each', 'joist: 13 each', 'deck screw: 676 each'],
  ],
  // 12 x 14 + 2 x 6 = 180; x 1.08 = 194.4; / 20.
  [
    'laminate in the bedroom and closet, bedroom 12 by 14, closet 2 by 6, 20 sq ft a box, 8% waste',
    ['laminate: 10 box'],
  ],
  ['sidewalk, 3 by 20, 4 in thick, how many 80 pound sacks', ['concrete mix 80 lb: 34 bag']],
  ['plates for the den wall, 12 foot four, three runs, 2x4 in 16s', ['plate 16 ft: 3 each']],
  ['half inch pex to the bath, two runs, 22 feet each, 20 foot sticks, ten percent', ['pex 20 ft: 3 each']],
  ['2x4s eight foot for the den wall, twelve foot four long, sixteen on center', ['stud 2x4 8 ft: 11 each']],
  // Balusters and pickets are the same pieces: (72 - 4) / (1.5 + 4) = 12.4.
  [
    'balusters on the deck rail, six foot between posts, inch and a half pickets, no gap over four inches',
    ['baluster: 13 each'],
  ],
  // 2 x 26 x 8 x 2 = 832; / 350.
  [
    'painting the bedroom, twelve by fourteen with eight foot ceilings, walls only, two coats, gallon does 350',
    ['paint: 3 gal'],
  ],
  [
    'joists for the deck, 24 on center across eighteen feet, 2x10x12, one hanger each end',
    ['joist 2x10 12 ft: 10 each', 'joist hanger 2x10: 20 each'],
  ],
  ['also trim along the tub, 5 foot, comes in 8 foot sticks, the bath is 5 by 8', ['trim 8 ft: 1 each']],
  ['cut list for the den out of 2x4 8 footers: 9 pieces at 14', ['2x4 8 ft: 2 each']],
  ['need ten 2x4 blocks cut to 14 1/2 from 8 footers, eighth inch kerf', ['2x4 8 ft: 2 each']],
  ['need to cut six at 41 inches and four at 23 and a quarter out of 2x6 twelve footers', ['2x6 12 ft: 3 each']],
  // 13.5 x 11 = 148.5; x 1.12 / 15.5 = 10.7.
  [
    "den floor's thirteen and a half by eleven, doing 6 by 24 plank tile, box does 15.5, figure twelve percent",
    ['tile 6x24: 11 box'],
  ],
  // 14.5 x 12 = 174; x 1.08 / 24.5 = 7.7.
  ["engineered oak in the den 14'6 by 12, 8 percent, 24.5 a carton", ['engineered oak: 8 carton']],
  // 4 x 6 x 1/3 = 8; / 0.45 = 17.8.
  ['steps out back need a pad, 4 by 6 by 4 inches thick, sixty pound bags', ['concrete mix 60 lb: 18 bag']],
  // 120 x 5.25 / 12 = 52.5; x 2 / 90 = 1.2.
  [
    'trim paint for the hall, 120 feet of base five and a quarter tall, two coats, quart covers 90',
    ['trim paint: 2 qt'],
  ],
  // 72 x 9 + 320 = 968; x 1.12 / 48 = 22.6.
  ["den's 16 by 20, nine foot walls, board walls and lid with four by twelves, 12 percent", ['drywall 4x12: 23 sheet']],
  ['kids bath floor 5 by 9, half inch cement backer 3 by 5s', ['backer board 3x5: 3 sheet']],
  // 2 x 24-5/6 ft less 2-2/3 = 47; / 16.
  ['baseboard around the bedroom 11-8 x 13-2, out for a 32 inch door, sixteens', ['baseboard 16 ft: 3 each']],
  ['run 14/3 between the three ways, 38 feet plus a foot a box, two boxes, ten percent', ['cable 14/3: 44 ft']],
  ['rafters at 24 on the shed, 20 foot long roof both sides, 2x8 twelves', ['rafter 2x8: 22 each']],
  ['two by sixes at sixteen for the 18 foot 6 wall, ten footers', ['stud 2x6 10 ft: 15 each']],
  // pi x 6 x 6 x 48 / 1,728 = 3.142; x 9 / 0.6 = 47.1.
  ['nine sonotubes, 12 inch, four feet deep, eighty pound bags', ['concrete mix 80 lb: 48 bag']],
  // 2 x 240 / 100 x 3 = 14.4; x 1.12 = 16.1.
  ['shingles for the shed roof, 12 by 20 both slopes, three bundles a square, twelve percent', ['shingle: 17 bundle']],
  // 4 x 14 = 56; x 1.1 / 8 = 7.7.
  ['need 1x4 casing around four windows 3 by 4, ten percent, 8 footers', ['casing 8 ft: 8 each']],
  ['thinset for sixty five feet of twelve by twelve, quarter by three eighths, need it', ['thinset: 2 bag']],
])('%s', (note, order) => {
  expect(orderOf(AREAS, note)).toMatchObject({ order, questions: [] });
});

it('a bay whose height nobody told is asked for, and studs are not counted where batts are', () => {
  const note = "wall's 31 foot long, 2x6 studs 24 on center, batts are 93 long, ceiling 8 foot, r-21";
  expect(orderOf(AREAS, note)).toMatchObject({ order: [], questions: ['batts: how tall is a bay?'] });
});
