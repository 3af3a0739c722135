import type { Measure } from './measure.ts';

/** Goods that the trade calls by a word too short to stand alone, under their full name. */
export const SHORT_NAMES: readonly { named: RegExp; item: string | null; by: Measure }[] = [
  { named: /(?<!(?:house|bubble|pipe|duct) ?)\bwrap\b(?=.*\brolls?\b)/, item: 'house wrap', by: 'area' },
  {
    named:
      /\badhesive\b(?=.*\b(?:tiles?|porcelain|ceramic|trowel)\b)|(?<=\b(?:tiles?|porcelain|ceramic)\b.*)\badhesive\b/,
    item: 'tile adhesive',
    by: 'area',
  },
  {
    named: /\b(?:concrete |cinder ?)?blocks?\b(?= wall\b)|(?<=\bblock wall\b.*)\bblocks?\b/,
    item: 'concrete block',
    by: 'area',
  },
  { named: /\bpainting\b(?=.*\{C\d+\})(?=.*(?:\bgal|\{V\d+\}|\bcan\b|\btin\b))/, item: 'paint', by: 'area' },
  {
    named:
      /\bpolyurethane\b(?! sealant)(?=.*\b(?:joints?|rod|sausages?|beads?)\b)|(?<=\b(?:joints?|rod|sausages?)\b.*)\bpolyurethane\b(?! sealant)/,
    item: 'polyurethane sealant',
    by: 'length',
  },
  { named: /(?<=\bcarpet\b.*)\b(?:carpet )?pad\b/, item: 'carpet pad', by: 'area' },
  {
    named: /\b(?:flat|matte?|satin|eggshell|semi[- ]?gloss) (?:white|gr[ae]y|black|cream|beige|blue|green)\b(?! paint)/,
    item: null,
    by: 'area',
  },
  { named: /\b(?:click|glue[- ]down|loose lay) vinyl\b/, item: 'vinyl plank', by: 'area' },
  { named: /\bto (?:board|rock|sheet ?rock)\b(?=.*\bsheets?\b)/, item: 'drywall', by: 'area' },
  { named: /(?<=\bridge\b.*)(?<!ridge )\bcap\b|(?<!ridge )\bcap\b(?= .*\bridge\b)/, item: 'ridge cap', by: 'length' },
  { named: /(?<=\bbacker rod\b.*)\brod\b/, item: 'backer rod', by: 'length' },
  {
    named:
      /(?<!\b(?:wall|tar|building|roofing|red|rosin|kraft|sand|joint|tape|masking) ?)\bpaper\b(?=.*\brolls?\b)(?=.*\b(?:repeat|drops?|paste|pattern|match)\b)/,
    item: 'wallpaper',
    by: 'area',
  },
  { named: /(?<=\bsiding\b.*)\bplanks?\b/, item: 'siding', by: 'area' },
  { named: /\bskim(?:ming)?\b(?=.*\bbags?\b)(?!.*\b(?:plaster|finish)\b)/, item: 'plaster', by: 'area' },
  { named: /\bpir\b(?: boards?)?/, item: 'PIR board', by: 'area' },
  { named: /\boak strip\b/, item: 'oak strip flooring', by: 'area' },
  { named: /\b(?:xps|eps)\b(?: foam)?(?: boards?)?/, item: 'foam board', by: 'area' },
  { named: /\b(?:durock|wonder ?board|cement backer|cbu)\b(?! screws?)/, item: 'backer board', by: 'area' },
  { named: /\b(?:cement board|backer(?: board)?) screws?\b/, item: 'backer board screw', by: 'area' },
  {
    named:
      /(?<!^(?!.*\b(?:drywall|sheet ?rock)\b).*\b(?:deck|backer|cement board|cbu)\b.*)\b(?:drywall |board |sheet ?rock )?screws?\b(?!(?<!\b(?:drywall|sheet ?rock)\b.*).*\b(?:deck|backer|cement board|cbu)\b)(?=.*(?:square|sq|\{A|board|drywall|sheet|box|pound))|(?<=\b(?:drywall|sheet ?rock|rock)\b.*)\b(?<!\b(?:deck|wood|metal|concrete|trim|cabinet) )screws\b/,
    item: 'drywall screw',
    by: 'area',
  },
  { named: /\bpaper tape\b/, item: 'paper tape', by: 'area' },
  { named: /\b(?:mesh|fiberglass) tape\b/, item: 'mesh tape', by: 'area' },
  {
    named:
      /\b(?:drywall|joint|seam) tape\b|(?<![a-z] )\btape\b(?! measure)|(?<=\b(?:need|and|get|plus|order|the|of|some) )(?<!\b(?:end of|on|off|with|from) the )tape\b(?! measure)/,
    item: 'drywall tape',
    by: 'area',
  },
  {
    named:
      /\b(?:joint compound|(?<=\b(?:drywall|sheet ?rock|tape)\b.*)compound(?=:| \{K)|(?:drywall |topping |all ?purpose )?mud|topping)\b(?! ?(?:room|bed|ring|sill|set))(?<!deck mud)/,
    item: 'joint compound',
    by: 'area',
  },
  {
    named:
      /\b(?:romex|nm cable|(?:[468]|10|12|14|six|eight|ten|twelve|fourteen) ?[-/ ] ?(?:2|3|two|three)(?: (?:wire|cable|romex|nm))?)(?= (?:for|to|in|from|on|w|with|home|is|run|and|no|it|between)\b|,|\.|:|$)|\b(?:[468]|10|12|14|six|eight|ten|twelve|fourteen) ?[-/ ] ?(?:2|3|two|three) (?:wire|cable|romex|nm)\b/,
    item: 'cable',
    by: 'length',
  },
  {
    named:
      /\b(?:hang(?:ing)?|board(?:ing)? out|board(?:ing)?(?= (?:the )?(?:walls?|lids?|ceilings?)\b))\b(?=[^.;]*\b(?:walls?|lids?|ceilings?)\b)(?=.*\{[NLK]\d+\} ?(?:by|x) ?\{[NLK]\d+\})/,
    item: 'drywall',
    by: 'area',
  },
  {
    // "Lid 18x22, half inch, 4x12 sheets, pail of mud": what is hung there in sheets of such a thickness is drywall.
    named:
      /(?<!\b(?:backer|cement|ply|plywood|ply(?= (?:three|five|half|\{[LN]\d+\}))|osb|subfloor)\b.*)(?<=\b(?:lids?|ceilings?|walls?|hang(?:ing)?)\b.*\{L\d+\},? \{[NL]\d+\} ?(?:x|by) ?\{[NL]\d+\} )sheets\b(?=.*\b(?:mud|taped?|board)\b)/,
    item: 'drywall',
    by: 'area',
  },
  {
    named: /(?<!(?:river|base|lava|pea|crushed) )\brock\b(?! base)(?=.*\b(?:sheets?|walls?|lids?|ceilings?)\b)/,
    item: 'drywall',
    by: 'area',
  },
  {
    named:
      /\b(?<!\b(?:gravel|sand|stone|mulch|soil|screenings|compost)\b.*)(?:slabs?|pads?|footings?|pour|walk(?:way)?s?|sidewalks?|driveways?|aprons?|patios?|stoops?|ramps?|steps?)\b(?!.*\b(?:gravel|sand|stone|mulch|soil|screenings|compost)\b)(?=.*(?:\{W\d+\} (?:bags?|sacks?)|\{[NW]\d+\} ?pounders|\byards?\b))/,
    item: 'concrete mix',
    by: 'volume',
  },
  {
    named:
      /(?<=\{C\d+\} of (?:the |that |a )?)(?!primer|paint|stain|poly|varnish|sealer)[a-z]+(?: (?:paint|matte?|satin|eggshell|gloss))?/,
    item: null,
    by: 'area',
  },
  {
    named:
      /\br[- ]?(?:\d{2}|eleven|thirteen|fifteen|nineteen|twenty[- ]one|thirty(?:[- ]eight)?)\b(?! (?:\w+ )?(?:batts?|insulation|foam))/,
    item: 'insulation',
    by: 'area',
  },
  { named: /\b(?:eggshell|satin|semi[- ]?gloss)\b(?= *(?:,|\.|\{|at|for|on|two|paint|$))/, item: null, by: 'area' },
];

/** Goods bought by the length of what they run along. */
export const RUNS =
  /\b(?:base ?boards?|(?<!paver |gravel |road |stone |tile |post |cabinet |vanity )base(?= (?:mold|trim|all|around|for|in|is|comes|goes|runs)\b|[.,:])(?!.*\b(?:patio|pavers?|driveway|crushed|gravel|compact(?:ed|ion)?|screenings)\b)|skirting|trim|casing|crown|quarter round|shoe(?: mold(?:ing)?)?|chair rail|coving|architraves?|picture rail|dado rail|molding|moulding|gutters?|down ?spouts?|drip edge|flashing|(?:lawn |garden |paver |steel |plastic )?edging|coping|cornice|scotia|threshold|trunking|corner bead|edge trim|edge profile|bull ?nose|pipe|pex|conduit|emt|pvc|copper|hose(?! (?:bibb?s?|reels?|spigots?)\b)|tubing|handrail|fascia|soffit vent|caulk|silicone|sealant|backer rod|weather ?strip|heat(?:ing)? (?:cable|tape)|fence|fencing|railing|j[- ]?channel|starter strip|ridge (?:cap|vent)|sill seal|rebar|plates?|furring|strapping|track|channel|romex)\b/;
/** Goods bought by volume. */
export const FILLS =
  /\b(?:concrete|gravel|mulch|top ?soil|(?:potting |garden |planting )?soil|loam|crusher run|hard ?core|aggregate|ballast|screenings|decomposed granite|bark|wood chips|fill dirt|dirt|sand|crushed stone|stone dust|pea stone|pea gravel|road base|base rock|river rock|compost|self[- ]?level(?:er|ler|ing)|leveler|leveller|deck mud|dry pack|mud bed|mortar bed)\b/;
/** Goods that cover, not all in the vocabulary. */
export const COVERS =
  /\b(?:mosaic|subway|porcelain|ceramic|hex|penny|slate|travertine|marble|granite|quarry|floor|wall|field|ceiling|carpet|vinyl|cork|peel and stick)? ?(?:tiles?)\b|\b(?:hex(?:es)?(?! (?:bolts?|nuts?|key|wrench|head))|penny rounds?|chipboard|(?:loft|floor|flooring) (?:boards|panels)|mdf|subway|porcelain|vinyl plank|luxury vinyl|lvp|lvt|laminate|engineered(?: hardwood| oak| wood)?|hardwood|(?:oak|maple|ash|hickory|hardwood|plank) floor(?:ing)?|bamboo|plank flooring|flooring|sheet vinyl|linoleum|carpet(?:ing)?|underlay(?:ment)?|drywall|sheet ?rock|(?<!river |base |lava )rock\b(?! base)|plasterboard|moisture board|green ?board|gypsum board|blue ?board|backer(?! rod)(?: board)?|cement board|plywood|cdx|osb|sheathing|subfloor|shingles?|roofing felt|felt|ice and water(?: shield)?|underlayment|house ?wrap|siding|shiplap|bead ?board|wainscot(?:ing)?|panell?ing|wall ?paper|insulation|batts?|foam board|rigid foam|vapou?r barrier|landscape fabric|weed barrier|sod|turf|(?:stone |concrete )?pavers?|bricks?(?! pavers?)|blocks?|stone veneer|stucco|plaster|thin ?set|(?:tile|floor) adhesive|bonding(?: coat| plaster)?|grout|mortar|membrane|waterproofing|(?:wire |welded )?mesh(?! (?:tape|back|sheet))|primer|paint|stain|sealer|varnish|polyurethane(?! (?:sealant|caulk|adhesive|foam|construction))|epoxy|deck(?:ing| boards?)|radiant mat|heat(?:ing)? mat|screen|lath|metal roofing|roof panels?|slates?|decking|acoustic tile|rubber flooring|texture)\b/;

/** Words before the goods that belong to its name. */
export const COLOURS =
  /\b(?:white|black|gr[ae]y|light|dark|off|beige|blue|green|red|brown|clear|matt|matte|flat|gloss|semi|satin|eggshell|natural|cedar|oak|pine|maple|walnut|bamboo|porcelain|ceramic|marble|slate|glass|primed|treated|pressure treated|moisture|fiberglass|mineral wool|engineered|luxury|vinyl|architectural|exterior|interior|ceiling|trim|deck)\b/;
