import { describe, expect, it } from 'vitest';
import { orderOf } from '../takeoff/order.ts';

const AREAS = ['bath', 'hall', 'porch'];

describe('packs on hand of goods that are wanted by the piece', () => {
  it.each<[string[], string[], RegExp]>([
    [
      ['need 40 deck screws', 'got 2 boxes of deck screws'],
      ['deck screw: 40 each'],
      /How many deck screws does a box hold/,
    ],
    [
      ['got 2 boxes of deck screws', 'need 400 deck screws for the porch'],
      ['deck screw: 400 each'],
      /There are 2 boxes on hand, and 400 are needed/,
    ],
    [['need 60 wire nuts', 'bought 1 bag of wire nuts'], ['wire nut: 60 each'], /a bag hold\? There is 1 bag on hand/],
    [
      ['need forty toggle bolts for the hall', "there's a bag of toggle bolts in the shop"],
      ['toggle bolt: 40 each'],
      /How many toggle bolts does a bag hold/,
    ],
    [['need 200 framing nails', 'have 2 pounds of framing nails'], ['framing nail: 200 each'], /does a lb hold/],
    [
      ['need 5 boxes of 12x24 tile and 40 deck screws', 'got 2 boxes of deck screws'],
      ['tile 12x24: 5 box', 'deck screw: 40 each'],
      /2 boxes on hand/,
    ],
  ])('%j: never taken for so many pieces, and asked about', (notes, order, asked) => {
    const got = orderOf(AREAS, ...notes);
    expect(got.order).toEqual(order);
    expect(got.questions.join()).toMatch(asked);
  });

  it.each<[string[], string[]]>([
    [['need 40 deck screws, they come 25 to a box', 'got 1 box of deck screws in the van'], ['deck screw: 1 box']],
    [['need 40 deck screws', 'got 2 boxes of deck screws', 'the deck screws come 25 to a box'], []],
    [['need 40 deck screws', 'got 1 box of deck screws', 'used the box of deck screws'], ['deck screw: 40 each']],
  ])('%j: taken off by what a pack holds, once that is said', (notes, order) => {
    expect(orderOf(AREAS, ...notes)).toMatchObject({ order, questions: [] });
  });
});

describe('a count that is put right stands, whatever the goods are called', () => {
  it.each<[string, string[]]>([
    ['need 5 boxes of the 12x24, no make it 6', ['tile 12x24: 6 box']],
    ['need 5 boxes of the 12x24, no make it 6 boxes', ['tile 12x24: 6 box']],
    ['grab 5 boxes of the 12x24 tile no make it 6', ['tile 12x24: 6 box']],
    ['I need five sheets of half inch plywood, sorry, seven', ['plywood 1/2 in: 7 sheet']],
    ['grab me six sheets of three quarter ply, hold on, eight', ['ply 3/4 in: 8 sheet']],
    ['2 rolls of 12/2, better make it 3', ['cable 12/2: 3 roll']],
    ['need 11 boxes of the 3 by 6, hold on, 13', ['tile 3x6: 13 box']],
    ['5 boxes of the 12x24 and 2 bags of thinset, no make it 3', ['tile 12x24: 5 box', 'thinset: 3 bag']],
    ['need 4 tubes of silicone, actually make it 6', ['silicone: 6 tube']],
    ['want 12 boxes of the 6x36 planks no 14', ['plank 6x36: 14 box']],
    // A size put right is no count.
    ['need two 8 foot boards, no, 10 foot', ['board 10 ft: 2 each']],
  ])('%s', (note, order) => {
    expect(orderOf(AREAS, note).order).toEqual(order);
  });
});
