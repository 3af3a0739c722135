/** Shocks, heat and sparks, and wires that anybody can reach. Source of the care to take: `../hazards.ts`; the signs are common practice. */
import { type Danger, IS, MENDED, newIn, words } from './words.ts';

const ELECTRIC =
  '(?:outlets?|receptacles?|plugs?|sockets?|switch(?:es)?|breakers?|(?:breaker|fuse|junction|switch|outlet) box(?:es)?|panel|fixtures?|cover plates?|(?:power |extension |dryer |lamp )?cords?|wires?|wiring|cables?|splices?|(?:neutral|hot) lugs?|baseboard heaters?|ceiling fan)';

/** An outlet is hot once it has power: that is no danger, and neither is a dimmer that buzzes. */
const ALIVE = '(?:outlets?|receptacles?|sockets?|wires?|wiring|cables?|circuits?|fixtures?)';

const HEATED =
  '(?:warm|buzz\\w*|spark(?:s|ed|ing)?|arc(?:s|ing|ed)|scorch\\w*|burn(?:s|t|ing|ed)?(?! (?:out|through))|melt\\w*|charred|smok(?:e|es|ing|ed)(?! (?:alarm|detector))|singed|crackl\\w*|fried|blackened)';

const HOT = '(?:(?:too )?hot (?:to|as|enough)|(?:been|really|very|so|too|pretty|real|getting|gets|running|runs) hot)';

const WIRE =
  '(?:(?<!(?:phone|speaker|stat|thermostat|doorbell|network|chicken|barbed|trade|fence|picture) )wires?|wiring|conductors?|splices?|(?:power|extension|dryer|lamp|appliance) cords?)';

const CABLE = `(?:${WIRE}|cables?)`;

/** "Breaker for the dryer is hot". */
const OF_IT = '(?: (?:for|in|by|on|at|to|behind|under|over|near) (?:(?:the|that|my|her|his) )?\\w+(?: \\w+)?)?';

const ELECTRIC_TOLD = words(
  `${ELECTRIC}${OF_IT}${IS},? ${HEATED}\\b`,
  `(?!${ALIVE})${ELECTRIC}${OF_IT}${IS} hot\\b(?! (?:water|wire|leg))|(?:${ELECTRIC}|dimmer)(?: is| was|'s)?(?: \\w+)? ${HOT}\\b`,
  `dimmers?${IS} (?!buzz)(?:${HEATED}|hot)\\b`,
  `(?:scorch\\w*|burn(?:s|t|ing|ed)?|melt\\w*|spark\\w*|smok\\w*|arc\\w*|char\\w*|buzz\\w*)(?: (?:marks?|spots?|smell|up|something|plastic|like|noise))* (?:by|in|on|at|from|off|behind|inside|near|around|out of) (?:the|that|this|an?|my|her|his) (?:\\w+ )?${ELECTRIC}\\b`,
  'hot (?:plugs?|switch|breakers?|panel|cover plates?)\\b|(?:scorched|burn(?:t|ed)|melted|charred|fried|sparking|smoking|arcing|blackened) (?:outlets?|receptacles?|plugs?|sockets?|switch|breakers?|panel|cover plates?|cords?|wires?)\\b',
  '(?:got|get|gets|gave|gives|giving|getting|felt|feel|feels) (?:me |you |him |her |us |them )?(?:(?:a|an|the|some|nice|good|little|bit|of|small|big) )*(?:shock(?:ed|s)?|tingl\\w+|zap(?:ped|s)?|jolt(?:ed|s)?|buzzed(?= (?:off|from|by)))\\b(?! (?:at the|by the price|of) )',
  '(?:shock(?:s|ed)|zap(?:s|ped)|tingle[sd]?|jolt(?:s|ed)) (?:you|me|him|her|us|them|my|his|your)\\b|(?:outlet|switch|faucet|panel|wire|fixture|it) bit (?:me|him|her)\\b',
  '(?:no|missing|open) ground(?:ing)?\\b(?! (?:cover|floor|water|level|clearance|beef))',
  'ungrounded|two[- ]prong(?:ed)?\\b|open neutral|reversed? polarity|knob and tube|alumin(?:um|ium) wir(?:e|es|ing)\\b',
  `water\\b[^.]{0,20}\\b(?:in|into|on|onto|over|from|out of|through|down) (?:the |a |that )?(?:\\w+ )?(?:light|${ELECTRIC})\\b`,
);

/** Wires that anybody can reach. */
const BARE_TOLD = words(
  `(?:bare|exposed|live|chewed|nicked|uncapped|dangling) (?:\\w+ ){0,2}${CABLE}\\b|frayed (?:\\w+ )?${WIRE}\\b`,
  `${CABLE}\\b[^.]{0,40}\\b(?:hanging|dangling|sticking out|poking out|exposed|bare|chewed|uncapped|nicked|no (?:cap|wire ?nut|box)|without an? (?:cap|wire ?nut|box)|(?:is|are|'s|still) live)\\b|${WIRE}\\b[^.]{0,24}\\bfrayed\\b|cords?\\b[^.]{0,24}\\b(?:chewed|nicked|bare|copper)\\b`,
  "(?:panel|breaker box|junction box)\\b[^.]{0,12}\\b(?:no cover|cover(?:'s| is) (?:off|missing|gone))|no cover on the (?:panel|breaker box|junction box)",
);

export const ELECTRIC_DANGERS: readonly Danger[] = [
  {
    hazard: 'power off',
    told: ELECTRIC_TOLD,
    dealtWith: words(
      MENDED,
      newIn('outlet|receptacle|recep|switch|breaker|dimmer|plug|fixture|panel|cable|wire|gfci|lampholder|one'),
      "(?:outlet|receptacle|recep|switch|breaker|dimmer|plug|fixture)(?: \\w+){0,2}(?:'s| is| are) (?:in|good|cool)\\b",
      'rewired|capped|wire ?nutted|grounded|bonded|(?:put|ran|added) (?:in )?a ground|tightened|terminated|changed',
    ),
    onlyHides: /\b(?:cover|plates?|bulbs?|faucet|tap|handle|tape|painted|reset)\b/,
  },
  {
    hazard: 'power off',
    told: BARE_TOLD,
    dealtWith: words(
      MENDED,
      newIn('wire|cable|cord|box|one'),
      "rewired|(?:capped|boxed|spliced|covered)(?: (?:it|them|that|in|off|up))?|cap(?:s|ping) (?:it|them)|wire ?nutted|(?:put|set|added|mounted) (?:on )?(?:an?|the) (?:\\S+ ){0,3}(?:box|cover|cap|wire ?nut)|(?:box|cover)(?:'s| is)? (?:and cover )?on\\b|disconnected (?:it|them)|cut (?:it |them )?(?:off|back)|took (?:it|them) out",
    ),
  },
];
