import { feet, feetText } from './lengths.ts';
import type { Measure } from './measure.ts';
import { countBefore } from './rectangles.ts';
import { type Said, saying } from './said.ts';
import type { Extent } from './shapes.ts';

/** Words that tell a run along walls, or a height: two of those are no sides of one floor. */
const RUNS_ALONG = /\b(?:walls?|runs|perimeters?|around|legs|ends|high|tall|height)\b/;

/** Words behind a bare figure that make it a side. */
const SIDE_BEHIND = /^ ?(?:wide|long|deep|across|out|back|from|one way|the other|(?:along|down) the)\b/;

/** How many such places there are: "four raised beds, each of them". */
const EACH_OF = saying(
  '<N> (?:[a-z]+ )?(?:beds?|pads?|slabs?|planters?|boxes|piers?|footings?|panels|patches|strips|landings|steps|bays)\\b[^.{]{0,24}$',
);

/**
 * "22 feet of porch, six foot eight to the outside beam", "eighteen wide where it meets the street, five feet back":
 * where a note has two lengths that nothing else claims, and no more, they are the place's two sides.
 */
export function twoSidesIn(said: Said, by: Measure, used: Set<number>, out: Extent): void {
  if (by === 'length' || (by === 'area' && RUNS_ALONG.test(said.words))) return;
  const left = [...said.words.matchAll(saying('<LN>', 'g'))].filter((m) => {
    const figure = said.figures[Number(m[1])]!;
    const bare = figure.unit === null && !SIDE_BEHIND.test(said.words.slice(m.index + m[0].length));
    const small = figure.sure && (feet(said, figure, null)?.compare(1) ?? -1) < 0;
    return !used.has(Number(m[1])) && !bare && !small && !figure.per && !figure.onCenter;
  });
  if (left.length !== 2) return;
  const [a, b] = left.map((m) => said.figures[Number(m[1])]!);
  const [one, two] = [feet(said, a!, b!), feet(said, b!, a!)];
  if (!one || !two || one.compare(1) < 0 || two.compare(1) < 0) return;
  const counted = EACH_OF.exec(said.words.slice(0, left[0]!.index));
  const times = counted && !used.has(Number(counted[1])) ? said.figures[Number(counted[1])]!.value : null;
  for (const m of left) used.add(Number(m[1]));
  if (times?.d === 1n) used.add(Number(counted![1]));
  const count = times?.d === 1n ? times.valueOf() : (countBefore(said, left[0]!.index, used) ?? 1);
  out.shapes.push({
    kind: count > 1 ? 'rectangle' : 'room',
    sides: [one, two],
    amount: null,
    count,
    working: `${count > 1 ? `${count} x ` : ''}${feetText(one)} x ${feetText(two)}`,
  });
}
