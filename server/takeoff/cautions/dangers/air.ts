/** What is breathed in or burns: dust, gas, fumes. Source of the care to take: `../hazards.ts`; the signs are common practice. */
import { type Danger, IS, MENDED, newIn, words } from './words.ts';

const FLUE =
  '(?:flue|(?:furnace|boiler|water heater) (?:vent|exhaust)|vent connector|exhaust pipe|stove ?pipe|chimney pipe|draft hood|heat exchanger)';

const ENGINE =
  '(?:generator|gas (?:saw|cut ?off saw|engine|pump|powered \\w+)|engine|charcoal|charcoal grill|propane heater|salamander|kerosene heater|torpedo heater|truck|mower)';

const BURNER = '(?:furnace|boiler|water heater|heater|burners?|fireplace|stove|range|oven)';

const ALARM = '(?:co|carbon monoxide|monoxide) (?:alarms?|detectors?|monitors?|sensors?|meter)';

export const AIR: readonly Danger[] = [
  {
    hazard: 'silica dust',
    told: words('dry[- ](?:cut(?:ting|s)?|grind(?:ing|s)?|saw(?:ing|ed|s)?|sweeping)\\b'),
    dealtWith: words('wet|water|shroud|vac(?:uum(?:ed)?)?|hepa|respirator|mask\\w*|stopped'),
  },
  {
    hazard: 'gas',
    told: words(
      'gas (?:leak|smell|odou?r)|smell\\w*(?: (?:of|like|some|a|little|bit|faint|the))* gas\\b|rotten eggs?\\b',
      'hiss\\w*[^.]{0,50}\\bgas\\b|gas\\b[^.]{0,40}\\b(?:hiss\\w*|leak\\w*|weep\\w*)|bubbl\\w*[^.]{0,40}\\bgas\\b|gas\\b[^.]{0,40}\\bbubbl\\w*',
      'gas (?:hose|line|flex|connector|pipe|tube|shut ?off|valve)\\b[^.]{0,16}\\b(?:kink\\w*|crush\\w*|crack\\w*|rust\\w*|fray\\w*|loose|dent\\w*|nick\\w*|bent|cut into|open|uncapped|not capped)\\b',
      "pilot(?: light)?(?:'s| is| keeps| went)(?: \\w+)? (?:out|going out|blowing out)\\b|pilot(?: light)? won't(?: \\w+)? (?:lit|light)\\b",
    ),
    dealtWith: words(
      MENDED,
      newIn('hose|connector|flex|valve|line|fitting|thermocouple'),
      "leak[- ]?tested|pressure tested|held pressure|no (?:more )?(?:leaks?|bubbles|smell|gas)|(?:leak|smell)(?:'s| is) gone|capped|remade|relit|pilot(?:'s| is) lit",
    ),
  },
  {
    hazard: 'carbon monoxide',
    told: words(
      `${ALARM}\\b[^.]{0,30}\\b(?:went off|going off|goes off|gone off|sound\\w*|scream\\w*|tripp\\w*|blar\\w*|(?:is |was |'s )?read(?:s|ing)? (?!zero|0\\b))`,
      'carbon monoxide (?:leak\\w*|poison\\w*|in the\\b)|back ?draft\\w*|flue gas\\w*',
      `${FLUE}\\b[^.]{0,40}\\b(?:apart|disconnect\\w*|(?:fell|fallen|come|came|pulled|knocked|blown) (?:\\w+ )?(?:off|out|down|loose)|rust\\w*|holes? in|crack\\w*|block\\w*|plugged|crushed|separat\\w*|nest)\\b`,
      `(?:flue|exhaust)(?:'s| is| was) (?:off|out|down|loose)\\b|(?:exhaust|fumes)\\b[^.]{0,40}\\b(?:in|into|inside) the (?:house|room|basement|garage|hall|bedrooms?|kitchen|attic)\\b`,
      `(?:run|runs|ran|running|fired up|starts?|started)\\b[^.]{0,20}\\b${ENGINE}\\b[^.]{0,20}\\b(?:in|inside|indoors)\\b`,
      `${ENGINE}(?:'s| is| was)? (?:running|going|on|idling)\\b[^.]{0,16}\\b(?:in|inside|indoors)\\b`,
      `(?:soot\\w*|yellow flames?|orange flames?|lazy flames?)\\b[^.]{0,40}\\b${BURNER}|${BURNER}\\b[^.]{0,40}\\b(?:soot\\w*|(?:yellow|orange|lazy) flame|burns? (?:yellow|orange)|headaches?)`,
    ),
    dealtWith: words(
      MENDED,
      newIn('flue|pipe|heat exchanger|vent|furnace|boiler|heater|burner|liner|tile'),
      'zero|0 ppm|all clear|reconnected|reattached|sealed|put (?:it |the \\w+ )?back|(?:moved|took|put) (?:it |the \\w+ )?out(?:side)?|cleaned|unblocked|cleared|swept|rodded|relined|set and parged',
    ),
    onlyHides: /\b(?:taped|batter(?:y|ies)|(?:alarm|detector)(?!\b[\s\S]*\b(?:zero|clear)\b))\b/,
  },
  {
    hazard: 'carbon monoxide',
    told: words(
      `${ALARM}\\b[^.]{0,30}\\b(?:dead|missing|expired|gone|unplugged|out of date|broken|not working|(?:doesn't|won't|don't|isn't|ain't) work\\w*|chirp\\w*|beep\\w*)`,
      `no (?:working )?${ALARM}\\b`,
    ),
    dealtWith: words(
      MENDED,
      newIn('alarms?|detectors?|ones?'),
      'changed|installed|put (?:one|a|two|them) (?:up|in)|hung|mounted|works|(?:new|fresh) batter(?:y|ies)',
    ),
  },
  {
    hazard: 'sewer gas',
    told: words(
      'sewer (?:smell|gas)|sewage smell|(?:smell|stink|reek)\\w*(?: \\w+)? (?:like|of) (?:an? |the )?(?:rotten |raw |old )?(?:sewer|sewage|septic)\\b',
      `(?:drain|trap|floor drain|waste|standpipe)\\b[^.]{0,40}\\b(?:stink|reek)\\w*|dry trap|(?:traps?|floor drains?)\\b[^.]{0,30}\\b(?:is|are|went|gone|runs?|'s|bone|all)(?: \\w+)? dry\\b|(?:floor drains?|traps?)${IS} dry\\b`,
      "open (?:drain|waste|sewer|stub|stack)\\b|(?:drain|waste|sewer|stack|flange)(?: pipe| hole| line| stub)?(?:'s| is|'re| are)?(?: (?:still|left|wide|just))* open\\b",
      "(?:toilet|john|bowl|flange)\\b[^.]{0,40}\\b(?:hole|pipe|flange)(?:'s| is)(?: (?:still|left|wide|just))* open\\b|(?:sink|vanity|washer|tub)\\b[^.]{0,24}\\b(?:pipe|drain|hole)\\b[^.]{0,20}(?:'s| is)?(?: (?:still|left|wide|just))* open\\b",
    ),
    dealtWith: words(
      MENDED,
      newIn('toilet|flange|trap|wax|wax ring|cap|plug'),
      "plugged it|plug(?:'s| is)? in|capped|sealed|stuffed|rag in|reset|set the (?:toilet|john)|(?:toilet|john|bowl)(?:'s| is) (?:set|in|on|back)|back (?:on|in)|(?:poured|ran|put|added)\\b[^.]{0,20}\\b(?:water|oil)|filled|primed|hooked up|connected|no (?:more )?smell|smell(?:'s| is) gone|snaked",
    ),
  },
  {
    hazard: 'solvent cement',
    told: words(
      '(?:purple primer|glu(?:e|ed|ing)|solvent|pvc cement)\\b[^.]{0,60}\\b(?:flames?|pilot|torch|burner|lit|no (?:window|air|fan|vent\\w*))\\b',
    ),
    dealtWith: words(
      "aired|vented|opened (?:the|a)|fan(?:'s| is)? on|flame(?:'s| is)? (?:off|out)|(?:turned|shut) (?:it |the \\w+(?: \\w+)? )?off|cured",
    ),
  },
];
