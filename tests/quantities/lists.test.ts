import { describe, expect, it } from 'vitest';
import { hear } from '../../parser/hearing/index.ts';
import { readQuantities } from '../../parser/quantities/index.ts';
import { builtIn } from '../../parser/trade/index.ts';

const vocabulary = builtIn();
const said = (text: string) =>
  readQuantities(hear(text, vocabulary).tokens, text).quantities.map(
    (q) => `${q.value.toFraction(true)} ${q.unit ?? '-'} "${q.quote}"`,
  );

// What is said or typed, then every reading in it.
const TABLE: Record<string, [string, ...string[]][]> = {
  'a count before the size of what is counted': [
    ['ten 4x8 sheets', '10 - "ten"', '4 - "4"', '8 - "8"'],
    ['ten four by eight sheets', '10 - "ten"', '4 - "four"', '8 - "eight"'],
    ["3 - 10' sticks", '3 - "3"', '10 ft "10\'"'],
    ["12 - 2x6 - 16'", '12 - "12"', '2 - "2"', '6 - "6"', '16 ft "16\'"'],
    ['24 - 80# bags', '24 - "24"', '80 lb "80#"'],
    ['2 - 3" elbows', '2 - "2"', '3 in "3""'],
    ['10 - 12 sheets', '10 sheet "10"', '12 sheet "12 sheets"'],
    ['2 - 3" gaps', '2 in "2"', '3 in "3""'],
    ['140x45 5.4m x 8', '140 - "140"', '45 - "45"', '5 2/5 m "5.4m"', '8 each "x 8"'],
    ['room 3m x 4', '3 m "3m"', '4 m "4"'],
  ],
  'sides, and no watts': [
    ['window 35-1/2 W x 47-1/4 H', '35 1/2 in "35-1/2"', '47 1/4 in "47-1/4"'],
    ['100 W x 4 lamps', '100 W "100 W"', '4 each "x 4"'],
  ],
  'parts of a pack whose article is swallowed': [
    ['third of a tube left', '1/3 tube "third of a tube"'],
    ['the third of a set'],
  ],
  'below zero': [
    ["she's forty below so the saw won't start", '-40 - "forty below"'],
    ['it is ten degrees below zero', '-10 deg "ten degrees below zero"'],
    ['minus eighteen in the walk in', '-18 - "minus eighteen"'],
    ["it's two below and level", '2 - "two"'],
    ['it was twelve below on the left', '12 - "twelve"'],
  ],
  'units of the trades': [
    ['two 12V 18Ah batteries', '2 - "two"', '12 V "12V"', '18 Ah "18Ah"'],
    ['batteries 7 Ah each', '7 Ah "7 Ah"'],
    ['purge at 5 cfh', '5 cfh "5 cfh"'],
    ['13.8 kV line', '13 4/5 kV "13.8 kV"'],
    ['500 kcmil copper', '500 kcmil "500 kcmil"'],
    ['manifold at 0.5" wc', '1/2 in wc "0.5" wc"'],
    ['1.2k sf of board', '1200 sq ft "1.2k sf"'],
    ['6 yds 3000 psi', '6 cu yd "6 yds"', '3000 psi "3000 psi"'],
    ['shot 4 mil wet', '4 mil "4 mil"'],
    ['the float coat is twelve mil thick', '12 mm "twelve mil"'],
  ],
  'what is taken back': [['the sink base is thirty three sorry no is thirty six', '36 - "thirty six"']],
  'readings of the weather': [
    ["wind's seventeen gusting twenty four miles an hour", '17 - "seventeen"', '24 mph "twenty four miles an hour"'],
  ],
  'names, ways and codes, which count nothing': [
    ['port 17 n 18 swapped'],
    ['ports 4 and 5 are down'],
    ['pile 14 hit refusal'],
    ['BCuP-5 rod'],
    ['NEC 210.8 again'],
    ['ten tons of fifty seven stone', '10 ton "ten tons"'],
    ['five minutes from the yard'],
    ['ninety minutes from the time of batching', '90 min "ninety minutes"'],
    ['ten four good buddy'],
  ],
};

describe.each(Object.entries(TABLE))('%s', (_, rows) => {
  it.each(rows)('%s', (text, ...readings) => {
    expect(said(text)).toEqual(readings);
  });
});
