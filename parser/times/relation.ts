import type { TimeRelation } from '../types.ts';
import type { Talk } from './talk.ts';

const NEGATIVE =
  /\b(?:not to|don't|dont|do not|not|no|nobody|nothing|never|can't|cant|won't|wont)\b.*\b(?:before|b4|until|till|til)(?: \w+)?$/;
/** "Before the inspector comes", "before he is back": the day says when that is. */
const BEFORE_EVENT =
  /\b(?:before|b4)(?: (?!and\b|then\b|but\b)\w+){1,4}? (?:comes?|shows?|shows up|gets? here|gets? back|arrives?|is back|is here|here|back|on|starts?|leaves?|pours?|closes?)(?: back| up| in)?$/;

const NO_SOONER = /\b(?:no|not) (?:sooner|earlier) than(?: (?:on|the))?$/;
/** "Tuesday at the earliest". */
const EARLIEST = /^(?:at (?:the )?)?(?:earliest|soonest)\b/;

/** How the day bounds the work: by what stands in front of it. */
export function relationBefore(talk: Talk, from: number, until: number): TimeRelation {
  let at = from - 1;
  while (
    /^(?:on|the|noon|first|thing|end|of|day|sometime|quitting|time|lunch|lunchtime|dark|close|than)$/.test(
      talk.word(at),
    ) &&
    at > from - 4
  )
    at--;
  const before = talk.word(at);
  if (/^(?:by|due|thru|through)$/.test(before)) return 'by';
  if (before === 'later' && talk.word(at - 1) === 'no') return 'by';
  if (/^(?:until|till|til|after|hasta)$/.test(before)) return 'notBefore';
  if (EARLIEST.test(talk.join(until, until + 3))) return 'notBefore';
  const lead = talk.lead(from);
  if (NO_SOONER.test(lead)) return 'notBefore';
  if (NEGATIVE.test(lead)) return 'notBefore';
  if (/^(?:before|b4)$/.test(before) || BEFORE_EVENT.test(lead)) return 'before';
  return 'on';
}
