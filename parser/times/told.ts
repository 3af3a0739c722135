import { isPerson } from './people.ts';
import type { Talk } from './talk.ts';

/** What somebody did, in one word that is told of the past and nothing else. */
const DID = new Set(
  "was were wasn't weren't did didn't had hadn't went came saw took gave broke began drove fell forgot sat rang blew shook rode froze".split(
    ' ',
  ),
);
/** The same words are also said of what is to be done ("have it hung"), so that somebody must stand before them. */
const DID_WITH_SUBJECT = new Set(
  'left found lost hung dug built sent met kept held brought bought made paid stuck tore laid ran put cut set shut hit poured'.split(
    ' ',
  ),
);
const PRONOUN = /^(?:i|we|he|she|they|it|who|you)$/;
const acts = (word: string) => PRONOUN.test(word) || isPerson(word);
const BETWEEN = /^(?:never|just|only|finally|already|all|both|also|even|still|not|guy|guys|man|lads)$/;
/** Said or settled then, for a day that is still to come: "he said friday", "they moved it to friday". */
const SETTLED =
  /^(?:said|told|says|saying|promised|reckoned|thought|figured|booked|scheduled|rescheduled|ordered|asked|wanted|needed|moved|pushed|bumped|pulled|changed|agreed|confirmed|planned|called|hoped|arranged|switched|swapped|rang|texted|emailed|quoted)$/;
