import { isOnlyArranged, SENT_BACK } from '../../said/arranged.ts';
import { FOUND_SO } from '../../said/stillAmiss.ts';
import type { Clause } from './clauses.ts';

/**
 * Clauses that name a thing and tell nothing of its being over, whatever their words weigh. Common practice in how people
 * talk, no source.
 */

/** What is for another day, or could not be, is not finished: "they go on monday", "couldn't get it on". */
const LATER =
  /\b(?:tomorrow|tmrw|in the morning|next (?:week|time|visit|trip)|could(?:n't|nt| not)|can't be [a-z]+|cannot be|can't now|(?:until|till|before) (?:we|i|they|somebody) (?:know|hear|find out))\b|(?:\b(?:go|goes|going|gets?|will|gonna)|'ll)\b.* (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/;
/** "I'm up the steps with a brush", "let's do the gate": who is at it, or will be. */
const AT_IT =
  /^(?:(?:and|so|but|then) )*(?:i'm|we're|i am|we are|i'll|we'll|let's|can you|could you|please|nobody|no one)\b(?!.*\b(?:done|finished|through|happy)\b)/;
/** "There's water dripping off the fan", "there's spares", "26 in all": what there is. */
const THERE_IS = /^(?:and )?there(?:'s| is| are) (?!no\b|none|nothing|not|never|a new|new)|^(?:\d+|[a-z]+) in all$/;
/** "It's too long, took it straight back". */
const GOES_BACK = new RegExp(`\\b(?:took|sent|taking|sending) ${SENT_BACK}\\b`);
/** "A latch", "patch kit": goods by their name alone, told among what is to get. */
const GOODS_ONLY = /^(?:[a-z ]+: )?(?:an?|one|two|three|\d+) (?:new |more )?[a-z]+(?: [a-z]+)?$/;
const SAYS_SO = /\b(?:on|in|up|down|done|fixed|good|fine|set|hung|off|out|works?|went|new one)\b/;

/** Whether a clause cannot tell of anything as finished. */
export function cannotEnd({ said: heard, start, whole, tokens }: Clause): boolean {
  const said = heard.slice(whole - start);
  return (
    LATER.test(said) ||
    AT_IT.test(said) ||
    FOUND_SO.test(said) ||
    isOnlyArranged(said) ||
    THERE_IS.test(said) ||
    GOES_BACK.test(said) ||
    (tokens.length <= 6 && GOODS_ONLY.test(said) && !SAYS_SO.test(said))
  );
}
