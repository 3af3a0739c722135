import Fraction from 'fraction.js';
import { PACKS, packUnit, unitOf } from './packWords.ts';
import type { PacksTold } from './ratios.ts';
import { figureAt, type Said, saying } from './said.ts';

const AREA_WORDS =
  'sq ft|sq\\. ?ft\\.?|sqft|sf|square foot|square feet|square metre|square meter|sq m|m2|square|sq|foot|feet|ft';

const areaUnit = (word: string): string => {
  if (/^sq.*ft|^sqft|^sf|square f/.test(word)) return 'sq ft';
  if (/^sq m|m2|square m/.test(word)) return 'sq m';
  return word === 'square' || word === 'sq' ? 'square' : 'ft';
};

const TELLS =
  '(?:does|do|doing|cover(?:s|ed|ing)?|goes|gets?|good for|is for|got|has|have|hold(?:s|ing)?|contains?|makes?|yields?|lasts?|runs?|takes?|handles?|spreads?|says|claims|reads|rated|gives?|carr(?:y|ies)|stretch(?:es)?|supposed to|comes? (?:out )?(?:to|with|at)|works out (?:to|at)|ought to|amounts? to)';

/** What a pack holds or covers, told of it in its own clause with no other figure between. */
const TOLD_OF_PACK = saying(
  `(?:<KV>(?! (?:${PACKS})\\b)|\\b(${PACKS}))(?:'s|s)?(?:,? (?:is|are|weighs?|of|at)+(?: of)? \\{W\\d+\\},?(?: and| they| it| which)?)?(?: (?!(?:and|then|but|so|from|for)\\b)[a-z'-]+){0,7}? ${TELLS}(?: (?!(?:and|then|but|so|to)\\b)[a-z'-]+){0,4}? <ALVN>(?! ?(?:x|by|to|percent|coats?|sheets|foot (?:long|wide)) )`,
  'g',
);

