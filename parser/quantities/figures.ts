import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { Whole } from './saidNumber.ts';
import { isBy, ONES, TENS, tellsLength, wordSet } from './words.ts';

const MILLIMETRES = wordSet('mm mil mils mill mills millimetre millimetres millimeter millimeters');
const NAUGHT = /^(?:oh|o|zero|nought|naught)$/;

/** A figure said by itself, 0 to 9. */
function figureAt(line: Line, at: number): number | null {
  if (line.tokens[at]?.kind !== 'word') return null;
  if (NAUGHT.test(line.word(at))) return 0;
  const n = ONES.get(line.word(at));
  return n !== undefined && n < 10 ? n : null;
}

/** "One four five mil", "one four five by forty five": a size in millimetres, figure by figure. */
export function figuresAt(line: Line, i: number): Whole | null {
  if (!figureAt(line, i) || figureAt(line, i - 1) !== null || TENS.has(line.word(i - 1))) return null;
  let n = 0;
  let until = i;
  for (; until < i + MOST_FIGURES; until++) {
    const figure = figureAt(line, until);
    if (figure === null) break;
    n = n * 10 + figure;
  }
  if (until - i < FEWEST_FIGURES || figureAt(line, until) !== null) return null;
  const next = line.word(until);
  // "Thirteen risers at one nine five each".
  const each = line.word(i - 1) === 'at' && /^(?:each|apiece|centres|centers)$/.test(next);
  const sized = each || MILLIMETRES.has(next) || isBy(next) || (isBy(line.word(i - 1)) && endsPhrase(line, until));
  return sized ? { n, until } : null;
}

const FEWEST_FIGURES = 3;
const MOST_FIGURES = 4;

/**
 * What tells of millimetres besides: "cut down to two seven fifty", "the laser reads two seven fifty". It tells of no feet and
 * inches: a moisture meter reads "sixteen two", and boards run "sixteen to twenty".
 */
const TOLD_BESIDES = /^(?:to|reads?)$/;

/**
 * "Two seven fifty", "two one hundred": millimetres with the thousand swallowed. Told as what something measures, or with its
 * unit; else it may be so many of the other.
 */
export function swallowedThousand(line: Line, i: number, hundreds: Whole | null): Whole | null {
  const thousands = figureAt(line, i);
  if (!thousands || !hundreds || hundreds.n < 100 || hundreds.n > 999 || hundreds.n % 5 !== 0) return null;
  const next = line.word(hundreds.until);
  const before = line.word(i - 1);
  const told = (tellsLength(before) || isBy(before) || TOLD_BESIDES.test(before)) && endsPhrase(line, hundreds.until);
  return MILLIMETRES.has(next) || told ? { n: thousands * 1000 + hundreds.n, until: hundreds.until } : null;
}
