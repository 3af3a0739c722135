import { DID, DID_WITH_SUBJECT, JOINT, SETTLED, SURELY_DID, TO_COME } from './deeds.ts';
import { isPerson } from './people.ts';
import type { Talk } from './talk.ts';

const OPENING = /^(?:the|that|this|those|these|them|my|our|his|her|their)$/;
const NO_NAME = /^(?:of|at|in|with|from|to|on|up|down|off|out|not|no|do|go|strip|put)$/;
const THING_WORDS = 4;

/** "The rain tuesday washed out the footer", "drywall guys friday left a mess": what came or was done then is told of right behind the day. */
export function toldOfThing(talk: Talk, from: number, until: number): boolean {
  const verb = /^(?:done|never|just|finally|already|only)$/.test(talk.word(until)) ? until + 1 : until;
  const word = talk.word(verb);
  if (!DID.has(word) && !SURELY_DID.test(word)) return false;
  // "The meeting monday was moved" may be still to come.
  if (SETTLED.test(word) || (/^w/.test(word) && SETTLED.test(talk.word(verb + 1)))) return false;
  const last = talk.word(from - 1) === 'on' ? from - 2 : from - 1;
  let first = last;
  for (; first >= 0 && first > last - THING_WORDS; first--) {
    const named = talk.word(first);
    if (TO_COME.test(named) || SETTLED.test(named) || DID.has(named) || NO_NAME.test(named)) return false;
    if (
      talk.opens(first) ||
      OPENING.test(named) ||
      (JOINT.test(talk.word(first - 1)) && talk.word(first - 1) !== 'that')
    )
      break;
  }
  return first < last ? OPENING.test(talk.word(first)) || isPerson(talk.word(last)) : isPerson(talk.word(last));
}

/** "The invoice from the 20th of november": what is kept in writing or in a picture is of a day that has been. */
export const recordedOn = (talk: Talk, at: number): boolean =>
  talk.word(at) === 'dated' ||
  (/^(?:from|of)$/.test(talk.word(at)) &&
    /^(?:invoices?|bills?|quotes?|quotation|estimates?|receipts?|emails?|texts?|messages?|voicemail|photos?|pictures?|pics?|letters?|reports?|readings?|notes|minutes|checks?|cheques?|statements?|timesheets?|logs?|slips?)$/.test(
      talk.bare(at - 1),
    ));

const STILL_OPEN =
  /^(?:(?:is|are|was|ain't|isn't) )?(?:never|didn't|wasn't|weren't|was|were|came|showed|hasn't|haven't|still)\b/;
/** "That 12/28 delivery never showed", "the sept 30 invoice is still unpaid": the day names a thing that is told of. */
export const namesWhatCame = (talk: Talk, from: number, until: number): boolean =>
  /^(?:that|the|them|those|their|his|her|my|our|this)$/.test(talk.word(from - 1)) &&
  !TO_COME.test(talk.word(until)) &&
  !DID.has(talk.word(until)) &&
  STILL_OPEN.test(talk.join(until + 1, until + 3));

const FOLLOWING = 4;
const STILL_AHEAD =
  /\b(?:will|gonna|going|by|until|till|due|next|expires?|renews?|runs|anniversary|warranty|shall)\b|'ll\b/;
const SAYS = /^(?:say|says|said|reads|read)$/;
const isDeed = (word: string) =>
  DID.has(word) || DID_WITH_SUBJECT.has(word) || SURELY_DID.test(word) || SAYS.test(word);

/**
 * Whether a deed is told around the day said from `from` to `until`, and nothing that is still to come: "paper says 8 june",
 * "they promised it before christmas". So a day that has only just gone by is not taken for the one of the next year.
 */
export function toldAround(talk: Talk, from: number, until: number): boolean {
  const around = `${talk.lead(from)} | ${talk.join(until, until + FOLLOWING)}`;
  return !STILL_AHEAD.test(around) && around.split(' ').some(isDeed);
}
