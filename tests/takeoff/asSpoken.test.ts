import { describe, expect, it } from 'vitest';
import { orderOf } from './order.ts';

const AREAS = ['kitchen', 'garage', 'deck', 'hall'];

const orders = (cases: [string, string[]][]) =>
  it.each(cases)('%s', (note, order) => {
    expect(orderOf(AREAS, note).order).toEqual(order);
  });

describe('typed by hurried thumbs', () => {
  orders([
    // 40 x 12 / 16 = 30 bays + 1.
    ["garage wall 40' lng, 2x6 studs @16", ['stud 2x6: 31 each']],
    // 8 x 12 = 96, x 1.1 / 20.
    ['kitchn flr 8x12. vinyl plnk box 20 sf, 10% ovr', ['vinyl plank: 6 box']],
    // 12 x 14 + 2 x 26 x 8 = 584, x 1.1 / 32; 21 x 32 = 672 / 500; 21 / 7.
    [
      "hall 12x14, 8' walls, walls n lid. drywall 4x8s, 10%. scrws 32/sht, box of 500. mud 1 bkt per 7 shts",
      ['drywall 4x8: 21 sheet', 'drywall screw: 2 box', 'joint compound: 3 bucket'],
    ],
  ]);
});

describe('feet that are square feet, and packs told in any order', () => {
  orders([
    // 10 x 11 / 15 = 7.3; 8 x 60 = 480 / 200.
    [
      'laying backer on the kitchen floor 10 by 11 three by fives, and screws 60 a sheet 200 to a box',
      ['backer board 3x5: 8 sheet', 'backer board screw: 3 box'],
    ],
    // 5 x 8 = 40, x 1.15 / 14.
    [
      'hall floor is 5 by 8, tile, running 12 by 24s, they come 7 to a carton and a carton does fourteen foot, fifteen percent',
      ['tile 12x24: 4 carton'],
    ],
    // 2 x 26 x 14 = 728, x 1.12 x 3 / 100; 26 x 1.12 / 20.
    [
      'garage roof, two slopes at twenty six by fourteen. Shingles come three to the square, twelve percent. Ridge is twenty six foot and a bundle of cap does twenty.',
      ['shingle: 25 bundle', 'ridge cap: 2 bundle'],
    ],
    // 2 x 68 x 9 = 1224, x 1.1 / 900.
    [
      "house wrap all four sides, 28 by 40, nine foot walls, roll's nine by a hundred, ten percent lap",
      ['house wrap: 2 roll'],
    ],
  ]);
});

describe('counts that multiply', () => {
  orders([
    // 6 x 2 x (2 + 3) = 60 / 22.
    [
      "All six windows are in. They're every one of them two by three and get caulked all four sides. I get twenty two foot out of a tube of sealant.",
      ['sealant: 3 tube'],
    ],
    // 224 + 2 x 128 = 480 / 48.
    [
      'need enough half inch rock for the hall lid 14 by 16 and the two long walls only 16 foot by 8, four by twelves, no waste',
      ['drywall 4x12: 10 sheet'],
    ],
    // (10 + 2 x 8) x 8 = 208 / 32.
    [
      'Three walls sheathed, ten foot and two eights, all eight high. OSB four by eights, no waste.',
      ['osb 4x8: 7 sheet'],
    ],
    // 3 x 32 x 10/12 = 80 / 1.5; 3 x 24 / 20.
    [
      'Three beds, each four by eight, fill 10 inches deep. Soil comes in one and a half cubic foot bags. And edging round each one, 20 foot rolls.',
      ['topsoil 1.5 cu ft: 54 bag', 'edging: 4 roll'],
    ],
  ]);
});

