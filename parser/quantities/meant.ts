import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import { type Unit, unitNamed } from './units.ts';
import { wordSet } from './words.ts';

const THIN_SHEET = wordSet(
  'vb dpm visqueen membrane poly plastic sheeting vapor vapour liner barrier bag bags film wear lvp vinyl wet dft wft paint primer lacquer pond',
);
export const LOOSE = wordSet(
  'concrete mix gravel sand dirt soil topsoil mulch stone fill base rock crush mud ready-mix cement',
);
const WARMTH = wordSet(
  'temp temperature hot cold cool warm heat heater heating water tank thermostat outside tonight overnight morning slab freezing froze air ' +
    'room garage house dry cure kept keep stays weather oven here',
);
const ANGLES = wordSet(
  'miter mitre bevel elbow elbows ell bend angle fitting cut saw corner street turn slope pitch roof',
);

const THICKEST_MILS = 60;
const MOST_SQUARES = 300;
/** Of concrete, in psi. */
const LEAST_STRENGTH = 2000;

/** "Seventy eight pounds static", "twelve pounds of air". */
const isPressure = (line: Line, at: number) =>
  /^(?:static|pressure)$/.test(line.word(at)) ||
  (line.word(at) === 'of' && /^(?:static|pressure|air)$/.test(line.word(at + 1)));

/** "Degrees", "mil" and "yards" mean one thing of heat, poly and concrete, another of elbows, ply and cloth: common practice, no source. */
export function meant(line: Line, from: number, until: number, unit: Unit, number: SaidNumber | null): Unit {
  const said = line.word(from);
  const pipe = [until, until + 1].some((k) => /^(?:pipe|tube|tubing|hose|conduit|elbow|elbows)$/.test(line.word(k)));
  // "Ten mil dry film", "thirty mil pond liner".
  const described = /^(?:dry|pond|black|clear|white|reinforced|string)$/.test(line.word(until)) ? until + 1 : until;
  const thin = !pipe && [until, described, from - 2, from - 3, from - 4].some((k) => THIN_SHEET.has(line.bare(k)));
  if (said === 'mil' && thin && (number?.n ?? 0) <= THICKEST_MILS * (number?.d ?? 1)) return unitNamed('mils')!;
  // "An 18 cube box": a box of the electrician's, told by its cubic inches.
  if (said === 'cube' && line.word(until) === 'box') return unitNamed('cu in')!;
  if (unit.unit === 'lb' && number !== null && isPressure(line, until)) return unitNamed('psi')!;
  // A roof has no two thousand squares; a house has two thousand square feet.
  if (unit.unit === 'square' && said !== 'sq' && number !== null && number.n >= MOST_SQUARES * number.d)
    return unitNamed('sq ft')!;
  if (
    unit.unit === 'yd' &&
    line.word(until) === 'of' &&
    (LOOSE.has(line.word(until + 1)) || LOOSE.has(line.word(until + 2)))
  )
    return unitNamed('cu yd')!;
  // "6 yds 3000 psi": concrete, by its strength.
  const strong = unit.unit === 'yd' ? line.number(line.word(until) === 'of' ? until + 1 : until) : null;
  if (
    strong &&
    strong.n >= LEAST_STRENGTH &&
    strong.d === 1 &&
    (line.word(until) === 'of' || line.word(strong.until) === 'psi')
  )
    return unitNamed('cu yd')!;
  if (unit.unit !== 'deg' || number === null) return unit;
  let warm = false;
  for (let k = Math.max(0, from - 8); k < until + 4; k++) {
    if (ANGLES.has(line.word(k))) return unit;
    warm ||= WARMTH.has(line.word(k));
  }
  return warm ? unitNamed('f')! : unit;
}

/** Words of warmth stand near. */
export const tempered = (line: Line, at: number) =>
  [-8, -7, -6, -5, -4, -3, 1, 2, 3].some((d) => WARMTH.has(line.word(at + d)));

const PRESSED = wordSet(
  'static pressure gas duct draft vacuum suction fan blower plenum regulator furnace manifold manometer return supply filter coil meter propane air',
);

/** Gas or air is told of near: "inches of water" in a pit are deep. */
export const isPressed = (line: Line, at: number) => {
  for (let k = at - PRESSED_REACH; k < at + PRESSED_REACH; k++) if (PRESSED.has(line.bare(k))) return true;
  return false;
};
const PRESSED_REACH = 12;

/** Sand, mud or mulch is told of close by: "river sand 3 cubes". */
export const isLooseNamed = (line: Line, from: number, until: number) =>
  endsPhrase(line, until) && [-4, -3, -2].some((d) => LOOSE.has(line.word(from + d)));
