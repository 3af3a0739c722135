import { remembered } from '../../../parser/remembered.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { Decision, Fact } from '../../../parser/types.ts';

/** "Homeowner says leave the register", "she doesn't want the shelf", "decided against the crown". */
const OWNER_LEAVES =
  /\b(?:(?:(?:owner|homeowner|customer|client|tenant|landlord|manager|boss|she|he|they)(?:'s| has| have)? (?:just |now )*(?:says?|said|told (?:me|us)|asked us|wants us|decided)(?: to| that)?(?: we| you)?(?: can| should| just)*(?: to)? (?:leave|skip|drop|forget(?: about)?|not (?:do|bother with))|decided (?:against|on no|no)) (?:the |that |those |her |his |any )?)([a-z0-9][a-z0-9 '-]{2,40}?)(?= alone| as (?:is|it is)| at all| out\b| in | for now| after all|[,.;!?\n]|$)/g;
const LEAVES =
  /\bleave (?:the |that |those )([a-z0-9][a-z0-9 '-]{2,40}?) out(?: of (?:it|this|the job))?(?=[,.;!?\n]|$)/g;
const SCRATCHES =
  /\b(?<!(?:don't|dont|didn't|not|to|never|can't|won't) )(?:scratch|skip|forget(?: about)?|never ?mind|cancel|scrap|cross off|call(?:s|ed|ing)? off|(?:don't|dont) bother (?:with|about)|passing on|changed (?:her|his|their) minds? (?:on|about)) (?:the|that|those) ([a-z0-9][a-z0-9 '-]{2,40}?)(?=[,.;!?\n]|$)/g;

/** "Doesn't want us touching the back stoop", "says no way on the cat hole", "does not want our rail no more". */
const UNWILLING =
  /\b(?:(?:doesn'?t|does not|don'?t|do not|didn'?t) want (?:us (?:to )?[a-z]+ )?(?:the|that|our|any|those)|no way on (?:the|that)) ([a-z0-9][a-z0-9 '-]{2,40}?)(?= no more| any ?more| after all| at all| in | on | now\b| just\b| instead\b|[,.;!?\n]|$)/g;

/** "Leave the window latch out of it", "scratch the gate": dropped, where no fact says so already. */
export function dropsTold(text: string, facts: readonly (Fact | null)[]): Decision[] {
  return droppedIn(text).filter(
    (told) => !facts.some((f) => f?.kind === 'decision' && f.drops && (f.drops === told.drops || overlap(f, told))),
  );
}

const overlap = (a: { start: number; end: number }, b: { start: number; end: number }) =>
  a.start < b.end && b.start < a.end;

/** Whether words say that a thing is left out or dropped. */
export const tellsDrop = (text: string) => droppedIn(text).length > 0;

const droppedIn = remembered((text): Decision[] => {
  const said = lowered(text);
  return [
    ...said.matchAll(LEAVES),
    ...said.matchAll(SCRATCHES),
    ...said.matchAll(OWNER_LEAVES),
    ...said.matchAll(UNWILLING),
  ].map(({ 0: words, 1: drops, index }) => {
    const quote = text.slice(index, index + words.length);
    const [start, end] = [index, index + words.length];
    return {
      kind: 'decision',
      what: quote,
      drops: drops!,
      quote,
      start,
      end,
      area: null,
      confidence: 0.7,
      rule: 'list/left-out',
    };
  });
});
