import { tokenise } from '../../../parser/hearing/tokens.ts';
import { readQuantities } from '../../../parser/quantities/index.ts';
import { lowered } from '../../../parser/trade/words.ts';
import type { Fact, FollowUp, Problem } from '../../../parser/types.ts';

/**
 * What the weighed reading took for a flaw or for work, and what its words tell instead. The weights know which words
 * are likely; that goods will come, that somebody agreed, or that all is well needs no weighing. Common practice in how
 * people talk, no source.
 */

/** Read by weights and by no rule. */
export const isWeighed = ({ rule }: Pick<Fact, 'rule'>) => rule.endsWith('/weighed');

const DAY =
  '(?:today|tonight|tomorrow|tmrw|(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?|next week|the \\w+|in (?:a|\\w+) (?:days?|weeks?)|by \\w+|(?:a|one|two|three|\\w+) (?:days?|weeks?))';
const SOURCE =
  '(?:supplier|supply house|suppliers|dealer|vendor|yard|store|shop|counter|branch|warehouse|factory|mill|manufacturer|distributor|rep)';

/** "Should be here thursday", "here wednesday", "they're saying monday", "the other branch wed": when goods will be there. */
const ARRIVAL = new RegExp(
  `^(?:(?:and|so|but|it|it'll|they|they'll|that|that'll|which|should|will|would|gonna|probably|supposed to) )*(?:(?:be |get )?(?:here|ready|back in stock|(?:be |come )in)|be|(?:they're|they|he's|she's) say(?:ing|s)?|(?:the )?(?:other )?${SOURCE}|(?:two|three|\\w+) (?:days|weeks) out)(?: (?:on|by|maybe|around|like|from|about))* ?(?:${DAY})?(?: (?:am|pm|morning|afternoon))?$`,
);
/** "Dealer's sending a new door", "supply house had no stops", "the rest is coming from the other branch". */
const FROM_SUPPLIER = new RegExp(
  `^(?:the |our |other |and |so |but )*(?:[a-z]+ )?${SOURCE}(?:'s|s)? (?:is |are |was |were |will |only |still )?(?:sending|sends|shipping|had|has|have|carr|doesn't|didn't|don't|out of|got|need to order|order|checking|saying|said|says|call)|^they (?:only )?(?:had|have|got) (?:no|none|only|just)\\b|\\bcoming from the (?:other )?${SOURCE}`,
);

/** "Counter guy ordered one, in Tuesday", "a new one is promised", "the yard's bending one", "try the other yard", "one left to get". */
const UNDER_WAY =
  /\bordered (?:one|it|them|the|all|\d+)\b|\b(?:is|are|'s|was|were) (?:promised|back ?ordered|on order|on back ?order)\b|(?:is|are|'s|'re) (?:making|bending|shipping|cutting) (?:it|one|them|us|the \d+)\b|^(?:just )?(?:one|two|three|four|\d+|the last [a-z]+) (?:left|more|still) to (?:get|buy)$|^(?:so |and |i'll |will |we'll |gotta |we gotta )*(?:try|look|check|get (?:it|that|them|those))(?: at)?(?: the)? (?:other (?:yard|store|shop|place|branch)|elsewhere|some ?(?:place|where) else)\b/;

/** Whether a plan or a flaw only tells of goods on their way, or of what a supplier has. */
export const tellsOfSupply = ({ quote }: Problem | FollowUp): boolean => {
  const said = lowered(quote).trim();
  return ARRIVAL.test(said) || FROM_SUPPLIER.test(said) || UNDER_WAY.test(said);
};

/** Agreed, wished for another's doing, or what somebody else gets for himself. */
const AGREED =
  /\b(?:says?|said|told (?:us|me|him|her)|gave (?:us|me)) (?:to )?(?:go ahead|yes|ok|okay|it's fine)\b|^go ahead\b/;
const GETS_OWN =
  /^(?:she|he|they|owner|homeowner|customer|client)(?:'s|'re| is| are) (?:getting|buying|picking (?:it|that|them|one) (?:up|out))\b/;
/** What one did not see or know is nobody's work. */
const UNSEEN = /^(?:i |we )?(?:didn't|did not|couldn't|don't) (?:see|notice|know|think|catch)\b/;

/** "Front room is going to be shelves": what it will be, and no work that is named. */
const WILL_BE =
  /^(?:the |that |this |so |and )*[a-z' ]+?(?:'s| is| are|'re) (?:going to|gonna) be (?:(?:a|an|the|all|two|three|our|her|his) |[a-z]+s\b)/;

/** Nothing to do, whatever it was read as. */
export function isNoPlan(fact: FollowUp): boolean {
  const said = lowered(fact.quote).trim();
  if (WILL_BE.test(said)) return true;
  if (!isWeighed(fact)) return false;
  return AGREED.test(said) || GETS_OWN.test(said) || UNSEEN.test(said);
}

const WELL =
  /\b(?:dead on|right on|spot on|(?:is|are|has|looks?|it's|they're) (?:\w+ ){0,2}(?:good|great|fine|perfect|solid|level|plumb)(?: \w+)?|all set|good to go)$/;
const PLANS =
  /^(?:so |and |then )*(?:(?:i|we|he|she|they)'ll|(?:i|we)(?:'m| are|'re) (?:gonna|going to)|gonna|let's)\b/;
const WISHED =
  /^(?:she|he|they|owner|homeowner|customer|client)(?:'d| would) (?:like|rather|prefer)\b|^(?:she |he |they |owner )?decided\b/;
/** A place, and nothing said of it: "the gfci on it", "by the coffee bar, ...". */
const PLACE_ONLY =
  /^(?:by|at|on|in|under|over|behind|near|next to) (?:the |a |my |our )?[a-z]+(?: [a-z]+)?(?:,|$)|^(?:the |a )?[a-z]+ (?:on|in|at) (?:it|them|that)$/;
const DATED = new RegExp(`^(?:the |that |other )*[a-z ]+(?:'s| is| are) (?:now )?${DAY}(?: now| instead)?$`);

/** "The long wall is eighteen foot four": a size is no flaw. */
function isOnlySize(defect: string): boolean {
  const said = lowered(defect).trim();
  const { quantities } = readQuantities(tokenise(said), said);
  const rest = quantities.reduce((left, q) => left - (q.end - q.start), said.length);
  return quantities.some(({ unit }) => unit !== null && unit !== 'each') && rest <= quantities.length;
}

/** No flaw, whatever the weights made of it. */
export function isNoFlaw(fact: Problem): boolean {
  if (!isWeighed(fact)) return false;
  const said = lowered(fact.quote).trim();
  if (tellsOfSupply(fact) || AGREED.test(said) || PLANS.test(said) || WISHED.test(said)) return true;
  if (fact.state === 'open' && (WELL.test(said) || isOnlySize(fact.defect))) return true;
  return PLACE_ONLY.test(said) || DATED.test(said);
}
