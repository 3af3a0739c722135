import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { catalogueOf } from '../../server/catalogue/match.ts';
import { packsOf } from '../../server/catalogue/prices.ts';
import { readCatalogue } from '../../server/catalogue/rows.ts';
import { type Entry, fold } from '../../server/jobs/index.ts';
import { orderOf } from './order.ts';

const LIST = `item,size,unit,pack,price,supplier
hurricane tie,,box,25,19,Ridge
wax ring,,each,,4,Hue
wax ring,,case,12,40,Hue
deck screw,,box,350,31,Ridge
`;

/** The order of notes with the firm's own price list at hand. */
function orderWithList(...texts: string[]) {
  const read = readCatalogue(LIST);
  if (!read.ok) throw new Error(read.wrong.join());
  const entries = texts.map((text, k): Entry => {
    const at = `2026-03-02T${String(8 + k).padStart(2, '0')}:00:00`;
    const { facts } = readNote(text, { saidAt: at, areas: ['porch'] });
    const source = { noteId: `n${k}`, start: 0, end: text.length };
    return { id: `n${k}`, jobId: 'j', at, by: null, source, what: { kind: 'noteRead', facts, text, parser: '1' } };
  });
  const site = { areas: ['porch'], builtYear: null, packFor: packsOf(catalogueOf(read.rows)) };
  return fold(site, entries, '2026-03-02T23:00:00').order.map(({ item, quantity, unit, needs }) => ({
    line: `${item}: ${quantity} ${unit}`,
    needs,
  }));
}

describe('goods counted by hand, in the packs that they come in', () => {
  it.each<[string[], string[]]>([
    [['need 130 hurricane ties for the rafters. box of 25'], ['hurricane tie: 6 box']],
    [['need 130 hurricane ties, they come 25 to a box'], ['hurricane tie: 6 box']],
    [['need 30 wire nuts', 'the wire nuts come in packs of 20'], ['wire nut: 2 pack']],
    [['bring 40 joist hangers, they come in boxes of 50'], ['joist hanger: 1 box']],
    [['need 130 hurricane ties, 25 pieces a box'], ['hurricane tie: 6 box']],
    // A box of something is itself ordered, and holds nothing else.
    [['need 12 outlets and a box of 100 wire nuts'], ['outlet: 12 each', 'wire nut: 1 box']],
    [['need 2 boxes of deck screws'], ['deck screw: 2 box']],
  ])('%j', (notes, order) => {
    expect(orderOf(['porch'], ...notes).order).toEqual(order);
  });

  it('by the price list where no note says it, over several notes, with what stays over', () => {
    expect(orderWithList('need 40 hurricane ties', 'need 15 more hurricane ties')).toEqual([
      { line: 'hurricane tie: 3 box', needs: { exact: '55', unit: 'each', holds: '25' } },
    ]);
  });

  it('goods that the list also sells one by one stay single', () => {
    expect(orderWithList('need 3 wax rings')).toEqual([{ line: 'wax ring: 3 each', needs: undefined }]);
  });

  it('a note stands before the list', () => {
    expect(orderWithList('need 130 hurricane ties, 50 to a box').map((l) => l.line)).toEqual(['hurricane tie: 3 box']);
  });
});

describe('so many for each', () => {
  it.each<[string, string[]]>([
    ['14 doors in the kitchen, two hinges to a door and a pull for each', ['hinge: 28 each', 'cabinet pull: 14 each']],
    [
      'deck is 12 by 16, 5-1/2 boards run the 16 way with 1/8 gap, 16 footers, joists 16 on center. need deck screws',
      ['deck board 16 ft: 26 each', 'joist: 13 each', 'deck screw: 676 each'],
    ],
    [
      'deck 12 ft out, 5-1/2 boards with 1/8 gap run 16 ft, 16 footers, three deck screws at every crossing',
      ['deck board 16 ft: 26 each'],
    ],
  ])('%s', (text, order) => {
    const found = orderOf(['porch'], text);
    expect(found.order).toEqual(expect.arrayContaining(order));
  });

  it('asks for what it must multiply by', () => {
    const note = 'deck 12 ft out, 5-1/2 boards with 1/8 gap run 16 ft, 16 footers, three deck screws at every crossing';
    const { order, questions } = orderOf(['porch'], note);
    expect(order.filter((l) => l.startsWith('deck screw'))).toEqual([]);
    expect(questions).toEqual(['deck screw: how many crossings?']);
  });
});

describe('insulation by the bay', () => {
  it.each<[string, string]>([
    [
      'north wall insulation: 26 ft wall, studs 16 on center, 10 ft tall bays, R-13 batts 15 by 47 long, 20 to a bag',
      'insulation batt R-13: 3 bag',
    ],
    ['need batts, 21 bays, one batt to a bay, eleven to the bag', 'insulation batt: 2 bag'],
    ['attic floor 22 by 30, R-30 unfaced batts, 58.67 sq ft a bag', 'unfaced batt R-30: 12 bag'],
  ])('%s', (text, line) => {
    expect(orderOf(['porch'], text).order).toEqual([line]);
  });

  it('asks for the length of a batt', () => {
    const { questions } = orderOf(['porch'], 'need batts for 32 bays, studs are 8 ft');
    expect(questions).toEqual(['batts: how long is a batt?']);
  });
});
