import Fraction from 'fraction.js';
import { type Refusal, refuse, tape } from '../calculators/reckoned.ts';
import { fillSticks, longestFirst } from './packing.ts';

export interface CutJob {
  /** Inches. */
  pieces: readonly { length: Fraction; count: number }[];
  /** Lengths on hand, inches: used first, they cost nothing. */
  onHand: readonly Fraction[];
  /** Lengths that can be bought, inches. */
  stock: readonly Fraction[];
  /** Width of the blade, inches. */
  kerf: Fraction;
}

export interface Stick {
  length: Fraction;
  onHand: boolean;
  cuts: Fraction[];
}

export interface CutList {
  ok: true;
  sticks: Stick[];
  /** How many to buy of each stock length, inches. */
  buy: { length: Fraction; count: number }[];
  /** True where every smaller purchase was ruled out. */
  proved: boolean;
  working: string;
}

const MOST_PIECES = 300;
/** With more pieces than this, only one stock length is tried: the choices would be too many. */
const MIXED_PIECES = 40;
/** Steps of search a purchase, fewer where lengths mix and purchases are many. A job's list takes a few hundred. */
const STEPS = { one: 600_000, mixed: 60_000 };

/**
 * Fewest feet of stock for a list of cuts, stock on hand first, the kerf between cuts. Exact: each smaller purchase is
 * ruled out by a bound or by trying every way to fill its sticks; `proved` is false only where the search ran too long.
 * Refuses pieces longer than any stick, no stock, no pieces.
 */
export function cutList(job: CutJob): CutList | Refusal {
  const { kerf } = job;
  const odd = job.pieces.find(({ count }) => !Number.isInteger(count) || count < 0);
  if (odd) return refuse(`${odd.count} pieces: is that right?`);
  const all = job.pieces.flatMap(({ length, count }) => Array<Fraction>(count).fill(length));
  if (all.length === 0) return refuse('nothing to cut');
  if (all.length > MOST_PIECES) return refuse(`${all.length} pieces: is that right?`);
  if (kerf.compare(0) < 0) return refuse('a kerf cannot be negative');
  if (all.some((l) => l.compare(0) <= 0)) return refuse('a piece must be longer than 0');
  if (job.stock.length === 0) return refuse('what length does the stock come in?');
  const longest = longestOf(job.stock);
  const tooLong = all.find((l) => l.compare(longest) > 0);
  if (tooLong) return refuse(`${tape(tooLong)} in does not come out of ${tape(longest)} in stock`);
  const found = solve(job, all);
  return { ok: true, ...found, working: workingOf(job, found) };
}

const longestOf = (lengths: readonly Fraction[]) => lengths.reduce((a, b) => (a.compare(b) > 0 ? a : b));

/** In whole numbers of the finest fraction, so that the search adds integers; each piece and stick carries one kerf. */
function solve(job: CutJob, all: readonly Fraction[]): Omit<CutList, 'ok' | 'working'> {
  const scale = [...all, ...job.onHand, ...job.stock, job.kerf].reduce((lcm, f) => leastCommon(lcm, Number(f.d)), 1);
  const kerf = job.kerf.mul(scale).valueOf();
  const whole = (f: Fraction) => f.mul(scale).valueOf() + kerf;
  const back = (n: number) => new Fraction(n - kerf, scale);
  const pieces = all.map(whole).sort((a, b) => b - a);
  const onHand = job.onHand.map(whole).sort((a, b) => a - b);
  const stock = [...new Set(job.stock.map(whole))].sort((a, b) => a - b);

  const enough = longestFirst(pieces, onHand, stock.at(-1)!);
  const surplus = onHand.reduce((sum, l) => sum + l, 0);
  const least = Math.max(0, pieces.reduce((sum, s) => sum + s, 0) - surplus);
  const tried = pieces.length > MIXED_PIECES ? stock.slice(-1) : stock;
  let proved = tried.length === stock.length;
  let answer = { bought: enough.bins.slice(onHand.length).map((b) => b.length), cuts: enough.bins.map((b) => b.cuts) };
  answer.cuts = [...answer.cuts.slice(onHand.length), ...answer.cuts.slice(0, onHand.length)];
  const steps = tried.length === 1 ? STEPS.one : STEPS.mixed;
  for (const bought of purchases(tried, least, feetOf(answer.bought, kerf), kerf)) {
    const filled = fillSticks(pieces, [...bought, ...onHand], steps);
    if (filled === 'unknown') proved = false;
    else if (filled) {
      answer = { bought, cuts: filled };
      break;
    }
  }
  const lengths = [...answer.bought, ...onHand];
  const sticks = lengths.flatMap((length, k): Stick[] => {
    const cuts = answer.cuts[k] ?? [];
    return cuts.length ? [{ length: back(length), onHand: k >= answer.bought.length, cuts: cuts.map(back) }] : [];
  });
  const buy = stock.flatMap((length) => {
    const count = answer.bought.filter((b) => b === length).length;
    return count ? [{ length: back(length), count }] : [];
  });
  return { sticks, buy, proved };
}

const feetOf = (bought: readonly number[], kerf: number) => bought.reduce((sum, b) => sum + b - kerf, 0);

/** Every purchase that could be enough and takes no more stock than `most`: least stock first, then fewest sticks. */
function purchases(stock: readonly number[], least: number, most: number, kerf: number): number[][] {
  const out: number[][] = [];
  const grow = (index: number, bought: number[], feet: number, room: number): void => {
    if (index === stock.length) {
      if (room >= least) out.push(bought);
      return;
    }
    const each = stock[index]!;
    for (let n = 0; feet + n * (each - kerf) <= most; n++)
      grow(index + 1, [...bought, ...Array<number>(n).fill(each)], feet + n * (each - kerf), room + n * each);
  };
  grow(0, [], 0, 0);
  return out.sort((a, b) => feetOf(a, kerf) - feetOf(b, kerf) || a.length - b.length);
}

function leastCommon(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y) [x, y] = [y, x % y];
  return (a / x) * b;
}

function workingOf({ pieces, onHand, kerf }: CutJob, found: Omit<CutList, 'ok' | 'working'>): string {
  const sum = pieces.reduce((t, p) => t.add(p.length.mul(p.count)), new Fraction(0));
  const sticks = found.sticks.map(
    (s) => `${s.onHand ? 'on hand ' : ''}${tape(s.length)}: ${s.cuts.map(tape).join(' + ')}`,
  );
  const proof = found.proved ? 'no smaller purchase holds them' : 'a smaller purchase was not ruled out';
  return `${sticks.join('; ')} (${tape(kerf)} in kerf; ${tape(sum)} in of pieces${onHand.length ? ', stock on hand first' : ''}; ${proof})`;
}
