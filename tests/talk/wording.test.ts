import { describe, expect, it } from 'vitest';
import { unitWord } from '../../parser/quantities/containers.ts';
import {
  areaOf,
  cautionWords,
  goodsWord,
  isReady,
  moneyWords,
  waitWords,
  whenWords,
} from '../../server/talk/wording.ts';

describe('goods in words', () => {
  it.each([
    ['deck board', null, 'deck boards'],
    ['joist hanger', 'each', 'joist hangers'],
    ['stop valve for toilet', 'each', 'stop valves for toilet'],
    ['switch', 'each', 'switches'],
    ['pulley', 'each', 'pulleys'],
    ['assembly', 'each', 'assemblies'],
    ['4x4', 'each', '4x4'],
    ['GFCI', 'each', 'GFCI'],
    ['flashing', 'each', 'flashing'],
    ['pipe fitting', 'each', 'pipe fittings'],
    ['drywall', 'each', 'drywall'],
    ['mortar', 'bag', 'mortar'],
  ])('%s by %s', (item, unit, many) => {
    expect(goodsWord(item, unit, true)).toBe(many);
    expect(goodsWord(item, unit, false)).toBe(item);
  });

  it('names what is in a box in the plural, one box or more', () => {
    expect([goodsWord('deck screw', 'box', false), goodsWord('joint compound', 'box', true)]).toEqual([
      'deck screws',
      'joint compound',
    ]);
  });

  it('puts containers in the plural and leaves measures alone', () => {
    expect([unitWord('box', true), unitWord('bag', true), unitWord('sq ft', true), unitWord('box', false)]).toEqual([
      'boxes',
      'bags',
      'sq ft',
      'box',
    ]);
  });

  it('writes money as people do', () => {
    expect([moneyWords(48, 'USD'), moneyWords(12.5, 'EUR'), moneyWords(3, 'CHF')]).toEqual(['$48', '€12.50', 'CHF 3']);
  });
});

describe('an item in words', () => {
  const item = (readyOn: string | null, due: string | null) => ({ state: 'open', readyOn, due });

  it('tells the days that are ahead, and one that was missed', () => {
    expect(whenWords(item('2026-05-15', '2026-05-15'), '2026-05-13')).toEqual(['set for 2026-05-15']);
    expect(whenWords(item('2026-05-12', null), '2026-05-13')).toEqual([]);
    expect(whenWords(item('2026-05-14', '2026-05-18'), '2026-05-13')).toEqual(['ready 2026-05-14', 'by 2026-05-18']);
    expect(whenWords(item(null, '2026-05-12'), '2026-05-13')).toEqual(['was due 2026-05-12']);
  });

  it('waits for a thing, not for the day that is told beside it', () => {
    const waits = ['the inspector', '48 hours', 'the second coat', 'tomorrow', 'first thing Monday', 'the 14th', null];
    expect(waits.map(waitWords)).toEqual([
      'waits for the inspector',
      'waits for 48 hours',
      'waits for the second coat',
      null,
      null,
      null,
      null,
    ]);
  });

  it('is ready unless something sets it for later', () => {
    expect(isReady(item('2026-05-14', null), '2026-05-13')).toBe(false);
    expect(isReady(item('2026-05-13', null), '2026-05-13')).toBe(true);
    expect(isReady(item(null, '2026-05-20'), '2026-05-13')).toBe(true);
    expect(isReady({ ...item(null, null), state: 'waiting' }, '2026-05-13')).toBe(false);
  });

  it('names its area once', () => {
    expect(areaOf({ task: 'plane mud room door', area: 'Mud room' })).toBeNull();
    expect(areaOf({ task: 'plane door', area: 'mud room' })).toBe('mud room');
  });

  it('leaves off what every caution ends with, and nothing else', () => {
    expect(cautionWords('Shore it first. Local code and the licensed trade decide.')).toBe('Shore it first.');
    expect(cautionWords('Wear a mask.')).toBe('Wear a mask.');
  });
});
