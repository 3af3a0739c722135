import Fraction from 'fraction.js';
import { cannotSay, compare, dependsOn, type Verdict } from './verdict.ts';

const OF = 'joists under deck boards';
const SOURCE = 'IRC Table R507.7';
/** Most inches on center under wood boards by nominal thickness, square over the joists and at 45 degrees. */
const MOST: Readonly<Record<string, { square: number; diagonal: number }>> = {
  '5/4': { square: 16, diagonal: 12 },
  2: { square: 24, diagonal: 16 },
};

export interface DeckBoards {
  /** Inches on center. */
  spacing: Fraction;
  /** Nominal inches; null where not said. */
  thick: Fraction | null;
  /** Laid at an angle over the joists; null where not said. */
  diagonal: boolean | null;
  composite?: boolean;
}

/** Wood deck boards over joists: no wider apart than the boards carry. Composite boards go by their maker. */
export function deckBoards({ spacing, thick, diagonal, composite = false }: DeckBoards): Verdict {
  const known = { figure: `${spacing.toFraction(true)} in` };
  if (composite) return cannotSay(OF, "the board maker's spacing: composite goes by its own sheet", SOURCE, known);
  if (!thick) return cannotSay(OF, 'how thick the boards are, 5/4 or 2 in', SOURCE, known);
  const row = MOST[thick.toFraction()];
  if (!row) return cannotSay(OF, `the spacing for ${thick.toFraction(true)} in boards`, SOURCE, known);
  const check = (most: number, laid: string) =>
    compare({
      of: OF,
      figure: spacing,
      limit: new Fraction(most),
      unit: 'in',
      must: 'be at most',
      source: SOURCE,
      working: `${thick.toFraction()} boards ${laid}: ${most} in on center at most`,
    });
  const [square, angled] = [check(row.square, 'square over the joists'), check(row.diagonal, 'at 45 degrees')];
  if (diagonal !== null) return diagonal ? angled : square;
  return square.result === angled.result ? angled : dependsOn(angled, 'whether the boards run square or diagonal');
}