/** "Twenty square foot a box", "eight to the square foot", "a gallon does 350", "three bundles to the square". */
export function coverageOf(said: Said, out: PacksTold): void {
  const { words } = said;
  const free = (id: string | undefined) => id !== undefined && !out.used.has(Number(id));
  const add = (at: number, value: Fraction, unit: string | null, per: string, ...ids: (string | undefined)[]) => {
    if (value.compare(0) <= 0) return;
    out.ratios.push({ value, unit, per, at });
    for (const id of ids)
      if (id) {
        out.used.add(Number(id));
        out.sold.add(Number(id));
      }
  };
  const per =
    '(?:a|an|per|to a|to the|to each|to one|in a|in the|in each|each|every|for a|for each|for every|from a|out of a|\\/)(?: (?:double|single|full|whole|big|small))?';
  // Counted packs for a measure: "three bundles to the square", "a bag for every 40 square feet".
  for (const m of words.matchAll(
    saying(`<KC> (?:to|per|a|for|every|does|do|covers|cover)(?: the| a| each| every| about)? (${AREA_WORDS})\\b`, 'g'),
  )) {
    const pack = figureAt(said, m[1]);
    if (free(m[1])) add(m.index, pack.value, pack.unit, areaUnit(m[2]!), m[1]);
  }
  // "I get twenty five foot out of a tube".
  for (const m of words.matchAll(
    saying('<ALVN>(?: of (?:it|bead|joint|run))? (?:out of|from|off(?: of)?) <K>(?! (?:x|by)\\b)', 'g'),
  )) {
    const [measure, pack] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const one = pack.value.equals(1) && /^(?:an?|the|each|every|one|per)\b/i.test(pack.quote);
    if (free(m[1]) && free(m[2]) && one && !measure.per)
      add(m.index, measure.value, unitOf(measure), pack.unit!, m[1], m[2]);
  }
  // "Vinyl plank, box 23.8 sq ft": a pack and its area, side by side.
  for (const m of words.matchAll(
    saying(`(?<=^|[a-z,.:;] )(${PACKS})(?:,| is| =|:)? <A>(?=[,.;]|$| (?:and|with|so)\\b)`, 'g'),
  ))
    if (free(m[2]) && !/^(?:each|stick|square)$/.test(packUnit(m[1]!)))
      add(m.index, figureAt(said, m[2]).value, unitOf(figureAt(said, m[2])), packUnit(m[1]!), m[2]);
  // "A square at that exposure is five bundles".
  for (const m of words.matchAll(
    saying(
      '\\b(?:an?|one|each|every|per) (square|hundred square feet|square metre)(?: [a-z]+){0,4} (?:is|takes|needs|gets|uses|equals) (?:about )?<K>',
      'g',
    ),
  ))
    if (free(m[2]))
      add(
        m.index,
        figureAt(said, m[2]).value.div(/hundred/.test(m[1]!) ? 100 : 1),
        figureAt(said, m[2]).unit,
        /hundred/.test(m[1]!) ? 'sq ft' : areaUnit(m[1]!),
        m[2],
      );
  // "A bag of bonding does about two and a half".
  for (const m of words.matchAll(
    saying(
      `(?:<K>|(?<=^|[.,;] )(${PACKS})) of [a-z]+(?: [a-z]+)? (?:does|do|covers?|goes|is good for|makes?|yields?|per|to every|for every|every)(?: about| around)? <ALVN>`,
      'g',
    ),
  )) {
    const [pack, measure] = [m[1] ? figureAt(said, m[1]) : null, figureAt(said, m[3])];
    if ((!m[1] || free(m[1])) && free(m[3]) && !measure.per)
      add(m.index, measure.value.div(pack?.value ?? 1), unitOf(measure), pack?.unit ?? packUnit(m[2]!), m[1], m[3]);
  }
  for (const m of words.matchAll(
    saying(
      `(?:<K>|\\b(?:a|one|each|every|per) (${PACKS})) (?:will |should )?(?:to|per|for|every|for every|does|do|covers?|is good for|good for|goes|runs?|is making|makes?|yields?|holds?|has|gets you|gets|is|spreads?)(?: the| a| each| every| about| around)? <ALVNC>(?! (?:each|coats?))`,
      'g',
    ),
  )) {
    const [count, unit] = m[1]
      ? [figureAt(said, m[1]).value, figureAt(said, m[1]).unit!]
      : [new Fraction(1), packUnit(m[2]!)];
    const measure = figureAt(said, m[3]);
    if (free(m[3]) && !measure.per) add(m.index, measure.value.div(count), unitOf(measure), unit, m[1], m[3]);
  }
  for (const m of words.matchAll(
    saying(
      `\\b(${PACKS})(?:'s|:| =|(?: of [a-z]+(?: [a-z]+)?)? (?:will |should )?(?:does|do|covers?|cover|is good for|good for|goes|makes?|yields?|holds?|has|gets you|spreads?|says|are|is|per|for every|every))(?: about| around)? <ALVN>(?! ?(?:x|by) ?\\{| \\{[VK]\\d+\\})`,
      'g',
    ),
  )) {
    const measure = figureAt(said, m[2]);
    if (free(m[2]) && !measure.per && packUnit(m[1]!) !== 'each')
      add(m.index, measure.value, unitOf(measure), packUnit(m[1]!), m[2]);
  }
  // "Rolls of 270 square foot".
  for (const m of words.matchAll(
    saying('\\b(rolls?|coils?|spools?) of (?:about )?<L>(?! ?(?:x|by|[a-z]+ (?:pex|pipe|tape|cable)))', 'g'),
  ))
    if (free(m[2])) add(m.index, figureAt(said, m[2]).value, unitOf(figureAt(said, m[2])), packUnit(m[1]!), m[2]);
  for (const m of words.matchAll(saying(`\\b(${PACKS}) of (?:about |around )?<A>`, 'g')))
    if (free(m[2]) && packUnit(m[1]!) !== 'each')
      add(m.index, figureAt(said, m[2]).value, unitOf(figureAt(said, m[2])), packUnit(m[1]!), m[2]);
  // "Comes in bags, a cubic foot and a half apiece".
  for (const m of words.matchAll(
    saying(`\\b(${PACKS}),?(?: (?:of|at|are|they're|which are))* (?:about )?<VA> (?:apiece|each)\\b`, 'g'),
  ))
    if (free(m[2]) && packUnit(m[1]!) !== 'each')
      add(m.index, figureAt(said, m[2]).value, unitOf(figureAt(said, m[2])), packUnit(m[1]!), m[2]);
  // "Sells in boxes of 44", "six of them come in a box".
  for (const m of words.matchAll(
    saying(
      `\\b(?:in|by the) (${PACKS}) of (?:about )?<NC>(?! ?(?:x|by)\\b)|<NC>(?: of (?:them|those|these)| pieces| tiles| planks| boards)* (?:come|comes|go|goes|fit|packed|sold) (?:in|to) (?:a|an|the|each|every|one) (${PACKS})\\b`,
      'g',
    ),
  )) {
    const [id, pack] = m[2] ? [m[2], m[1]!] : [m[3]!, m[4]!];
    const figure = figureAt(said, id);
    if (free(id) && figure.value.d === 1n && packUnit(pack) !== 'each')
      add(m.index, figure.value, figure.unit === 'each' ? 'each' : unitOf(figure), packUnit(pack), id);
  }
  // "11 to a case", heard as eleven and one case.
  for (const m of words.matchAll(
    saying('<NC>(?: of (?:them|those|these)| pieces| tiles| sheets| planks| boards)* (?:to|in|per) <K>', 'g'),
  )) {
    const [figure, pack] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const one = pack.value.equals(1) && /^(?:an?|the|each|every|one|per)\b/i.test(pack.quote);
    if (free(m[1]) && free(m[2]) && one && figure.value.d === 1n && pack.unit !== 'each')
      add(m.index, figure.value, figure.unit === 'each' ? 'each' : unitOf(figure), pack.unit!, m[1], m[2]);
  }
  // A figure with its own "a box", as the parser tied it.
  said.figures.forEach((figure, id) => {
    // "1.6 kilos a litre" is how dense it is.
    const dense = figure.kind === 'weight' && /^(?:L|ml|cu ft|cu m|cu in)$/.test(figure.per ?? '');
    if (!figure.per || out.used.has(id) || figure.kind === 'slope' || dense) return;
    add(words.indexOf(`${id}}`), figure.value, unitOf(figure), packUnit(figure.per), String(id));
  });
  // "400 ft per thousand sq ft", "one for every two square feet".
  for (const m of words.matchAll(
    saying('<NLKVWC>(?: of (?:it|tape|mud|compound|them))? (?:per|to the|to|for every|for each|every|for) <A>', 'g'),
  )) {
    const [what, over] = [figureAt(said, m[1]), figureAt(said, m[2])];
    if (free(m[1]) && free(m[2]) && over.value.compare(0) > 0 && !what.per)
      add(m.index, what.value.div(over.value), unitOf(what) ?? what.unit ?? 'each', over.unit!, m[1], m[2]);
  }
  // "8 to the sq ft", "ten to a box", "350 a gallon", "6 boards to the box".
  for (const m of words.matchAll(
    saying(
      `<NALVCK>(?: (?:pieces?|pcs?|tiles?|planks?|boards|sheets|bricks?|blocks?|pavers?|of them|square|sq|feet|foot|shingles|pavers|panels))* ${per} (${AREA_WORDS}|${PACKS})\\b`,
      'g',
    ),
  )) {
    if (!free(m[1])) continue;
    const figure = figureAt(said, m[1]);
    const word = m[2]!;
    if (new RegExp(`^(?:${AREA_WORDS})$`).test(word))
      add(
        m.index,
        figure.value,
        figure.unit === 'in' && !figure.sure ? 'each' : (figure.unit ?? 'each'),
        areaUnit(word),
        m[1],
      );
    else if (packUnit(word) !== 'each') add(m.index, figure.value, unitOf(figure), packUnit(word), m[1]);
  }
  // "One liter is making 9 m2".
  for (const m of words.matchAll(
    saying('<V> (?:is making|makes?|does|covers?|goes|is good for) (?:about )?<A>', 'g'),
  )) {
    const [pack, measure] = [figureAt(said, m[1]), figureAt(said, m[2])];
    if (free(m[1]) && free(m[2])) add(m.index, measure.value.div(pack.value), unitOf(measure), pack.unit!, m[1], m[2]);
  }
  // "350 a gallon", where the parser took "a gallon" for one gallon.
  for (const m of words.matchAll(saying('<NAL> <VKA>', 'g'))) {
    const [measure, pack] = [figureAt(said, m[1]), figureAt(said, m[2])];
    if (!free(m[1]) || !free(m[2]) || !/^(?:an?|per|each) /i.test(pack.quote)) continue;
    const pieces = pack.kind === 'area' ? 'each' : null;
    add(m.index, measure.value, unitOf(measure) ?? pieces, packUnit(pack.unit!), m[1], m[2]);
  }
  // "Cartons of the plank have 18.7 feet in them", "a gallon of this stuff is supposed to do about 350".
  for (const m of words.matchAll(TOLD_OF_PACK)) {
    const [pack, measure] = [m[1] ? figureAt(said, m[1]) : null, figureAt(said, m[3])];
    const unit = pack?.unit ?? packUnit(m[2]!);
    if (!free(m[3]) || (m[1] && !free(m[1])) || measure.per || /^(?:each|stick|square)$/.test(unit)) continue;
    add(m.index, measure.value.div(pack?.value ?? 1), unitOf(measure), unit, m[1], m[3]);
  }
  // "Covers 20 sq ft", the pack named elsewhere.
  const pack = new RegExp(`\\b(${PACKS})\\b`).exec(words);
  for (const m of words.matchAll(saying('\\b(?:covers?|coverage(?: is)?|good for|does) (?:about )?<ALN>', 'g')))
    if (free(m[1]) && pack)
      add(m.index, figureAt(said, m[1]).value, unitOf(figureAt(said, m[1])), packUnit(pack[1]!), m[1]);
}
