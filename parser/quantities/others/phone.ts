import type { Line } from '../line.ts';
import { type ClaimRule, isDigits } from './claim.ts';

const SPOKEN = new Set('oh zero one two three four five six seven eight nine'.split(' '));

/** 503-555-0188, (503) 555-0188, 503 555 0188, 555-0177, 07700 900123, and seven or more digits spoken one by one. */
export const phone: ClaimRule = (line, i) => {
  const opened = line.tokens[i]!.text === '(';
  if (!opened && !isDigits(line, i)) return spoken(line, i);
  if (isDigits(line, i) && line.tokens[i]!.text.length === 3 && CALLED.test(line.word(i + 1)))
    return { until: i + 1, kind: 'phone' };
  const lengths: number[] = [];
  let marks = 0;
  let until = i;
  for (let k = opened ? i + 1 : i; lengths.length < 4; k++) {
    if (isDigits(line, k)) {
      lengths.push(line.tokens[k]!.text.length);
      until = k + 1;
    } else if (/^[-.)]$/.test(line.tokens[k]?.text ?? '')) marks++;
    else break;
  }
  const shape = lengths.join('-');
  const total = lengths.reduce((sum, n) => sum + n, 0);
  const first = line.tokens[opened ? i + 1 : i]?.text ?? '';
  const usual = /^(?:1-)?3-3-4$/.test(shape) || (shape === '3-4' && marks > 0) || /^1[01]$/.test(shape);
  const trunk = /^0\d/.test(first) && total >= 10 && total <= 11;
  return usual || trunk ? { until, kind: 'phone' } : null;
};

/** "The 415 number", "the four one five line". */
const CALLED = /^(?:number|line|area|cell|extension)$/;

const spoken: ClaimRule = (line, i) => {
  let k = i;
  while (k < i + 12 && SPOKEN.has(line.word(k))) k++;
  const grouped = k > i ? grouping(line, i) : 0;
  if (grouped) return { until: grouped, kind: 'phone' };
  return k - i >= 7 || (k - i === 3 && CALLED.test(line.word(k))) ? { until: k, kind: 'phone' } : null;
};

/** "Oh one three one, four nine six, oh double two": in groups, from a naught on. Where they end; 0 where they are too few. */
function grouping(line: Line, i: number): number {
  if (!/^(?:oh|zero)$/.test(line.word(i))) return 0;
  let figures = 0;
  let until = i;
  for (let k = i; line.tokens[k]; k++) {
    const times = { double: 2, treble: 3, triple: 3 }[line.word(k)] ?? 1;
    const at = times > 1 ? k + 1 : k;
    if (SPOKEN.has(line.word(at))) {
      figures += times;
      k = at;
      until = at + 1;
    } else if (line.word(k) !== ',') break;
  }
  return figures >= FEWEST_GROUPED ? until : 0;
}

const FEWEST_GROUPED = 9;
