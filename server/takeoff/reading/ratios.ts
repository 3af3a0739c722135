import Fraction from 'fraction.js';
import { unitNamed } from '../../../parser/quantities/units.ts';
import { type Figure, figureAt, type Said, saying } from './said.ts';
import { wasteIn } from './waste.ts';

/** One `per` holds, covers or makes `value` of `unit`; `unit` null where the speaker left it to the goods. */
export interface Ratio {
  value: Fraction;
  unit: string | null;
  per: string;
  /** Where in the words it stands. */
  at: number;
  /** How it came about, for the working, where it was reckoned. */
  note?: string;
}

/** What a note says about how goods are sold. */
export interface Terms {
  ratios: Ratio[];
  /** `0.1`; null where none was said. */
  waste: Fraction | null;
  coats: { value: number; at: number }[];
  /** `60 lb`, `2.5 L`: the pack's own size, where it names the goods. */
  packSize: string | null;
  /** Sold by its own measure: "by the foot", "by the square foot". */
  byMeasure: 'ft' | 'sq ft' | 'cu yd' | null;
  /** Figures that are spoken for. */
  used: Set<number>;
}

const PACKS =
  'box|boxes|case|cases|carton|cartons|bag|bags|bundle|bundles|roll|rolls|sheet|sheets|can|cans|tin|tins|bucket|buckets|pail|pails|gallon|gallons|gal|litre|litres|liter|liters|tube|tubes|cartridge|cartridges|pallet|pallets|square|pack|packs|pkg|stick|sticks|length|lengths|piece|pieces|pc|pcs|each|drum|kit|kits|bale|bales|sack|sacks|coil|coils|spool|spools|board|boards|bottle|bottles|jug|jugs|tub|tubs|slab|slabs|panel|panels|plank|planks|brick|block|tile|tiles|footers';

/** The canonical unit of a pack word, singular: `boards` and `footers` are sticks. */
function packUnit(word: string): string {
  const named = unitNamed(word);
  if (named) return named.unit === 'length' ? 'stick' : named.unit;
  const single = word.replace(/(?<=x)es$/, '').replace(/s$/, '');
  if (/^(?:board|footer|plank)$/.test(single)) return 'stick';
  if (/^(?:tile|brick|block|panel|slab)$/.test(single)) return 'each';
  return single;
}

const AREA_WORDS =
  'sq ft|sq\\. ?ft\\.?|sqft|sf|square foot|square feet|square metre|square meter|sq m|m2|square|foot|feet|ft';

const areaUnit = (word: string): string => {
  if (/^sq.*ft|^sqft|^sf|square f/.test(word)) return 'sq ft';
  if (/^sq m|m2|square m/.test(word)) return 'sq m';
  return word === 'square' ? 'square' : 'ft';
};

/** How sure a bare or habit-filled unit is: only a unit that was said counts. */
const unitOf = (figure: Figure) => (figure.sure ? figure.unit : null);

/** Reads packs, coverage, waste and coats out of a note. */
export function termsIn(said: Said, used = new Set<number>()): Terms {
  const out: Terms = { ratios: [], waste: null, coats: [], packSize: null, byMeasure: measureIn(said.words), used };
  packsOf(said, out);
  coverageOf(said, out);
  out.waste = wasteIn(said, out.used);
  for (const match of said.words.matchAll(saying('<C>', 'g'))) {
    const figure = figureAt(said, match[1]);
    if (figure.unit !== 'coat') continue;
    out.coats.push({ value: figure.value.valueOf(), at: match.index });
    out.used.add(Number(match[1]));
  }
  const single = /\b(?:single|one) coat\b/.exec(said.words);
  if (single) out.coats.push({ value: 1, at: single.index });
  return out;
}

/** "Sold by the foot", "they price it by the square foot". */
function measureIn(words: string): Terms['byMeasure'] {
  const m = /\bby the (?:(sq(?:uare)?\.? ?(?:ft|foot|feet)|sqft)|(?:linear |lineal |running )?(?:foot|ft))\b/.exec(
    words,
  );
  if (!m) return /\bby the (?:cubic )?yard\b/.test(words) ? 'cu yd' : null;
  return m[1] ? 'sq ft' : 'ft';
}

