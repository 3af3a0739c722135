import type { Frame } from '../frames.ts';
import { nounPhraseFrom } from '../talk.ts';

const DIMENSION_NAMES: Readonly<Record<string, string>> = {
  wide: 'width',
  tall: 'height',
  high: 'height',
  long: 'length',
  deep: 'depth',
  thick: 'thickness',
  showing: 'exposure',
  apart: 'spacing',
  clear: 'clearance',
  // Typed short: "11-5/8 d x 47-7/8 w".
  w: 'width',
  h: 'height',
  d: 'depth',
};
/** Right behind a length, how far what was found is off. */
const OFF_BY = /^(?:short|low|proud|run|rise)$/;

/** The units that each thing is told in; none here where a unit tells one thing as often as another. */
const UNITS_OF: Readonly<Record<string, readonly string[]>> = {
  temperature: ['F', 'C'],
  pressure: ['psi', 'bar', 'kPa', 'in wc', 'MPa', 'psf'],
  voltage: ['V'],
  current: ['A', 'mA'],
  resistance: ['ohm', 'kohm', 'megohm'],
  flow: ['cfm', 'gpm', 'lpm'],
  slope: ['in/ft', 'mm/m'],
  torque: ['Nm', 'ft-lb', 'in-lb'],
  area: ['sq in', 'sq ft', 'sq yd', 'sq m', 'square'],
  moisture: ['%'],
};
const TOLD_IN = new Map(Object.entries(UNITS_OF).flatMap(([kind, units]) => units.map((unit) => [unit, kind])));

/** What of a thing the figure at chunk `k`, read in `unit`, tells, as far as its own words say: `width`, `temperature`, `spacing`. */
export function kindOfMeasure(frame: Frame, k: number, unit: string | null): string | null {
  const { chunks } = frame;
  const q = chunks[k]!.quantity!;
  const behind = chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)).find((c) => DIMENSION_NAMES[c.word]);
  if (behind) return DIMENSION_NAMES[behind.word]!;
  if (q.onCenter || (q.unitKind === 'length' && /^(?:every|each)$/.test(chunks[k - 1]?.word ?? ''))) return 'spacing';
  const next = chunks[k + 1]?.word ?? '';
  if (OFF_BY.test(next)) return next;
  // "Five foot of it", "about a metre of it".
  if (/^(?:ft|m|yd)$/.test(unit ?? '') && next === 'of' && /^(?:it|them|that)$/.test(chunks[k + 2]?.word ?? ''))
    return 'length';
  // "Sixty above the floor", "30 off the slab".
  const from = chunks.slice(k + 1, k + 6);
  const level = from.findIndex((c) =>
    /\b(?:floor|slab|subfloor|tile|counter|countertop|deck|grade|ground|nosings?)\b/.test(c.word),
  );
  if (next === 'above') return 'height';
  if (q.unitKind === 'length' && /^(?:off|up|from)$/.test(from[0]?.word ?? '') && level > 0 && level <= 4)
    return 'height';
  return TOLD_IN.get(unit ?? '') ?? null;
}
