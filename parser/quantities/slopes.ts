import type { Draft } from './draft.ts';
import type { Line } from './line.ts';
import { endsPhrase } from './phraseEnds.ts';
import type { Unit } from './units.ts';
import { ONES, wordSet } from './words.ts';

export const SLOPE: Unit = { unit: 'in/ft', kind: 'slope', close: false };

const SLOPED = wordSet("pitch roof slope pitched roof's pitch's roofs rafters");
/** How far off the roof may be told of. */
const REACH = 12;

/** "A four twelve over the porch", "4/12", "five in twelve pitch": a roof's rise in a foot of run, one number to most ears. */
export function slopeAt(line: Line, i: number): Draft | null {
  const rise = riseAt(line, i);
  const run = rise && runBehind(line, rise.until);
  if (!run || (rise.d > 1 && !run.joined) || !isRoof(line, i, run)) return null;
  const inWords = line.tokens[i]!.kind === 'word';
  const { n, d } = rise;
  const rule = 'quantity/pitch';
  return { n, d, from: i, until: run.until, unit: SLOPE, unitFrom: 'said', shape: 'whole', inWords, rule };
}

/** Roofs rise up to twenty four in twelve, by the half. */
function riseAt(line: Line, i: number): { n: number; d: number; until: number } | null {
  const number = line.number(i);
  if (number?.d === 2 && number.shape === 'mixed') return number;
  const n = /^\d\d?$/.test(line.tokens[i]!.text) ? Number(line.word(i)) : ONES.get(line.word(i));
  return n !== undefined && n > 0 && n <= 24 ? { n, d: 1, until: i + 1 } : null;
}

/** "Twelve", "/12", ":12", "in 12" or "over 12" behind the rise, and whether it was so joined. */
function runBehind(line: Line, at: number): { until: number; joined: boolean } | null {
  const joined = /^(?:in|over|\/|:|-)$/.test(line.word(at));
  const run = joined ? at + 1 : at;
  if (!/^(?:12|twelve)$/.test(line.word(run)) || line.number(run)?.d !== 1) return null;
  // "Two five twelve": a count and a size; "12/12 of them": no dates.
  if (!joined && line.tokens[run]!.kind === 'number') return null;
  return { until: run + 1, joined };
}

const LAID = wordSet('pitch pitched slope roof');

function isRoof(line: Line, i: number, run: { until: number; joined: boolean }): boolean {
  const next = line.word(run.until);
  if (LAID.has(next)) return true;
  if (!endsPhrase(line, run.until)) return false;
  if (!run.joined && /^an?$/.test(line.word(i - 1))) return true;
  for (let k = i - 1; k > i - REACH && k >= 0; k--) if (SLOPED.has(line.word(k))) return true;
  return false;
}
