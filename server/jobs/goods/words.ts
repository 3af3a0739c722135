/**
 * Ways to say that goods were fetched, ordered, came, are there or are used up. Common practice in how people talk, no source.
 */

/** Any of these words may tell of goods; without one the note is not looked at. */
export const MAY_TELL =
  /\b(?:got|only|just|really|not|need|enough|plenty|fewer|less|cancel|drop|lose|scratch|skip|knock off|take off|still|forgot|nobody|none|out of|stock|carry|picked|in hand|brought|found|grabbed|bought|fetched|collected|ordered|orderd|came|comes?|arriv(?:e|es|ed|ing|al)|ships?|shipping|delivery|due|showed|turned up|here|gone|used|make|delivere?d|landed|ok|okay|dropped|loaded|had|has|have|order|coming|purchased|store|shop|yard|depot|truck|van|ute|workshop|garage|trailer|shed|bucket|bin|pouch|drawer)\b/;
export const LISTS =
  /\b(?<!(?:'ve|'s|'d|has|have|had|never|not|n't|nobody|didn't) )(?:got|picked up|grabbed|bought|fetched|collected|came back with|loaded up|(?:i|we|he|she|they|yard|merchant|supplier|driver|lorry|truck|van) (?:brought|delivered|dropped off)|(?:i|we)'ve (?:had|got)(?= (?:all|both|the other)\b))\b(?! (?:[a-z]+ ){1,4}(?:dug|hung|poured|framed|laid|finished|painted|taped|sanded|primed|stripped|swept|built|nailed|screwed|leveled|plumbed)\b)(?! (?:to|it|rid|a call|him|her|done|ready|going|started|back|no|none)\b)(?! them(?: (?:all|both|done|ready|in|on|up|out|off|down|to|back|here|there|at|from|today|yesterday|now)\b|[,.;!?]|$))(?: (?:today|yesterday|this morning))?:?((?:(?!, (?:but |and )?(?:i |we |he |she |they )?(?:never|didn'?t|did not|couldn'?t)\b| (?:need|needs|get me|grab me)\b)[^.;!?\n])*)/g;
export const ORDERS =
  /\b(?:ordere?d|call(?:ed)? (?:it|that|them|those) in|(?:got|have) (?:it|that|them|those) coming|have (?:it |them |those )?on order|is on order|are on order|on order)\b/g;
export const COMES =
  /(?:^|[.;!?,\n]|\band\b)\s*(?:so |and |ok |okay )?((?:the |that |those |our |all |both |other |rest of |\d+ |[a-z]+ ){0,2}[a-z0-9][^.;!?,\n]{1,40}?)(?:(?:'s|s')? (?:finally |just |all )?(?:showed up|turned up|came in|came|arrived|is here|are here|got here|(?:was|were|got) (?:delivered|dropped off)|(?:they|he|she) had (?:it )?(?:at|in) the)|(?:'s|'re) (?:finally |now |all )?here)\b(?! (?:off|out|loose|apart|down|undone|unglued|with|up)\b)/g;
/** "I had a disconnect on the truck", "got a board for it back at the shop", "she's got the white for it": nobody has to buy it. */
export const STOCK =
  /\b(?:(?:i|we|they|he|she|owner|homeowner|customer|client)(?: (?:already|still|just))?(?:'ve|'d|'s)? ?(?:already |still )?(?:had|have|has|got|bought|bring|brings)|had(?= (?:a|an|the|one|two|three|four|half|some|couple)\b)) ((?:(?!\b(?:and|so|but|need)\b)[^.;!?,\n]){2,50}?) (?:(?:back )?(?:on|in|at) (?:(?:the|my|our|his|her) (?:[a-z]+ )?)?(?:truck|van|ute|pickup|shop|garage|trailer|shed|yard|box|bag|bucket|bin|pouch|drawer)|(?:her|him|them)(?:self|selves)|for it)\b/g;
export const GONE =
  /(?:^|[.;!?,\n]|\band\b)\s*(?:the |that |both |all the )?([a-z0-9][^.;!?,\n]{1,40}?)(?:'s| is| are|'re) (?:all )?gone\b/g;
export const USED_UP =
  /\bused (?:up )?(?:all (?:of )?|the (?:last|rest)(?: of)? )(?:the |that |those )?([^.;!?,\n]{2,40})/g;
/** "Purple board's used up", "the caulk is all used". */
export const ALL_USED =
  /(?:^|[.;!?,\n]|\band\b)\s*(?:the |that |those |all the |our )?([a-z0-9][^.;!?,\n]{1,40}?)(?:'s| is| are| was| were|'re|s')? (?:all |now )*used(?: up)?(?=[.;!?,\n]|$| (?:so|and|now|on|in|for)\b)/g;
/** "Poplar too.", behind what was fetched. */
export const AND_TOO =
  /[.;!?\n]\s*(?:and |plus |also )?(?:the |that |those |both )?((?:(?!\b(?:is|are|was|were|down|up|in|on|out|off|done|need|needs|get)\b)[^.;!?,\n]){2,31}?),? (?:too|as well|also|likewise)(?=[.;!?\n]|$)/g;
/** "Lumber yard had the sweep", "the shop had it": what a supplier had was taken along. */
export const SUPPLIED =
  /\b(?:yard|store|shop|supplier|supply house|counter|depot|dealer|merchants?|(?:boat|hardware|paint|tile|glass|plumbing|electrical) (?:place|house|shop|store)) (?:finally |still |even )?had (?!no\b|none\b|only\b|to\b|it\b|them\b|a (?:look|word)|one\b(?! [a-z]+ only))([^.;!?\n]*)/g;
/** "Store: straps 2, cleat 1", "in hand: the receptacle", "3 posts, 2 rails - all got". */
export const RAN =
  /(?:^|[.;!?\n] *)(?:(?:[a-z]+ )?(?:store|shop|yard|depot|supply house)(?: run)?|in hand):((?![^.;!?\n]*\b(?:need|get|buy|no|out of)\b)[^.;!?\n]*)/g;
export const ALL_GOT = /(?:^|[.;!?:\n])([^.;!?:\n]+?)[ ,-]+(?:all|both) (?:got|bought|picked up)\b/g;
/** "Got everything but the boot", "got the list except no usb": all that was wanted, but for what follows. */
export const ALL =
  /\b(?:got|picked up|bought|grabbed) (?:everything|all of it|it all|the lot|the (?:whole |entire )?list)(?: (?:on|from|off) (?:the|our) list)?(?:,? (?:x?cept|except|but|minus|besides|apart from|other than)(?: for)? ([^.;!?\n]*))?/g;
/** "Nosing bought", "sweep bought and on". */
export const BOUGHT =
  /(?:^|[.;!?,:\n]|\band\b)\s*((?:the |that |those |both |all |new )?[a-z0-9][^.;!?,:\n]{1,30}?)(?: for [^.;!?,:\n]{1,30}?)? (?:is |are |was |were |now |finally |just )*(?:bought|picked up|purchased)\b(?! by\b)/g;
/** "There's 18 mm ply in the workshop", "mortar was in my garage", "bolts on the truck so we've got them". */
export const STANDS =
  /(?:^|[.;!?,\n]|\b(?:and|there's|there is|there was|found) )\s*(?:a |an |the |some |one |two )?([a-z0-9][^.;!?,\n]{1,30}?) (?:was |were |is |are )?(?:already )?(?:in|on) (?:the |my |our |his |her )?(?:truck|van|ute|workshop|garage|trailer|shed)\b/g;
/** "Found a ring at the hardware store". */
export const FOUND = /\bfound (?:us |me )?((?:an?|the|one|two|three|four|\d+|some) [^.;!?,\n]{2,30}?) at (?=[a-z])/g;
/** "I have the bonding and two bags": what was wanted is there. */
export const HAVE_THE =
  /(?<!\b(?:until|till|when|if|once|unless) )\b(?:i|we) (?:(?:now |already |do )?have|'ve got|have got) (the [^.;!?\n]{2,60})/g;
/** "Still need the caulk", "forgot the clamps", "they were out of hinges", "no mesh anywhere": still to get, however many. */
export const STILL_WANTED =
  /\b(?:still (?:need|want|short(?: of)?|to get|to buy|after|no|don'?t have|haven'?t (?:got|found))|forgot|out of|couldn'?t (?:find|get)|haven'?t (?:got|found)|(?:didn'?t|did not|never|forgot to) (?:get|got|buy|bought|grab|grabbed|pick up|picked up|find|found|bring)|(?:didn'?t|don'?t) (?:have|carry|stock)|had no|there'?s no) (?:(?:the|that|those|any|a|an|our|my) )?((?!to\b|about\b|it\b|them\b|need\b)[a-z0-9][^.;:!?,\n]{1,30}?)(?=[.;:!?,\n]|$| (?:in|at|on|so|and|but|yet|either|anywhere|again|for|they|he|she|we|i|till|until|now|today)\b)/g;
/** "Hinge is still to get", "clamps: they had none", "sweep nobody has", "anchors i forgot". */
export const STILL_TO_GET =
  /(?:^|[.;!?,\n]|\b(?:and|but|so|the|those)\b) *((?:(?!\b(?:and|but|so|the)\b)[a-z0-9 /'-]){2,31}?)[:,]?(?: (?:is|are|'?s) still to (?:get|buy)|(?: (?:they|he|she|the store|the yard|nobody|store|yard))? (?:had none|were out|was out|has none|nobody (?:has|had|stocks|carries)|has (?:it|them)|i forgot|they (?:don'?t|didn'?t) (?:have|carry|stock)))\b/g;
/** "The bases are in, they come Friday", "balusters are coming Thursday", "the doors ship on the 12th": on their way to us. */
export const ON_THE_WAY =
  /(?:^|[.;!?,\n]|\b(?:and|but|so)\b) *((?:the |that |those |our |all |both )*(?!(?:they|it|that|he|she|we|i|you)\b)[a-z0-9][a-z0-9 /'-]{1,40}?)(?:s'|'s|'re| is| are| will)? (?:be |now |finally |all )*(?:in(?: at [^.,;!?\n]{2,24})?[,.;]? (?:and |but )?(?:(?:they|it)(?:'ll|'re|'s| will| are| is)? )?(?:be )?(?:comes?|coming|ships?|shipping|deliver(?:y|ed|ing)?|arriv(?:es?|ing|al)|here)|comes?(?: in)?|coming(?: in)?|arriv(?:es?|ing)|ships?|shipping|(?:be )?delivered|here|due(?: in)?)(?: (?:is|on|by|this|next|the))* (?:mon|tues|wednes|thurs|fri|satur|sun)day\b/g;
