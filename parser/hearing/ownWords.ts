import { remembered } from '../remembered.ts';
import type { Vocabulary } from '../types.ts';
import { saidOf } from './company.ts';
import { everyday } from './everyday.ts';

/** Before a known word these make another: "relaid", "undercabinet", "midspan". */
const PREFIX =
  /^(?:re|un|de|mis|pre|non|mid|sub|out|over|under|up|back|inter|counter|semi|anti|multi|half|micro|mini|super|self|cross)/;
/** And these behind one: "epoxied", "screeders", "cupful". */
const ENDINGS = new Set('s es d ed ing in ings r er rs ers ly ie ies able less ful ness ish proof wise'.split(' '));
/** Said and typed in any trade's talk, apostrophes left out. */
const INFORMAL = new Set(
  (
    'aint arent cant couldnt didnt doesnt dont hadnt hasnt havent isnt shouldnt wasnt werent wont wouldnt theyre theyve theyll youre ' +
    'youve youll weve hes shes thats whats theres heres lets ive ttyl lol btw asap fyi tbh imo idk omw rn gonna wanna gotta lemme gimme ' +
    'kinda sorta dunno beaut ta owt nowt summat nae aye wee cos coz cuz arvo smoko tradie postie chippy brekkie acct cabs'
  ).split(' '),
);
/** Of the trade and its places, beside what the vocabulary lists. */
const BESIDE_TRADE = new Set(
  (
    'triplex fourplex gyproc villaboard finial finials pilaster pilasters pelmet pelmets ironmonger ironmongers oxalic kwila ' +
    'merbau trolley tapcon tapcons levelling postmix nog nogs dwang dwangs squeaker condo condos lites ' +
    'pullout pullouts letterplate letterplates epoxied tuck stopping hvac'
  ).split(' '),
);
export const isBesideTrade = (word: string): boolean => BESIDE_TRADE.has(word);
const SHORTEST_PART = 3;

const asked = new WeakMap<Vocabulary, (word: string) => boolean>();

/**
 * Does a word mean something as it stands: English, the trade's, another form of either, or made of two such ("epoxied",
 * "refinisher", "weatherbar")? What does not was heard or typed wrong, or is somebody's name.
 */
export function isWord(word: string, vocabulary: Vocabulary): boolean {
  if (everyday(word) || vocabulary.has(word)) return true;
  let isOther = asked.get(vocabulary);
  if (!isOther) {
    const isKnown = (part: string) => part.length >= SHORTEST_PART && (everyday(part) || vocabulary.has(part));
    isOther = remembered(
      (other) => INFORMAL.has(other) || BESIDE_TRADE.has(other) || saidOf(other) > 0 || isMade(other, isKnown),
    );
    asked.set(vocabulary, isOther);
  }
  return isOther(word);
}

function isMade(word: string, isKnown: (part: string) => boolean): boolean {
  if (isForm(word, isKnown)) return true;
  const prefix = PREFIX.exec(word)?.[0].length ?? 0;
  if (
    prefix &&
    word.length > prefix + SHORTEST_PART &&
    (isKnown(word.slice(prefix)) || isForm(word.slice(prefix), isKnown))
  )
    return true;
  // Crews say both parts: "stopgap", "weatherbar".
  for (let at = SHORTEST_PART; at <= word.length - SHORTEST_PART; at++)
    if (saidOf(word.slice(0, at)) && (saidOf(word.slice(at)) || isForm(word.slice(at), (part) => saidOf(part) > 0)))
      return true;
  return false;
}

/** Another form of a known word: "mitred", "tapconned", "shellacked". */
function isForm(word: string, isKnown: (part: string) => boolean): boolean {
  for (let rest = word.length - 1; rest >= SHORTEST_PART && rest >= word.length - 5; rest--) {
    const base = word.slice(0, rest);
    const ending = word.slice(rest);
    if (!ENDINGS.has(ending) || (/^[dr]/.test(ending) && !base.endsWith('e'))) continue;
    if (isKnown(base) || isKnown(`${base}e`) || (base.endsWith('i') && isKnown(`${base.slice(0, -1)}y`))) return true;
    // "Tapconned", "shellacked": the last letter doubled, or a k behind a c.
    if ((base.at(-1) === base.at(-2) || base.endsWith('ck')) && isKnown(base.slice(0, -1))) return true;
  }
  return false;
}
