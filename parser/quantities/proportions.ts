import type { Line } from './line.ts';
import { wordSet } from './words.ts';

const PROPORTIONED = wordSet(
  'scarf scarfs mix mixed mixes gauged bevel bevelled sand cement lime slope sloped taper tapered batter ratio gear geared reduction',
);
const REACH = 6;

/** "Scarf is eight to one", "mixed it three to one": a proportion of the work, and no odds. */
export function isProportion(line: Line, from: number): boolean {
  for (let back = 1; back <= REACH; back++) if (PROPORTIONED.has(line.word(from - back))) return true;
  return false;
}
