import type { Line } from '../line.ts';
import { endsPhrase } from '../phraseEnds.ts';
import { unitAt } from '../unitAt.ts';
import { ONES } from '../words.ts';
import { type Claim, type ClaimRule, isDigits } from './claim.ts';

const FULL_HOURS = 12;
const MINUTES = new Set([15, 20, 30, 40, 45, 50]);

/**
 * Two numbers side by side with nothing that joins them: "forty nine ninety nine", "twenty two oh six", "ten thirty". A count
 * stands before a size or a thing; these have neither, so they are a price, a code or a time.
 */
export const juxtaposed: ClaimRule = (line, i) => {
  const first = line.number(i);
  if (first?.shape !== 'whole' || !first.inWords || first.article || first.n < 10 || isTied(line, i)) return null;
  const oh = ohBehind(line, first.until);
  if (oh) return { until: oh, kind: 'code' };
  if (first.n > 99) return null;
  const second = line.number(first.until);
  if (second?.shape !== 'whole' || second.article || second.n < 10 || second.n > 99) return null;
  if (unitAt(line, second.until, second) || !closes(line, second.until)) return null;
  const kind: Claim['kind'] = first.n <= FULL_HOURS && MINUTES.has(second.n) ? 'clock' : 'code';
  return { until: second.until, kind };
};

/** "Oh six": a nought and one figure, or several. */
function ohBehind(line: Line, at: number): number {
  let k = at;
  if (!/^(?:oh|o)$/.test(line.word(k))) return 0;
  for (k++; ONES.has(line.word(k)) || /^(?:oh|o)$/.test(line.word(k)) || isDigits(line, k); k++);
  return k > at + 1 && closes(line, k) && !unitAt(line, k, line.number(k - 1)) ? k : 0;
}

const isTied = (line: Line, i: number) => /^(?:by|x|×|point|and|at|on|to)$/.test(line.word(i - 1));

const closes = (line: Line, at: number) =>
  (endsPhrase(line, at) ||
    /^[A-Z][a-z]+$/.test(line.tokens[at]?.text ?? '') ||
    /^(?:already|yet|still|today|tomorrow|sharp|if|unless)$/.test(line.word(at))) &&
  !/^(?:by|x|×|wide|long|tall|high|deep|thick|on|and|each|centres?|centers?)$/.test(line.word(at));
