import type { Chunk } from '../chunks.ts';
import { stemOf } from './telling.ts';

/** What figures are read of: words that go with one sort of unit, though most are met too seldom to be learned singly. */
const TOPICS: readonly (readonly [topic: string, words: RegExp])[] = [
  ['of heat', /^(?:temp|temps|temperature|thermometer)$/],
  ['of pressure', /^(?:pressure|gauge|psi|precharge)$/],
  ['of moisture', /^(?:moisture|humidity|rh)$/],
  ['of current', /^(?:amp|amps|amperage|current)$/],
  ['of voltage', /^(?:volt|volts|voltage)$/],
  [
    'heat',
    /^(?:temp|temps|temperature|thermostat|tstat|t-stat|stat|heat|heater|heating|hot|cold|warm|cool|cooling|superheat|subcool|subcooling|supply|return|tempering|mixing|mixer|thermometer|degree|fridge|freezer|oven|boiler|furnace|water heater|register|air|attic|aquastat|cylinder|scald|delta|boil|freeze|frost)$/,
  ],
  [
    'moisture',
    /^(?:moisture|humidity|rh|damp|damper|wet|dry|drier|meter|slab|subfloor|acclimate|dehumidifier|dehumidify|hygrometer|moist|soaked)$/,
  ],
  [
    'pressure',
    /^(?:pressure|gauge|regulator|prv|static|psi|tank|precharge|pre-charge|air|pumped|charge|bib|hose bib|relief valve|expansion tank|reducer|main|test|pressurize|bar|manifold|vacuum)$/,
  ],
  ['draft', /^(?:static|draft|draught|inlet|manifold|gas|duct|plenum|filter|wc)$/],
  [
    'voltage',
    /^(?:voltage|volt|leg|neutral|ground|hot|string|receptacle|outlet|socket|line|phase|transformer|battery|bus|meter|multimeter|panel|feed|l1|l2)$/,
  ],
  ['current', /^(?:amp|amps|amperage|draw|breaker|nameplate|motor|circuit|compressor|fuse|current|load)$/],
  ['ohms', /^(?:ohm|resistance|element|mat|sensor|coil|meg|megger|continuity|rod|loop)$/],
  ['airflow', /^(?:cfm|airflow|flow|fan|exhaust|vent|leakage|blower|hood|duct)$/],
  ['light', /^(?:lux|light|footcandle|desk|lumen)$/],
  ['torque', /^(?:torque|lug|torqued|bolt|inch-pound)$/],
  ['angle', /^(?:angle|miter|mitre|bevel|corner|degree|pitch|swing)$/],
  [
    'space',
    /^(?:wide|width|tall|high|height|long|length|deep|depth|thick|thickness|gap|reveal|opening|rough opening|ro|hole|cutout|center|centre|spacing|apart|across|off|clear|clearance|spread|drop|out|level|plumb|short|proud|overhang|riser|rise|run|tread|face|edge)$/,
  ],
  [
    'place',
    /^(?:room|bedroom|bathroom|kitchen|deck|patio|porch|slab|yard|lawn|garage|driveway|basement|attic|shed|barn)$/,
  ],
  ['weight', /^(?:pound|weigh|weight|load|rated|scale|heavy|charge)$/],
];

/** The topics that a stretch of talk touches. */
export function topicsIn(chunks: readonly Chunk[]): string[] {
  const words = chunks.flatMap((c) => [stemOf(c), ...c.word.split(' '), c.word]);
  return TOPICS.flatMap(([topic, is]) => (words.some((w) => is.test(w)) ? [topic] : []));
}
