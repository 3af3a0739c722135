import { describe, expect, it } from 'vitest';
import { readNote } from '../../parser/index.ts';
import { SAID_AT } from './read.ts';

const factsIn = (text: string) => readNote(text, { saidAt: SAID_AT, areas: ['kitchen', 'stairs'] }).facts;
const goodsIn = (text: string) =>
  factsIn(text).flatMap((f) =>
    f.kind === 'material' ? [[f.quantity ?? '-', f.unit ?? '-', f.item, f.size ?? '-', f.status].join(' ')] : [],
  );

describe('a count that runs into a size', () => {
  it.each([
    ['order one thirty two by eighty right hand prehung', '1 each right hand prehung 32x80 need'],
    ['need two twenty eight by eighty doors', '2 each door 28x80 need'],
    ['grab 10 1/2x4 lags', '10 each lag 1/2x4 need'],
    ['need 6 3/8x3 carriage bolts', '6 each carriage bolt 3/8x3 need'],
    ['get three nine inch covers', '3 each cover 9 in need'],
    [
      'make it twenty eight five quarter by six by sixteen treated',
      '28 each five quarter by six by sixteen treated 5/4x6x16 need',
    ],
    ['call it six sixteen footers of three and a quarter primed base', '6 each primed base 3-1/4 in x 16 ft need'],
    ['call it nine twelve footers of crown', '9 each crown 12 ft need'],
  ])('%s', (text, goods) => expect(goodsIn(text)).toEqual([goods]));

  it('is a size all the same where nothing is asked for', () =>
    expect(goodsIn('the opening is one thirty two by eighty')).toEqual([]));
});

describe('what is said behind goods to tell which', () => {
  it.each([
    ['get five sets of casing, two and a quarter, the colonial', '5 set casing 2-1/4 in need'],
    ['I need one GFI, twenty amp, white', '1 each gfi 20 A need'],
    ['get three nine inch covers, half inch nap', '3 each roller cover 9 in x 1/2 in need'],
    ['order 1 bag grout light grey 5kg', '1 bag grout light grey 5 kg need'],
    ['need 2 tubs drywall mud 20kg', '2 tub drywall mud 20 kg need'],
    ['order two doors, thirty by eighty', '2 each door 30x80 need'],
  ])('%s', (text, goods) => expect(goodsIn(text)).toEqual([goods]));

  it('takes no figure of other things', () =>
    expect(factsIn('need two tubes of caulk, the opening is 32 inches').map((f) => f.kind)).toEqual([
      'material',
      'measurement',
    ]));
});

describe('timber that goods are for', () => {
  it.each([
    ['order 8 post bases 6x6, 4 pt 6x6 12ft', ['8 each post base 6x6 need', '4 each pt 6x6 12 ft need']],
    ['need 26 hangers 2x8', ['26 each hanger 2x8 need']],
    ['2x8 PT x 12ft - need 14', ['14 each 2x8 pt 12 ft need']],
  ])('%s', (text, goods) => expect(goodsIn(text)).toEqual(goods));
});

describe('a list goes on', () => {
  it('with how many of what was asked for as one', () =>
    expect(goodsIn('get a piece of one by six poplar, eight footer, two of them')).toEqual([
      '2 each piece one by six poplar 1x6 x 8 ft need',
    ]));

  it('with goods that are only named by size or count', () => {
    expect(goodsIn('need 14 2x8s. 26 hangers, box of hanger nails')).toContain('26 each hanger - need');
    expect(goodsIn('order 1 bag grout, 3mm spacers')).toContain('- - spacer 3 mm need');
    expect(goodsIn('make the casing seven footers, twelve of them')).toEqual(['12 each casing 7 ft need']);
  });

  it('with what follows from what has to be', () =>
    expect(goodsIn('the smoke detectors have to be hardwired, so two hardwired smokes')).toContain(
      '2 each hardwired smoke - need',
    ));

  it('with a fitting of the bore of its pipe', () =>
    expect(goodsIn('vent needs four inch rigid pipe, two five foot lengths, an elbow and a roll of foil tape')).toEqual(
      ['2 length rigid pipe 4 in x 5 ft need', '1 each elbow 4 in need', '1 roll foil tape - need'],
    ));
});

describe('no goods to buy', () => {
  it.each(['needs another coat', 'stairs 3 risers 7 1/4, tread 11in', 'needs another coat of paint'])('%s', (text) =>
    expect(goodsIn(text).filter((g) => g.endsWith('need') && /coat|riser|tread/.test(g))).toEqual([]),
  );

  it('what is there already', () =>
    expect(goodsIn('Ceilings flat white, got that already')).toEqual(['- - ceilings flat white - have']));

  it('what turned up', () =>
    expect(goodsIn("the other two tubes turned up don't need them now")).toEqual(['2 tube tube - have']));
});
