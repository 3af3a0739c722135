import type { Quantity } from '../../types.ts';
import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

/** A figure of a note, with the others that are told as one with it: "96 by 41 1/4" has two sides. */
export interface Figure {
  /** Position of its clause in the talk. */
  at: number;
  frame: Frame;
  /** Position in the clause of its first side, and of what stands behind its last. */
  from: number;
  until: number;
  start: number;
  end: number;
  sides: Quantity[];
  /** The unit that was said with it, or null. */
  unit: string | null;
}

/** What readings are told in; goods are counted in the rest. */
const READ_IN =
  /^(?:length|area|volume|temperature|percent|pressure|voltage|current|power|angle|slope|torque|speed|flow|weight|other)$/;

export const isReadIn = (q: Quantity): boolean => READ_IN.test(q.unitKind ?? '');

/** Every figure of a talk that is not `taken` already, in the order of its words. */
export function figuresIn(talk: Talk, taken: ReadonlySet<Quantity>): Figure[] {
  const out: Figure[] = [];
  talk.frames.forEach((frame, at) => {
    frame.chunks.forEach(({ quantity: q, start, end }, k) => {
      if (!q || taken.has(q) || isPutRight(frame, k)) return;
      if (q.unitFrom !== 'none' && !isReadIn(q)) return;
      const last = out.at(-1);
      const unit = q.unitFrom === 'none' ? null : q.unit;
      if (last && last.at === at && last.unit === unit && isSideOf(last, q)) {
        last.sides.push(q);
        Object.assign(last, { until: k + 1, end });
      } else out.push({ at, frame, from: k, until: k + 1, start, end, sides: [q], unit });
    });
  });
  return out;
}

/** "Fourteen and three eighths, not fourteen and a half": the figure that does not hold. */
const isPutRight = ({ chunks, joinedBy }: Frame, k: number) =>
  chunks[k - 1]?.word === 'not' && (k === 1 ? joinedBy === 'comma' : chunks.slice(0, k - 1).some((c) => c.quantity));

const isSideOf = ({ sides }: Figure, q: Quantity) =>
  q.group?.kind === 'pair' && sides.some(({ group }) => group?.id === q.group!.id);
