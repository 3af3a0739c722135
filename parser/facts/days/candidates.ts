import { addDays } from '../../times/days.ts';
import type { Span, TimeMention } from '../../types.ts';
import { firstFrom, rangeIn, type Talk } from '../talk.ts';

/** A day that a plan may have. */
export interface Candidate {
  /** Position of its chunk. */
  at: number;
  time: TimeMention;
  /** The day as the first on which work may begin, and as the last on which it may end (`YYYY-MM-DD`). */
  first: string;
  last: string;
  /** Which of its side it is, the nearest to the plan being 0. */
  nth: number;
  where: 'in' | 'before' | 'after';
  /** The day that a wait is counted from, where that is not the note's own: "float it friday, then let it cure three days". */
  begins?: TimeMention;
}

/** So many days on each side of a plan are looked at. */
const SIDE = 3;

/** The days still to come that are told in a plan's words and nearest before and after them. */
export function candidatesFor(talk: Talk, span: Span): Candidate[] {
  const [from, until] = rangeIn(talk.chunks, span);
  const ahead = daysAhead(talk);
  const inside = ahead.filter(({ at }) => at >= from && at < until);
  const before = ahead.filter(({ at }) => at < from).reverse();
  const after = ahead.filter(({ at }) => at >= Math.max(until, firstFrom(talk.chunks, span.end)));
  return [
    ...inside.flatMap((c, nth) => readings(c, nth, 'in', ahead)),
    ...before.slice(0, SIDE).flatMap((c, nth) => readings(c, nth, 'before', ahead)),
    ...after.slice(0, SIDE).flatMap((c, nth) => readings(c, nth, 'after', ahead)),
  ];
}

const known = new WeakMap<Talk, readonly Told[]>();

/** Every day to come that a note tells, found once for all its plans. */
function daysAhead(talk: Talk): readonly Told[] {
  const days = known.get(talk) ?? talk.chunks.flatMap(({ time }, at) => (time && !time.past ? [{ at, time }] : []));
  known.set(talk, days);
  return days;
}

type Told = Pick<Candidate, 'at' | 'time'>;

/** A day as it is told, and a wait also as it is counted from the day told last before it. */
function readings({ at, time }: Told, nth: number, where: Candidate['where'], ahead: readonly Told[]): Candidate[] {
  const plain = { at, time, first: time.date, last: time.to ?? time.date, nth, where };
  const begins = time.hours ? ahead.findLast((c) => c.at < at && !c.time.hours)?.time : undefined;
  if (!begins) return [plain];
  const end = addDays(begins.to ?? begins.date, Math.ceil(time.hours! / 24));
  return [plain, { ...plain, first: end, last: end, begins }];
}
