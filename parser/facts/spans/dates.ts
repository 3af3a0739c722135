import type { FollowUp, Span, TimeMention } from '../../types.ts';
import { firstFrom, rangeIn, type Talk } from '../talk.ts';

/** So far behind a plan is looked for the day that its "until" or "before" is about. */
const REACH = 12;

/**
 * The days of a plan that no rule dated: the first day still to come that its words tell, or that stands behind the
 * "until", "once" or "before" on which they end.
 */
export function datesIn(cut: Talk, span: Span): Pick<FollowUp, 'due' | 'notBefore'> {
  const { chunks } = cut;
  const own = chunks.slice(...rangeIn(chunks, span));
  const time = own.find((c) => isAhead(c.time))?.time;
  if (time) return waits(time) ? { due: null, notBefore: time.date } : { due: time.to ?? time.date, notBefore: null };
  const next = firstFrom(chunks, span.end);
  const joint = /^(?:until|till|til|once|after|before|b4)$/.test(chunks[next]?.word ?? '');
  const later = joint ? chunks.slice(next, next + REACH).find((c) => isAhead(c.time))?.time : undefined;
  if (!later) return { due: null, notBefore: null };
  return /^(?:before|b4)$/.test(chunks[next]!.word)
    ? { due: later.date, notBefore: null }
    : { due: null, notBefore: later.date };
}

const isAhead = (time: TimeMention | undefined) => time !== undefined && !time.past;
const waits = (time: TimeMention) =>
  time.relation === 'notBefore' || time.relation === 'after' || time.hours !== undefined;
