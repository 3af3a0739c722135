/** How a clause tells that a thing is well, in place or not yet so, whatever the thing is. Common practice, no source. */

/** Told with the same ending, and no work that ends a thing. */
const HARMED =
  '(?:crack|rust|clog|plug|stain|chip|order|deliver|need|suppos|cover|ruin|swell|warp|cupp|jamm|block|stripp|rott|wreck|bust|call|pric|measur|mark|check|look|open|remov|pull|expos|dropp|return|soak|flood|damag|peel|scratch|dent|gouge|mold|corrod|missed|mess|screwed up|stopp|start|turn|mov|plann|ask|want|us|strand|bow|twist|curl|burn|fray|kink|pinch|crush|flatten|collaps|leak|dripp|fad|finished wrong)[a-z]*';

/** "Seal's on", "bracket tightened with longer screws", "the opener is quiet now": a thing, and that it is all right. */
const PUT_RIGHT = new RegExp(
  `^((?:the |that |those |both |all |new |my |our )*[a-z0-9][a-z0-9 '/-]{1,60}?)(?:'s|'re| is| are| got| has been| have been|)? (?:all |now |back |finally |just |already )*(${[
    `(?!${HARMED})[a-z]+ed|put|cut in|hung|rehung|redone|rebuilt|reset|built|sunk|shut|swept|spread|laid`,
    'in|on|up|down|done|finished|complete|set|hung|fixed|replaced|swapped|changed|tightened|patched|repaired|sealed|resealed|caulked|recaulked|glued|secured|adjusted|cleaned|cleared|installed|mounted|fastened|reset|rehung|regrouted|shimmed|leveled|straightened|unclogged|painted|stained|filled|nailed|screwed|bolted|braced|sistered|reattached|refastened|touched up|taken care of',
    'quiet|flat|tight|solid|straight|level|plumb|dry|clear|good|fine|working|works(?: fine| good| now)?|runs (?:fine|good|clear|quiet)|drains (?:fine|good)|closes (?:fine|tight|good|right)|latches(?: fine| good| now)?|locks(?: fine| good| now)?|shuts (?:fine|good|right)|holds|holding',
  ].join(
    '|',
  )})(?: now| again| today| up| in| back| out| down| off)*(?: (?:with|w|on|to|by|and|at|from|all|the|that|both|over)\\b.*)?$`,
);
/** "Sign's solid, hung off it myself", "bath door shuts again on its own": a thing, that it is well, and whatever more of it. */
const IS_WELL =
  /^((?:the |that |those |both |all |new |my |our )*[a-z0-9][a-z0-9 '/-]{1,50}?)(?:(?:'s|'re| is| are| has been| have been)(?: all| now| back| finally| just| already| both| dead| nice and)* (?:solid|tight|snug|right|free|straight|level|plumb|quiet|clear|good|fine|working|done|finished|fixed|set|hung|lit|live|back|skinned|swapped|reset|humming|blowing|riding|running)\b| (?:swings|glides|clears|shuts|closes|latches|locks|opens|runs|drains|hangs|holds|works|shines) (?:free|nice|good|fine|proper|right|again|like|clear|true|steady|all|smooth|on)\b| (?:all )?(?:looks|look) (?:good|great|new|like new|mint)\b).{0,60}$/;
const ILL =
  /\b(?:leak|drip|crack|loose|broke|stuck|stick|rub|drag|rot|miss|short|wrong|worse|dead|bad|soft|wet|except|but|bar|only)/;

/** "The drip's gone", "no more buzz", "it doesn't rub". */
const FLAW_GONE =
  /\b(?:(?:drips?|leaks?|squeaks?|buzz|rattle|smell|draft|hum|noise|whistle)(?:'s|s)?(?: is| are)? (?:all )?gone|(?:no (?:more )?|stopped |not |doesn't |don't |isn't |quit )(?:drip|leak|seep|buzz|squeak|rattle|rattl|rub|wobbl|stick|smell|trip)[a-z]*)\b/;

/** Not yet, not so, or only asked for. */
const NOT_SO =
  /\b(?:not|no|never|isn't|aren't|won't|can't|doesn't|don't|didn't|wasn't|need|needs|needed|gotta|should|will|would|gonna|going to|has to|have to|gets|until|till|before|after|if|when|once|unless|almost|half|still|waits?|waiting|wants?|to be|coming|tomorrow|ordered|order|lets|let's|goes|says?|said|except|supposed)\b/;

/** A word that denies. */
export const DENIES =
  /^(?:no|not|never|without|doesn't|don't|didn't|isn't|aren't|won't|hasn't|can't|nothing|stopped|quit|stops|gone|zero)$/;

/** The sign that a flaw is said to be gone. */
export const GONE = 'flaw gone';

/** Signs of how it is told. */
export function manner(said: string): string[] {
  if (FLAW_GONE.test(said)) return [GONE];
  return [`well ${IS_WELL.test(said)} ${ILL.test(said)}`, `put ${PUT_RIGHT.test(said)} ${NOT_SO.test(said)}`];
}
