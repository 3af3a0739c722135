import { lowered } from '../../../parser/trade/words.ts';

/**
 * A flaw that is somebody else's, or that is to stay: no item. Right behind it, or in its own words, people say who sees to
 * it, or that nobody minds. Common practice in how people talk, no source.
 */
const KIN = '(?:brother|nephew|son|grandson|dad|father|husband|wife|cousin|uncle|neighbou?r|friend|buddy|boy|guy|man)';
const TRADE =
  '(?:roofer|plumber|electrician|spark(?:y|ie)|painter|cleaners?|carpenter|mason|handyman|gardener|landscaper|exterminator|inspector)';
const HOUSE =
  '(?:landlord|super|owners?|homeowner|tenant|customer|client|manager|committee|rep|city|township|church|school)';
const WHO = `(?:(?:the |her |his |their |a )?(?:${KIN}|${TRADE}|${HOUSE}|(?:[a-z]+ )?(?:guy|company|people))|he|she|they)(?:'s|'re|'ll|s| is| are| will| has| have)?`;
const IT = "(?:it|that|this|those|these|them|'em|em)";

const SEES_TO = new RegExp(
  `\\b${WHO} (?:(?:already|down|here|there|gonna|going to|to|a|his|her|their|[a-z]+day|on) )*(?:${KIN} |${TRADE} )?(?:booked|coming|hired|lined up|looking after|seeing to|see to|taking care of|handling|doing|does|do|has|have|got|painting|fixing|fix|paint|shim|look at|on)(?: [a-z]+){0,3} ${IT}\\b`,
);
const OWN = /\b(?:him|her|them)sel(?:f|ves)\b/;
const STAYS =
  /\b(?:leave|let) (?:it|that|those|them|these)(?: be| alone| as is)?(?=[.,;!?\n]|$| (?:he|she|they|so|and|for now)\b)|\bleave (?:it|that|them) (?:till|until|til|for) the (?:remodel|renovation|reno|refit|rebuild|extension|gut|big job)\b|\blive with\b|\b(?:doesn't|does not|don't|do not|won't) (?:mind|care|bother)\b|\balways (?:did|has|have|does)\b|\bnot (?:ours|us|our (?:job|problem|business|work))\b|\b(?:isn't|aren't) ours\b|\bis (?:the )?neighbou?r's\b|\b(?:hers|his|theirs) to [a-z]+\b|\bnothing (?:the matter|wrong) with\b|\bsending (?:a|his|her|their|some) (?:man|guy|body)\b|\bnot (?:live|anything)\b/;

/** Whether a flaw's own words with those right behind it say that another sees to it or that it stays as it is. */
export function isLeftToThem(words: string): boolean {
  const said = lowered(words);
  return SEES_TO.test(said) || OWN.test(said) || STAYS.test(said);
}

/** "Her electrician is already booked for that", "he'll fix it himself": a plan that is another's own. */
export function isTheirPlan(quote: string): boolean {
  const said = lowered(quote);
  return OF_HOUSE.test(said) && (SEES_TO.test(said) || OWN.test(said));
}
const OF_HOUSE = new RegExp(
  `\\b(?:her|his|their) (?:own |[a-z]+ )?(?:${KIN}|${TRADE}|[a-z]+)\\b|\\b${HOUSE}\\b|\\b(?:grandson|nephew|cousin|cleaners?|rep|company)\\b|\\balready booked\\b`,
);
