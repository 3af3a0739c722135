import { lowered } from '../../../parser/trade/words.ts';
import type { Span } from '../../../parser/types.ts';
import { SENT_BACK } from './arranged.ts';

/**
 * A flaw is told with what was done about it, with what it wants, or with neither. What tells of no repair was not put
 * right, whatever the weights made of it. Common practice in how people talk, no source.
 */
const REPAIR =
  'fix|replac|swapp|chang|tighten|clean|clear|free|rehung|reset|reseat|glu|screw|patch|seal|caulk|greas|oil|lub|adjust|straighten|hammer|sand|plan|shav|trimm|pull|snak|rodd|bled|flush|rewir|splic|reconnect|solder|weld|bolt|nail|pinn|shimm|brac|sister|fill|paint|prim|wrapp|tap|clamp|turn|mov|rais|lower|lift|flipp|repair|epoxi|epoxy|pack|plugg|stuff|foam|rescrew|reglu|relamp|redon|rebuil|rebed|reput|repoint|regrout|reattach|refasten|vacuum|scrap|fish|knock|bump|cover|wip|wash|ground|fil|ream|sort|nudg|tweak|cranked|trip|push|press|tamp|soak|crimp|resecur|secur|fasten|join|strap|hook|evict|rekey|realign|align|sprayed|bung|level|pour|cut|snug|eas|dri|bedd|touch|shap|form|skimm|stapl|anchor|toggl';
const MENDED = new RegExp(
  `\\b(?:(?:re-?)?(?:${REPAIR})\\w*(?:ed|d)|put|cut (?:it|out|back|off|that|them)|hung|rehung|reset|redid|redone|rebuilt|remade|made|took|taken|ground|bent (?:it|a|the|them|back)|stuck (?:a|an|it|in|some)|screw that|knew|blew|dug (?:it|out)|set (?:it|them|in|back)|ran a|ground it|found|bought|got (?:it|a|one|the|its|some)|had (?:one|a|some|spare|cord|springs)|new [a-z' ]{1,25}(?:in|on|up|is)|(?:in|on) (?:now|too|place|again)|back (?:on|in|up|together|down)|(?:is|are|'s|'re) (?:in|on|up|done|fixed|good|fine)|done|good|fine|ok|okay|works?|working|quiet|dry|(?:leak|drip|squeak|smell|noise|rattle|hum|buzz|crack|mark|stain|damp|draft|draught|wobble|play|clog|blockage|rust|mold|mould|nest|pressure)s?(?:'s| is| are)? (?:all )?gone|no more|nothing|stopped|quit|quits|solid|tight|straight|lit|bright|hot|heats?|clear|runs|running (?:clear|free|sweet|fine|smooth)|flushes|shuts?|closes?|locks|latches|swings|drains|spins|turns|holds?|flows|folds|stays (?:up|put|shut|open|on)|stands|shot (?:a|one|two|three|four|some)|i (?:fix|cut|clean|change|close|make|take|screw|tighten)|moving|opens|like (?:new|a dream|butter|silk)|never know|flat now|close (?:nice|good|fine)|strong|smooth|was|were|had|been|just (?:the|a|needed|jammed|loose)|scrap that|forget)\\b`,
);
/** A new thing that is to be got, a step that is to be done: directly behind the flaw or with it. */
const GETS =
  "(?:(?:just |still |all |only )?(?:needs?|wants?|gotta|has to|have to|must|needed)\\b|gets? (?:a |an |the )?(?:new|swapped|changed|replaced|set|fixed|patched|pulled)|new ones?\\b(?!'s| is| in| on| up| went)|new [a-z0-9 ./\"-]{2,30}, ?(?:\\d+|one|two|three|four)\\b|not ordered|(?:one|two|three|four|five|six|\\d+) (?:needed|to (?:get|buy)|please)|i'll (?:put|fit|fix|do|change|swap|replace|get|order|bring)|(?:replace|swap|reset|rebed|patch|change|refit|rehang|do|screw|glue) (?:it|them|that|those|with|both|all)\\b)";
const WANTS_BEHIND = new RegExp(
  `^[\\s,.;:-]*(?:(?:so|and|but|it|that|which|they|those|them|one|two|three|four|that's|it's|its) )*${GETS}`,
);
const WANTS_WITHIN = new RegExp(`(?:^|[ ,;:])(?:he |she |they )?${GETS}`);

/** What was sent back mended nothing. */
const WAS_SENT_BACK = new RegExp(`\\b(?:took|sent) ${SENT_BACK}\\b`);

/** "I don't know what that is", "until we know what that board is": nobody mends what nobody knows. */
const UNKNOWN =
  /\b(?:(?:don't|doesn't|didn't|nobody|can't|couldn't|do not|does not) (?:really |even |for sure )?(?:know|knows|tell|say)|no idea|not sure|(?:until|till|before) (?:we|i|they|somebody) knows?|wonder(?:ing)?) what (?:it|that|this|those|they|the|kind|sort)\b/;

/** So far behind a flaw its repair may be told. */
const BEHIND = 90;

/** Whether a flaw that is told in these words is told as standing, with what it wants, or with no word of a repair. */
export function isStillAmiss(text: string, { start, end }: Span): boolean {
  const words = lowered(text.slice(start, end)).replace(WAS_SENT_BACK, '');
  if (UNKNOWN.test(lowered(text.slice(start, end + BEHIND)))) return true;
  if (MENDED.test(words)) return false;
  const behind = lowered(text.slice(end, end + BEHIND));
  if (WANTS_BEHIND.test(behind) || WANTS_WITHIN.test(words)) return true;
  return !MENDED.test(behind);
}

/** "Gate's bottom board's wasted", "the shaft's scored": how a thing was found. */
export const FOUND_SO =
  /^(?:(?:and|so|but) )*(?:the |that |those |my |our )?([a-z0-9][a-z0-9 '-]{1,40}?)(?:'s|'re| is| are| got) (?:all |clean |pretty |badly |completely |right )*((?:wasted|scored|perished|rotten|rotted|cracked|torn|broken|burnt|burned|worn|shot|missing|rusted|seized|bent|split|snapped|stripped|punky|left hand(?:ed)?|right hand(?:ed)?)(?: (?:out|through|clean through|off|all round|all around|across))?)$/;
