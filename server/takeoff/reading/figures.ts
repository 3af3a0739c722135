import Fraction from 'fraction.js';
import type { NotQuantity, Quantity } from '../../../parser/types.ts';
import type { Figure } from './said.ts';

/** A figure and where in the text it stands. */
interface Piece {
  start: number;
  end: number;
  figure: Figure;
}

/** "Room is -5 ft": a minus, not a dash, stands before the figure. */
const BELOW_NOTHING = /(?:\b(?:is|are|of|at|x|by) |[:=] ?)[-−]$/i;

/** Quantities, and `8-4` beside a size, which is feet and inches. */
export function figuresIn(text: string, quantities: readonly Quantity[], others: readonly NotQuantity[]): Piece[] {
  const pieces: Piece[] = quantities.map((q) => ({
    start: q.start,
    end: q.end,
    figure: {
      value: BELOW_NOTHING.test(text.slice(0, q.start)) ? q.value.neg() : q.value,
      unit: q.unit,
      kind: q.unitKind,
      sure: q.unitFrom === 'said' || q.unitFrom === 'shared',
      per: q.per ?? null,
      onCenter: q.onCenter ?? false,
      doubt: q.doubt ?? null,
      quote: q.quote,
    },
  }));
  for (const other of others) {
    const [, over, under] = /^(\d{1,2})\/(2|4|8|16|32)$/.exec(other.quote) ?? [];
    if (over && Number(over) < Number(under)) {
      const figure = { ...plainFigure(new Fraction(`${over}/${under}`)), unit: 'in', quote: other.quote };
      pieces.push({ start: other.start, end: other.end, figure: { ...figure, kind: 'length' } });
      continue;
    }
    const [, feet, inches] = /^(\d{1,2})-(\d{1,2})$/.exec(other.quote) ?? [];
    if (!feet || Number(inches) > 11) continue;
    const near = /(?:\bx|\bby|\bat|\bis)\s*$/.test(text.slice(0, other.start).toLowerCase());
    const on = /^\s*(?:x|by|long|wide|tall|high|deep)\b/.test(text.slice(other.end).toLowerCase());
    if (!near && !on) continue;
    const figure = { ...plainFigure(new Fraction(feet).mul(12).add(Number(inches))), unit: 'in', quote: other.quote };
    pieces.push({ start: other.start, end: other.end, figure: { ...figure, kind: 'length', sure: true } });
  }
  return pieces.sort((a, b) => a.start - b.start);
}

const plainFigure = (value: Fraction): Figure => ({
  value,
  unit: null,
  kind: null,
  sure: false,
  per: null,
  onCenter: false,
  doubt: null,
  quote: '',
});
