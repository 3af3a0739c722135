import Fraction from 'fraction.js';
import { fahrenheit } from '../checks/water.ts';
import { type Said, saying } from '../reading/said.ts';
import type { Work } from './work.ts';

const WARM = 70;
/** Cement takes twice as long for each so many degrees F under 70 (8 C; trade magazine on winter tiling). */
const DOUBLES = 14.4;
const LEAST = 50;
/** Compound dries at its usual pace from here up, F (engineerfix.com, how long to let joint compound dry). */
const DRIES_WELL = 65;
/** Hours of a coat of compound in a cool room: the long end of what is published (finishing council, chasephipps.com). */
const SLOW = 48;

/** Hours before a test of 4 to 8 in pipe from so many F up (plastics technical manual p. 96, ASTM D2855 style). */
const SOLVENT: readonly (readonly [number, number])[] = [
  [60, 6],
  [40, 12],
  [0, 48],
];

/** Words that make plain degrees those of the air. */
const AIR =
  /(?:\bdegrees?|\{X\d+\}) (?:out|outside|in here|(?:down |up |in )?there|(?:down|up) here|inside|overnight|today|this morning)\b|\b(?:cold|chilly|freezing|warm|hot)\b/;

/** "It's only 55 out here": a bare figure of the air. */
const BARE = saying(
  "\\b(?:it's|it is|only|about|around|was|got|down to|hit|at) <N> (?:out|outside|in here|inside|(?:down |up |in )?there|(?:down|up) here|overnight|in the (?:room|house|garage|basement|shop))\\b",
);

/** "24 hours at 70 F, double that below 60": what the label goes by, and no room's. */
const OF_LABEL = saying('(?:\\{T\\d+\\} at|\\b(?:double|twice)[a-z ]* (?:below|under)) <D>', 'g');

/** Air or room temperature told in a note, F; null where none was, or where it is the water's or the heater's. */
export function roomTemperature({ words, figures }: Said): number | null {
  const bare = BARE.exec(words);
  const label = new Set([...words.matchAll(OF_LABEL)].map(([, id]) => Number(id)));
  const degrees =
    figures.find((f, id) => (f.kind === 'temperature' && !label.has(id)) || (f.unit === 'deg' && AIR.test(words))) ??
    (bare ? figures[Number(bare[1])] : undefined);
  if (!degrees || /\b(?:water|tap|heater|oven|freezer|duct|supply air|boiler)\b/.test(words)) return null;
  const value = degrees.unit === 'C' ? fahrenheit(degrees.value) : degrees.value;
  return value.valueOf();
}

/** Hours in the cold, and what to say of it. Never fewer than in the warm. */
export function inTheCold(hours: number, cold: Work['cold'], degrees: number | null): { hours: number; said: string } {
  if (degrees === null || !cold) return { hours, said: cold ? ' at 70 F' : '' };
  const at = ` at ${new Fraction(degrees).round(1).toString()} F`;
  const tooCold = degrees < LEAST ? `${at}, under ${LEAST} F it may not set at all` : at;
  if (cold === 'cement')
    return { hours: Math.ceil(hours * 2 ** (Math.max(0, WARM - degrees) / DOUBLES)), said: tooCold };
  if (cold === 'solvent') {
    const row = SOLVENT.find(([least]) => degrees >= least);
    return { hours: Math.max(hours, row ? row[1] : 2 * SOLVENT.at(-1)![1]), said: at };
  }
  if (cold === 'compound') return { hours: degrees < DRIES_WELL ? Math.max(hours, SLOW) : hours, said: tooCold };
  return { hours, said: tooCold };
}
