import { describe, expect, it } from 'vitest';
import { askCheck, type CheckForm } from '../../server/takeoff/form/index.ts';
import { withSize } from './withSize.ts';

/** One sound form of every check, and its sizes by the path to each. */
const SOUND: readonly [CheckForm, string[]][] = [
  [
    { of: 'receptacle', toBasin: '30', alongCounter: '40', unprotected: '80' },
    ['toBasin', 'alongCounter', 'unprotected'],
  ],
  [{ of: 'hole in stud', cut: '1', nominal: 4, bearing: true }, ['cut']],
  [{ of: 'notch in stud', cut: '3/4', nominal: 4, bearing: true }, ['cut']],
  [{ of: 'hole in joist', cut: '2', nominal: 10 }, ['cut']],
  [{ of: 'notch in joist', cut: '1', nominal: 10, at: 'outer' }, ['cut']],
  [
    { of: 'concrete screw', diameter: '1/4', length: '2-1/4', through: '3/4', hole: '3/16', holeDepth: '2' },
    ['diameter', 'length', 'through', 'hole', 'holeDepth'],
  ],
  [{ of: 'deck boards', spacing: '16', thick: '5/4', diagonal: false }, ['spacing']],
  [
    { of: 'stairs', risers: ['7-1/2'], treads: ['10'], headroom: '81', handrail: '36', width: '37' },
    ['risers.0', 'treads.0', 'headroom', 'handrail', 'width'],
  ],
  [{ of: 'guard', on: 'floor', drop: '40', height: '37', gap: '3-1/2' }, ['drop', 'height', 'gap']],
  [{ of: 'egress window', width: '34', height: '30', sill: '40' }, ['width', 'height', 'sill']],
  [{ of: 'door opening', width: '34', height: '82-1/2', door: ['32', '80'] }, ['width', 'height', 'door.0', 'door.1']],
  [{ of: 'tile', side: '12', joint: '3/16', layout: 'grid', edge: 'rectified' }, ['side', 'joint']],
  [{ of: 'drain slope', pipe: '2', run: '10', fall: '3' }, ['pipe', 'run', 'fall']],
  [{ of: 'trap arm', length: '2', pipe: '1-1/2' }, ['length', 'pipe']],
  [{ of: 'dryer vent', run: '20', nineties: 1 }, ['run']],
  [{ of: 'closet flange', below: '1/8', bolts: '2-1/4', foot: '3/4' }, ['bolts', 'foot']],
  [
    {
      of: 'clearances',
      toiletSide: '16',
      toiletFront: '25',
      toiletCenters: '31',
      sinkFront: '22',
      showerInside: ['36', '36'],
      showerFront: '25',
    },
    ['toiletSide', 'toiletFront', 'toiletCenters', 'sinkFront', 'showerInside.0', 'showerInside.1', 'showerFront'],
  ],
  [
    { of: 'pipe through', pipe: { kind: 'copper', size: '1/2' }, hole: '3/4', outer: { kind: 'pvc', size: '1-1/4' } },
    ['pipe.size', 'hole', 'outer.size'],
  ],
  [{ of: 'part through', hole: '1-3/8', part: '1-1/4', asked: '1-1/4' }, ['hole', 'part', 'asked']],
];

const sizes = SOUND.flatMap(([form, paths]) => paths.map((path) => [form.of, path, form] as const));

describe('a size that cannot be', () => {
  it.each(SOUND.map(([form]) => [form.of, form] as const))('%s passes with sound sizes', (_, form) => {
    const found = askCheck(form);
    expect(found.ok && found.checks.every((c) => c.result !== 'does not fit')).toBe(true);
  });

  it.each(sizes)('%s refuses its %s in words', (_, path, form) => {
    for (const size of ['0', '-3', '-3 ft', '9000 ft', '12 cubits', 'wide', ''])
      expect(askCheck(withSize(form, path, size)), size).toMatchObject({ ok: false, why: expect.stringMatching(/./) });
  });
});