/** "Fifty foot rolls", "2.5 L tins", "60 lb bags, .45 cu ft each", "4x8 sheets", "in sixteens". */
function packsOf(said: Said, out: Terms): void {
  const { words } = said;
  const add = (
    match: RegExpMatchArray,
    value: Fraction,
    unit: string | null,
    per: string,
    ids: (string | undefined)[],
  ) => {
    out.ratios.push({ value, unit, per, at: match.index ?? 0 });
    for (const id of ids) if (id) out.used.add(Number(id));
  };
  for (const m of words.matchAll(saying(`<W>[- ](${PACKS})\\b`, 'g'))) {
    const weight = figureAt(said, m[1]);
    out.packSize = `${weight.value.toString()} ${weight.unit}`;
    out.used.add(Number(m[1]));
    const rest = words.slice((m.index ?? 0) + m[0].length);
    const yields = saying(
      '^[ ,]*(?:at |yields? |yielding |is |are |makes? |do |does |gives? |gets? you |covers? |about |they |it |which |that )*(?:about )?<VNA>',
    ).exec(rest);
    if (yields) {
      const figure = figureAt(said, yields[1]);
      const bare = figure.unit === null;
      if (!bare || figure.value.compare(2) < 0)
        add(m, figure.value, bare ? 'cu ft' : figure.unit, packUnit(m[2]!), [yields[1]]);
    }
  }
  // "Eighty pounders".
  for (const m of words.matchAll(saying('<NW>[- ]?pounders\\b', 'g'))) {
    out.packSize = `${figureAt(said, m[1]).value.toString()} lb`;
    out.used.add(Number(m[1]));
  }
  for (const m of words.matchAll(saying(`<AVL>[- ](?:of )?(${PACKS})\\b(?! to\\b)`, 'g'))) {
    if (out.used.has(Number(m[1]))) continue;
    const figure = figureAt(said, m[1]);
    // Ten foot pieces are sticks.
    const per = figure.kind === 'length' && /^pieces?$|^pcs?$/.test(m[2]!) ? 'stick' : packUnit(m[2]!);
    if (per === figure.unit || per === 'square' || per === 'each') continue;
    // "Two twelve foot pieces" are counted: that is an order, not how they are sold.
    if (!figure.sure || /(?:\{[NC]\d+\}|\banother|\bone) $/.test(words.slice(0, m.index))) continue;
    add(m, figure.value, figure.unit, per, [m[1]]);
    if (figure.kind === 'volume') out.packSize ??= `${figure.value.toString()} ${figure.unit}`;
  }
  for (const m of words.matchAll(
    saying(
      '(?:\\b(sheets?|panels?)(?: are| come| is)(?: in)? )?<LNK> ?(?:x|by) ?<LNK>(?: (sheets?|panels?|boards|s)\\b)?(?! ?x)',
      'g',
    ),
  )) {
    const [a, b] = [figureAt(said, m[2]), figureAt(said, m[3])];
    // "Four by twelves": the plural is of sheets.
    const plural = m[4] !== undefined || /(?:fives|eights|nines|tens|twelves|sixteens)$/i.test(b.quote);
    const sheets =
      b.unit === 'sheet' || /^(?:sheet|panel)/.test(m[1] ?? m[4] ?? '') || (plural && a.value.compare(3) >= 0);
    const feet = (f: Figure) => (f.unit === 'in' && f.sure ? f.value.div(12) : f.value);
    const [w, l] = [feet(a), feet(b)];
    const stocked = /^(?:2|3|4|4\.5|5)x(?:4|5|6|8|9|10|12|14|16)$/.test(`${w.toString()}x${l.toString()}`);
    if (!sheets || !stocked) continue;
    add(m, w.mul(l), 'sq ft', 'sheet', [m[2], m[3]]);
    out.packSize = `${w.toString()}x${l.toString()}`;
  }
  // "9x100 rolls", in feet.
  for (const m of words.matchAll(saying('<LNK> ?(?:x|by) ?<LNK>(?: (?:foot|ft))?( rolls?\\b)?', 'g'))) {
    const [a, b] = [figureAt(said, m[1]), figureAt(said, m[2])];
    const feet = (f: Figure) => (f.unit === 'in' && f.sure ? f.value.div(12) : f.value);
    if ((m[3] || b.unit === 'roll') && !out.used.has(Number(m[1])))
      add(m, feet(a).mul(feet(b)), 'sq ft', 'roll', [m[1], m[2]]);
  }
  // "Eight footers".
  said.figures.forEach((figure, id) => {
    if (!/foot ?ers?$/.test(figure.quote.toLowerCase()) || figure.unit !== 'ft' || out.used.has(id)) return;
    out.ratios.push({
      value: figure.value,
      unit: 'ft',
      per: 'stick',
      at: words.search(new RegExp(`\\{[A-Z]${id}\\}`)),
    });
    out.used.add(id);
  });
  const plural =
    /\b(?:in|come in|comes in|of|by) (?:the )?(8 ?s|10 ?s|12 ?s|14 ?s|16 ?s|20 ?s|eights|tens|twelves|fourteens|sixteens|twenties)\b/.exec(
      words,
    );
  if (plural) add(plural, new Fraction(stickFeet(plural[1]!)), 'ft', 'stick', []);
}

