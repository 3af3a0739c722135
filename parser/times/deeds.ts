import { isPerson } from './people.ts';

const words = (list: string): ReadonlySet<string> => new Set(list.split(' '));

/** What somebody did, in one word that is told of the past and nothing else. */
export const DID = words(
  "was were wasn't weren't did didn't had hadn't went came saw took gave broke began drove fell forgot sat rang blew shook rode froze ate flew grew knew threw wrote spoke stole swore woke",
);

/** The same words are also said of what is to be done ("have it hung"), so that somebody must stand before them. */
export const DID_WITH_SUBJECT = words(
  'left found lost hung dug built sent met kept held brought bought made paid stuck tore laid ran put cut set shut hit poured done seen',
);

/** What befalls a thing or is done by it, never to it: "the furnace died saturday", "the boards turned up monday". */
export const BEFELL = words(
  'died quit failed passed cracked leaked flooded overflowed tripped burst blew jammed stopped collapsed arrived happened started ended showed turned backed ' +
    'landed bailed walked complained popped slipped sagged split settled flew sank crashed rained snowed froze broke ran',
);

/** Told of the past wherever it stands; "put", "cut" and "set" are said of what is to come as well. */
export const SURELY_DID =
  /^(?:left|found|lost|hung|dug|built|sent|met|kept|held|brought|bought|made|paid|stuck|tore|laid|ran|poured|showed|quit|burst|(?!need|want)[a-z]{3,}ed)$/;

/** Said or settled then, for a day that is still to come: "he said friday", "they moved it to friday". */
export const SETTLED =
  /^(?:said|told|says|saying|promised|reckoned|thought|figured|booked|scheduled|rescheduled|asked|wanted|needed|moved|pushed|bumped|pulled|changed|agreed|confirmed|planned|called|hoped|arranged|switched|swapped|rang|cancelled|canceled|rostered|slated|pencilled|penciled)$/;

/** Of what is to come, or of what always is. */
export const TO_COME =
  /^(?:will|won't|wont|gonna|going|should|shall|can|can't|could|would|might|may|must|need|needs|want|wants|is|are|isn't|aren't|am|be|to|get|gets|have|has|let|make|comes?|coming|starting|starts?|lands?|doing|'ll|due|ready|till|until|til|by|before|after|for)$/;

/** "Get it finished friday" is yet to be. */
export const HAVING = /^(?:get|gets|getting|have|has|having|want|wants|need|needs|make|see|keep|gotta|to)$/;

export const JOINT = /^(?:and|but|so|then|because|cause|when|while|if|that|or|n|&|[,.;:!?\n])$/;

const PRONOUN = /^(?:i|we|he|she|they|it|who|you)$/;
const WEATHER = /^(?:storm|wind|rain|frost|hail|lightning|flood|power)$/;

/** Who or what does things by itself. */
export const acts = (word: string): boolean => PRONOUN.test(word) || WEATHER.test(word) || isPerson(word);