describe('several goods of one note, each with its own', () => {
  orders([
    // 12 x 10 x 4/12 = 40 / 0.5; 120 / 12 = 10 / 0.5.
    [
      'patio is twelve by ten with four inches of gravel and one inch of sand and both of those come in half cubic foot bags',
      ['gravel 0.5 cu ft: 80 bag', 'sand 0.5 cu ft: 20 bag'],
    ],
    // 49 ft: x 1.1 / 16; 49 less 9 = 40, x 1.1 / 12.
    [
      "hall's 13 6 by 11 with one door at three foot and an opening at six so those come off, crown's in sixteens and base is in twelves ten percent on each",
      ['crown molding 16 ft: 4 each', 'baseboard 12 ft: 4 each'],
    ],
    // 18 x 20 less nothing = 360 / 100; x 1.1 / 24.
    [
      'kitchen 18 by 20. vinyl plank, box 24 sf, 10%. foam underlayment 100 sf roll no overage',
      ['vinyl plank: 17 box', 'foam underlayment: 4 roll'],
    ],
    // 13 posts, 36 rails, 1152 / 5.5, two bags each.
    [
      "fence line 96'. posts 8' oc both ends. 2 bags concrete each post. 3 rails per section 2x4x8. pickets 5 1/2 wide 0 gap",
      ['picket: 210 each', 'fence post: 13 each', 'fence rail 2x4 8 ft: 36 each', 'concrete: 26 bag'],
    ],
  ]);
});

describe('sizes taken back, in one note or the next', () => {
  orders([
    // 9 x 11.5 = 103.5, x 1.1 / 16.
    [
      "it's 9 by 12 and a half hang on she's shaking her head it's 9 by 11 and a half, vinyl plank, ten percent, sixteen square feet to the box",
      ['vinyl plank: 8 box'],
    ],
    // 10 x 14 = 140 / 20.
    ['kitchen laminate is 10 by 12, no wait, 10 by 14, 20 sq ft a box, no waste', ['laminate: 7 box']],
  ]);
  it('the ledger is longer since', () => {
    const notes = [
      "ledger bolted. 14' lng. 2x10 jsts 12 footrs 16 oc. hangers at ledgr only",
      "she wants it bigger so it's an 18' ledger now not 14, rest same",
    ];
    // 216 / 16 = 13.5, so 14 spaces.
    expect(orderOf(['deck'], ...notes).order).toEqual(['joist 2x10 12 ft: 15 each', 'joist hanger 2x10: 15 each']);
  });
});

describe('in metres that nobody named', () => {
  orders([
    // (13.6 + 11.6) x 2.4 + 11.52 + 8.4 = 80.4, x 1.1 / 2.88; 31 x 40 / 500.
    [
      "Two bedrooms to board, 3.6 by 3.2 and 3.0 by 2.8, 2.4 high, walls and ceilings, sheets are 2.4 by 1.2, ten percent. Screws go 40 a sheet and there's 500 in a box.",
      ['drywall 2.4x1.2 m: 31 sheet', 'screw: 3 box'],
    ],
    // 4.1 / 0.53 = 8 drops; 2.4 + trim + 0.64 goes three times into 10.05.
    [
      "Paper for that one wall only: 4.1 m wide, 2.4 m from skirting to coving. Rolls are 10.05 by 0.53. It's a 64 cm repeat, paste, one packet to five rolls.",
      ['wallpaper: 3 roll', 'wallpaper paste: 1 pack'],
    ],
    // 3 x 2.4 x 0.1 / 0.01, x 1.05.
    [
      "Pad's 3 metres by 2.4, 100 mil thick, bagged concrete, a 20 kilo bag yields 0.01 of a cube, five percent over",
      ['concrete mix 20 kg: 76 bag'],
    ],
  ]);
});

describe('what cannot be reckoned is asked about once, with nothing ordered', () => {
  it.each([
    'caulk round 4 tubs, each 5 foot and two ends 30 inches, tube does 30 foot',
    'porch floor, 6 by 20, boards three and an eighth face, ten footers, ten percent',
    'casing next, five doors cased both sides, in seven footers, a seven footer does one leg or two heads',
    "Backsplash tile: 14 foot of it, and the wall's 30 by 30 inches on top, three by six tile, ten percent over, a hundred and twenty to a box",
  ])('%s', (note) => {
    const { order, questions } = orderOf(AREAS, note);
    expect(order).toEqual([]);
    expect(questions).toHaveLength(1);
  });
});
