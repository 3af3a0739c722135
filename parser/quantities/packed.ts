import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';
import type { Unit } from './units.ts';
import { wordSet } from './words.ts';

/** Vessels whose name in the singular is more often half the name of a thing: "tub stopper", "can light". */
const HALF_NAMES = wordSet('tub can tin drum sleeve');
const IN_VESSELS = wordSet(
  'of mud compound putty grout adhesive mastic glue paste grease wax spackle filler thinset paint primer foam stain sealer sealant varnish ' +
    'solvent thinner cement lacquer lube spray pvc joint all-purpose all wood contact black white grey gray clear poly latex enamel caulk',
);
const NOT_PACKED = wordSet(
  'light lights trap opener bolt bolts drain spout spouts surround beam beams nails screws spring cutter saw bay bays store house end',
);

/** Whether what a word names by the vessel is counted here: "two cans of foam", but "four can lights". */
export function isPacked(
  line: Line,
  from: number,
  until: number,
  name: string,
  unit: Unit,
  number: SaidNumber | null,
): boolean {
  const token = line.tokens[from]!;
  const next = line.word(until);
  // "Off a 250 roll", "the eighty bag pallet": how large one is.
  if (number && number.n > number.d && token.word === unit.unit && isOneOf(line, from, number)) return false;
  // "1-1/4 coil nails", "3/8 box": nothing is packed in eighths; "four can lights": a light, not a can.
  if (number && number.d > 4 && !number.inWords && number.shape !== 'decimal') return false;
  return !(token.word === unit.unit
    ? isHalfName(line, until, unit.unit)
    : name === 'cans' && areLights(line, from, next));
}

/** An article stands before the number. */
const isOneOf = (line: Line, from: number, number: SaidNumber) =>
  number.until === from && /^(?:a|an|the)$/.test(line.word(startOf(line, from) - 1));

/** Where the number that ends at a place starts. */
function startOf(line: Line, until: number): number {
  let k = until - 1;
  while (k > until - 5 && line.number(k - 1)?.until === until) k--;
  return k;
}

/** "Two tub stoppers", "four can lights": the thing's own name, not what it comes in. */
const isHalfName = (line: Line, until: number, unit: string) =>
  NOT_PACKED.has(line.word(until)) ||
  (HALF_NAMES.has(unit) && !endsPhrase(line, until) && !IN_VESSELS.has(line.word(until)));

const LIT = wordSet(
  'light lights led leds dimmer dimmers watt watts lamp lamps recessed wired switch switched trim trims load',
);

/** "Eleven cans at 13 watts": lights let into the ceiling. */
const areLights = (line: Line, at: number, next: string) =>
  next !== 'of' && [-8, -7, -6, -5, -4, -3, -2, 1, 2, 3, 4, 5].some((d) => LIT.has(line.word(at + d)));
