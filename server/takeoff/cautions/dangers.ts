/**
 * A danger that is there, whoever works on it and whatever becomes of the work: its caution stands, it stays on the list, and
 * only words that tell of it as dealt with close it. Which signs tell of a danger: the sources in `hazards.ts`, and common
 * practice in how people talk of them, no source.
 */
export interface Danger {
  /** Of `hazards.ts`. */
  hazard: string;
  /** Words that tell that it is there. */
  told: RegExp;
  /** What is said of it once it was dealt with. What only hides it, sets it back or works beside it is none of them. */
  dealtWith: RegExp;
}

const words = (...patterns: readonly string[]): RegExp => new RegExp(`\\b(?:${patterns.join('|')})`);

/** Something is so, told right behind the thing: "is really", "feels a bit", "keeps". */
const IS =
  "(?:'s|'re| is| are| was| were| feels?| felt| gets?| got| getting| runs?| running| keeps?| kept| starts?| started| goes| going| came| comes| looks?| looked| all| both)*(?: (?:really|very|real|so|pretty|too|kinda|a bit|a little|kind of|always|still|all|right|clean|clear|just|half|bone|badly|been))*";

const ELECTRIC =
  '(?:outlets?|receptacles?|plugs?|sockets?|switch(?:es)?|breakers?|(?:breaker|fuse|junction|switch|outlet) box(?:es)?|panel|fixtures?|cover plates?|(?:power |extension |dryer |lamp )?cords?|wires?|wiring|cables?|splices?|(?:neutral|hot) lugs?|baseboard heaters?|ceiling fan)';
/** An outlet is hot once it has power: that is no danger, and neither is a dimmer that buzzes. */
const ALIVE = '(?:outlets?|receptacles?|sockets?|wires?|wiring|cables?|circuits?|fixtures?)';
const HEATED =
  '(?:warm|buzz\\w*|spark(?:s|ed|ing)?|arc(?:s|ing|ed)|scorch\\w*|burn(?:s|t|ing|ed)?(?! (?:out|through))|melt\\w*|charred|smok(?:e|es|ing|ed)(?! (?:alarm|detector))|singed|crackl\\w*|fried|blackened)';
const HOT = '(?:(?:too )?hot (?:to|as|enough)|(?:been|really|very|so|too|pretty|real|getting|gets|running|runs) hot)';
const WIRE = '(?:wires?|wiring|conductors?|splices?|(?:power|extension|dryer|lamp|appliance) cords?)';
const CABLE = `(?:${WIRE}|cables?)`;

/** "Breaker for the dryer is hot". */
const OF_IT = '(?: (?:for|in|by|on|at|to|behind|under|over|near) (?:(?:the|that|my|her|his) )?\\w+(?: \\w+)?)?';

const ELECTRIC_TOLD = words(
  `${ELECTRIC}${OF_IT}${IS},? ${HEATED}\\b`,
  `(?!${ALIVE})${ELECTRIC}${OF_IT}${IS} hot\\b(?! (?:water|wire|leg))|(?:${ELECTRIC}|dimmer)(?: is| was|'s)?(?: \\w+)? ${HOT}\\b`,
  `dimmers?${IS} (?!buzz)(?:${HEATED}|hot)\\b`,
  `(?:scorch\\w*|burn(?:s|t|ing|ed)?|melt\\w*|spark\\w*|smok\\w*|arc\\w*|char\\w*|buzz\\w*)(?: (?:marks?|spots?|smell|up|something|plastic|like|noise))* (?:by|in|on|at|from|off|behind|inside|near|around|out of) (?:the|that|this|an?|my|her|his) (?:\\w+ )?${ELECTRIC}\\b`,
  '(?:scorched|burn(?:t|ed)|melted|charred|fried|hot|sparking|smoking|arcing|blackened) (?:outlets?|receptacles?|plugs?|sockets?|switch|breakers?|panel|cover plates?|cords?|wires?)\\b',
  '(?:got|get|gets|gave|gives|giving|getting|felt|feel|feels) (?:me |you |him |her |us |them )?(?:(?:a|an|the|some|nice|good|little|bit|of|small|big) )*(?:shock(?:ed|s)?|tingl\\w+|zap(?:ped|s)?|jolt(?:ed|s)?|buzzed|bit)\\b(?! (?:at|by|of) )',
  '(?:shock(?:s|ed)|zap(?:s|ped)|tingle[sd]?|jolt(?:s|ed)) (?:you|me|him|her|us|them|my|his|your)\\b',
  `(?:bare|exposed|live|chewed|nicked|uncapped|dangling) (?:\\w+ ){0,2}${CABLE}\\b|frayed (?:\\w+ )?${WIRE}\\b`,
  `${CABLE}\\b[^.]{0,40}\\b(?:hanging|dangling|sticking out|poking out|exposed|bare|chewed|uncapped|nicked|no (?:cap|wire ?nut|box)|without an? (?:cap|wire ?nut|box)|(?:is|are|'s|still) live)\\b|${WIRE}\\b[^.]{0,24}\\bfrayed\\b`,
  '(?:no|missing|open) ground(?:ing)?\\b(?! (?:cover|floor|water|level|clearance|beef))',
  'ungrounded|two[- ]prong(?:ed)?\\b|open neutral|reversed? polarity|knob and tube|alumin(?:um|ium) wir(?:e|es|ing)\\b',
  `water\\b[^.]{0,20}\\b(?:in|into|on|from|out of|through|down) (?:the |a |that )?(?:\\w+ )?(?:light|${ELECTRIC})\\b`,
  "(?:panel|breaker box|junction box)\\b[^.]{0,12}\\b(?:no cover|cover(?:'s| is) (?:off|missing|gone))|no cover on the (?:panel|breaker box|junction box)",
);

