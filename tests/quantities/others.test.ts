import { describe, expect, it } from 'vitest';
import { read } from './read.ts';

describe('numbers that are no quantity', () => {
  it.each([
    ['phone', 'call 503-555-0188', '503-555-0188'],
    ['phone', 'his cell is (503) 555-0123', '(503) 555-0123'],
    ['phone', 'it is five five five oh one four two', 'five five five oh one four two'],
    ['phone', 'ring 07700 900123', '07700 900123'],
    ['address', 'the house at 418 Larch Street', '418 Larch Street'],
    ['address', 'the lady at eighteen Larch Close', 'eighteen Larch Close'],
    ['code', 'ends in double oh nine seven', 'double oh nine seven'],
    ['code', 'plate is 7 K R T 2 0 8', '7 K R T 2 0 8'],
    ['label', 'the relief valve in twelve is weeping', 'twelve'],
    ['label', 'sheet A five hundred shows it', 'five hundred'],
    ['label', 'it falls one in eighty', 'one in eighty'],
    ['idiom', 'dropped from one end to the other', 'one'],
    ['clock', 'meet me at 10:30', '10:30'],
    ['clock', 'half past ten', 'half past ten'],
    ['clock', 'flights at 6.45 so I cant stay', '6.45'],
    ['clock', 'got the mixer going by 230', '230'],
    ['label', "the wire's two ought", 'two ought'],
    ['label', "the beam's marked B seven", 'seven'],
    ['idiom', 'im 47 tomorrow', '47'],
    ['clock', 'be there by seven thirty in the morning', 'seven thirty'],
    ['clock', 'she is here after nine', 'nine'],
    ['money', 'paid $385 for it', '$385'],
    ['money', 'sixty two bucks', 'sixty two bucks'],
    ['code', 'WX-4420 is gone', '4420'],
    ['code', 'run 12-2 to it', '12-2'],
    ['label', 'the fan is on circuit 14', '14'],
    ['label', 'room 214 again', '214'],
    ['label', 'a two story house', 'two story'],
    ['label', 'five quarter decking', 'five quarter'],
    ['ordinal', 'the 2nd floor', '2nd'],
    ['ordinal', 'on the twenty third', 'twenty third'],
    ['year', 'built in nineteen twenty six', 'nineteen twenty six'],
    ['year', 'house is from 1978', '1978'],
    ['date', 'lands 6/1', '6/1'],
    ['date', 'on june 3 at last', '3'],
    ['idiom', 'one of those days', 'one of those'],
    ['idiom', 'give me two seconds', 'two seconds'],
    ['idiom', 'the one behind the toilet', 'one'],
    ['idiom', 'a bigger one', 'one'],
    ['idiom', 'an extra hand or two', 'two'],
    ['idiom', 'the first two are gone', 'two'],
    ['idiom', 'checked it nine times', 'nine times'],
    ['idiom', 'a scale of one to ten', 'one to ten'],
    ['code', 'the lockbox is 0-4-1-7', '0-4-1-7'],
    ['code', 'gate code is nine nine one four pound', 'nine nine one four pound'],
    ['idiom', 'thats strike 2 for the new kid', 'strike 2'],
    ['idiom', 'three of my uncles were masons', 'three'],
    ['code', 'rego is one kay seven bee double two', 'one kay seven bee double two'],
    ['money', 'that will set you back a good four hundred', 'four hundred'],
    ['label', 'schedule forty pipe', 'forty'],
    ['year', 'done back in seventy eight', 'seventy eight'],
    ['year', 'the ninety four code', 'ninety four'],
    ['money', 'four bucks a foot', 'four bucks a foot'],
    ['clock', 'at two we leave', 'two'],
    ['clock', 'breakfast was at six', 'six'],
    ['clock', 'he rang at ten to four', 'ten to four'],
    ['clock', 'half eight start tomorrow', 'half eight'],
    ['clock', 'on site for eighteen hundred hours', 'eighteen hundred hours'],
    ['clock', "it's ten thirty already", 'ten thirty'],
    ['idiom', "he's fifty six and still at it", 'fifty six'],
    ['idiom', 'their dog is 14 so watch the gate', '14'],
    ['idiom', 'they lost five two last night', 'five two'],
    ['idiom', 'won 3 nothing', '3 nothing'],
    ['idiom', "I'm ninety percent sure", 'ninety percent'],
    ['idiom', 'nine out of ten times it is the flapper', 'nine out of ten times'],
    ['idiom', 'it hums twenty-four seven', 'twenty-four seven'],
    ['idiom', 'my five year old could hang that', 'five year old'],
    ['label', 'he takes the fourteen bus', 'fourteen bus'],
    ['label', 'room 212 smells', '212'],
    ['label', 'flat 4b', '4b'],
    ['label', 'parked at no 12', '12'],
    ['label', 'page 3 of 12', '3 of 12'],
    ['label', 'tip size 517', '517'],
    ['address', 'parked out at 77 Birchwood', '77 Birchwood'],
    ['code', 'dye lot is four four one nine', 'four four one nine'],
    ['code', 'rego is bravo kilo one nine', 'one nine'],
    ['label', 'job twenty two oh six', 'twenty two oh six'],
    ['year', 'he was born in fifty three', 'fifty three'],
    ['year', 'the class of two thousand nine', 'two thousand nine'],
    ['money', "it's ninety five a pop", 'ninety five'],
    ['money', 'he wants four eighty for the lot', 'four eighty'],
    ['money', 'eight or nine hundred bucks', 'eight or nine hundred bucks'],
    ['money', '30% deposit', '30%'],
    ['code', 'the mesh is six six ten ten', 'six six ten ten'],
    ['code', 'submittal oh nine two nine hundred came back', 'oh nine two nine hundred'],
    ['clock', 'my appointment is the nine and half', 'nine and half'],
    ['clock', 'boss said be there 730 sharp', '730 sharp'],
    ['idiom', 'brb 2 secs', '2 secs'],
    ['idiom', 'my son has nine years and he helps', 'nine years'],
    ['label', 'is it apartment 3 C', '3 C'],
    ['label', 'item 3a again', '3a'],
    ['label', 'sheet A 3.2 shows it', '3.2'],
  ])('%s: %s', (kind, text, quote) => {
    const { quantities, notQuantities } = read(text);
    expect(notQuantities.map((other) => [other.kind, other.quote])).toEqual([[kind, quote]]);
    expect(quantities).toEqual([]);
  });

  it.each([
    ['you on channel 4 or 7', ['4', '7']],
    ['start at house nineteen then do twenty one and twenty three', ['nineteen', 'twenty one', 'twenty three']],
    ['circuits nine and eleven are dead', ['nine', 'eleven']],
    ['is the apartment 3 C not 3 D', ['3 C', '3']],
  ])('one name, then the next: %s', (text, quotes) => {
    const { quantities, notQuantities } = read(text);
    expect(notQuantities.map(({ quote }) => quote)).toEqual(quotes);
    expect(quantities).toEqual([]);
  });

  it.each([
    'old Pete worked out of local three seventeen',
    'take the four oh one to the bridge',
    'send it to extension four twelve',
    'the hydrant tag is four four two',
    'two lawyers and a priest walk into a bar',
    'his boy scored four goals and broke a window',
    'call the city back at two one five',
  ])('weighed by its neighbours, it counts nothing: %s', (text) => {
    expect(read(text).quantities).toEqual([]);
  });

  it.each([
    ['the garage needs six of them', ['six']],
    ['a two eight door and three hinges', ['three']],
    ['they come in packs of 20', ['20']],
    ['ten sixteen foot boards for the deck', ['ten', 'sixteen foot']],
    ['minus eighteen last night', ['minus eighteen']],
  ])('weighed by its neighbours, it counts: %s', (text, quotes) => {
    expect(read(text).quantities.map(({ quote }) => quote)).toEqual(quotes);
  });

  it.each([
    ['$1,250.50', 1250.5],
    ['two grand', 2000],
    ['$3k', 3000],
    ['the fee was one fifty', 150],
  ])('money keeps its sum: %s', (text, value) => {
    expect(read(text).notQuantities[0]?.value?.valueOf()).toBe(value);
  });

  it.each(['need one sink', 'one left', 'put one in the hall', 'window 36 by 48', 'at four inches', 'after two coats'])(
    'and this is one: %s',
    (text) => {
      expect(read(text).quantities.length).toBeGreaterThan(0);
    },
  );
});
