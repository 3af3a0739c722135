import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const goodsIn = (text: string) =>
  readNote(text, { saidAt: SAID_AT }).facts.flatMap((f) =>
    f.kind === 'material' ? [[f.item, f.quantity, f.unit, f.status].join(' ')] : [],
  );

it.each([
  ['I mixed eight bags of floor patch', ['floor patch 8 bag used']],
  ['we have four rolls of mesh tape left in the van', ['mesh tape 4 roll have']],
  ['need two tubes of zorbix and a box of screws', ['zorbix 2 tube need', 'screw 1 box need']],
  ['grab two 45s and a 90 for the drain', ['45 2 each need', '90 1 each need']],
  ['need six forty fives and two nineties', ['forty five 6 each need', 'ninety 2 each need']],
  ['grab 6 of the 2x4s', ['2x4 6 each need']],
  ['used three bags of grout and there is half a bag left', ['grout 3 bag used', 'grout 0.5 bag have']],
])('%s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

it.each(['the gap is 12 ft long', 'I had two coffees', 'he was here three times today'])('%s', (text) =>
  expect(goodsIn(text)).toEqual([]),
);

it.each([
  ['the tile is on order', ['tile   ordered']],
  ['ordered two doors', ['door 2 each ordered']],
  ['the faucet is backordered', ['faucet   ordered']],
])('not here yet: %s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

it.each([
  'R-30 batts, 58.67 sq ft a bag',
  'laminate comes 20 sq ft a box',
  'the screws come 75 in a tub',
  'four pieces at 102 inches',
])('tells how goods come, not how many: %s', (text) => expect(goodsIn(text).filter((g) => /\d/.test(g))).toEqual([]));

it('what is left of goods is no name of them', () => {
  expect(goodsIn('caulked the tub, got half a tube left')).toEqual(['caulk 0.5 tube have']);
  expect(goodsIn('got half a tube left')).toEqual([]);
});

describe('goods that nobody names', () => {
  it.each([
    ['north slope is shingled, used nineteen square', ['shingle 19 square used']],
    ['den is boarded with the lid, we put up twenty two sheets', ['drywall 22 sheet used']],
    ['down to one coil, bring four more', ['coil nail 1 coil have', 'coil nail 4 coil need']],
  ])('are what alone comes so: %s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

  it('are never assumed where the note names what comes so', () =>
    expect(
      goodsIn('porch roof got metal panels, used six square, eleven bundles of cedar shakes are left'),
    ).not.toContain('shingle 6 square used'));
});

it.each([
  ['bring a five gallon of the bonding glue', ['bonding glue 1 pail need']],
  ['need a fifty pound of mortar', ['mortar 1 bag need']],
  ['need two five gallons of block filler', ['block filler 2 pail need']],
  ['need five gallons of primer', ['primer 5 gal need']],
])('a container that only its measure tells: %s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

const sizesIn = (text: string) =>
  readNote(text, { saidAt: SAID_AT }).facts.flatMap((f) =>
    f.kind === 'material'
      ? [[f.quantity, f.unit, f.item, f.size].join(' ')]
      : f.kind === 'measurement'
        ? ['measured']
        : [],
  );

it.each([
  ['one 4x8 sheet of three quarter white melamine', ['1 sheet white melamine 4x8 x 3/4 in']],
  ['need two 4 by 8 sheets of half inch plywood', ['2 sheet plywood 4x8 x 1/2 in']],
  ['grab a 4 by 8 panel of lattice', ['1 panel lattice 4x8']],
])('sides before what goods come in: %s', (text, goods) => expect(sizesIn(text)).toEqual(goods));

it.each([
  ['we need three wall cabinets, thirty inch wide by thirty high', ['3 each wall cabinet 30x30']],
  ['need two shelves, thirty six long, ten deep, and a box of screws', ['2 each shelf 36 x 10', '1 box screw ']],
  ['order five cafe blinds, two foot wide by three foot drop', ['5 each cafe blind 2x3 ft']],
  ['get a door, thirty inch wide opening', ['1 each door ', 'measured']],
])('sizes behind goods are theirs, and those of another thing are not: %s', (text, goods) =>
  expect(sizesIn(text)).toEqual(goods),
);

it.each([
  ['pick up a box of finish nails, no make that a bag of brads', ['brad 1 bag need']],
  ['need a gallon of primer, no wait, two tubes of caulk', ['caulk 2 tube need']],
  ['need two hinges, sorry, latches', ['latch 2 each need']],
  ['two gallons of primer, I mean three', ['primer 3 gal need']],
  ['need six sheets of drywall, no wait, seven of the half inch', ['drywall 7 sheet need']],
])('goods named in place of others: %s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

it.each([
  ['I got four busted tiles in the kitchen need four of those', ['tile 4 each need']],
  ['there are two bad outlets in the laundry, grab two', ['outlet 2 each need']],
])('what is amiss is no stock, and is bought whole: %s', (text, goods) => expect(goodsIn(text)).toEqual(goods));

it('a place is no pack', () => expect(goodsIn('need two tubes of caulk for the tub')).toEqual(['caulk 2 tube need']));

it('a room needs goods as a person does', () =>
  expect(goodsIn('kitchen needs two base cabinets, three wall cabinets')).toEqual([
    'base cabinet 2 each need',
    'wall cabinet 3 each need',
  ]));

it.each([
  ['need caulk', ['caulk   need']],
  ['need two doors and caulk', ['door 2 each need', 'caulk   need']],
  ['pick up drywall, screws and a box of nails', ['drywall   need', 'screw   need', 'nail 1 box need']],
  ['get some screws from the yard', ['screw   need']],
  ['the wall needs paint', []],
  ['get the drywall hung and the paint ordered', []],
  ['need caulk around the sink', []],
])('goods that nobody counts are asked for, work with them is not: %s', (text, goods) =>
  expect(goodsIn(text)).toEqual(goods),
);
