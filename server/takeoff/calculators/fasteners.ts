import type Fraction from 'fraction.js';
import { type Refusal, refuse, show } from './reckoned.ts';
import { bays } from './spacing.ts';

/**
 * Screws of one sheet on a grid, its edges included: a row at each end and no gap over the spacing, both ways. Sides
 * and spacings in inches. Refuses a sheet or a spacing of nothing, and a spacing wider than the sheet.
 */
export function screwsOfSheet(
  sheet: readonly [Fraction, Fraction],
  spacing: readonly [Fraction, Fraction],
): { ok: true; count: number; working: string } | Refusal {
  if ([...sheet, ...spacing].some((side) => side.compare(0) <= 0))
    return refuse('a sheet and a spacing must be more than 0');
  if (spacing[0].compare(sheet[0]) > 0 || spacing[1].compare(sheet[1]) > 0)
    return refuse(`screws ${show(spacing[0])} in apart on a sheet of ${show(sheet[0])} in: is that right?`);
  const [across, along] = [bays(sheet[0], spacing[0]) + 1, bays(sheet[1], spacing[1]) + 1];
  return { ok: true, count: across * along, working: `${across} x ${along} = ${across * along} screws a sheet` };
}
