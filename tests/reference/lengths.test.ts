import Fraction from 'fraction.js';
import { describe, expect, it } from 'vitest';
import { papered } from '../../server/takeoff/calculators/wallpaper.ts';
import { takeOffOf } from '../takeoff/order.ts';

describe('lengths of wire, pipe and roof edges, added up from what a note tells', () => {
  it.each<[string, string, string]>([
    // electricalresources.com, "Re-capping branch circuit worksheets": 2, 3, 4, 2 and 1 wires along 820, 410, 160, 340 and
    // 330 ft of conduit are 4,520 ft; 15 % for make-up and waste: 5,198.
    [
      'wire, a branch circuit worksheet',
      '12/2 cable, two runs at 820 feet, three at 410, four at 160, two at 340 and one at 330, 15 percent extra, sold by the foot',
      'cable 12/2: 5198 ft',
    ],
    // felttheater.com, "Accurate measurement and estimation of wire length": 100 ft and 20 %: 120.
    ['wire, 100 ft', '14/2 romex, 100 feet of it, add 20 percent, sold by the foot', 'cable 14/2: 120 ft'],
    // ehow.com/how_7833479, PEX for a floor of 650 sq ft: 975 ft, loops of 250 ft: 3.9, so 4.
    ['pex, 975 ft', '975 feet of pex, 250 foot coils', 'pex: 4 coil'],
    // buildmetriclab.com, in-floor tubing: 80 m2 at 300 mm is 266.67 m; 10 % for bends and the run to the manifold: 293.3.
    ['pex, 80 m2', '266.67 m of pex, 10 percent extra, 100 m coils', 'pex: 3 coil'],
    // illinoisroofing.examzify.com, net drip edge of a hip roof of 40 by 20 ft: 120 ft.
    [
      'drip edge, a hip roof',
      'drip edge, hip roof, two eaves at 40 feet and two at 20, 10 ft pieces',
      'drip edge 10 ft: 12 each',
    ],
    // calczero.com, drip-edge lengths: a run of 60 ft and 10 %: 7 lengths.
    ['drip edge, 60 ft', 'drip edge, 60 feet of it, 10 percent for laps, 10 foot pieces', 'drip edge 10 ft: 7 each'],
  ])('%s', (_, note, line) => {
    expect(takeOffOf(['den'], note)).toEqual([line]);
  });
});

describe('wallpaper by drops', () => {
  const f = (value: number | string) => new Fraction(value);
  const rolls = (around: Fraction, height: Fraction, width: Fraction, length: Fraction) => {
    const answer = papered({ around, height, roll: { width, length }, repeat: null, waste: null });
    return answer.ok ? answer.amount.div(answer.pack!.holds).ceil().valueOf() : answer.why;
  };
  const metres = (value: string) => f(value).div('0.3048');

  it.each<[string, Fraction, Fraction, Fraction, Fraction, number]>([
    // davesdiytips.com, "Wallpaper measuring and planning": 756 in around, 9 ft high, rolls 21 in by 33 ft: 36 drops, 3 to a
    // roll: 12 (the page buys one more to spare).
    ['756 in around', f(63), f(9), f('1.75'), f(33), 12],
    // mail.invlad.ru/30226088: 18 m around, 2.5 m high, rolls 0.63 by 10.5 m: 29 drops, 4 to a roll: 8.
    ['18 m around', metres('18'), metres('2.5'), metres('0.63'), metres('10.5'), 8],
  ])('%s', (_, around, height, width, length, wanted) => {
    expect(rolls(around, height, width, length)).toBe(wanted);
  });

  it('asks where a roll is too short for a drop, and never takes fewer for more wall or a taller pattern', () => {
    expect(rolls(f(40), f(12), f('1.75'), f(11))).toBeTypeOf('string');
    expect(rolls(f(0), f(8), f('1.75'), f(33))).toBeTypeOf('string');
    const plain = papered({
      around: f(46),
      height: f(8),
      roll: { width: f('1.75'), length: f(33) },
      repeat: null,
      waste: null,
    });
    const large = papered({
      around: f(46),
      height: f(8),
      roll: { width: f('1.75'), length: f(33) },
      repeat: f(3),
      waste: null,
    });
    expect(
      plain.ok && large.ok && large.amount.div(large.pack!.holds).compare(plain.amount.div(plain.pack!.holds)),
    ).toBe(1);
  });
});
