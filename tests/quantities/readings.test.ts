import { describe, expect, it } from 'vitest';
import { read, said } from './read.ts';

// What is said, then every reading in it: exact value, unit, words.
const TABLE: Record<string, [string, ...string[]][]> = {
  'fractions in words': [
    ['it sits five sixteenths proud', '5/16 in "five sixteenths"'],
    ['an inch and a quarter pipe', '1 1/4 in "an inch and a quarter"'],
    ['inch and five eighths screws', '1 5/8 in "inch and five eighths"'],
    ['a foot and a half of it', '1 1/2 ft "a foot and a half"'],
    ['thirteen thirty seconds', '13/32 in "thirteen thirty seconds"'],
    ['half a sixteenth', '1/32 in "half a sixteenth"'],
    ['three quarters of an inch', '3/4 in "three quarters of an inch"'],
    ['ninety eight and a half tall', '98 1/2 in "ninety eight and a half"'],
    ['a hundred and three quarters', '100 3/4 in "a hundred and three quarters"'],
    ['dos pulgadas y media', '2 1/2 in "dos pulgadas y media"'],
  ],
  'what is left unsaid': [
    ['the long wall is twenty six four', '316 in "twenty six four"'],
    ['grab two inch and a half traps', '2 - "two"', '1 1/2 in "inch and a half"'],
    ['two fifteens and a twenty', '2 - "two"', '15 - "fifteens"', '20 - "twenty"'],
    ['get 6 3/4 elbows', '6 - "6"', '3/4 in "3/4"'],
    ['seven or eight hundred brick', '700 - "seven"', '800 - "eight hundred"'],
    ['eight ten feet of wire', '8 ft "eight"', '10 ft "ten feet"'],
    ['the roof is an eight twelve', '8 in/ft "eight twelve"'],
    ['miter it at twenty two and a half', '22 1/2 deg "twenty two and a half"'],
    ['it gives a good inch', '1 in "a good inch"'],
    ['plywood is twenty three thirty seconds', '23/32 in "twenty three thirty seconds"'],
    ['door is eight twenty by twenty forty', '820 - "eight twenty"', '2040 - "twenty forty"'],
    ['the walls lean three eighths the header goes', '3/8 in "three eighths"'],
  ],
  'sizes without their words': [
    ["the opening's two six wide", '30 in "two six"'],
    ['mud room is eleven four by six ten', '136 in "eleven four"', '82 in "six ten"'],
    ["wall's thirty one six by nine foot", '378 in "thirty one six"', '9 ft "nine foot"'],
    ['skirting is one four five by eighteen', '145 - "one four five"', '18 - "eighteen"'],
    ["the ceiling's two seven fifty off the floor", '2750 - "two seven fifty"'],
    ["worktop's three metres six", '3 3/5 m "three metres six"'],
    ['point three return point four five supply', '3/10 - "point three"', '9/20 - "point four five"'],
    ["freezer's minus ten", '-10 - "minus ten"'],
  ],
  'counts of a size': [
    [
      'forty three quarter by two and a half bolts',
      '40 - "forty"',
      '3/4 in "three quarter"',
      '2 1/2 in "two and a half"',
    ],
    ['thirty eight foot joists', '30 - "thirty"', '8 ft "eight foot"'],
    ['ten three quarter nineties', '10 - "ten"', '3/4 in "three quarter"'],
    ['two gates sixteen foot and one twelve', '2 - "two"', '16 ft "sixteen foot"', '1 - "one"', '12 - "twelve"'],
    ['boards are thirteen foot five to a bay', '13 ft "thirteen foot"', '5 - "five"'],
    ['rods 8 ft 2 of em', '8 ft "8 ft"', '2 - "2"'],
    ['need 14 bar pulls brushed nickel', '14 - "14"'],
    ['eighty feet off a 250 roll', '80 ft "eighty feet"'],
    ['the wires fill an 18 cube box', '18 cu in "18 cube"'],
  ],
  'only the part taken back': [
    ["it's sixty two and a half no five eighths", '62 5/8 in "five eighths"'],
    ['make it ten foot six no seven', '127 in "seven"'],
  ],
  'shorthand of sizes': [
    ['22w x 30h', '22 - "22"', '30 - "30"'],
    ['need 2n a half boxes', '2 1/2 box "2n a half boxes"'],
    ['its 1 1/4ish deep', '1 1/4 in "1 1/4"'],
    ['3/8-16 rod 6 ft', '3/8 in "3/8"', '6 ft "6 ft"'],
    ['mil and a half of play', '1 1/2 mm "mil and a half"'],
    ['6ft6 x 2ft6 door', '78 in "6ft6"', '30 in "2ft6"'],
    ['bolts 5/8 dia', '5/8 in "5/8"'],
    ['tile 600x300 x 14m2', '600 - "600"', '300 - "300"', '14 sq m "14m2"'],
    ['heater is 40k btu', '40000 BTU "40k btu"'],
    ['toe kick is short by 5/8 at the end', '5/8 in "5/8"'],
    ['Room is 6,40 by 4,15 m', '6 2/5 m "6,40"', '4 3/20 m "4,15 m"'],
  ],
  'fractions in digits': [
    ['1-3/8" door', '1 3/8 in "1-3/8""'],
    ['2 1/2in screws', '2 1/2 in "2 1/2in"'],
    ['1/16th kerf', '1/16 in "1/16th"'],
    ['point two five inches', '1/4 in "point two five inches"'],
    ['5/16ths off', '5/16 in "5/16ths"'],
    ['25-1/2 inches', '25 1/2 in "25-1/2 inches"'],
    ['1½" and ⅝"', '1 1/2 in "1½""', '5/8 in "⅝""'],
    ['3 quarter inch ply', '3/4 in "3 quarter inch"'],
    ['.125 in', '1/8 in ".125 in"'],
    ['drill a 3/8 hole', '3/8 in "3/8"'],
    ['two point five inches', '2 1/2 in "two point five inches"'],
    ['reads point four seven of an ohm', '47/100 ohm "point four seven of an ohm"'],
    ['five metres sixty long', '5 3/5 m "five metres sixty"'],
    ['twelve & 1/2 in. deep', '12 1/2 in "twelve & 1/2 in."'],
    ['ten point sixty six', '10 33/50 - "ten point sixty six"'],
    ['thirty four and a heavy quarter', '34 1/4 in "thirty four and a heavy quarter"'],
    ['three metres one hundred', '3 1/10 m "three metres one hundred"'],
    ['nought point eight bar', '4/5 bar "nought point eight bar"'],
    ['two of the five eight', '2 - "two"', '5/8 in "five eight"'],
    ['and point nine high', '9/10 - "point nine"'],
    ['a five sixteen inch gap', '5/16 in "five sixteen inch"'],
    ['a quarter to three eighths', '1/4 in "a quarter"', '3/8 in "three eighths"'],
    ['a sixteenth of daylight', '1/16 in "a sixteenth"'],
  ],
  'feet and inches': [
    ['six foot eight header', '80 in "six foot eight"'],
    [`6'-8 1/2" tall`, `80 1/2 in "6'-8 1/2""`],
    [`3'0" slab`, `36 in "3'0""`],
    ['22 feet 6 inches', '270 in "22 feet 6 inches"'],
    ['twelve foot four and a half', '148 1/2 in "twelve foot four and a half"'],
    ['7 foot, 2 inch pipe', '7 ft "7 foot"', '2 in "2 inch"'],
    ['7 foot, 2 inch opening', '86 in "7 foot, 2 inch"'],
    ['six foot two by two foot four', '74 in "six foot two"', '28 in "two foot four"'],
    ['ten foot six by twelve eight', '126 in "ten foot six"', '152 in "twelve eight"'],
    ['a five ten and a half door', '70 1/2 in "five ten and a half"'],
    ['ten sixteen foot two-bys', '10 - "ten"', '16 ft "sixteen foot"'],
    ['eight foot two by fours', '8 ft "eight foot"', '2 - "two"', '4 - "fours"'],
    ['7 ft x 8-4 not 6', '7 ft "7 ft"', '100 in "8-4"', '6 - "6"'],
    ["12' by 9-11", `12 ft "12'"`, '119 in "9-11"'],
    ['eight foot two brackets', '8 ft "eight foot"', '2 - "two"'],
  ],
  'pairs and triples': [
    ['60 by 32 inches', '60 in "60"', '32 in "32 inches"'],
    ['60x32x20', '60 - "60"', '32 - "32"', '20 - "20"'],
    ['2x4x8 x6', '2 - "2"', '4 - "4"', '8 - "8"', '6 each "x6"'],
    [`2x10x14'`, '2 - "2"', '10 - "10"', `14 ft "14'"`],
    ['45 x 90 mm', '45 mm "45"', '90 mm "90 mm"'],
    ['eight by four sheets', '8 - "eight"', '4 - "four"'],
    ['pick up 3 4x8 3/4 cdx', '3 - "3"', '4 - "4"', '8 - "8"', '3/4 in "3/4"'],
    ['36 1/4 w x 80 1/2 h', '36 1/4 in "36 1/4"', '80 1/2 in "80 1/2"'],
    ['three metre by six twenty', '3 m "three metre"', '620 - "six twenty"'],
    ['two twenty by twenty', '2 - "two"', '20 - "twenty"', '20 - "twenty"'],
    ['3 1/2 x 11 7/8 x 18-0', '3 1/2 in "3 1/2"', '11 7/8 in "11 7/8"', '216 in "18-0"'],
    ['a two-by-four', '2 - "two"', '4 - "four"'],
  ],
  counts: [
    ['two and a half bags', '2 1/2 bag "two and a half bags"'],
    ['a couple of tubes', '2 tube "a couple of tubes"'],
    ['couple hundred feet', '200 ft "couple hundred feet"'],
    ['about 40ish feet', '40 ft "40ish feet"'],
    ['two forty five degree bends', '2 - "two"', '45 deg "forty five degree"'],
    ["two boxes'll do", `2 box "two boxes"`],
    ['half a dozen hinges', '6 each "half a dozen"'],
    ['half a box', '1/2 box "half a box"'],
    ['(4) ea brackets', '4 each "(4) ea"'],
    ['plates qty: 6', '6 each "qty: 6"'],
    ['clips x4', '4 each "x4"'],
    ['6 bx', '6 box "6 bx"'],
    ['four eight foot studs', '4 - "four"', '8 ft "eight foot"'],
    ['two fifty pound bags', '2 - "two"', '50 lb "fifty pound"'],
    ['three ten ounce tubes', '3 - "three"', '10 oz "ten ounce"'],
    ['one twenty amp breaker', '1 - "one"', '20 A "twenty amp"'],
    ['two three quarter inch elbows', '2 - "two"', '3/4 in "three quarter inch"'],
    ['one 4 inch cap', '1 - "one"', '4 in "4 inch"'],
    ['four can lights', '4 - "four"'],
  ],
  'units of every kind': [
    ['one twenty volts', '120 V "one twenty volts"'],
    ['two oh eight volts', '208 V "two oh eight volts"'],
    ['20A', '20 A "20A"'],
    ['12 gauge', '12 gauge "12 gauge"'],
    ['eighty pounds on it', '80 lb "eighty pounds"'],
    ['eight pounds per square inch', '8 psi "eight pounds per square inch"'],
    ['two fifty inch pounds', '250 in-lb "two fifty inch pounds"'],
    ['35 in-lb', '35 in-lb "35 in-lb"'],
    ['130 f', '130 F "130 f"'],
    ['10 °C', '10 C "10 °C"'],
    ['minus ten degrees outside', '-10 F "minus ten degrees"'],
    ['45 degree elbow', '45 deg "45 degree"'],
    ['68 degrees in the garage', '68 F "68 degrees"'],
    ['6 mil poly', '6 mil "6 mil"'],
    ['18 mil ply', '18 mm "18 mil"'],
    ['3 yards of concrete', '3 cu yd "3 yards"'],
    ['92 sq. ft. floor', '92 sq ft "92 sq. ft."'],
    ['12 m2', '12 sq m "12 m2"'],
    ['10mm gap', '10 mm "10mm"'],
    ['24 hours', '24 hr "24 hours"'],
    ['nine litres a minute', '9 lpm "nine litres a minute"'],
    ['forty pounds a square foot', '40 psf "forty pounds a square foot"'],
    ['fourteen percent, oak at eight and a half', '14 % "fourteen percent"', '8 1/2 - "eight and a half"'],
    ['noggings at thirteen fifty centres', '1350 mm "thirteen fifty"'],
    ['220 grit', '220 grit "220 grit"'],
  ],
  'ranges, tolerances, rates': [
    ['twenty four to 26 inches', '24 in "twenty four"', '26 in "26 inches"'],
    ['three or four bags', '3 bag "three"', '4 bag "four bags"'],
    ['36 plus or minus an eighth', '36 in "36"', '1/8 in "an eighth"'],
    ['quarter inch per foot', '1/4 in/ft "quarter inch per foot"'],
    ['fall a quarter a foot', '1/4 in/ft "a quarter a foot"'],
    ['a quarter inch to the foot', '1/4 in/ft "a quarter inch to the foot"'],
    ['sixteen on center', '16 in "sixteen"'],
  ],
  'taken back': [
    ['two, no, three bags', '3 bag "three bags"'],
    ['six cans of foam, no wait, five', '5 can "five"'],
    ['four no hang on four and a half', '4 1/2 in "four and a half"'],
    ['thirty no thirty one sorry thirty two inches', '32 in "thirty two inches"'],
    ['12 by 24 no make that 12 by 18', '12 - "12"', '18 - "18"'],
    ['60 by 32 no 34 inches', '60 in "60"', '34 in "34 inches"'],
    ['a dozen anchors, make it two dozen', '24 each "two dozen"'],
    ['two gallons of primer make it three', '3 gal "three"'],
    ['two tubes of epoxy no just one', '1 tube "one"'],
    ["eight hangers, actually let's do ten hangers", '10 - "ten"'],
    ['fourteen point six metres, call it sixteen', '14 3/5 m "fourteen point six metres"', '16 - "sixteen"'],
    ['ten studs, no wait for me outside', '10 - "ten"'],
    ['inch and a half trap, no get two', '1 1/2 in "inch and a half"', '2 - "two"'],
    ['two boxes of nails and actually three tubes', '2 box "two boxes"', '3 tube "three tubes"'],
  ],
  'no reading rather than a wrong one': [
    ['2/8 door'],
    ['unit 4B'],
    ['apartment 12C'],
    ['two eight door'],
    ['8-6 by 10-2'],
    ['2-6 x 6-8 door', '30 in "2-6"', '80 in "6-8"'],
    ['30 68 door'],
    ['the three oh door'],
    ['each one twenty four foot', '24 ft "twenty four foot"'],
    ['that one twenty volt line', '120 V "one twenty volt"'],
    ['order sixteen two by tens', '16 - "sixteen"', '2 - "two"', '10 - "tens"'],
    ['order 60031 is in'],
    ['need twenty two by fours', '20 - "twenty"', '2 - "two"', '4 - "fours"'],
    ['inlet is thirty amp two forty', '30 A "thirty amp"', '240 V "two forty"'],
    ['x12 hangers n x2 tubes glue', '12 each "x12"', '2 tube "x2 tubes"'],
    ['one tub stopper', '1 - "one"'],
    ['two tub mud', '2 tub "two tub"'],
    ['two two by twelves and a half inch', '2 - "two"', '2 - "two"', '12 - "twelves"', '1/2 in "a half inch"'],
    ['need 3 - 8 footers', '3 - "3"', '8 ft "8 footers"'],
    ['two fill hoses, five footers', '2 - "two"', '5 ft "five footers"'],
    ['it gets three posts and five footers', '3 - "three"', '5 - "five"'],
    ['19 sq ft a box. One box left', '19 sq ft "19 sq ft"', '1 box "One box"'],
    ['2-3 inches deep', '2 in "2"', '3 in "3 inches"'],
    ['one-and-a-half-inch', '1 1/2 in "one-and-a-half-inch"'],
    ['five ten and a half', '70 1/2 in "five ten and a half"'],
    ['one twenty and a half', '120 1/2 in "one twenty and a half"'],
    ['gallon and a half', '1 1/2 gal "gallon and a half"'],
    ['twelve foot here, eleven nine there', '12 ft "twelve foot"', '141 in "eleven nine"'],
    ['a ten foot beam and six two by fours', '10 ft "ten foot"', '6 - "six"', '2 - "two"', '4 - "fours"'],
    ['two five amp hour batteries', '2 - "two"', '5 Ah "five amp hour"'],
    ['two thirds done'],
    ['half the crew'],
    ['a fifth box'],
    ['12/2 to the panel'],
    ['cut four to thirty six inches', '4 - "four"', '36 in "thirty six inches"'],
    ['30 in stock', '30 - "30"'],
    ['two in the hall', '2 - "two"'],
    ['4 square box', '4 - "4"'],
  ],
};

