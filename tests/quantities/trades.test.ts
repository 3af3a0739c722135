import { describe, expect, it } from 'vitest';
import { hear } from '../../parser/hearing/index.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { builtIn } from '../../parser/trade/index.ts';
import { read, said } from './read.ts';

// Ways to say a quantity that go with one trade or one country: what is said, then every reading in it.
const TABLE: Record<string, [string, ...string[]][]> = {
  'smaller units behind larger ones': [
    ['the jug weighs six pounds four ounces', '6 1/4 lb "six pounds four ounces"'],
    ['topped it off with 2lb 8oz', '2 1/2 lb "2lb 8oz"'],
    ['ten pounds four screws', '10 lb "ten pounds"', '4 - "four"'],
    ['the gutter is nine metre forty all told', '9 2/5 m "nine metre forty"'],
    ['need two metre forty screws', '2 m "two metre"', '40 - "forty"'],
    ['sill is 2m40 x 1m20', '2 2/5 m "2m40"', '1 1/5 m "1m20"'],
    ['crown 180 LF 4-1/2" primed', '180 ft "180 LF"', '4 1/2 in "4-1/2""'],
  ],
  'great numbers': [
    ['the boiler is half a million btus', '500000 BTU "half a million btus"'],
    ['basin holds 1.2 million gallons', '1200000 gal "1.2 million gallons"'],
    ['we laid 12 thousand brick on the gable', '12000 - "12 thousand"'],
    ['spindle turns thirty four fifty rpm', '3450 rpm "thirty four fifty rpm"'],
    ['a fifteen fifty gallon tank', '1550 gal "fifteen fifty gallon"'],
    ['need twelve fifty gallon drums', '12 - "twelve"', '50 gal "fifty gallon"'],
    ['roof is sixteen forty square feet', '1640 sq ft "sixteen forty square feet"'],
  ],
  'parts said of many': [
    ['use inch and a halfs on the lid', '1 1/2 in "inch and a halfs"'],
    ['a box of two and a halfs', '1 box "a box"', '2 1/2 in "two and a halfs"'],
    ['three quarters along', '3/4 in "three quarters"'],
  ],
  'written as bills of quantities do': [
    ['gully pots 5 no., 600 dia', '5 each "5 no."', '600 - "600"'],
    ['3no lintels and 8 nr ties', '3 each "3no"', '8 each "8 nr"'],
    ['2 no 3 bags', '3 bag "3 bags"'],
    ['qty 18 cum of fill', '18 cu m "18 cum"'],
    ['fence 60 mtr and screed 40 sqm', '60 m "60 mtr"', '40 sq m "40 sqm"'],
    ['6 sq mm cable', '6 sq mm "6 sq mm"'],
    ['building sand 4 cubes', '4 cu m "4 cubes"'],
    ['tacks 6 pkts', '6 pack "6 pkts"'],
    ['it broke at thirty megapascal', '30 MPa "thirty megapascal"'],
    ['post 5-1/2 sq', '5 1/2 in "5-1/2"'],
    ['strip 22 sq', '22 square "22 sq"'],
    ['a box should do it', '1 box "a box"'],
    ['jamb 3/4 L side', '3/4 in "3/4"'],
    ['the box reads 480 pri 120 sec today', '480 - "480"', '120 - "120"'],
  ],
  'doors by their feet and inches': [
    ['ext drs 3-0 x 6-8 LH', '36 in "3-0"', '80 in "6-8"'],
    ['bifold 4-0', '48 in "4-0"'],
    ['kitchen is fourteen by ten and a half', '14 ft "fourteen"', '10 1/2 ft "ten and a half"'],
  ],
  'one thing or another': [
    ['a three horse pump', '3 hp "three horse"'],
    ['the cellar has eight inches of water', '8 in "eight inches"'],
    ['gas is at seven inches of water', '7 in wc "seven inches of water"'],
    [
      'two posts at four hundred and one at six fifty',
      '2 - "two"',
      '400 - "four hundred"',
      '1 - "one"',
      '650 - "six fifty"',
    ],
    ['twelve treads at two one five each', '12 - "twelve"', '215 each "two one five each"'],
    ['rip the one by eight', '1 - "one"', '8 - "eight"'],
    ['mix is six to one on the footing', '6 - "six"', '1 - "one"'],
    ['the bays r 2.25 so cut rails 2200', '2 1/4 - "2.25"', '2200 - "2200"'],
    ['hull is twenty foot and draws two and a half', '20 ft "twenty foot"', '2 1/2 ft "two and a half"'],
    ['get six forty fives', '6 - "six"'],
    ['two 45s and a 90', '2 - "two"'],
  ],
  'in Spanish': [
    ['el marco está tres dieciseisavos corto', '3/16 in "tres dieciseisavos"'],
    ['dos pies y medio', '2 1/2 ft "dos pies y medio"'],
    ['cae un octavo de pulgada por pie', '1/8 in/ft "un octavo de pulgada por pie"'],
    ['veintidós y media de ancho', '22 1/2 in "veintidós y media"'],
    ['van 2 capas', '2 coat "2 capas"'],
    ['las tres y media pulgadas', '3 1/2 in "tres y media pulgadas"'],
  ],
  'taken back': [
    ['four mil, naw, five mil', '5 mm "five mil"'],
    ['dos no mejor tres cubetas', '3 bucket "tres cubetas"'],
    ['eleven feet nah sorry mate twelve feet', '12 ft "twelve feet"'],
    ["it's ten amps no wait I read it wrong it's six", '6 A "six"'],
    ["thirty by forty wait that's wrong thirty by fifty", '30 - "thirty"', '50 - "fifty"'],
  ],
};

