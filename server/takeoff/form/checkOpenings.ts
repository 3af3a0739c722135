import type Fraction from 'fraction.js';
import { roughOpening } from '../checks/doorOpening.ts';
import { egressOpening, egressSill } from '../checks/egress.ts';
import { balusterGap, guardHeight, handrailHeight } from '../checks/guard.ts';
import { risers, stairHeadroom, stairWidth, treads } from '../checks/stairs.ts';
import { tileJoint, tileOffset } from '../checks/tile.ts';
import type { Verdict } from '../checks/verdict.ts';
import { woodMoisture } from '../checks/woodMoisture.ts';
import { figure, type Length, needed, size, WrongMeasure } from './measure.ts';

/** All lengths inches where bare; offset and moisture per cent. */
export type OpeningCheck =
  | {
      of: 'stairs';
      risers?: Length[] | undefined;
      treads?: Length[] | undefined;
      width?: Length | undefined;
      headroom?: Length | undefined;
      handrail?: Length | undefined;
    }
  | {
      of: 'guard';
      on: 'floor' | 'stair';
      drop?: Length | undefined;
      height?: Length | undefined;
      /** Widest space between balusters. */
      gap?: Length | undefined;
    }
  | {
      of: 'egress window';
      width?: Length | undefined;
      height?: Length | undefined;
      sill?: Length | undefined;
      gradeFloor?: boolean | undefined;
    }
  | { of: 'door opening'; width: Length; height?: Length | undefined; door: [Length, Length] }
  | {
      of: 'tile';
      side: Length;
      joint?: Length | undefined;
      layout?: 'grid' | 'running bond' | undefined;
      edge?: 'rectified' | 'calibrated' | undefined;
      warpage?: Length | undefined;
      variation?: Length | undefined;
      offset?: number | undefined;
    }
  | { of: 'wood floor'; flooring: number; subfloor: number; wide?: boolean | undefined };

/** @throws WrongMeasure for sizes that cannot be */
export function openings(form: OpeningCheck): Verdict[] {
  switch (form.of) {
    case 'stairs':
      return stairs(form);
    case 'guard': {
      const [drop, height, gap] = [
        size(form.drop, 'the drop', 1200),
        size(form.height, 'the rail', 120),
        size(form.gap, 'the gap', 48),
      ];
      const asked = drop || height ? [guardHeight({ drop, height, on: form.on })] : [];
      return gap ? [...asked, balusterGap(gap, form.on)] : asked;
    }
    case 'egress window':
      return egress(form);
    case 'door opening': {
      const [width, height] = [opening(form.width), form.height === undefined ? null : opening(form.height)];
      const [wide, high] = form.door.map((side) => needed(size(side, 'the door', 144), 'the door'));
      return roughOpening({ width, height }, { width: wide!, height: high! });
    }
    case 'tile':
      return tile(form);
    case 'wood floor': {
      const [flooring, subfloor] = [
        figure(form.flooring, 'the flooring', 60, '%'),
        figure(form.subfloor, 'the subfloor', 60, '%'),
      ];
      return [woodMoisture(flooring!, subfloor!, form.wide ?? null)];
    }
  }
}

const opening = (text: Length): Fraction => needed(size(text, 'the opening', 300), 'the opening');

function stairs(form: Extract<OpeningCheck, { of: 'stairs' }>): Verdict[] {
  const all = (list: Length[] | undefined, what: string, most: number) =>
    (list ?? []).map((text) => needed(size(text, what, most), what));
  const [width, headroom, handrail] = [
    size(form.width, 'the stair', 300),
    size(form.headroom, 'the headroom', 300),
    size(form.handrail, 'the handrail', 120),
  ];
  return [
    ...risers(all(form.risers, 'a riser', 24)),
    ...treads(all(form.treads, 'a tread', 60)),
    ...[width && stairWidth(width), headroom && stairHeadroom(headroom), handrail && handrailHeight(handrail)].filter(
      (v) => v !== null,
    ),
  ];
}

function egress(form: Extract<OpeningCheck, { of: 'egress window' }>): Verdict[] {
  const [width, height, sill] = [
    size(form.width, 'the opening', 144),
    size(form.height, 'the opening', 144),
    size(form.sill, 'the sill', 144),
  ];
  if (!width !== !height) throw new WrongMeasure('an escape window takes both its clear width and its clear height');
  const verdicts = width && height ? egressOpening({ width, height, gradeFloor: form.gradeFloor ?? null }) : [];
  return sill ? [...verdicts, egressSill(sill)] : verdicts;
}

function tile(form: Extract<OpeningCheck, { of: 'tile' }>): Verdict[] {
  const side = needed(size(form.side, 'the tile', 126), 'the longest side of the tile');
  const joint = size(form.joint, 'the joint', 2);
  if (joint && joint.compare(side) >= 0) throw new WrongMeasure('a joint as wide as the tile: is that right?');
  const offset = figure(form.offset, 'the offset', 50, '%');
  return [
    joint &&
      tileJoint({
        joint,
        side,
        layout: form.layout ?? null,
        edge: form.edge ?? null,
        warpage: size(form.warpage, 'the warpage', 1),
        variation: size(form.variation, 'the difference in size', 1),
      }),
    offset && tileOffset(offset, side),
  ].filter((v) => v !== null);
}
