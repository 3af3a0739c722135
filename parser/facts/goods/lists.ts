import type { Frame } from '../frames.ts';
import type { Talk } from '../talk.ts';

/** "Need:", "shopping list", "paint store:": what follows is to buy. */
const TO_BUY =
  /^(?:(?:still )?(?:need|needs|needed)|to (?:buy|get|order)|(?:shopping|buy|material|materials|pickup|order|store|supply) ?(?:list|run)?|supplies|materials?|order|reorder|restock|short|missing|buy|get|pick up|grab|bring)$/;
const USED_UP = /^(?:use|used|used up|uses|installed|put in|went in)$/;
const ON_HAND =
  /^(?:have|on hand|in stock|left|left over|leftover|leftovers|spare|spares|remaining|got|on the truck|in the van)$/;

/** How many lines a heading may stand above what it is of. */
const LINES = 14;

/** The list that a clause stands in, by its heading ("need:"); null where it stands in none. */
export function listedAs(talk: Talk, at: number): 'need' | 'used' | 'have' | null {
  for (let k = at - 1; k >= 0 && k >= at - LINES; k--) {
    const frame = talk.frames[k]!;
    const opened = headingOf(talk, frame, k);
    if (opened) return opened;
    if (/\n\s*\n/.test(talk.text.slice(frame.end, talk.frames[k + 1]!.start))) return null;
    // A sentence that says something ends the list.
    if (frame.predicate !== 'none' && frame.sentence !== talk.frames[at]!.sentence) return null;
  }
  return null;
}

function headingOf(talk: Talk, frame: Frame, at: number): 'need' | 'used' | 'have' | null {
  const said = frame.chunks.map((c) => c.word).join(' ');
  const gap = talk.text.slice(frame.end, talk.frames[at + 1]?.start);
  const colon = gap.includes(':');
  if (!colon && !gap.includes('\n')) return null;
  const shop =
    colon &&
    frame.chunks.length <= 3 &&
    frame.chunks.at(-1)?.term?.kind === 'role' &&
    /store|yard|supply|shop|counter|merchant/.test(said);
  if (TO_BUY.test(said) || shop) return 'need';
  if (USED_UP.test(said)) return 'used';
  return ON_HAND.test(said) ? 'have' : null;
}
