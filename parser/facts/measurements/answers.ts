import { isCopula } from '../chunks.ts';
import type { Talk } from '../talk.ts';
import type { Figure } from './figures.ts';
import { type Earlier, unitsNear } from './near.ts';
import { signsOf } from './signs.ts';
import { isNoun, stemOf } from './telling.ts';

/** Units that a figure without one may have, whatever the rest of the note tells: those that notes leave out often enough. */
const UNITS = [
  'in',
  'ft',
  'mm',
  'cm',
  'm',
  'F',
  'C',
  'deg',
  '%',
  'V',
  'A',
  'psi',
  'bar',
  'kPa',
  'in wc',
  'ohm',
  'cfm',
  'uF',
  'lb',
  'W',
] as const;
/** What units that mean one thing or another may stand for: pounds of pressure, degrees of heat. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = { lb: ['lb', 'psi'], deg: ['deg', 'F', 'C'] };

/** What the table has a column for: being a reading at all, without a unit and with one; being in a unit; in one told near. */
export const COLUMNS = ['bare', 'said', 'near', ...UNITS] as const;
export type Column = (typeof COLUMNS)[number];

/** One way to read a figure: in a unit, or (null) as no reading; with what speaks for it, by the column that weighs it. */
export interface Answer {
  unit: string | null;
  signs: (readonly [Column, readonly string[]])[];
}

/** Every way to read a figure. A unit that was said is kept, but where it may stand for others. */
export function answersFor(talk: Talk, figure: Figure, system: string, earlier: readonly Earlier[]): Answer[] {
  if (isPlanInFeet(figure, system)) return [{ unit: 'ft', signs: [] }];
  if (isAge(talk, figure)) return [{ unit: null, signs: [] }];
  const { reads, unit } = signsOf(talk, figure, system);
  const said = figure.unit;
  const none: Answer = { unit: null, signs: [] };
  const is = said
    ? (['said', [...reads, ...reads.map((s) => `${s} ${figure.sides[0]!.unitKind}`), `unit ${said}`]] as const)
    : (['bare', reads] as const);
  if (said && !STANDS_FOR[said]) return [none, { unit: said, signs: [is] }];
  const near = unitsNear(talk, figure, earlier);
  const possible = said ? STANDS_FOR[said]! : unitsFor(figure, near.keys());
  return [
    none,
    ...possible.map((u): Answer => {
      const told = near.get(u)?.flatMap((s) => [s, `${s} ${u}`]) ?? ['apart'];
      return { unit: u, signs: [is, ['near', told], ...(isColumn(u) ? [[u, unit] as const] : [])] };
    }),
  ];
}

const LENGTHS = /^(?:in|ft|mm|cm|m)$/;

/** Units that a bare figure may have: the common ones and those `told` near it; of two sides only lengths. */
function unitsFor(figure: Figure, told: Iterable<string>): string[] {
  const all = [...new Set([...UNITS, ...told])];
  if (figure.sides.length < 2) return all;
  return all.filter((u) => LENGTHS.test(u));
}

/** "The room's twelve by fourteen", "deck 12 x 16": two sides of a place, told in feet where nothing is metric (common practice, no source). */
function isPlanInFeet({ frame: { chunks }, from, until, sides, unit }: Figure, system: string): boolean {
  const at = chunks.slice(0, from).findLastIndex(isNoun);
  return (
    unit === null &&
    sides.length === 2 &&
    at >= 0 &&
    PLACES.test(stemOf(chunks[at]!)) &&
    chunks.slice(at + 1, from).every((c) => c.verb || isCopula(c)) &&
    !(chunks[until] && isNoun(chunks[until])) &&
    /^(?:us|none)$/.test(system) &&
    sides.every(({ value }) => value.d <= 2n && value.compare(5) >= 0 && value.compare(60) <= 0)
  );
}

const HOUSE = /^(?:the |this |that )?(?:house|home|building|place|apartment|condo|barn|cottage|cabin)(?:'s| is| was)$/;
const WARMTH =
  /\b(?:degrees?|warm|cold|cool|hot|heat|heating|thermostat|temp|temperature|humidity|furnace|ac|inside|air)\b/i;

/** "House is sixty four so that's probably lead": its year or its age, where nothing tells of warmth. */
const isAge = (talk: Talk, { frame: { chunks }, from, sides, unit }: Figure): boolean =>
  unit === null &&
  sides.length === 1 &&
  sides[0]!.value.d === 1n &&
  sides[0]!.value.compare(10) > 0 &&
  HOUSE.test(
    chunks
      .slice(0, from)
      .map((c) => c.word)
      .join(' '),
  ) &&
  !WARMTH.test(talk.text);

const PLACES =
  /\b(?:(?:bed|bath|living |dining |laundry |family )?room|kitchen|deck|patio|porch|slab|yard|lawn|garage|driveway|basement|attic|shed|barn)$/;

const isColumn = (unit: string): unit is (typeof UNITS)[number] => (UNITS as readonly string[]).includes(unit);
