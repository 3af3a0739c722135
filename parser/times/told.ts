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
const SUBJECT =
  /^(?:i|we|he|she|they|it|who|you|crew|guys?|lads?|boys?|fellas?|plumbers?|sparky|sparkies|electricians?|painters?|roofers?|drywallers?|joiners?|inspector|owner|client|somebody|someone|nobody)$/;
const BETWEEN = /^(?:never|just|only|finally|already|all|both|also|even|still|not|guy|guys|man|lads)$/;
/** Said or settled then, for a day that is still to come: "he said friday", "they moved it to friday". */
const SETTLED =
  /^(?:said|told|says|saying|promised|reckoned|thought|figured|booked|scheduled|rescheduled|ordered|asked|wanted|needed|moved|pushed|bumped|pulled|changed|agreed|confirmed|planned|called|hoped|arranged|switched|swapped|rang|texted|emailed|quoted)$/;
/** Of what is to come, or of what always is. */
const TO_COME =
  /^(?:will|won't|wont|gonna|going|should|shall|can|can't|could|would|might|may|must|need|needs|want|wants|is|are|isn't|aren't|am|be|to|get|gets|have|has|let|make|comes?|coming|starting|starts?|lands?|doing|'ll|due|ready|till|until|til|by|before|after|for)$/;
const GOT_TO = /^(?:to|there|in|here|back|stuck|rained|as)$/;
/** "Get it finished friday" is yet to be. */
const HAVING = /^(?:get|gets|have|has|want|wants|need|needs|make|see|keep|gotta|to)$/;
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
    if (JOINT.test(word) || SETTLED.test(word)) return false;
    if (DID.has(word)) return true;
    const subject = BETWEEN.test(talk.word(k - 1)) ? k - 2 : k - 1;
    const done =
      DID_WITH_SUBJECT.has(word) || /[a-z]{3}ed$/.test(word) || (word === 'got' && GOT_TO.test(talk.word(k + 1)));
    if (done && SUBJECT.test(talk.word(subject)) && !HAVING.test(talk.word(subject - 1))) return true;
    if (word === 'to' && talk.word(k - 1) === 'got') continue;
    if (TO_COME.test(word) || /'(?:ll|s|re|m)$/.test(word)) return false;
  }
  return false;
}