for (const [title, rows] of Object.entries(TABLE))
  describe(title, () => {
    it.each(rows)('%s', (text, ...readings) => {
      expect(said(text)).toEqual(readings);
    });
  });

describe('what counts nothing', () => {
  it.each([
    ['clock', 'llega a las 4 y media', '4 y media'],
    ['clock', 'hasta las cinco nos vamos', 'cinco'],
    ['idiom', 'the hawks are up by nine at the half', 'nine'],
    ['idiom', 'rams went down forty to ten', 'forty to ten'],
    ['idiom', 'lost 4-3 in overtime', '4-3'],
    ['idiom', 'they won by eleven', 'eleven'],
    ['idiom', "it's two weeks on one week off", 'two weeks on one week off'],
    ['idiom', 'the truck comes in ten minutes', 'ten minutes'],
    ['idiom', "he's sixty years old", 'sixty years old'],
    ['idiom', 'all three of the plumbers called', 'three'],
    ['idiom', 'it was laid by 4 masons', '4'],
    ['idiom', "give me five I'm up a ladder", 'five'],
    ['phone', 'try oh one two one, five five four, double oh three', 'oh one two one, five five four, double oh three'],
    ['code', 'VAT no 7719342K', '7719342K'],
    ['code', 'weld it with 7018', '7018'],
    ['code', 'charged with four oh seven C', 'four oh seven C'],
    ['label', 'frames 40 to 46 port', '40 to 46'],
    ['label', 'bin 9 row D', '9'],
    ['label', 'clause 611 in, rolled', '611'],
    ['label', 'tapón en la 52', '52'],
    ['money', 'he sold it for 1.4 million', '1.4 million'],
  ])('%s: %s', (kind, text, quote) => {
    const { quantities, notQuantities } = read(text);
    expect(notQuantities.map((other) => [other.kind, other.quote])).toEqual([[kind, quote]]);
    expect(quantities).toEqual([]);
  });

  it.each([
    ['bays 3 to 6 inches wide', ['3', '6 inches']],
    ['two painters tape rolls', ['two']],
    ['pressure went down sixty to forty', ['sixty', 'forty']],
    ['10000L tank', ['10000L']],
  ])('but these count: %s', (text, quotes) => {
    expect(read(text).quantities.map(({ quote }) => quote)).toEqual(quotes);
  });
});

describe('as it was heard', () => {
  it.each([
    ['rafters at three hunner centres', '300 mm "three hunner"'],
    ['cable is 16 sq mm', '16 sq mm "16 sq mm"'],
  ])('%s', (text, reading) => {
    const { quantities } = readQuantities(hear(text, builtIn()).tokens, text);
    expect(quantities.map((q) => `${q.value.toFraction(true)} ${q.unit ?? '-'} "${q.quote}"`)).toEqual([reading]);
  });
});
