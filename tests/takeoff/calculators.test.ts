import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Form, reckonForm } from '../../server/takeoff/form/index.ts';
import { withSize } from './withSize.ts';

const ROOM = { length: '12', width: '9' };

/** One sound form of every calculator, and its sizes by the path to each. */
const SOUND: readonly [Form, string[]][] = [
  [{ kind: 'cover', ...ROOM, unit: 'box', holds: 20, tile: ['12', '24'] }, ['length', 'width', 'tile.0', 'tile.1']],
  [{ kind: 'mortar', ...ROOM, notch: ['1/4', '3/8'] }, ['length', 'width', 'notch.0', 'notch.1']],
  [
    { kind: 'grout', ...ROOM, tile: ['12', '24'], thickness: '3/8', joint: '1/8', bagPounds: 25 },
    ['length', 'width', 'tile.0', 'tile.1', 'thickness', 'joint'],
  ],
  [{ kind: 'sealant', run: '40', bead: ['1/4', '3/8'] }, ['run', 'bead.0', 'bead.1']],
  [{ kind: 'spacing', run: '12', spacing: '16' }, ['run', 'spacing']],
  [{ kind: 'boards', run: '12', width: '5-1/2', gap: '1/8' }, ['run', 'width']],
  [{ kind: 'balusters', clear: '6', width: '1-1/2' }, ['clear', 'width']],
  [{ kind: 'holes', holes: 4, diameter: '10', depth: '36', bagPounds: 80 }, ['diameter', 'depth']],
  [{ kind: 'slab', ...ROOM, thick: '4', bagPounds: 80 }, ['length', 'width', 'thick']],
  [{ kind: 'walls', ...ROOM, height: '8', unit: 'gal', holds: 350 }, ['length', 'width', 'height']],
  [{ kind: 'board', ...ROOM, height: '8', sheet: ['4', '8'] }, ['length', 'width', 'height', 'sheet.0', 'sheet.1']],
  [{ kind: 'run', run: '42', stock: '10' }, ['run', 'stock']],
  [{ kind: 'batts', wall: '28', spacing: '16', height: '93 in', batt: '93' }, ['wall', 'spacing', 'height', 'batt']],
  [{ kind: 'cutList', pieces: [{ length: '31 7/8', count: 6 }], stock: ['8'] }, ['pieces.0.length', 'stock.0']],
];

/** What is bought; fails where the form is refused. */
function bought(form: Form) {
  const found = reckonForm(form);
  if (!found.ok) throw new Error(found.why);
  return found.buy;
}

const sizes = SOUND.flatMap(([form, paths]) => paths.map((path) => [form.kind, path, form] as const));

describe('every calculator', () => {
  it.each(SOUND.map(([form]) => [form.kind, form] as const))('%s answers a sound form with its working', (_, form) => {
    const found = reckonForm(form);
    expect(found).toMatchObject({ ok: true, working: expect.stringMatching(/\d/), source: expect.stringMatching(/./) });
  });

  it.each(sizes)('%s refuses its %s where it cannot be', (_, path, form) => {
    for (const size of ['0', '-3', '-3 ft', '9000 ft', '12 cubits', 'wide', ''])
      expect(reckonForm(withSize(form, path, size)), size).toMatchObject({
        ok: false,
        why: expect.stringMatching(/./),
      });
  });

  it.each<[string, (k: number) => Form]>([
    ['cover', (k) => ({ kind: 'cover', length: `${k}`, width: '9', unit: 'box', holds: 11.5 })],
    ['mortar', (k) => ({ kind: 'mortar', length: `${k}`, width: '9', notch: ['1/4', '3/8'] })],
    [
      'grout',
      (k) => ({
        kind: 'grout',
        length: `${k}`,
        width: '9',
        tile: ['12', '24'],
        thickness: '3/8',
        joint: '1/8',
        bagPounds: 10,
      }),
    ],
    ['sealant', (k) => ({ kind: 'sealant', run: `${k}`, bead: ['1/4', '3/8'] })],
    ['spacing', (k) => ({ kind: 'spacing', run: `${k}`, spacing: '16' })],
    ['boards', (k) => ({ kind: 'boards', run: `${k}`, width: '5-1/2', gap: '1/8' })],
    ['balusters', (k) => ({ kind: 'balusters', clear: `${k}`, width: '1-1/2' })],
    ['holes', (k) => ({ kind: 'holes', holes: k, diameter: '10', depth: '36', bagPounds: 80 })],
    ['slab', (k) => ({ kind: 'slab', length: `${k}`, width: '9', thick: '4', bagPounds: 60 })],
    ['walls', (k) => ({ kind: 'walls', length: `${k}`, width: '9', height: '8', unit: 'gal', holds: 350 })],
    ['board', (k) => ({ kind: 'board', length: `${k}`, width: '9', height: '8', sheet: ['4', '12'] })],
    ['run', (k) => ({ kind: 'run', run: `${k}`, stock: '20' })],
    ['batts', (k) => ({ kind: 'batts', wall: `${k}`, spacing: '16', height: '93 in', batt: '93' })],
    ['cut list', (k) => ({ kind: 'cutList', pieces: [{ length: '31 7/8', count: k }], stock: ['8'] })],
  ])('%s: more never needs less', (_, of) => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 0, max: 40 }), (k, more) => {
        const [less, grown] = [bought(of(k)), bought(of(k + more))];
        for (const [i, { quantity }] of less.entries()) {
          expect(quantity).toBeGreaterThan(0);
          expect(grown[i]!.quantity).toBeGreaterThanOrEqual(quantity);
        }
      }),
      { numRuns: 40 },
    );
  });

  it.each<[string, (waste: number | undefined) => Form, number]>([
    // 12 x 9 = 108 sq ft; / 11.5 = 9.4.
    ['cover', (waste) => ({ kind: 'cover', ...ROOM, unit: 'box', holds: 11.5, waste }), 10],
    // 108 / 60 = 1.8.
    ['mortar', (waste) => ({ kind: 'mortar', ...ROOM, notch: ['1/4', '3/8'], waste }), 2],
    // 40 ft; 10.1 x 231 / 128 / (1/4 x 3/8 x 12) = 16.2 ft a tube: 2.5.
    ['sealant', (waste) => ({ kind: 'sealant', run: '40', bead: ['1/4', '3/8'], waste }), 3],
    // 108 / 3 = 36 cu ft; / 0.6 = 60.
    ['slab', (waste) => ({ kind: 'slab', ...ROOM, thick: '4', bagPounds: 80, waste }), 60],
    // 2 x 21 x 8 = 336; / 350.
    ['walls', (waste) => ({ kind: 'walls', ...ROOM, height: '8', unit: 'gal', holds: 350, waste }), 1],
    // 336 / 48 = 7.
    ['board', (waste) => ({ kind: 'board', ...ROOM, height: '8', sheet: ['4', '12'], waste }), 7],
    ['run', (waste) => ({ kind: 'run', run: '42', stock: '10', waste }), 5],
  ])('%s: no waste is the exact count, and waste never less', (_, of, exact) => {
    expect(bought(of(0))[0]!.quantity).toBe(exact);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 50 }), (percent) => {
        expect(bought(of(percent))[0]!.quantity).toBeGreaterThanOrEqual(exact);
      }),
      { numRuns: 20 },
    );
    for (const waste of [-1, 51, 400]) expect(reckonForm(of(waste)), `${waste} %`).toMatchObject({ ok: false });
  });
});
