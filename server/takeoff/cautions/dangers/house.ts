/** What an old, a wet or a weak house holds, hot taps and bad ladders. Source of the care to take: `../hazards.ts`; the signs are common practice. */
import { type Danger, MENDED, newIn, words } from './words.ts';

/** Of posts only those that carry a house, a porch or a deck: not a fence's. */
const HOLDING =
  '(?:joists?|rafters?|truss(?:es)?|beams?(?! sleeve)|headers?(?! track)|lintels?|ledgers?|girders?|bearing (?:walls?|studs?)|(?:porch|deck|basement|cellar|support|lally|jack|carport|pergola) posts?(?! (?:caps?|bases?|holes?))|posts? (?:under|below|beneath|holding|in the (?:basement|cellar|crawl ?space))|(?:support |lally )?columns?|(?<!of the )piers?|sill (?:plates?|beams?)|stringers?)';

const FAILING =
  '(?:crack(?:ed|s|ing)?|split(?:s|ting)?|rot(?:s|ted|ten|ting)?|mush\\w*|punky|soft|sag(?:s|ged|ging)?|lean(?:s|ing)?|tilt(?:s|ed|ing)?|bow(?:ed|s|ing)|broken?|snapped|charred|undersized|sinking|sunk|settl(?:ed|ing)|dropp(?:ed|ing)|in (?:the |mid ?)?air|(?:cut|hacked|sawed|chopped) (?:(?:right|clean|clear|all the way|half ?way) )*(?:through|in half)|(?:pull(?:ing|ed)|coming|came) (?:away|apart|loose)|termites?)';

const RED = '(?:red|pink|positive|hot)';

const CAME_UP =
  "(?:came|come|comes|turned|turn|went|go|showed|read|tested|test|are|is|was|were|'s)(?: (?:up|back|out|all|both|right|bright|to))*";

const PIPE = '(?:pipes?|boiler|furnace|ducts?|heat(?:ing)? (?:pipes?|lines?)|stove ?pipe|water tank)';

const LAGGED = '(?:white|chalky|plaster\\w*|cloth|papery|paper|old|gray|grey|cardboard|cementy)';

/** What was made with fibres that show where it is broken; glass wool is fluffy by itself. */
const FIBRED = '(?:wrap|lagging|sheets?|sheeting|jacket|coating|flue|broken edge)';
const HAIRY = '(?:hairy|furry|fibrous)';

const COLOUR = '(?:black|green|gray|grey|white|pink|dark)';

