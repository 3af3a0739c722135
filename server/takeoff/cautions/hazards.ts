/** One thing that can hurt, what to do, and the words of work that call for it; what tells that it is there is in `dangers/`. */
export interface Hazard {
  hazard: string;
  text: string;
  source: string;
  /** None where it is called for only by its danger. */
  when?: RegExp;
  /** Its caution stands whatever is told as done. Else only work still to do calls for it, or its danger. */
  stays?: true;
  /** Only in a house built before this year; where nobody said when, only with words that tell of an old one. */
  before?: number;
}

const DEFER = 'Local code and the licensed trade decide.';

const ELECTRIC = [
  '(?:outlets?|receptacles?|gfcis?|gfis?)(?! (?:covers?|plates?|boxes in))',
  '(?:light|wall|limit|float|pull|three[- ]way|3[- ]way|dead|bad|new|old|that|the|a) switch(?:es)?(?: (?:leg|box|loop))?(?! (?:cover )?plates?)(?! to (?:nights?|days?|earl(?:y|ies)|lates?|mornings?)\\b)',
  'dimmers?',
  'breakers?(?! bar)',
  '(?:sub ?|electric(?:al)? |breaker |main )panels?',
  '(?:light|bath|ceiling|exhaust) (?:fixtures?|fans?)',
  '(?:recessed|can|pendant|vanity|under ?cabinet) lights?',
  'light bar',
  '(?:replac(?:e|ing)|swap|chang(?:e|ing)|hang|install|mount|move|add) (?:the |that |a |another |new )*lights?(?! (?:bulbs?|coat|fixtures?|switch))',
  'sconces?',
  'splices?',
  'junction box(?:es)?',
  "panel(?:'s| is)? (?:buzz|humm|hot|spark|warm)\\w*",
  'knob and tube',
  '(?:neutral|hot) (?:lug|wire(?! brush)|is)',
  'circuits?',
  'lights? (?:(?:all|just|keeps?|still|upstairs|downstairs) )*flicker\\w*',
  'flickering lights?',
  'hard ?wired',
  '(?:re)?wir(?:e|ing) (?:in|up|the|that|a)',
  'rewir(?:e|ing)',
  'baseboard heaters?',
].join('|');

const MASONRY =
  'concrete|slab|thin ?set|bricks?|cinder ?block|block|stone|tiles?|mortar|masonry|pavers?|curb|footings?|hearth|backer ?board|fiber cement';
const MEMBER =
  'joists?|rafters?|truss(?:es)?|beams?|headers?|lintels?|ledgers?|girders?|bearing (?:wall|stud|post)s?|(?:support|lally) (?:posts?|columns?)|sill plates?';
const HARM =
  'cut(?:ting)?|notch(?:ed|ing)?|sister(?:ed|ing)?|crack(?:ed|s)?|rot(?:ted|ten)?|split|soft|sag(?:s|ging)?|charred|bored?|drill(?:ed)?|shave|undersized|jack(?:ed|ing)?|loose|take out|tak(?:e|ing) down|remov(?:e|ing)|open(?:ing)? up';

