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