export const HOUSE: readonly Danger[] = [
  {
    hazard: 'lead paint',
    told: words(
      `(?:swab\\w*|lead (?:test|kit|check)\\w*|test(?:ed)?\\b[^.]{0,40}\\blead)\\b[^\\n]{0,80}\\b${CAME_UP} ${RED}\\b`,
      `lead (?:swab|test|kit)\\w*\\b[^\\n]{0,60}\\b(?:both|all|each)? ?${CAME_UP} ${RED}\\b`,
      `(?:positive|hot) for lead|(?:has|have|got) lead (?:in|on|paint)|(?:is|it's|that's) (?:all )?lead(?: (?:based )?paint)?(?=[.,;!]|$| (?:under|on|in|for sure)\\b)`,
    ),
    dealtWith: words(
      'neg(?:ative)?|abated|remediated|encapsulated|stripped|removed|taken out|took (?:it|them|that) out|hauled|replaced|passed clearance',
    ),
  },
  {
    hazard: 'asbestos',
    told: words(
      `(?:9 ?x ?9|9 by 9|nine by nine|(?:9|nine)[- ]?(?:inch|in|") (?:(?:square|old|vinyl|asphalt|asbestos|floor) )*(?:tiles?|squares)|(?<!(?:can|tubes?|tub|bucket|pail|gallon|quart|out) of (?:the )?)black (?:glue|mastic|adhesive)|black (?:tar(?:ry)?|goo(?:ey)?|gunk|sticky)\\b(?! ?paper)[^.]{0,12}\\b(?:stuff|under|glue|layer|on the (?:sub)?floor)|cutback|(?:old|original) (?:asphalt|vinyl) tiles?|asphalt tiles?|vermiculite|transite|asbestos|fibro|old (?:fibre|fiber) cement|old lino(?:leum)?|old sheet vinyl|cement (?:board )?siding shingles|duct wrap)\\b`,
      `popcorn\\b(?!,? (?:and|for|machine|maker|shrimp|chicken|bags?|at)\\b)`,
      `${PIPE}\\b[^.]{0,30}\\b(?:wrapped|covered|jacket\\w*|insulated)\\b[^.]{0,16}\\b${LAGGED}\\b`,
      `${PIPE}\\b[^.]{0,24}\\b${LAGGED} (?:\\w+ )?(?:jacket|wrap\\w*|coating|cover\\w*|lagging|tape|insulation|stuff)\\b`,
      `${LAGGED} (?:wrap|lagging|insulation|jacket)\\b[^.]{0,16}\\b${PIPE}`,
      '(?:old|existing|original|crumbling|torn) pipe (?:lagging|wrap|insulation)\\b|pipe (?:lagging|wrap|insulation)\\b[^.]{0,24}\\b(?:crumbl\\w*|flak\\w*|torn|falling|coming (?:off|loose|apart)|white|chalky)\\b',
      `(?:pebbl\\w+|gravelly|kitty litter|shiny (?:bits|flakes|specks|pieces)|sparkly)\\b[^.]{0,40}\\binsulation\\b|insulation\\b[^.]{0,40}\\b(?:pebbl\\w+|gravelly|kitty litter|shiny (?:bits|flakes|specks|pieces)|sparkly)\\b`,
      // Corrugated cement sheet, and what shows its fibres: HSE, "Asbestos image gallery" (where asbestos is found).
      '(?:grey|gray|cement) corrugated (?!steel|metal|iron|tin|plastic)(?:\\w+ )?(?:sheets?|sheeting|roof)\\b|corrugated (?:grey|gray|cement) (?:sheets?|sheeting|roof)\\b',
      `${HAIRY}\\b[^.]{0,24}\\b${FIBRED}\\b|\\b${FIBRED}\\b[^.]{0,30}\\b${HAIRY}\\b`,
      '(?:black|brown|dark) (?:\\w+ )?tiles?,? (?:9|nine)[- ]?(?:inch|in)\\b|tiles?\\b[^.]{0,30}\\b(?:stuck|set|laid) (?:down )?(?:with|in|on)\\b[^.]{0,16}\\b(?:tar|pitch|bitumen)\\b',
      `(?:siding|shingles)\\b[^.]{0,40}\\b(?:feels?|looks?) like (?:cement|slate|concrete)\\b|(?:old|original|brittle) (?:\\w+ )?(?:cement|slate[- ]looking) (?:siding|shingles)\\b`,
    ),
    dealtWith: words(
      "neg(?:ative)?|no asbestos|asbestos[- ]free|came back (?:clean|clear|fine|good|ok(?:ay)?)|abated|remediated|encapsulated|enclosed|sealed (?:it|them|the (?:tiles?|wrap|pipes?))|removed|taken (?:out|up)|hauled|scraped|stripped|pulled up|(?:it|that|ceiling|popcorn|tiles?|they|wrap)(?:'s| is| are|'re)?(?: all)? (?:down|gone)|came down|all (?:of it )?(?:down|gone)",
    ),
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
      "(?:deck|porch|balcony|landing|stairs?|chimney|awning)(?:'s| is| are)?(?: (?!flashing|trim|gutter|board)\\w+){0,2} pull(?:ing|ed|s) (?:away|off|apart|loose|out)\\b",
      '(?:foundation|retaining|block|basement|brick) wall\\b[^.]{0,24}\\b(?:bow(?:ed|ing|s)|lean(?:s|ing)|bulg\\w+|buckl\\w+|caving)\\b',
      "(?:floor|ceiling|roof)(?:'s| is)?(?: \\w+)? (?:caving|about to (?:come down|fall|go)|bouncing like)",
    ),
    dealtWith: words(
      MENDED,
      newIn('beam|posts?|joists?|header|ledger|rafters?|girder|columns?|lintel|stringers?|one'),
      "sistered|put (?:a |two )?sisters?|sisters?(?:'s| is| are| went)? (?:in|on|up|bolted|nailed)|reinforced|doubled|bolted|lagged|rebuilt|welded|spliced|scabbed|poured",
    ),
  },
  {
    hazard: 'mould',
    told: words(
      '(?<!\\b(?:shoe|bed|brick|panel|t|wire|coping|base|crown|cap|casing|band|back|chair|rail|bar|stop|plaster|rubber|silicone)[ -])mou?ld\\b(?![ -](?:lines?|release|marks?|resistant|killer|proof|guy|wash|for)\\b)|mou?ldy|mildew(?:ed|y)?\\b(?! (?:wash|remover|resistant))|musty\\b',
      `${COLOUR} (?:(?:and|all|kinda) )?(?:fuzz\\w*|furry|slim\\w+|speckl\\w*|growth)\\b|(?:fuzzy|furry|slimy) (?:${COLOUR}|stuff|growth|patch\\w*)\\b|${COLOUR}\\b[^.]{0,16}\\bgrowing\\b`,
      `${COLOUR} (?:spots?|specks|patches)\\b[^.]{0,30}\\b(?:drywall|sheetrock|ceiling|walls?|grout|caulk|closet|sill|insulation|plywood|sheathing|joists?|studs?)\\b`,
    ),
    dealtWith: words(
      MENDED,
      '(?:cut|tore|took|ripped|pulled) (?:it |that |them |all |the (?:\\w+ )?(?:drywall|sheetrock|wall|insulation|caulk|grout|mou?ld|panel\\w*|carpet) )?(?:all )?out|torn out|removed|remediated|cleaned|bleached|treated|fungicid\\w*|washed|sprayed|scrubbed|killed|wiped|gone|negative|no (?:more )?mou?ld',
    ),
  },
  {
    hazard: 'hot water',
    told: words(
      "scald\\w*|can't (?:hold|keep|put|stand|leave) (?:your|my|a|his|her) (?:hand|foot|finger)",
      'water heater\\b[^.]{0,24}\\b(?:14[1-9]|1[5-9]\\d)\\b',
      '(?:tub|tap|shower|sink|faucet|lav|hot water)\\b[^.]{0,36}\\b(?:12[1-9]|1[3-5]\\d|(?:one|(?:a|one) hundred(?: and)?) (?:twenty[- ](?:one|two|three|four|five|six|seven|eight|nine)|thirty|forty|fifty))\\b(?! ?(?:v\\b|volts?|inch|in\\b|mil|mm|cm|ft|feet|foot|and (?:a|one|three|five|seven)\\b|["\'/]|gal|sq|bucks|dollars|psi))',
      '(?:12[1-9]|1[3-5]\\d)(?: degrees)? (?:at|in|out of) the (?:tub|tap|shower|sink|faucet|lav)\\b',
      '(?:tub|tap|shower|faucet|water|sink)\\b[^.]{0,24}\\b(?:very|so|really|awful|way too|too|crazy|stupid) hot\\b|too hot[^.]{0,40}\\b(?:tub|tap|shower|water)',
    ),
    dealtWith: words(
      MENDED,
      newIn('valve|cartridge|stop'),
      "turned (?:it |that |the \\w+(?: \\w+)? )?(?:down|back)|set (?:it |at |to |down|back)|stop(?:'s| is)? (?:set|adjusted)|adjusted|dialed|balanced|11\\d|10\\d|120",
    ),
  },
  {
    hazard: 'ladder',
    told: words(
      '(?:rungs?|rails?|feet|foot|hinge)\\b[^.]{0,24}\\b(?:crack\\w*|broken?|bent|missing|loose|split|worn)\\b[^.]{0,30}\\bladder|(?:crack\\w*|broken?|bent|missing|split) (?:rung|rail|foot|feet|step)\\b',
      "ladder(?:'s| is| has)?\\b[^.]{0,24}\\b(?:crack\\w*|broken?|bent|missing|split|rotten|slip\\w*|slid)\\b|(?:fell|fallen|slipped) (?:off|from) (?:the |a |his |my )?(?:roof|ladder|scaffold\\w*|deck|staging)\\b",
    ),
    dealtWith: words(
      MENDED,
      newIn('ladder|rung|one'),
      "tossed|trashed|scrapped|threw|thrown|cut (?:it )?up|bent (?:it |that )?back|straightened|rung(?:'s| is) (?:in|back|on)|folds|glued",
    ),
  },
];
