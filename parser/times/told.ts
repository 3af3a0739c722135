import { acts, BEFELL, DID, DID_WITH_SUBJECT, HAVING, JOINT, SETTLED, SURELY_DID, TO_COME } from './deeds.ts';
import type { Talk } from './talk.ts';

const BETWEEN = /^(?:never|just|only|finally|already|all|both|also|even|still|not|guy|guys|man|lads)$/;
const CALLED = /^(?:rang|called|texted|emailed|phoned)$/;
const GOT_DONE = /^(?:set|hung|done|put|cut|built|laid|stuck|hit|sent|made|[a-z]{3,}ed)$/;
const GOT_TO = /^(?:to|there|in|here|back|stuck|rained|as)$/;
/** "Have the plumber set it friday": who stands before the deed is told to do it. */
const isHad = (talk: Talk, subject: number) =>
  HAVING.test(talk.word(subject - 1)) ||
  (/^(?:the|a|my|our|his|her|your|that)$/.test(talk.word(subject - 1)) && HAVING.test(talk.word(subject - 2)));
const REACH = 8;

/** "He was supposed to be here thursday", "that was due monday", "should've been done friday": it was not done then. */
const UNMET =
  /\b(?:(?:was|were) (?:supposed|sposed|meant) to (?:\w+ ){0,3}|(?:was|were) due (?:on |in )?|should(?:'ve| have|a| of) (?:\w+ ){1,4})$/;
/** "Supposed to come tuesday and didn't". */
const isUnmet = (talk: Talk, at: number) =>
  /^(?:supposed|meant) to (?:\w+ ){1,3}$/.test(`${talk.lead(at)} `) &&
  /\b(?:and|but) (?:\w+ )?(?:didn't|never|didnt)\b/.test(talk.join(at + 1, at + 5));

/** "She come by tuesday", "it come apart sunday": as much of the country says it. */
const CAME_BY = /^(?:by|over|round|around|apart|off|loose|undone|unglued|in and)$/;

/**
 * Whether the day at `at` is told of as past with no word of its own for it: "I was up there saturday", "they sat there
 * friday afternoon". The nearest verb before it in its clause decides; "on" may stand between.
 */
export function happened(talk: Talk, at: number): boolean {
  if (UNMET.test(`${talk.lead(at)} `) || isUnmet(talk, at)) return true;
  for (let k = at - 1; k >= 0 && k > at - REACH; k--) {
    const word = talk.word(k);
    // "We did that friday": what was done, and no joint.
    if (word === 'that' && (DID.has(talk.word(k - 1)) || DID_WITH_SUBJECT.has(talk.word(k - 1)))) continue;
    // "He rang sunday": the day of the call, not the day it was about.
    if (CALLED.test(word) && k === at - 1) return acts(talk.word(k - 1));
    // "I told you tuesday about it": the day on which it was said.
    if (word === 'told' && k === at - 2 && /^(?:about|that|to|not)$/.test(talk.word(at + 1))) return true;
    if (JOINT.test(word) || SETTLED.test(word)) return false;
    if (DID.has(word)) return true;
    if (word === 'come' && /^(?:he|she|it)$/.test(talk.word(k - 1)) && CAME_BY.test(talk.word(k + 1))) return true;
    // "Y'all quit at noon" is said of what is to come.
    const asked = /^(?:quit|split|burst)$/.test(word) && /^(?:y'all|yall|you|we|they|i)$/.test(talk.word(k - 1));
    if (
      BEFELL.has(word) &&
      !asked &&
      !HAVING.test(talk.word(k - 1)) &&
      !/^(?:be|is|are|being|got|the|a|that)$/.test(talk.word(k - 1))
    )
      return true;
    const subject = BETWEEN.test(talk.word(k - 1)) ? k - 2 : k - 1;
    const done =
      DID_WITH_SUBJECT.has(word) || /[a-z]{3}ed$/.test(word) || (word === 'got' && GOT_TO.test(talk.word(k + 1)));
    // "The toilet got set friday", "got rained out monday".
    if (word === 'got' && GOT_DONE.test(talk.word(k + 1)) && !HAVING.test(talk.word(k - 1))) return true;
    if (done && acts(talk.word(subject)) && !isHad(talk, subject)) return true;
    if (word === 'to' && talk.word(k - 1) === 'got') continue;
    // "Came by saturday": by the house.
    if (word === 'by' && /^(?:came|come|went|was|were|stopped|swung|dropped|popped|drove|ran)$/.test(talk.word(k - 1)))
      continue;
    if (TO_COME.test(word) || /'(?:ll|s|re|m)$/.test(word)) return false;
  }
  return false;
}

const SAID = /^(?:said|says|told|promised|reckoned|thought|figured|wanted|needed|planned)$/;
const ARTICLE = /^(?:the|a|my|our|his|her|their|that|some|no)$/;
const WAS = /^(?:was|wasn't|went)$/;

/** Whether the day said from `from` to `until` opens what is told of it: "monday we poured it", "friday was a wash". */
export function toldBehind(talk: Talk, from: number, until: number): boolean {
  let first = from;
  while (/^(?:on|and|but|so|well|yeah|then|el|because|cos|cause|when)$/.test(talk.word(first - 1))) first--;
  if (!talk.opens(first)) return false;
  if (WAS.test(talk.word(until))) return !/^(?:the|my|our)$/.test(talk.word(until + 1));
  if (talk.says(until, ['got', 'rained'])) return true;
  if (/^(?:there (?:was|were)|didn't|(?:never|finally) [a-z]+ed)\b/.test(talk.join(until, until + 2))) return true;
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

/** "Passed inspection monday": never said of a thing, as "painted doors" is. */
const DOES = /^(?:passed|failed|lost|found|met|sent|paid|ran|bought|brought|left|made|poured|signed|started|quit)$/;

/** "Found the leak saturday", "paid his deposit dec 29": what is said opens with the deed. */
export function opensWithDeed(talk: Talk, at: number): boolean {
  let first = at - 1;
  while (first > 0 && first > at - REACH && !talk.opens(first)) first--;
  if (!talk.opens(first) || !SURELY_DID.test(talk.word(first)) || SETTLED.test(talk.word(first))) return false;
  // "Poured sunday so strip wednesday".
  if (first === at - 1) return true;
  if (!DONE_TO.test(talk.word(first + 1)) && !(DOES.test(talk.word(first)) && at - first <= 3)) return false;
  for (let k = first + 1; k < at; k++) {
    const word = talk.word(k);
    // "Poured it tuesday stripping it friday": the day of the deed has been named.
    const named =
      /^(?:mon|tues|wednes|thurs|fri|satur|sun)day$|^(?:yesterday|today)$/.test(word) && !JOINT.test(talk.word(k + 1));
    if (named || (TO_COME.test(word) && word !== 'to')) return false;
  }
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
