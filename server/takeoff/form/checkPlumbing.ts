import type Fraction from 'fraction.js';
import {
  lavatoryFront,
  showerFront,
  showerInside,
  toiletCenters,
  toiletFront,
  toiletSide,
} from '../checks/clearance.ts';
import { closetBolts } from '../checks/closetBolt.ts';
import { drainSlope } from '../checks/drain.ts';
import { dryerVent } from '../checks/dryerVent.ts';
import { flangeHeight, thickRing } from '../checks/flange.ts';
import {
  holeAsked,
  type Pipe,
  type PipeKind,
  partThroughHole,
  pipeThroughHole,
  pipeThroughPipe,
} from '../checks/pipe.ts';
import { trapArm } from '../checks/trapArm.ts';
import type { Verdict } from '../checks/verdict.ts';
import { fahrenheit, hotWater, staticPressure } from '../checks/water.ts';
import { feet, figure, type Length, lengthOf, needed, size, WrongMeasure } from './measure.ts';

interface PipeAsked {
  kind: PipeKind;
  /** Nominal. */
  size: Length;
}

/** Runs are feet where bare, every other length inches. `below` is negative for a flange above the finished floor. */
export type PlumbingCheck =
  | { of: 'drain slope'; pipe?: Length | undefined; run?: Length | undefined; fall?: Length | undefined }
  | { of: 'trap arm'; length: Length; pipe?: Length | undefined }
  | {
      of: 'dryer vent';
      run?: Length | undefined;
      nineties?: number | undefined;
      fortyFives?: number | undefined;
    }
  | {
      of: 'closet flange';
      below?: Length | undefined;
      thickRing?: boolean | undefined;
      bolts?: Length | undefined;
      /** Thickness of the bowl's foot at the bolt hole. */
      foot?: Length | undefined;
    }
  | {
      of: 'clearances';
      toiletSide?: Length | undefined;
      toiletFront?: Length | undefined;
      toiletCenters?: Length | undefined;
      sinkFront?: Length | undefined;
      showerInside?: [Length, Length] | undefined;
      showerFront?: Length | undefined;
    }
  | { of: 'pipe through'; pipe: PipeAsked; hole?: Length | undefined; outer?: PipeAsked | undefined }
  | { of: 'part through'; hole: Length; part?: Length | undefined; asked?: Length | undefined }
  | { of: 'water'; psi?: number | undefined; fahrenheit?: number | undefined; celsius?: number | undefined };

/** @throws WrongMeasure for sizes that cannot be */
export function plumbing(form: PlumbingCheck): Verdict[] {
  switch (form.of) {
    case 'drain slope': {
      const drain = {
        size: size(form.pipe, 'the pipe', 12),
        run: feet(form.run, 'the run', 500),
        fall: size(form.fall, 'the fall', 240),
      };
      if (drain.run && drain.fall && drain.fall.compare(drain.run.mul(12)) > 0)
        throw new WrongMeasure('a fall longer than the run: is that right?');
      return [drainSlope(drain)];
    }
    case 'trap arm':
      return [trapArm(needed(feet(form.length, 'the trap arm', 100), 'the trap arm'), size(form.pipe, 'the pipe', 12))];
    case 'dryer vent':
      return [
        dryerVent(
          feet(form.run, 'the duct', 200),
          form.nineties === undefined ? null : bends(form.nineties),
          bends(form.fortyFives ?? 0),
        ),
      ];
    case 'closet flange':
      return closetFlange(form);
    case 'clearances':
      return clearances(form);
    case 'pipe through': {
      const pipe = pipeOf(form.pipe);
      const hole = size(form.hole, 'the hole', 48);
      return [
        ...(hole ? [pipeThroughHole(pipe, hole)] : []),
        ...(form.outer ? [pipeThroughPipe(pipe, pipeOf(form.outer))] : []),
      ];
    }
    case 'part through': {
      const hole = needed(size(form.hole, 'the hole', 48), 'the hole');
      const [part, asked] = [size(form.part, 'the part', 48), size(form.asked, 'the hole asked for', 48)];
      return [...(part ? [partThroughHole(part, hole)] : []), ...(asked ? [holeAsked(hole, asked)] : [])];
    }
    case 'water':
      return water(form);
  }
}

function closetFlange(form: Extract<PlumbingCheck, { of: 'closet flange' }>): Verdict[] {
  const below = form.below === undefined ? null : lengthOf(form.below, 'in', 'the flange');
  if (below && below.abs().compare(12) > 0) throw new WrongMeasure('a flange over 12 in off the floor: is that right?');
  const [length, foot] = [size(form.bolts, 'the bolts', 12), size(form.foot, 'the foot of the bowl', 4)];
  const height = flangeHeight(below);
  return [
    form.thickRing ? thickRing(height) : height,
    ...(length || foot ? [closetBolts({ length, below, foot })] : []),
  ];
}

function clearances(form: Extract<PlumbingCheck, { of: 'clearances' }>): Verdict[] {
  const room = (text: Length | undefined, check: (inches: Fraction) => Verdict) => {
    const inches = size(text, 'a clearance', 600);
    return inches ? [check(inches)] : [];
  };
  const sides = form.showerInside?.map((side) => needed(size(side, 'the shower', 300), 'the shower'));
  const least = sides && (sides[0]!.compare(sides[1]!) < 0 ? sides[0]! : sides[1]!);
  return [
    ...room(form.toiletSide, toiletSide),
    ...room(form.toiletFront, toiletFront),
    ...room(form.toiletCenters, toiletCenters),
    ...room(form.sinkFront, lavatoryFront),
    ...(least ? [showerInside(least)] : []),
    ...room(form.showerFront, showerFront),
  ];
}

function water(form: Extract<PlumbingCheck, { of: 'water' }>): Verdict[] {
  const [psi, warm, metric] = [
    figure(form.psi, 'the pressure', 300, 'psi'),
    figure(form.fahrenheit, 'the water', 212, 'F'),
    figure(form.celsius, 'the water', 100, 'C'),
  ];
  const hot = warm ?? (metric && fahrenheit(metric));
  return [...(psi ? [staticPressure(psi)] : []), ...(hot ? [hotWater(hot)] : [])];
}

const pipeOf = ({ kind, size: nominal }: PipeAsked): Pipe => ({
  kind,
  size: needed(size(nominal, 'the pipe', 12), 'the pipe'),
});

/** @throws WrongMeasure for part of a bend, or more than any duct has */
function bends(count: number): number {
  if (!Number.isInteger(count) || count < 0 || count > 20) throw new WrongMeasure(`${count} elbows: is that right?`);
  return count;
}
