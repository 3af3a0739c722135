import { lowered } from '../../../parser/trade/words.ts';

/** "It's too long, took it straight back": behind "took" or "sent". */
export const SENT_BACK = '(?:it|that|them|those)(?: straight| right)? back';

/**
 * Words in the past that only arrange, look after or ask for: a thing tagged off, ordered, sent back or come in is not put
 * right. Common practice in how people talk, no source.
 */
const TALKS = `(?:tagged|flagged|roped|coned|isolated|noted|ordered|re-?ordered|back-?ordered|booked|cancell?ed|called|rang|phoned|texted|emailed|measured|priced|marked|chained|returned|delayed|promised|locked out|(?:took|sent) ${SENT_BACK})`;
const TO_IT = '(?: (?:it|that|them|those|this|out|off|up|in|down|back|for|again))*';
const ONLY_ARRANGED = new RegExp(
  `^(?:(?:and|so|but|i|we|he|she|they|it|it's|that's|just|have|has|all|is|are|was) )*${TALKS}${TO_IT}$`,
);
/** "The latch it came", "carousel turned up", "closer arm came in", "spring not received": goods, and nothing put in. */
const CAME =
  /^(?:(?:and|so|the|that|those|my|new|\w+) ){0,5}(?:(?:came|come|comes) in|(?:it|they|one) (?:came|come)|turned up|showed up|picked up|(?:not )?(?:received|arrived|delivered)|(?:is|are) (?:here|in the (?:truck|van)))$/;

/** Whether finished work is told with nothing but words that arrange. */
export const isOnlyArranged = (quote: string): boolean => {
  const said = lowered(quote).trim();
  return ONLY_ARRANGED.test(said) || CAME.test(said);
};

const WISHES =
  /\b(?:(?:she|he|they|owners?|client|customer|tenant|head|boss|manager|mrs \w+|mr \w+)(?:'d| would| still| just| now| also)* (?:wants?|likes?|like|needs?|asked for|would like)|(?:i|we)(?:'d| would| still)? (?:want|like|need))(?: (?:the|to have|to get|you to get))?$/;

/** "She wants the whole porch ceiling painted now": told in the past tense, and only asked for. */
export const isOnlyWished = (lead: string): boolean => WISHES.test(lead.trim());
