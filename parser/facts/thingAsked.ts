/**
 * Questions to the list about one thing or one person, as they end a sentence, lower case: how much of it, its size, whether
 * it is done, when it comes, who does it. Only what somebody would ask of his own notes: a question to the owner is put to
 * her ("does she want brass"). Common practice in how people talk, no source.
 */
import type { Command } from '../types.ts';

/** `inverted`: no clause inside another one is put so, and it may follow on any words. */
export interface QuestionRule {
  question: NonNullable<Command['question']>;
  pattern: RegExp;
  inverted?: true;
}

const WE = '(?:i|we)';
const THING = "([a-z0-9'][a-z0-9' /-]*?)";
const ONCE = '(?: (?:ever|already|yet|still|even|actually|really|just))*';
const NOW =
  '(?: (?:again|yet|now|already|then|please|today|tomorrow|first|after|before|so far|to be|at|in all|all together|or (?:is|are|did|do|not|was|were)\\b.*?))*';
const DAY =
  '(?:(?:this|next|the|on) )?(?:today|tonight|tomorrow|tmrw|week|weekend|(?:mon|tues?|wed(?:nes)?|thur?s?|fri|sat(?:ur)?|sun)(?:day)?)(?: (?:morning|afternoon|evening))?';
const DET = '(?:the |my |our |that |those |these |this |any |all the )?';
const SIZE = '(?:measurements?|measures?|sizes?|width|height|length|depth|dimensions?|opening|count|number)';

const patterns: readonly string[] = [
  // "How many sticks of baseboard did I say", "how much mud have we got left", "how many hinges are we short".
  `how (?:many|much)(?: more| of)* ${DET}${THING} (?:do|did|have|had|are|were|am|was|is|should|does) (?:${WE}|you|there|it|they|he|she|[a-z]+ (?:short|need|want|got|missing|waiting))\\b.*?`,
  // "What's that shelf measure again", "what was the width of the hall opening", "what did the alcove come out at".
  `what(?:'s|s| is| was| are| were) (?:the|that) ${SIZE} (?:of|for|on) ${DET}${THING}${NOW}`,
  `what(?:'s|s| is| was| are| were) ${DET}${THING} ${SIZE}${NOW}`,
  `what (?:did|does) ${DET}${THING} (?:measure|come out|come in|come to|make|run)${NOW}`,
  // "How wide is the niche", "how long was that shelf".
  `how (?:long|wide|tall|high|deep|big|thick) (?:is|was|are|were|did|does) (?:the |my |our |that |those |these |this )${THING}(?: (?:measure|come out|come in|supposed|meant|going|gonna))*${NOW}`,
  // "Did anybody get hold of the engineer in the end", "has anyone rung the yard about the beam".
  `(?:did|has|have) (?:any|some)(?:body|one)${ONCE} (?:get |got |gotten )?(?!mention|tell|told|say|see|hear|forget|know)${THING}(?: about [a-z0-9' -]+?)?(?: in the end)?${NOW}`,
  // "Who have I got coming on Tuesday", "who's here tomorrow": the day is what is asked about.
  `who(?:'s|s| is| are| have| do)?(?: ${WE})?(?: (?:got|have|all))? (?:coming|here|due|booked|expected|on site)(?: in)?(?: on| for)? (${DAY})`,
  // "Did I ever call the flooring man", "have we ordered the hinges yet".
  `(?:did|have|'ve) ${WE}${ONCE} (?:get |got |gotten )?(?!mention|tell|told|say|see|hear|forget|know)${THING}${NOW}`,
  // "Is the hatch done yet", "are the bases in".
  `(?:is|are|was|were) (?:the |my |our |that |those )${THING} (?:done|finished|fixed|ordered|bought|in|here|back|dry|ready|cured|sorted|closed|signed off|on (?:the|my|our) (?:list|order)|coming)${NOW}`,
  // "When is Sal coming", "when can I grout the hearth", "what day do the cabinets come".
  `(?:when|what day|what time)(?:'s|s| is| are| does| do| did| can| will| should| was)(?: ${WE})? (?!dry|done|ready|finished|cured|set|clean)${DET}${THING}(?: (?:coming|come|due|here|ready|arrive|arriving|get here|back|dry|cured|supposed|meant|delivered))*${NOW}`,
  // "Who's doing the gutter".
  `who(?:'s|s| is| was) (?:doing|on|handling|got|getting|supposed to (?:do|get|be doing)|looking after|taking care of|bringing) ${DET}${THING}${NOW}`,
  // "Where are we with the stairs", "any word on the door", "what do we know about the beam".
  `(?:where (?:are|were) we|what(?:'s|s| is) (?:the )?(?:status|story|word|latest|news|happening|going on)|any (?:word|news)) (?:at )?(?:with|on|of|about) ${DET}${THING}${NOW}`,
  `what (?:did|do|have) ${WE} (?:say|said|know|note|noted|write|have|got|tell you)(?: down)? (?:about|on|for) ${DET}${THING}${NOW}`,
];

/** "He's asking can he take the sander to the barn door while it's quiet": what is known of it is told with its caution. */
const MAY = `can (?:${WE}|he|she|they|anybody|anyone|somebody|someone) (?:take|sand|scrape|cut|drill|grind|tear|open|use|start|walk|touch|strip|pull|knock|turn on|burn|heat)\\b (?:[a-z ]+? (?:to|into|at|off|on) )?${DET}${THING}(?: (?:while|when|if|this|before|yet|now|today|tomorrow)\\b.*?)?`;

export const THING_ASKED: readonly QuestionRule[] = [
  ...patterns.map((pattern): QuestionRule => ({ question: 'told', pattern: new RegExp(pattern) })),
  { question: 'told', inverted: true, pattern: new RegExp(MAY) },
];
