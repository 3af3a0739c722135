import Fraction from 'fraction.js';
import { cannotSay, compare, type Verdict } from './verdict.ts';

const SOURCE = 'NEC 314.16';
const OF = 'box fill';

/** Cubic inches for one conductor, NEC Table 314.16(B). */
const CONDUCTOR: Readonly<Record<number, Fraction>> = {
  18: new Fraction('1.5'),
  16: new Fraction('1.75'),
  14: new Fraction(2),
  12: new Fraction('2.25'),
  10: new Fraction('2.5'),
  8: new Fraction(3),
  6: new Fraction(5),
};

export interface Cable {
  count: number;
  /** AWG. */
  gauge: number;
  /** Insulated conductors; the bare ground comes besides. */
  conductors: number;
  ground: boolean;
}

export interface BoxFill {
  cables: readonly Cable[];
  /** Switches, receptacles: AWG of the conductors on each, or null for the largest present. */
  devices: readonly { gauge: number | null }[];
  /** Inside the box; null where nobody said. */
  clamps: boolean | null;
  /** Single conductors that enter and end here besides the cables. */
  loose?: readonly { gauge: number; count: number }[];
  /** Cubic inches; null where the box was not named. */
  volume: Fraction | null;
}

/**
 * Cubic inches that the fill takes, each allowance by NEC 314.16(B): conductors, clamps once, two for each device,
 * grounds once up to four and a quarter for each one more (2020).
 */
function fillOf(box: BoxFill, clamps: boolean): { fill: Fraction; working: string } | string {
  const gauges = [...box.cables.map((c) => c.gauge), ...(box.loose ?? []).map((l) => l.gauge)];
  const unknown = gauges.find((g) => !CONDUCTOR[g]);
  if (unknown !== undefined) return `the volume of a ${unknown} AWG conductor`;
  if (gauges.length === 0) return 'which conductors enter the box';
  const largest = CONDUCTOR[Math.min(...gauges)]!;
  const parts: string[] = [];
  let fill = new Fraction(0);
  const add = (n: number, each: Fraction, what: string) => {
    fill = fill.add(each.mul(n));
    parts.push(`${n} ${what} x ${each.toString()}`);
  };
  for (const cable of box.cables) add(cable.count * cable.conductors, CONDUCTOR[cable.gauge]!, 'conductors');
  for (const wire of box.loose ?? []) add(wire.count, CONDUCTOR[wire.gauge]!, 'conductors');
  const grounds = box.cables.filter((c) => c.ground);
  const groundCount = grounds.reduce((n, c) => n + c.count, 0);
  if (groundCount > 0) {
    const each = CONDUCTOR[Math.min(...grounds.map((c) => c.gauge))]!;
    add(1, each, 'for grounds');
    if (groundCount > 4) add(groundCount - 4, each.div(4), 'grounds over four');
  }
  if (clamps) add(1, largest, 'for clamps');
  for (const device of box.devices) add(2, device.gauge ? CONDUCTOR[device.gauge]! : largest, 'for a device');
  return { fill, working: `${parts.join(' + ')} = ${fill.toString()} cu in` };
}

/** Does the fill go into the box. Where clamps were not mentioned, both ways are reckoned and must agree. */
export function boxFill(box: BoxFill): Verdict {
  const without = fillOf(box, false);
  const withClamps = fillOf(box, true);
  if (typeof without === 'string' || typeof withClamps === 'string')
    return cannotSay(OF, typeof without === 'string' ? without : 'the conductors', SOURCE);
  const told = box.clamps === true ? withClamps : without;
  if (!box.volume)
    return cannotSay(OF, 'the box volume (the stamp in the box)', SOURCE, {
      figure: `${told.fill.toString()} cu in`,
      working: told.working,
    });
  const check = (f: typeof told) =>
    compare({
      of: OF,
      figure: f.fill,
      limit: box.volume!,
      unit: 'cu in',
      must: 'be at most',
      source: SOURCE,
      working: f.working,
    });
  const result = check(told);
  if (box.clamps === null && check(withClamps).result !== result.result)
    return { ...result, result: 'cannot say', missing: 'whether there are cable clamps inside the box' };
  return result;
}