const CALLED = /^(?:rang|called|texted|emailed|phoned)$/;
/** Of what is to come, or of what always is. */
const TO_COME =
  /^(?:will|won't|wont|gonna|going|should|shall|can|can't|could|would|might|may|must|need|needs|want|wants|is|are|isn't|aren't|am|be|to|get|gets|have|has|let|make|comes?|coming|starting|starts?|lands?|doing|'ll|due|ready|till|until|til|by|before|after|for)$/;
const GOT_TO = /^(?:to|there|in|here|back|stuck|rained|as)$/;
/** "Get it finished friday" is yet to be. */
const HAVING = /^(?:get|gets|have|has|want|wants|need|needs|make|see|keep|gotta|to)$/;
/** "Have the plumber set it friday": who stands before the deed is told to do it. */
const isHad = (talk: Talk, subject: number) =>
  HAVING.test(talk.word(subject - 1)) ||
  (/^(?:the|a|my|our|his|her|your|that)$/.test(talk.word(subject - 1)) && HAVING.test(talk.word(subject - 2)));
const JOINT = /^(?:and|but|so|then|because|cause|when|while|if|that|or|n|&|[,.;:!?\n])$/;
const REACH = 8;

/**
 * Whether the day at `at` is told of as past with no word of its own for it: "I was up there saturday", "they sat there
 * friday afternoon". The nearest verb before it in its clause decides; "on" may stand between.
 */
export function happened(talk: Talk, at: number): boolean {
  // "He was supposed to be here thursday".
  if (/\b(?:was|were) (?:supposed|meant) to (?:\w+ ){0,3}$/.test(`${talk.lead(at)} `)) return true;
  for (let k = at - 1; k >= 0 && k > at - REACH; k--) {
    const word = talk.word(k);
    // "We did that friday": what was done, and no joint.
    if (word === 'that' && (DID.has(talk.word(k - 1)) || DID_WITH_SUBJECT.has(talk.word(k - 1)))) continue;
    // "He rang sunday": the day of the call, not the day it was about.
    if (CALLED.test(word) && k === at - 1) return acts(talk.word(k - 1));
    if (JOINT.test(word) || SETTLED.test(word)) return false;
    if (DID.has(word)) return true;
    const subject = BETWEEN.test(talk.word(k - 1)) ? k - 2 : k - 1;
    const done =
      DID_WITH_SUBJECT.has(word) || /[a-z]{3}ed$/.test(word) || (word === 'got' && GOT_TO.test(talk.word(k + 1)));
    if (done && acts(talk.word(subject)) && !isHad(talk, subject)) return true;
    if (word === 'to' && talk.word(k - 1) === 'got') continue;
    // "Came by saturday": by the house.
    if (word === 'by' && /^(?:came|went|was|were|stopped|swung|dropped|popped|drove|ran)$/.test(talk.word(k - 1))) continue;
    if (TO_COME.test(word) || /'(?:ll|s|re|m)$/.test(word)) return false;
  }
  return false;
}

/** Told of the past wherever it stands; "put", "cut" and "set" are said of what is to come as well. */
const SURELY_DID =
  /^(?:left|found|lost|hung|dug|built|sent|met|kept|held|brought|bought|made|paid|stuck|tore|laid|ran|poured|showed|quit|(?!need|want)[a-z]{3,}ed)$/;
const SAID = /^(?:said|says|told|promised|reckoned|thought|figured|wanted|needed|planned)$/;
const ARTICLE = /^(?:the|a|my|our|his|her|their|that|some|no)$/;
const WAS = /^(?:was|wasn't|went)$/;

/** Whether the day said from `from` to `until` opens what is told of it: "monday we poured it", "friday was a wash". */
export function toldBehind(talk: Talk, from: number, until: number): boolean {
  let first = from;
  while (/^(?:on|and|but|so|well|yeah|then|el)$/.test(talk.word(first - 1))) first--;
  if (!talk.opens(first)) return false;
  if (WAS.test(talk.word(until))) return !/^(?:the|my|our)$/.test(talk.word(until + 1));
  if (talk.says(until, ['got', 'rained'])) return true;
  if (/^(?:i|we|he|she|they)'d (?:already|just|been|gone|never)\b/.test(talk.join(until, until + 2))) return true;
  const possessive = /'s$/.test(talk.word(until - 1));
  const named = possessive || ARTICLE.test(talk.word(until));
  const nouns = named ? [1, 2, 3] : [0];
  for (const back of nouns) {
    const subject = until + back - (possessive ? 1 : 0);
    if (subject < until || (!named && !acts(talk.word(subject)))) continue;
    const verb = BETWEEN.test(talk.word(subject + 1)) ? subject + 2 : subject + 1;
    const word = talk.word(verb);
    if (JOINT.test(talk.word(subject)) || TO_COME.test(talk.word(subject))) return false;
    if (SAID.test(word)) return false;
    if (DID.has(word)) return !/^(?:going|gonna|to|better)$/.test(talk.word(verb + 1));
    if (SURELY_DID.test(word) && acts(talk.word(subject))) return true;
  }
  return false;
}

const DONE_TO = /^(?:the|a|an|his|her|my|our|their|all|it|them|him|em|that|those|some|out|up|down|off|in|into|over)$/;

/** "Found the leak saturday", "paid his deposit dec 29": what is said opens with the deed. */
export function opensWithDeed(talk: Talk, at: number): boolean {
  let first = at - 1;
  while (first > 0 && first > at - REACH && !talk.opens(first)) first--;
  if (!talk.opens(first) || !SURELY_DID.test(talk.word(first)) || SETTLED.test(talk.word(first))) return false;
  // "Poured sunday so strip wednesday".
  if (first === at - 1) return true;
  if (!DONE_TO.test(talk.word(first + 1))) return false;
  for (let k = first + 1; k < at; k++) if (TO_COME.test(talk.word(k)) && talk.word(k) !== 'to') return false;
  return true;
}

/** Said or done, of a day with its number that has just gone by: "ordered the doors nov 30", "she signed 12/22". */
export function lookedBack(talk: Talk, at: number): boolean {
  for (let k = at - 1; k >= 0 && k > at - REACH; k--) {
    const word = talk.word(k);
    if (JOINT.test(word)) return false;
    const done = DID.has(word) || SURELY_DID.test(word) || (SETTLED.test(word) && !/s$|ing$/.test(word));
    if (done)
      return ![1, 2].some(
        (back) => HAVING.test(talk.word(k - back)) || /^(?:be|is|are|being)$/.test(talk.word(k - back)),
      );
    if (TO_COME.test(word) && word !== 'for') return false;
  }
  return false;
}

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
    if (talk.opens(first) || OPENING.test(named) || (JOINT.test(talk.word(first - 1)) && talk.word(first - 1) !== 'that')) break;
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

const STILL_OPEN = /^(?:(?:is|are|was|ain't|isn't) )?(?:never|didn't|wasn't|weren't|was|were|came|showed|hasn't|haven't|still)\b/;
/** "That 12/28 delivery never showed", "the sept 30 invoice is still unpaid": the day names a thing that is told of. */
export const namesWhatCame = (talk: Talk, from: number, until: number): boolean =>
  /^(?:that|the|them|those|their|his|her|my|our|this)$/.test(talk.word(from - 1)) &&
  !TO_COME.test(talk.word(until)) &&
  !DID.has(talk.word(until)) &&
  STILL_OPEN.test(talk.join(until + 1, until + 3));

const STILL_AHEAD = /\b(?:will|gonna|going|by|until|till|due|next|expires?|renews?|runs|anniversary|warranty|shall)\b|'ll\b/;
/** Whether something around the day said from `from` to `until` puts it ahead. */
export const isToCome = (talk: Talk, from: number, until: number): boolean =>
  STILL_AHEAD.test(talk.lead(from)) || STILL_AHEAD.test(talk.join(until, until + 4));
