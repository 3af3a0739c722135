import { boxFill } from '../checks/boxFill.ts';
import { breaker } from '../checks/breaker.ts';
import { basinReceptacle, counterSpacing, unprotected } from '../checks/receptacle.ts';
import type { Verdict } from '../checks/verdict.ts';
import { figure, type Length, size, WrongMeasure } from './measure.ts';

/** Gauges are AWG, volumes cubic inches, currents amps, distances inches where bare. */
export type ElectricalCheck =
  | {
      of: 'box fill';
      cables?: { count: number; gauge: number; conductors: number; ground?: boolean | undefined }[] | undefined;
      loose?: { count: number; gauge: number }[] | undefined;
      /** Switches and receptacles. */
      devices?: number | undefined;
      clamps?: boolean | undefined;
      volume?: number | undefined;
    }
  | {
      of: 'wire and breaker';
      gauge?: number | undefined;
      amps?: number | undefined;
      metal?: 'copper' | 'aluminum' | undefined;
    }
  | {
      of: 'receptacle';
      /** Outside edge of the bathroom basin to the receptacle. */
      toBasin?: Length | undefined;
      /** From one counter receptacle to the next. */
      alongCounter?: Length | undefined;
      /** One without GFCI protection to a sink, tub or shower. */
      unprotected?: Length | undefined;
    };

/** @throws WrongMeasure for counts and sizes that cannot be */
export function electrical(form: ElectricalCheck): Verdict[] {
  switch (form.of) {
    case 'box fill':
      return [fill(form)];
    case 'wire and breaker': {
      if (form.gauge === undefined && form.amps === undefined) return [];
      figure(form.amps, 'the breaker', 400, 'A');
      return [
        breaker({ gauge: form.gauge ?? null, breaker: form.amps ?? null, ...(form.metal && { metal: form.metal }) }),
      ];
    }
    case 'receptacle': {
      const [basin, counter, bare] = [
        size(form.toBasin, 'the distance to the basin', 240),
        size(form.alongCounter, 'the distance along the counter', 600),
        size(form.unprotected, 'the distance to the water', 600),
      ];
      return [basin && basinReceptacle(basin), counter && counterSpacing(counter), bare && unprotected(bare)].filter(
        (v) => v !== null,
      );
    }
  }
}

function fill(form: Extract<ElectricalCheck, { of: 'box fill' }>): Verdict {
  const devices = whole(form.devices ?? 0, 'devices', 12);
  return boxFill({
    cables: (form.cables ?? []).map(({ count, gauge, conductors, ground }) => ({
      count: whole(count, 'cables', 30),
      gauge,
      conductors: whole(conductors, 'conductors', 5),
      // Cable of this kind carries a bare ground besides what its name counts.
      ground: ground ?? true,
    })),
    loose: (form.loose ?? []).map(({ count, gauge }) => ({ count: whole(count, 'wires', 60), gauge })),
    devices: Array.from({ length: devices }, () => ({ gauge: null })),
    clamps: form.clamps ?? null,
    volume: figure(form.volume, 'the box', 500, 'cu in'),
  });
}

/** @throws WrongMeasure for a part of one, less than none, or more than a box takes */
function whole(count: number, what: string, most: number): number {
  if (!Number.isInteger(count) || count < 0) throw new WrongMeasure(`${count} ${what}: write a whole number`);
  if (count > most) throw new WrongMeasure(`${count} ${what} in one box: is that right?`);
  return count;
}
