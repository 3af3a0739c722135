import { next, type Step, type Work } from './work.ts';

const LABELS = 'label range at about 70 F; common practice';

const USE = next(
  'use|using|shower|fill|run water|bathe',
  '\\b(?:use|water on|water in|back in) (?:the )?(?:shower|tub|sink)\\b|\\bshower (?:in it|is next)\\b',
);
const WALK: Step = { verb: 'walk on', said: next('walk|walking|foot traffic'), hours: 24 };

export const WORKS: readonly Work[] = [
  {
    done: /\b(?:(?:all )?(?:set|setting|laid|laying|tiled|down|stuck)|thin ?set)\b/,
    products: [
      {
        name: 'rapid thinset',
        named: /\b(?:rapid|fast|quick)[ -]?set\b/,
        hours: 4,
        source: 'ANSI A118.4 rapid-setting, label 2 to 4 h (common practice)',
      },
      {
        name: 'unmodified thinset',
        named: /\b(?:unmodified|dry-? ?set)\b/,
        hours: 48,
        source: 'dry-set mortar, about 2 days (materials makers, MMSA bulletin 5)',
      },
      {
        name: 'thinset',
        named: /\bthin ?set\b|\bmodified\b|\btile/,
        hours: 24,
        source: 'modified mortar, 24 h at least (how-to reference at about 70 F)',
      },
    ],
    steps: [
      { verb: 'grout', said: next('grout|grouting') },
      { verb: 'walk on', said: WALK.said },
    ],
    cold: 'cement',
  },
  {
    done: /\b(?:grouted|grouting|grout is (?:in|done)|grout's (?:in|done))\b/,
    products: [
      {
        name: 'epoxy grout',
        named: /\bepoxy\b/,
        hours: 168,
        source: `epoxy grout, water 3 to 7 days; ${LABELS}`,
      },
      {
        name: 'grout',
        named: /\bgrout/,
        hours: 72,
        source: `cement grout, water and sealer 48 to 72 h; ${LABELS}`,
      },
    ],
    steps: [{ verb: 'seal', said: next('seal|sealer|sealing') }, { verb: 'use', said: USE }, WALK],
    cold: 'cement',
  },
  {
    done: /\b(?:mud(?:ded)?|coat of mud|tape coat(?= (?:is |'s )?(?:done|on|in))|taped|skim(?:med)?|joint compound|hot ?mud)\b/,
    products: [
      {
        name: 'setting compound',
        named:
          /\b(?:hot ?mud|setting-? ?type|(?:20|45|90|twenty|forty five|ninety) ?min(?:ute)?s? mud|quick ?set mud)\b/,
        hours: 5,
        source: 'setting-type compound, 20 min to 5 h by type (drywall guide)',
      },
      {
        name: 'joint compound',
        named: /\b(?:mud|compound|tape|skim)/,
        hours: 24,
        source: 'drying-type compound, 24 h a coat (drywall guide)',
      },
    ],
    steps: [
      { verb: 'sand', said: next('sand|sanding') },
      { verb: 'recoat', said: next('second coat|2nd coat|third coat|next coat|another coat|recoat') },
      { verb: 'prime', said: next('prime|primer|priming') },
    ],
    cold: 'compound',
  },
  {
    done: /\b(?:primed|priming|prim(?:er is|er's) on|(?:got|put|have|has|rolled|sprayed|brushed) (?:the |a |some |one )?(?:coat of )?(?:[a-z]+ ){0,2}primer on)\b/,
    products: [
      {
        name: 'oil primer',
        named: /\b(?:oil|alkyd)\b/,
        hours: 24,
        source: `oil or alkyd, recoat 16 to 24 h; ${LABELS}`,
      },
      { name: 'primer', named: /\bprim/, hours: 4, source: `latex primer, recoat 2 to 4 h; ${LABELS}` },
    ],
    steps: [{ verb: 'paint', said: next('paint|painting|first coat|finish coat|top ?coat|enamel') }],
    cold: 'paint',
  },
  {
    done: /\b(?:painted|first coat(?:'s| is)? (?:on|done)|rolled (?:the|a) (?:first )?coat)\b/,
    products: [
      {
        name: 'oil paint',
        named: /\b(?:oil|alkyd)\b/,
        hours: 24,
        source: `oil or alkyd, recoat 16 to 24 h; ${LABELS}`,
      },
      {
        name: 'paint',
        named: /\b(?:paint|coat)/,
        hours: 4,
        source: 'latex paint, recoat 2 to 4 h at 77 F (paint how-to reference)',
      },
    ],
    steps: [{ verb: 'recoat', said: next('second coat|2nd coat|next coat|another coat|recoat') }],
    cold: 'paint',
  },
  {
    done: /\b(?:siliconed?|bead of silicone)\b/,
    products: [
      { name: 'silicone', named: /\bsilicone/, hours: 24, source: 'silicone, water after 24 h (sealant how-to)' },
    ],
    steps: [{ verb: 'use', said: USE }],
  },
  {
    done: /\bcaulked\b/,
    products: [
      { name: 'caulk', named: /\bcaulk/, hours: 4, source: `acrylic latex caulk, paint after 2 to 4 h; ${LABELS}` },
    ],
    steps: [
      { verb: 'paint', said: next('paint|painting') },
      { verb: 'use', said: USE, hours: 24 },
    ],
    cold: 'paint',
  },
  {
    done: /\b(?:poured|pour is done|concrete is (?:in|down))\b/,
    products: [
      {
        name: 'concrete',
        named: /\b(?:concrete|slab|pour|footings?|patio|pad|piers?|sonotubes?|steps)/,
        hours: 72,
        source: 'concrete, moist cure 3 days at least, 7 for type I (UFGS guide specification)',
      },
    ],
    steps: [
      { verb: 'strip forms of', said: next('strip|pull|take (?:the )?forms|forms') },
      { verb: 'set posts on', said: next('posts?|set (?:the )?posts?|post bases?') },
      { verb: 'frame on', said: next('frame|framing|joists|beam') },
      { verb: 'seal', said: next('seal|sealer|sealing'), hours: 672 },
      { verb: 'park on', said: next('park|park on|drive|parking|cars?'), hours: 168 },
      WALK,
    ],
    cold: 'cement',
  },
  {
    done: /\b(?:self-? ?level(?:er|ing|ed)|levell?er|slc)\b/,
    products: [
      {
        name: 'floor leveler',
        named: /\blevel/,
        hours: 24,
        source: `floor leveler, foot 2 to 4 h, tile 4 to 24 h; ${LABELS}`,
      },
    ],
    steps: [
      { verb: 'tile', said: next('tile|tiling|set tile') },
      { verb: 'lay flooring on', said: next('plank|flooring|lay floor') },
      { ...WALK, hours: 4 },
    ],
    cold: 'cement',
  },
  {
    done: /\b(?:(?:waterproofing|membrane)\b[^.]{0,24}\b(?:on|done|rolled|applied|down)|waterproofed|(?:rolled|painted|brushed) (?:on )?(?:the )?(?:waterproofing|membrane))\b/,
    products: [
      {
        name: 'liquid membrane',
        named: /\b(?:waterproof|membrane)/,
        hours: 72,
        source: `liquid waterproofing, flood test 24 to 72 h; ${LABELS}`,
      },
    ],
    steps: [
      { verb: 'flood test', said: next('flood test|flood it|test the pan|fill the pan|flood') },
      { verb: 'tile', said: next('tile|tiling|set tile') },
    ],
  },
  {
    done: /\b(?:(?:coat|coats) of (?:[a-z-]+ )?(?:poly|polyurethane|finish)|poly(?:urethane)?(?:'s| is)? (?:on|down)|polyed|varnished)\b/,
    products: [
      {
        name: 'water-base finish',
        named: /\bwater-? ?base/,
        hours: 4,
        source: `water-base floor finish, recoat 2 to 4 h; ${LABELS}`,
      },
      {
        name: 'floor finish',
        named: /\b(?:poly|finish|varnish)/,
        hours: 24,
        source: `oil floor finish, 24 h; ${LABELS}`,
      },
    ],
    steps: [
      { verb: 'recoat', said: next('second coat|2nd coat|next coat|another coat|recoat') },
      {
        verb: 'put rugs on',
        said: next('(?:(?:put|move|bring|lay) )?(?:the )?(?:rugs?|furniture)(?: back)?(?: in| down)?'),
        hours: 336,
      },
      WALK,
    ],
  },
  {
    done: /\b(?:glued|cemented|solvent welded|(?:finish(?:ed)?|done) (?:to glue|gluing))\b[^.]{0,40}\b(?:pipe|pvc|abs|cpvc|fittings?|joints?|drain|vent|line|lines|trap)\b|\b(?:drain|pipe|vent|line)\b[^.]{0,40}\b(?:(?:finish(?:ed)?|done) (?:to glue|gluing)|(?:is|was|got|all) glued)\b/,
    products: [
      {
        name: 'solvent cement',
        named: /./,
        hours: 6,
        source:
          'solvent cement, 6 h before a test for 4 to 8 in pipe at 60 to 100 F, half more over 60 % humidity (ASTM D2855 tables)',
      },
    ],
    steps: [
      {
        verb: 'test',
        said: next('test|pressure test|water test|fill', '\\bput (?:the |a )?(?:water |air |pressure )?test on\\b'),
      },
    ],
    cold: 'solvent',
  },
  {
    done: /\b(?:flooring|floor ?boards?|boards|hardwood|planks?|strips?)\b[^.]{0,44}\b(?:turned up|came|arrived|delivered|dropped off|showed up|(?:is|are) here|stacked)\b/,
    products: [
      {
        name: 'wood flooring to get used to the room',
        named: /\b(?:hardwood|gum|oak|maple|ash|hickory|walnut|pine|solid|floor ?boards?|strips?|boards)\b/,
        hours: 168,
        source: 'solid wood flooring, 3 to 7 days in the room (flooring trade, coohom.com, mrhardwoodinc.com)',
      },
    ],
    steps: [{ verb: 'lay the boards in', said: next('lay|install|nail(?: down)?|fix') }],
  },
];