/** Of posts only those that carry a house, a porch or a deck: not a fence's. */
const HOLDING =
  '(?:joists?|rafters?|truss(?:es)?|beams?(?! sleeve)|headers?(?! track)|lintels?|ledgers?|girders?|bearing (?:walls?|studs?)|(?:porch|deck|basement|cellar|support|lally|jack|carport|pergola) posts?(?! (?:caps?|bases?|holes?))|posts? (?:under|below|beneath|holding|in the (?:basement|cellar|crawl ?space))|(?:support |lally )?columns?|(?<!of the )piers?|sill (?:plates?|beams?)|stringers?)';
const FAILING =
  '(?:crack(?:ed|s|ing)?|split(?:s|ting)?|rot(?:s|ted|ten|ting)?|mush\\w*|punky|soft|sag(?:s|ged|ging)?|lean(?:s|ing)?|tilt(?:s|ed|ing)?|bow(?:ed|s|ing)|broken?|snapped|charred|undersized|sinking|sunk|settl(?:ed|ing)|dropp(?:ed|ing)|in (?:the |mid ?)?air|cut (?:(?:right|clean|clear|all the way|half ?way) )*(?:through|in half)|(?:pull(?:ing|ed)|coming|came) (?:away|apart|loose)|termites?)';

const RED = '(?:red|pink|positive|hot)';
const CAME_UP =
  "(?:came|come|comes|turned|turn|went|go|showed|read|tested|test|are|is|was|were|'s)(?: (?:up|back|out|all|both|right|bright|to))*";

const PIPE = '(?:pipes?|boiler|furnace|ducts?|heat(?:ing)? (?:pipes?|lines?)|stove ?pipe|water tank)';
const LAGGED = '(?:white|chalky|plaster\\w*|cloth|papery|paper|old|gray|grey|cardboard|cementy)';

const FLUE =
  '(?:flue|(?:furnace|boiler|water heater) (?:vent|exhaust)|vent connector|exhaust pipe|stove ?pipe|chimney pipe|draft hood|heat exchanger)';
const ENGINE =
  '(?:generator|gas (?:saw|cut ?off saw|engine|pump|powered \\w+)|engine|charcoal|charcoal grill|propane heater|salamander|kerosene heater|torpedo heater|truck|mower)';
const BURNER = '(?:furnace|boiler|water heater|heater|burners?|fireplace|stove|range|oven)';
const ALARM = '(?:co|carbon monoxide|monoxide) (?:alarms?|detectors?|monitors?|sensors?|meter)';

const COLOUR = '(?:black|green|gray|grey|white|pink|dark)';