export const HAZARDS: readonly Hazard[] = [
  {
    hazard: 'power off',
    text: `Power off at the breaker, lock or tag it, and prove the wires dead with a tester that you have just tried on a live one. ${DEFER}`,
    source: 'OSHA 29 CFR 1910.333, 1910.147; DOE electrical safety handbook (live-dead-live)',
    when: new RegExp(`\\b(?:${ELECTRIC})\\b`),
  },
  {
    hazard: 'lead paint',
    text: `Lead paint, as all paint from before 1978 is taken to be until a test says otherwise: keep everybody else out, contain the dust, wet methods, HEPA vacuum, no dry sanding or torch; certified renovator rules apply over 6 sq ft a room inside, 20 sq ft outside, and to any window. ${DEFER}`,
    source: '40 CFR 745.83, 745.85 and Subpart E (EPA renovation, repair and painting rule)',
    when: /\b(?:scrap(?:e|ed|ing?)\b[^.]{0,40}\b(?:paint|trim|ceiling|siding|porch|sill|window|door|flak)|(?:scrap(?:e|ing)|paint|trim)\b[^.]{0,30}\bflak\w*|sand(?:ed|ing?|in)?\b[^.]{0,30}\b(?:paint(?:ed)?|trim|panell?ing|wainscot(?:ing)?|casing|doors?|sills?|rail(?:ing)?|balusters?|stairs?|windows?|siding|cabinets?|wood)|(?:paint|trim|casing|sill)\b[^.]{0,50}\bscrap(?:e|ed|ing)|paint(?:'s| is)?(?: all)? (?:bubbl|blister|chipp|crack|alligator)\w*|paint\b[^.]{0,30}\b(?:com(?:es|ing) off|falling off|in chips|powder\w*|to dust)|(?:windows?|sills?|paint|trim)\b[^.]{0,20}\bchips\b|old paint|coats of paint|(?:paint|ceiling|trim|siding|sills?|windows?|doors?|porch|sash)\b[^.]{0,24}\b(?:peeling|flaking)|(?:peeling|flaking)\b[^.]{0,16}\bpaint|(?:old|existing|painted|original) (?:windows?|sash|trim|casing|doors?|siding|plaster|baseboard)|sash(?:es)?|window frames?|demo\w*|gut(?:ting|ted)?\b[^.]{0,20}\b(?:bath|kitchen|room|walls?|house)|(?:windows?|sash(?:es)?|trim|doors?|sills?|railings?|balusters?)\b[^.]{0,24}\b(?:stripp|sand|scrap)(?:ed|ing)\b|strip(?:ping)?\b[^.]{0,20}\b(?:paint|trim|door|railing)|replac\w+\b[^.]{0,20}\b(?:windows?|casing|trim)|cut(?:ting)? (?:into |out |open )?(?:the )?(?:plaster|painted)|heat gun|lead paint)\b/,
    before: 1978,
  },
  {
    hazard: 'asbestos',
    text: `May hold asbestos: leave it alone, keep it wet or covered, and have a sample tested before anybody cuts, scrapes or sands. Removal is for a licensed contractor. ${DEFER}`,
    source: '40 CFR 61 Subpart M (NESHAP); OSHA 29 CFR 1926.1101; EPA, asbestos in the home',
  },
  {
    hazard: 'silica dust',
    text: `Cutting, grinding or drilling masonry, concrete, stone or tile makes silica dust: cut wet or with a shroud and HEPA vacuum, and wear a respirator. ${DEFER}`,
    source: 'OSHA 29 CFR 1926.1153, Table 1',
    when: new RegExp(
      `\\b(?:(?:cut(?:s|ting)?|(?:to|gotta|and) saw|sawing|saw ?cut(?:s|ting)?|chas(?:e|es|ing)|grind(?:ing)?|grinder|cor(?:e|ing)|jack ?hammer(?:ing)?|chip(?:ping)?|chisel(?:ing)?|demo)\\b[^.]{0,40}\\b(?:${MASONRY})|(?:${MASONRY})\\b[^.]{0,30}\\b(?:cut (?:back|out|down|to)|grinder|grind(?:ing)?|cutting(?! in\\b)|saw ?cuts?|jack ?hammer|cored|chipped out)|(?:concrete|slab)\\b[^.]{0,90}\\b(?:grinder|grind(?:ing)?)|(?:hammer )?drill(?:ing)?\\b[^.]{0,60}\\b(?:${MASONRY})|cup wheel|saw ?cuts?|tuck ?point(?:ing)?|wet saw)\\b`,
    ),
  },
  {
    hazard: 'gas',
    text: `Gas work: shut the valve, no flame, and test every joint with soap or a gauge before it is lit. If you smell gas, touch no switch, leave, and call the gas company from outside. ${DEFER}`,
    source: 'IFGC (NFPA 54) pressure test; common practice',
    when: /\b(?:gas (?:lines?|pipes?|hoses?|valves?|flex|connectors?|leaks?|smell|shut ?offs?|cock|range|stove|dryer|heater|furnace|boiler|meter|fireplace|fitting)|smell(?:s|ed|ing)? (?:of |like )?gas|black (?:iron )?pipe|csst)\b/,
  },
  {
    hazard: 'carbon monoxide',
    text: `Carbon monoxide has no smell. If an alarm sounds or anybody feels sick, everybody out, and call 911 from outside. Run no engine, grill or fuel heater without a flue indoors or in a garage, door open or not; keep a generator 20 ft from any window, door or vent. Have burner, flue and draft checked before it runs again. ${DEFER}`,
    source: 'CDC, preventing carbon monoxide poisoning (20 ft); IRC R315 (alarms)',
  },
  {
    hazard: 'sewer gas',
    text: `An open drain lets sewer gas in: plug or cap it, keep traps wet, air the room, no flame. ${DEFER}`,
    source: 'IPC 1002 (traps); common practice',
    when: /\b(?:open (?:drain|waste|stub)|(?:toilet|john|bowl)(?:'s| is)? (?:off|out|pulled)|pull(?:ed|ing)? the (?:toilet|john|bowl)|drain(?:'s| is) open|(?:swap|replace|pull|remove) (?:the )?(?:toilet|closet flange)|sewer (?:smell|gas)|sewage smell|(?:sewer|waste|drain|stack) clean ?out|dry trap|traps?\b[^.]{0,30}\b(?:is|are|went|gone|runs?|'s) dry|(?:stinks?|smells?) (?:like|of) (?:a )?sewer|cap the (?:drain|waste|stack))\b/,
    stays: true,
  },
  {
    hazard: 'solvent cement',
    text: `Primer and solvent cement burn easily and their vapor travels: open the room, no flame or pilot nearby, gloves on, lids shut. ${DEFER}`,
    source: 'ASTM F402 (from memory)',
    when: /\b(?:solvent (?:cement|weld\w*)|purple primer|(?:pvc|abs|cpvc) (?:glue|cement|primer)|glu(?:e|ed|ing)\b[^.]{0,24}\b(?:pvc|abs|cpvc|pipes?|drain|trap|fittings?|couplings?|elbows?|vent))\b/,
  },
  {
    hazard: 'structure',
    text: `May carry load: shore before you cut, and have an engineer or the building office say what may be cut. ${DEFER}`,
    source: 'IRC R502.8, R602.6, R802.7 (cutting, notching and boring)',
    when: new RegExp(
      `\\b(?:(?:load ?-?bearing|bearing wall)|walls?\\b[^.]{0,40}\\bbearing|(?:tak(?:e|ing) (?:down|out)|remov(?:e|ing)|knock(?:ing)? (?:down|out)|open(?:ing)? up) (?:the |that |a )?wall|(?:${HARM})\\b[^.]{0,24}\\b(?:${MEMBER})|(?:${MEMBER})\\b[^.]{0,32}\\b(?:${HARM})|notch(?:ed|ing)?\\b[^.]{0,40}\\b(?:2|two) ?(?:x|by) ?(?:6|8|10|12|six|eight|ten|twelve))\\b`,
    ),
  },
  {
    hazard: 'mould',
    text: `Wet or mouldy stuff: find and stop the water first, keep the dust down, mask and gloves; over about 10 sq ft call a remediation firm. ${DEFER}`,
    source: 'EPA 402-K-02-003, A Brief Guide to Mold (10 sq ft)',
  },
  {
    hazard: 'hot water',
    text: `Over 120 F at the tap scalds: turn it down at the limit stop or mixing valve and measure again. ${DEFER}`,
    source: 'CPSC, tap water scalds (120 F); ASSE 1016, 1070',
  },
  {
    hazard: 'ladder',
    text: `Ladder or roof work: tie off, one out for every four up, three points of contact, nobody alone over 6 ft without fall protection. ${DEFER}`,
    source: 'OSHA 29 CFR 1926.501 and 1926.1053',
    when: /\b(?:(?:on|off|up on|onto|across) the roof|roof (?:leaks?|deck|sheathing|vent|jack|boot|patch|is|needs)|re-?roof(?:ing)?|shingl(?:e|es|ing)|ridge(?: vent| cap)?|gutters?|fascia|soffits?|chimney(?! breast| sweep)|flashing (?:at|on|around) (?:the )?(?:roof|chimney|vent)|second stor(?:y|ey)|scaffold\w*|(?:on|up|off|from|foot|extension|step|long|tall|need|bring|climb)\b[^.]{0,16}\bladder|skylight|(?:1[0-9]|[2-9][0-9]|ten|eleven|twelve|fourteen|fifteen|sixteen|eighteen|twenty|thirty|forty)(?: (?:one|two|three|four|five|six|seven|eight))? ?(?:feet|foot|ft) (?:up\b|high up|in the air|off the ground))\b/,
  },
];
