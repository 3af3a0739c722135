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
  return k - i >= 7 || (k - i === 3 && CALLED.test(line.word(k))) ? { until: k, kind: 'phone' } : null;
};
