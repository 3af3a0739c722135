import { feet, feetText } from './lengths.ts';
import { figureAt, type Said, saying } from './said.ts';
import type { Extent } from './shapes.ts';

/** "24 ft along the eave", "14-6 up the rake", "ridge is 24 ft". */
const LONG = saying(
  '<L> (?:along|at|on|up|down) (?:the |each |every )?(eave|rake|ridge|hip|valley)s?\\b|\\b(eave|rake|ridge|hip|valley)s?(?: (?:is|are|runs?|at|each)|:)* <L>(?! (?:pieces|sticks|lengths|cap))',
  'g',
);
/** "Both eaves and all four rakes". */
const COUNTED = saying('\\b(?:(both)|all <N>|<N>) (eave|rake|ridge|hip|valley)s\\b', 'g');

/** Edges of a roof that goods run along, each as often as it was counted, by the lengths told of them. */
export function roofEdgesIn(said: Said, used: Set<number>, out: Extent): void {
  const counted = [...said.words.matchAll(COUNTED)];
  if (counted.length === 0) return;
  const lengths = new Map([...said.words.matchAll(LONG)].map((m) => [m[2] ?? m[3]!, Number(m[1] ?? m[4])]));
  for (const [, both, all, some, edge] of counted) {
    const id = lengths.get(edge!);
    const length = id === undefined ? null : feet(said, said.figures[id]!, null);
    if (id === undefined || !length) {
      out.doubt = `don't know how long the ${edge}s are`;
      continue;
    }
    const count = both ? 2 : figureAt(said, all ?? some).value.valueOf();
    used.add(id);
    if (!both) used.add(Number(all ?? some));
    out.shapes.push({
      kind: 'run',
      sides: [length],
      amount: null,
      count,
      working: `${count} x ${feetText(length)}`,
    });
  }
}