for (const [title, rows] of Object.entries(TABLE))
  describe(title, () => {
    it.each(rows)('%s', (text, ...readings) => {
      expect(said(text)).toEqual(readings);
    });
  });

describe('what goes with a reading', () => {
  it.each([
    ['five eighths strong', { tolerance: 'over' }],
    ['a hair under five feet', { tolerance: 'under' }],
    ['twelve inches shy', { tolerance: 'under' }],
    ['about three inches', { bound: 'about' }],
    ['no more than 3/16 in', { bound: 'atMost' }],
    ['at least four inches', { bound: 'atLeast' }],
    ['16 on center', { onCenter: true, unitFrom: 'implied' }],
    ['11.5 square feet to the box', { per: 'box' }],
    ['three more boxes', { unit: 'box', more: true }],
    ['three eighths', { unitFrom: 'implied' }],
    ['twelve', { unitFrom: 'none', unit: null, unitKind: null }],
    ['six feet', { unitFrom: 'said', unitKind: 'length' }],
  ])('%s', (text, wanted) => {
    expect(read(text).quantities[0]).toMatchObject(wanted);
  });

  it.each([
    ['two on each of the four windows', 'eachOf', 2],
    ['one for each of the five bedrooms', 'eachOf', 2],
    ['8 by 10 by 12', 'pair', 3],
    ['from 36 to 38 inches', 'range', 2],
    ['12" ± 1/16"', 'plusMinus', 2],
  ])('%s is tied', (text, kind, size) => {
    const { quantities } = read(text);
    expect(quantities.map((q) => q.group?.index)).toEqual([...Array(size).keys()]);
    for (const { group } of quantities) expect(group).toMatchObject({ kind, size });
  });

  it('shares a unit that was said once', () => {
    expect(read('60 by 32 inches').quantities.map((q) => q.unitFrom)).toEqual(['shared', 'said']);
  });

  // Common practice, no source: a room's second side is in feet where its first is told in feet and inches.
  it.each([
    ['room is five foot six by seven', '7 ft'],
    ['shelf is five foot six by fourteen', '14 ft?'],
    ['door is six foot eight by thirty', '30 in'],
  ])('%s: the other side is %s', (text, side) => {
    const q = read(text).quantities[1]!;
    expect(`${q.value.toFraction()} ${q.unit}${q.doubt ? '?' : ''}`).toBe(side);
  });

  it('points at what was taken back', () => {
    const text = 'get six cans of foam, no wait, five';
    const { takenBackFrom, replaces } = read(text).quantities[0]!;
    expect(text.slice(takenBackFrom)).toBe('six cans of foam, no wait, five');
    expect(replaces).toHaveLength(2);
  });

  it('asks where the trade itself would', () => {
    expect(read('it was thirty two and three').quantities[0]?.doubt).toContain('32-3/8 or 32-3/16');
    expect(read('fifteen feet maybe fifty').quantities.map((q) => q.doubt)).toEqual(['15 or 50?', '15 or 50?']);
  });
});