/** Feet of a stick named by its length in the plural. */
function stickFeet(word: string): number {
  const said = ['eights', 'tens', 'twelves', 'fourteens', 'sixteens', 'twenties'].indexOf(word);
  return said >= 0 ? [8, 10, 12, 14, 16, 20][said]! : Number.parseInt(word, 10);
}

/** "Twenty square foot a box", "eight to the square foot", "a gallon does 350", "three bundles to the square". */
function coverageOf(said: Said, out: Terms): void {
  const { words } = said;
  const free = (id: string | undefined) => id !== undefined && !out.used.has(Number(id));
  const add = (at: number, value: Fraction, unit: string | null, per: string, ...ids: (string | undefined)[]) => {
    if (value.compare(0) <= 0) return;
    out.ratios.push({ value, unit, per, at });
    for (const id of ids) if (id) out.used.add(Number(id));
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
  for (const m of words.matchAll(
    saying(
      `(?:<K>|\\b(?:a|one|each|every|per) (${PACKS})) (?:will |should )?(?:to|per|for|every|for every|does|do|covers?|is good for|good for|goes|runs?|makes?|yields?|holds?|has|gets you|gets|is|spreads?)(?: the| a| each| every| about| around)? <ALVNC>(?! (?:each|coats?))`,
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
      `\\b(${PACKS})(?: (?:of it|of them))? (?:will |should )?(?:does|do|covers?|cover|is good for|good for|goes|makes?|yields?|holds?|has|gets you|spreads?|are|is)(?: about| around)? <ALVN>`,
      'g',
    ),
  )) {
    const measure = figureAt(said, m[2]);
    if (free(m[2]) && !measure.per && packUnit(m[1]!) !== 'each')
      add(m.index, measure.value, unitOf(measure), packUnit(m[1]!), m[2]);
  }
  // A figure with its own "a box", as the parser tied it.
  said.figures.forEach((figure, id) => {
    if (!figure.per || out.used.has(id) || figure.kind === 'slope') return;
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
      `<NALVCK>(?: (?:pieces|pcs?|tiles|planks|boards|sheets|bricks|blocks|of them|square|sq|feet|foot|shingles|pavers|panels))* ${per} (${AREA_WORDS}|${PACKS})\\b`,
      'g',
    ),
  )) {
    if (!free(m[1])) continue;
    const figure = figureAt(said, m[1]);
    const word = m[2]!;
    if (new RegExp(`^(?:${AREA_WORDS})$`).test(word))
      add(m.index, figure.value, figure.unit ?? 'each', areaUnit(word), m[1]);
    else if (packUnit(word) !== 'each') add(m.index, figure.value, unitOf(figure), packUnit(word), m[1]);
  }
  // "350 a gallon", where the parser took "a gallon" for one gallon.
  for (const m of words.matchAll(saying('<NAL> <VKA>', 'g'))) {
    const [measure, pack] = [figureAt(said, m[1]), figureAt(said, m[2])];
    if (!free(m[1]) || !free(m[2]) || !/^(?:an?|per|each) /i.test(pack.quote)) continue;
    const pieces = pack.kind === 'area' ? 'each' : null;
    add(m.index, measure.value, unitOf(measure) ?? pieces, packUnit(pack.unit!), m[1], m[2]);
  }
  // "Covers 20 sq ft", the pack named elsewhere.
  const pack = new RegExp(`\\b(${PACKS})\\b`).exec(words);
  for (const m of words.matchAll(saying('\\b(?:covers?|coverage(?: is)?|good for|does) (?:about )?<ALN>', 'g')))
    if (free(m[1]) && pack)
      add(m.index, figureAt(said, m[1]).value, unitOf(figureAt(said, m[1])), packUnit(pack[1]!), m[1]);
}
