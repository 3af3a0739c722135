import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { SaidNumber } from './saidNumber.ts';

const BENDS: ReadonlySet<number> = new Set([22, 45, 90]);
const MANY = /^(?:nineties|90s|45s|22s)$/;
const REACH = 7;

/** "Two 45s and a 90": an elbow called by its bend, beside others called so; its name, and no quantity. */
export function elbowAt(line: Line, i: number): SaidNumber | null {
  const number = /^(?:a|an|one|another|1)$/.test(line.word(i - 1)) ? line.number(i) : null;
  if (number?.d !== 1 || !BENDS.has(number.n) || !endsPhrase(line, number.until)) return null;
  for (let k = i - REACH; k < i + REACH; k++) if (areElbows(line, k)) return number;
  return null;
}

/** "45s", "nineties", "forty fives". */
const areElbows = (line: Line, k: number) =>
  MANY.test(line.word(k)) ||
  (line.word(k + 1) === 's' && line.tight(k + 1) && BENDS.has(Number(line.word(k)))) ||
  `${line.word(k)} ${line.word(k + 1)}` === 'forty fives';