export const DANGERS: readonly Danger[] = [
  {
    hazard: 'power off',
    told: ELECTRIC_TOLD,
    dealtWith:
      /^(?![\s\S]*\b(?:cover|plate|bulbs?|faucet|tap|handle|tape)\b)[\s\S]*\b(?:electrician|replac\w+|swap\w*|chang(?:ed|ing)|rewir\w+|capped|(?:put|with|has) (?:a |an )?(?:cap|wire ?nut)\w*|ground(?:ed|s)?|bond(?:ed)?|tighten(?:ed)?|terminat\w+|repair\w*|fix(?:ed)?|disconnect\w*|dead|boxed|new (?:\w+ )?(?:outlet|receptacle|switch|breaker|dimmer|fixture|panel|cable|wire|gfci|one))\b/,
  },
  {
    hazard: 'lead paint',
    told: words(
      `(?:swab\\w*|lead (?:test|kit|check)\\w*|test(?:ed)?\\b[^.]{0,40}\\blead)\\b[^\\n]{0,80}\\b${CAME_UP} ${RED}\\b`,
      `lead (?:swab|test|kit)\\w*\\b[^\\n]{0,60}\\b(?:both|all|each)? ?${CAME_UP} ${RED}\\b`,
      `(?:positive|hot) for lead|(?:has|have|got) lead (?:in|on|paint)|(?:is|it's|that's) (?:all )?lead(?: (?:based )?paint)?(?=[.,;!]|$| (?:under|on|in|for sure)\\b)`,
    ),
    dealtWith:
      /\b(?:neg(?:ative)?|abat\w+|remediat\w+|encapsulat\w+|certified|clearance|stripped|removed|taken out|took (?:it|them|that) out|hauled|replaced|scraped|contained|sealed)\b/,
  },
  {
    hazard: 'asbestos',
    told: words(
      `(?:9 ?x ?9|9 by 9|nine by nine|(?:9|nine)[- ]?(?:inch|in|") (?:(?:square|old|vinyl|asphalt|asbestos|floor) )*tiles?|(?<!(?:can|tubes?|tub|bucket|pail|gallon|quart|out) of (?:the )?)black (?:glue|mastic|adhesive)|black (?:tar(?:ry)?|goo(?:ey)?|gunk|sticky)\\b(?! ?paper)[^.]{0,12}\\b(?:stuff|under|glue|layer|on the (?:sub)?floor)|cutback|(?:old|original) (?:asphalt|vinyl) tiles?|asphalt tiles?|vermiculite|transite|asbestos|fibro|old (?:fibre|fiber) cement|old lino(?:leum)?|old sheet vinyl|cement (?:board )?siding shingles|duct wrap)\\b`,
      `popcorn\\b(?!,? (?:and|for|machine|maker|shrimp|chicken|bags?|at)\\b)`,
      `${PIPE}\\b[^.]{0,30}\\b(?:wrapped|covered|jacket\\w*|insulated)\\b[^.]{0,16}\\b${LAGGED}\\b`,
      `${PIPE}\\b[^.]{0,24}\\b${LAGGED} (?:\\w+ )?(?:jacket|wrap\\w*|coating|cover\\w*|lagging|tape|insulation|stuff)\\b`,
      `${LAGGED} (?:wrap|lagging|insulation|jacket)\\b[^.]{0,16}\\b${PIPE}`,
      "(?:old|existing|original|crumbling|torn) pipe (?:lagging|wrap|insulation)\\b|pipe (?:lagging|wrap|insulation)(?:'s| is| looks?| was)? (?:crumbl\\w*|flak\\w*|torn|loose|falling|coming|old|white|chalky)\\b",
      `(?:pebbl\\w+|gravelly|kitty litter|shiny (?:bits|flakes|specks|pieces)|sparkly)\\b[^.]{0,40}\\binsulation\\b|insulation\\b[^.]{0,40}\\b(?:pebbl\\w+|gravelly|kitty litter|shiny (?:bits|flakes|specks|pieces)|sparkly)\\b`,
      `(?:siding|shingles)\\b[^.]{0,40}\\b(?:feels?|looks?) like (?:cement|slate|concrete)\\b|(?:old|original|brittle) (?:\\w+ )?(?:cement|slate[- ]looking) (?:siding|shingles)\\b`,
    ),
    dealtWith:
      /\b(?:neg(?:ative)?|no asbestos|asbestos[- ]free|came back (?:clean|clear|fine|good|ok(?:ay)?)|abat\w+|remediat\w+|encapsulat\w+|enclosed|sealed|licen[cs]ed|removed|taken (?:out|up)|hauled|scraped|stripped|pulled up|(?:is|are|'s|came|all) (?:down|gone))\b/,
  },
  {
    hazard: 'silica dust',
    told: words('dry[- ](?:cut(?:ting|s)?|grind(?:ing|s)?|saw(?:ing|ed|s)?|sweeping)\\b'),
    dealtWith: /\b(?:wet|water|shroud|vac\w*|hepa|respirator|mask\w*|clean(?:ed)?|stopped)\b/,
  },
  {
    hazard: 'gas',
    told: words(
      'gas (?:leak|smell|odou?r)|smell\\w*(?: (?:of|like|some|a|little|bit|faint|the))* gas\\b|rotten eggs?\\b',
      'hiss\\w*[^.]{0,50}\\bgas\\b|gas\\b[^.]{0,40}\\b(?:hiss\\w*|leak\\w*|weep\\w*)|bubbl\\w*[^.]{0,40}\\bgas\\b|gas\\b[^.]{0,40}\\bbubbl\\w*',
      'gas (?:hose|line|flex|connector|pipe|tube|shut ?off|valve)\\b[^.]{0,16}\\b(?:kink\\w*|crush\\w*|crack\\w*|rust\\w*|fray\\w*|loose|dent\\w*|nick\\w*|bent|cut into|open|uncapped|not capped)\\b',
      "pilot(?: light)?(?:'s| is| keeps| went| won't)(?: (?:\\w+ )?)(?:out|lit|light|going out|blowing out)\\b",
    ),
    dealtWith:
      /\b(?:gas (?:company|man|guy|fitter)|plumber|licen[cs]ed|leak[- ]?test\w*|soap\w*|pressure test\w*|no (?:more )?(?:leaks?|bubbles|smell|gas)|(?:leak|smell)(?:'s| is) gone|fixed|repaired|replaced|capped|new (?:\w+ )?(?:hose|connector|flex|valve|line|fitting)|relit|lit)\b/,
  },
  {
    hazard: 'carbon monoxide',
    told: words(
      `${ALARM}\\b[^.]{0,30}\\b(?:went off|going off|goes off|gone off|sound\\w*|scream\\w*|tripp\\w*|blar\\w*|(?:is |was |'s )?read(?:s|ing)? (?!zero|0\\b))`,
      'carbon monoxide (?:leak\\w*|poison\\w*|in the\\b)|back ?draft\\w*|flue gas\\w*',
      `${FLUE}\\b[^.]{0,40}\\b(?:apart|disconnect\\w*|(?:fell|fallen|come|came|pulled|knocked|blown) (?:\\w+ )?(?:off|out|down|loose)|rust\\w*|holes?|crack\\w*|block\\w*|plugged|crushed|separat\\w*|nest)\\b`,
      `(?:flue|exhaust)(?:'s| is| was) (?:off|out|down|loose)\\b|(?:exhaust|fumes)\\b[^.]{0,24}\\b(?:in|into|inside) the (?:house|room|basement|garage|hall|bedrooms?|kitchen|attic)\\b`,
      `(?:run|runs|ran|running|fired up|starts?|started)\\b[^.]{0,20}\\b${ENGINE}\\b[^.]{0,20}\\b(?:in|inside|indoors)\\b`,
      `${ENGINE}(?:'s| is| was)? (?:running|going|on|idling)\\b[^.]{0,16}\\b(?:in|inside|indoors)\\b`,
      `(?:soot\\w*|yellow flames?|orange flames?|lazy flames?)\\b[^.]{0,40}\\b${BURNER}|${BURNER}\\b[^.]{0,40}\\b(?:soot\\w*|(?:yellow|orange|lazy) flame|burns? (?:yellow|orange)|headaches?)`,
    ),
    dealtWith:
      /^(?![\s\S]*\b(?:alarm|detector|batter(?:y|ies))\b(?![\s\S]*\b(?:zero|clear)\b))[\s\S]*\b(?:zero|0 ppm|all clear|furnace (?:man|guy)|hvac|technician|plumber|gas (?:company|man|guy)|fire (?:department|dept|guys)|repair\w*|fix(?:ed)?|replaced|reconnect\w*|reattach\w*|sealed|put (?:it |the \w+ )?back|new (?:\w+ )?(?:flue|pipe|heat exchanger|vent|furnace|boiler|heater|burner)|(?:moved|took|put) (?:it |the \w+ )?out(?:side)|clean(?:ed)?|unblocked|cleared)\b/,
  },
  {
    hazard: 'carbon monoxide',
    told: words(
      `${ALARM}\\b[^.]{0,30}\\b(?:dead|missing|expired|gone|unplugged|out of date|broken|not working|(?:doesn't|won't|don't|isn't|ain't) work\\w*|chirp\\w*|beep\\w*)`,
      `no (?:working )?${ALARM}\\b`,
    ),
    dealtWith:
      /\b(?:new|replaced|swapped|changed|put (?:one|a|two|them) (?:up|in)|installed|hung|mounted|works?|batter(?:y|ies))\b/,
  },
  {
    hazard: 'sewer gas',
    told: words(
      'sewer (?:smell|gas)|sewage smell|(?:smell|stink|reek)\\w*(?: \\w+)? (?:like|of) (?:an? |the )?(?:rotten |raw |old )?(?:sewer|sewage|septic)\\b',
      `(?:drain|trap|floor drain|waste|standpipe)\\b[^.]{0,40}\\b(?:stink|reek)\\w*|dry trap|(?:traps?|floor drains?)\\b[^.]{0,30}\\b(?:is|are|went|gone|runs?|'s|bone|all)(?: \\w+)? dry\\b|(?:floor drains?|traps?)${IS} dry\\b`,
      "open (?:drain|waste|sewer|stub|stack)\\b|(?:drain|waste|sewer|stack|flange)(?: pipe| hole| line| stub)?(?:'s| is|'re| are)?(?: (?:still|left|wide|just))* open\\b",
      "(?:toilet|john|bowl|flange)\\b[^.]{0,40}\\b(?:hole|pipe|flange)(?:'s| is)(?: (?:still|left|wide|just))* open\\b|(?:sink|vanity|washer|tub)\\b[^.]{0,24}\\b(?:pipe|drain|hole)\\b[^.]{0,20}(?:'s| is)?(?: (?:still|left|wide|just))* open\\b",
    ),
    dealtWith:
      /\b(?:plug(?:ged)?|cap(?:ped)?|seal(?:ed)?|rag|stuffed|reset|set|back (?:on|in)|water|filled|poured|primed|hooked up|connected|vent\w*|wax|no (?:more )?smell|smell(?:'s| is) gone|fixed|repaired|replaced|snaked|covered|closed|new)\b/,
  },
  {
    hazard: 'solvent cement',
    told: words(
      '(?:purple primer|glu(?:e|ed|ing)|solvent|pvc cement)\\b[^.]{0,60}\\b(?:flames?|pilot|torch|burner|lit|no (?:window|air|fan|vent\\w*))\\b',
    ),
    dealtWith: /\b(?:air(?:ed)?|vent(?:ed|ilated)|open(?:ed)?|fan|off|out|outside|dry|cured)\b/,
  },
  {
    hazard: 'structure',
    told: words(
      `${HOLDING}(?! (?:corner|stones?))\\b[^.]{0,32}?\\b${FAILING}\\b`,
      `posts?\\b[^.,]{0,16}\\b${FAILING}\\b[^.]{0,16}\\b(?:basement|cellar|crawl ?space|under the (?:house|beam|girder|deck|porch))\\b`,
      '(?:joists?|beams?|headers?|girders?)\\b[^.]{0,32}?\\bnotch(?:ed)?\\b',
      `(?:cracked|split|rotted|rotten|sagging|broken|soft|undersized|bowed|leaning|mushy|punky|charred|snapped|notched) (?:\\w+ )?${HOLDING}\\b`,
      `(?:rot|cracks?|split|sag|soft spot|termites?|ants) (?:in|on|at) (?:the|that|a|my|this) (?:\\w+ )?${HOLDING}\\b`,
      '(?:cut|notched|sawed|hacked|drilled|bored)(?: (?:right|clean|clear|half ?way|all the way|way|too|far|deep|a big))* (?:through|into|out of)? ?(?:the|a|that|two|three) (?:\\w+ )?(?:joists?|beams?|headers?|girders?|truss(?:es)?|rafters?)\\b',
      "(?:deck|porch|balcony|landing|stairs?|chimney|awning)(?:'s| is| are)?\\b[^.]{0,20}\\bpull(?:ing|ed|s) (?:away|off|apart|loose|out)\\b",
      '(?:foundation|retaining|block|basement|brick) wall\\b[^.]{0,24}\\b(?:bow(?:ed|ing|s)|lean(?:s|ing)|bulg\\w+|buckl\\w+|caving)\\b',
      "(?:floor|ceiling|roof)(?:'s| is)?(?: \\w+)? (?:caving|about to (?:come down|fall|go)|bouncing like)",
    ),
    dealtWith:
      /\b(?:sister\w*|replac\w+|reinforc\w+|doubled|new (?:\w+ )?(?:beam|post|joist|header|ledger|rafter|girder|column|lintel|stringer|one)|engineer|inspector|bolt(?:ed|s)?|lag(?:ged|s)?|rebuilt|weld\w*|splic\w+|scab\w*|repair\w*|fix(?:ed)?|poured)\b/,
  },
  {
    hazard: 'mould',
    told: words(
      '(?<!\\b(?:shoe|bed|brick|panel|t|wire|coping|base|crown|cap|casing|band|back|chair|rail|bar|stop|plaster|rubber|silicone)[ -])mou?ld\\b(?![ -](?:lines?|release|marks?|resistant|killer|proof|guy|wash)\\b)|mou?ldy|mildew(?:ed|y)?\\b(?! (?:wash|remover|resistant))|musty\\b',
      `${COLOUR} (?:(?:and|all|kinda) )?(?:fuzz\\w*|furry|slim\\w+|speckl\\w*|growth)\\b|(?:fuzzy|furry|slimy) (?:${COLOUR}|stuff|growth|patch\\w*)\\b|${COLOUR}\\b[^.]{0,16}\\bgrowing\\b`,
      `${COLOUR} (?:spots?|specks|patches)\\b[^.]{0,30}\\b(?:drywall|sheetrock|ceiling|walls?|grout|caulk|closet|sill|insulation|plywood|sheathing|joists?|studs?)\\b`,
    ),
    dealtWith:
      /\b(?:cut (?:it |that |the \w+ )?out|removed|took out|tore out|torn out|remediat\w+|clean(?:ed)?|bleach\w*|treated|scrubbed|killed|wiped|hepa|replaced|gone|negative|no (?:more )?mou?ld)\b/,
  },
  {
    hazard: 'hot water',
    told: words(
      "scald\\w*|can't (?:hold|keep|put|stand|leave) (?:your|my|a|his|her) (?:hand|foot|finger)",
      'water heater\\b[^.]{0,24}\\b(?:14[1-9]|1[5-9]\\d)\\b',
      '(?:tub|tap|shower|sink|faucet|lav|hot water)\\b[^.]{0,36}\\b(?:12[1-9]|1[3-5]\\d|(?:one|(?:a|one) hundred(?: and)?) (?:twenty[- ](?:one|two|three|four|five|six|seven|eight|nine)|thirty|forty|fifty))\\b(?! ?(?:v\\b|volts?|inch|in\\b|mil|mm|cm|ft|feet|foot|and (?:a|one|three|five|seven)\\b|["\'/]|gal|sq|bucks|dollars|psi))',
      '(?:tub|tap|shower|faucet|water|sink)\\b[^.]{0,24}\\b(?:very|so|really|awful|way too|too|crazy|stupid) hot\\b|too hot[^.]{0,40}\\b(?:tub|tap|shower|water)',
    ),
    dealtWith:
      /\b(?:turned (?:it |that |the \w+(?: \w+)? )?(?:down|back)|set (?:it |at |to |down|back)|mixing valve|limit stop|stop (?:is |'s )?(?:set|adjusted)|adjust\w*|dialed|new (?:\w+ )?(?:valve|cartridge|stop)|replaced|fixed|repaired|balanc\w+|11\d|10\d|120)\b/,
  },
  {
    hazard: 'ladder',
    told: words(
      '(?:rungs?|rails?|feet|foot|hinge)\\b[^.]{0,24}\\b(?:crack\\w*|broken?|bent|missing|loose|split|worn)\\b[^.]{0,30}\\bladder|(?:crack\\w*|broken?|bent|missing|split) (?:rung|rail|foot|feet|step)\\b',
      "ladder(?:'s| is| has)?\\b[^.]{0,24}\\b(?:crack\\w*|broken?|bent|missing|split|rotten|slip\\w*|slid)\\b|(?:fell|fallen|slipped) (?:off|from) (?:the |a |his |my )?(?:roof|ladder|scaffold\\w*|deck|staging)\\b",
    ),
    dealtWith:
      /\b(?:new|replaced|tagged|tossed|trash\w*|scrapped|threw|thrown|fixed|repaired|cut (?:it )?up|dumpster|hospital|okay|ok)\b/,
  },
];
