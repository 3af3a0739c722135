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
    ['label', 'a four twelve roof', 'four twelve'],
    ['year', 'done back in seventy eight', 'seventy eight'],
    ['year', 'the ninety four code', 'ninety four'],
    ['money', 'four bucks a foot', 'four bucks a foot'],
    ['clock', 'at two we leave', 'two'],
  ])('%s: %s', (kind, text, quote) => {
    const { quantities, notQuantities } = read(text);
    expect(notQuantities.map((other) => [other.kind, other.quote])).toEqual([[kind, quote]]);
    expect(quantities).toEqual([]);
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
