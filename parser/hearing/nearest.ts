import { CHANGE } from './channel.ts';
import type { Names, Way } from './names.ts';

/** A name that a stretch of heard words may have been. */
export interface Near {
  way: Way;
  /** How many of the heard words it takes. */
  words: number;
  /** What hearing it so cost, in changes of sounds. */
  cost: number;
}

/** The same, with the tokens that it takes. */
export interface Candidate extends Near {
  from: number;
  until: number;
}

/** A name may cost so much, and so much more for each of its sounds. */
const COST_AT_LEAST = 0.25;
const COST_PER_SOUND = 0.2;
const MOST_COST = 2;
/** Half-way through a name, changes may have come early. */
const EARLY = 0.6;
const EARLY_PER_SOUND = 0.12;
/** The names are kept as one of each: several of them have an s more. */
const PLURAL = 0.06;
const DEEPEST = 36;
const LONGEST = 48;
/** Sounds put in or left out by one place in a name. */
const ASIDE = 3;
const S = 's'.charCodeAt(0);
const FAR = 9;

const rows = Array.from({ length: DEEPEST + 2 }, () => new Float64Array(LONGEST + 2).fill(FAR));
const heard = new Uint8Array(LONGEST);

/**
 * The names that sound like the words from here on: one walk down the tree of names for all stretches that start here.
 *
 * @param sounds of all the words
 * @param ends how many sounds the first word has, the first two words, and so on
 */
export function nearest(sounds: string, ends: readonly number[], names: Names): Near[] {
  const length = Math.min(sounds.length, LONGEST);
  const first = rows[0]!;
  first[0] = 0;
  for (let j = 0; j < length; j++) {
    heard[j] = sounds.charCodeAt(j);
    first[j + 1] = j < ASIDE ? first[j]! + CHANGE[heard[j]!]! : FAR;
  }
  const found: Near[] = [];
  walk(0, 0, length, ends, names, found);
  return found;
}

function walk(node: number, depth: number, length: number, ends: readonly number[], names: Names, found: Near[]): void {
  if (depth >= DEEPEST) return;
  const { sound, child, sibling } = names;
  const before = rows[depth]!;
  const row = rows[depth + 1]!;
  const limit = Math.min(MOST_COST, EARLY + EARLY_PER_SOUND * (depth + 1));
  const from = Math.max(0, depth - ASIDE);
  const until = Math.min(length, depth + ASIDE + 1);
  for (let below = child[node]!; below >= 0; below = sibling[below]!) {
    const said = sound[below]! << 7;
    const out = CHANGE[said]!;
    let corner = before[from]!;
    let left = from ? FAR : corner + out;
    row[from] = left;
    let least = left;
    for (let j = from; j < until; j++) {
      const to = heard[j]!;
      const above = before[j + 1]!;
      const across = corner + CHANGE[said + to]!;
      const down = above + out;
      left += CHANGE[to]!;
      if (down < left) left = down;
      if (across < left) left = across;
      corner = above;
      row[j + 1] = left;
      if (left < least) least = left;
    }
    if (least > limit) continue;
    row[until + 1] = FAR;
    if (names.ends[below]! >= 0) take(below, row, depth + 1, until, ends, names, found);
    walk(below, depth + 1, length, ends, names, found);
  }
}

/** The names that end at a node, for each stretch of heard words that may end with them. */
function take(
  node: number,
  row: Float64Array,
  sounds: number,
  until: number,
  ends: readonly number[],
  names: Names,
  found: Near[],
): void {
  const most = Math.min(MOST_COST, COST_AT_LEAST + COST_PER_SOUND * sounds);
  for (let k = 0; k < ends.length; k++) {
    const end = ends[k]!;
    if (end > until + 1 || end < sounds - ASIDE) continue;
    let cost = end <= until ? row[end]! : FAR;
    if (heard[end - 1] === S && end > 2) cost = Math.min(cost, row[end - 1]! + PLURAL);
    if (cost > most) continue;
    for (let way = names.ends[node]!; way >= 0; way = names.next[way]!)
      found.push({ way: names.ways[way]!, words: k + 1, cost });
  }
}
