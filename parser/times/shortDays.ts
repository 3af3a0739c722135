import { slashDay } from './datedWeekday.ts';
import type { Talk } from './talk.ts';
import { PART, WEEKDAYS } from './weekdayNames.ts';

/** Short names that are also other words: "sat in the garage", "the sun side", "wed the two pieces". */
const DOUBTFUL = new Set(['sun', 'sat', 'wed', 'mon']);
const CUE =
  /^(?:by|on|this|next|last|until|till|til|before|b4|due|thru|through|or|and|&|n|to|late|early|come|comes|coming|for|since)$/;
const TO_COME = /\b(?:will|can|could|gonna|going|should|coming|comes?|do|start|starts|set|be|by|on)\b|'ll\b/;

/** Something that sat, a sun that shone, a pair that wed. */
const SITS =
  /\b(?:i|we|he|she|they|who|that|which|where|has|had|been|just|the|a|these|those|in|of)(?: \w+)?$|\b(?:the|a|an|my|our|his|her) \w+$|^$/;

/** Whether a short name is said of the day. The whole names always are. */
export function isMeant(talk: Talk, i: number): boolean {
  const word = talk.bare(i);
  if (!DOUBTFUL.has(word)) return true;
  // "The sun's out", but "mon's no good".
  if (word !== talk.word(i))
    return /^(?:mon|wed)$/.test(word) && /^(?:no|out|good|fine|booked|better|free|full|off)$/.test(talk.word(i + 1));
  if (CUE.test(talk.word(i - 1)) || PART.test(talk.word(i + 1))) return true;
  // "Sat week we're away", "sat 10/17".
  if ((talk.word(i + 1) === 'week' && talk.ends(i + 2)) || slashDay(talk, i + 1)) return true;
  if (isSuited(talk, i)) return true;
  // "He'll do the gas line sat": told last, of what is to come.
  const last = talk.tokens[i + 1];
  if (
    (last === undefined || last.kind !== 'word') &&
    !/^(?:i|we|he|she|it|they|the|who|that)$/.test(talk.word(i - 1)) &&
    TO_COME.test(talk.lead(i))
  )
    return true;
  // "Recheck sat", "fix it Sat.", "shutdown sat 6-10a": a time of day or the end follows, and nothing before it sits.
  const closes = last === undefined || last.kind !== 'word' || last.word === 'when';
  if (closes && !SITS.test(talk.lead(i))) return true;
  // "Wed need a bigger saw": "we'd" without its mark.
  if (word === 'wed' && /^(?:need|have|better|like|love|never|been|had|rather|be)$/.test(talk.word(i + 1)))
    return false;
  if (/^(?:the|a)$/.test(talk.word(i - 1))) return false;
  if (word === 'sat' || word === 'sun')
    return WEEKDAYS.has(talk.word(i + 2)) && /^(?:or|and|&|n|\/)$/.test(talk.word(i + 1));
  return !/^(?:the|it|them|two|these|those|both|that|my|his|her|our)$/.test(talk.word(i + 1));
}

const SUITS = /^(?:ok|okay|works|suits|only)$/;
const STANDS = /^(?:good|fine|free|alright|wont|won't|is|maybe|pls|please)$/;

/** "Sat ok for you?", "is sat free", "working sat if it's dry", "sat: demo": a short day that suits, or heads a line. */
function isSuited(talk: Talk, i: number): boolean {
  const next = talk.word(i + 1);
  if (talk.opens(i) && (SUITS.test(next) || /^[:–-]$/.test(next))) return true;
  if (talk.bare(i) !== 'sun' && talk.opens(i) && STANDS.test(next)) return true;
  if (talk.word(i - 1) === 'is') return SUITS.test(next) || STANDS.test(next);
  return /^(?:working|coming|starting|open|closed|off|free)$/.test(talk.word(i - 1)) && talk.ends(i + 1);
}
