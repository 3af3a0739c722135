import Fraction from 'fraction.js';
import { figureAt, type Said, saying } from './said.ts';

/** What a kind of goods is reckoned from. */
export type Measure = 'area' | 'length' | 'volume';

export interface Goods {
  item: string;
  size: string | null;
  specs: string[];
  by: Measure;
  /** Face of one piece in square inches, where the size tells it. */
  face: Fraction | null;
  /** Where in the words it is named. */
  at: number;
}

/** Goods bought by the length of what they run along. */
const RUNS =
  /\b(?:base ?boards?|base(?= (?:mold|trim|all|around|for|in))|skirting|trim|casing|crown|quarter round|shoe(?: mold(?:ing)?)?|chair rail|molding|moulding|gutters?|down ?spouts?|drip edge|flashing|corner bead|edge trim|edge profile|bull ?nose|pipe|pex|conduit|emt|pvc|copper|hose|tubing|handrail|fascia|soffit vent|caulk|silicone|sealant|backer rod|weather ?strip|heat(?:ing)? (?:cable|tape)|fence|fencing|railing|j[- ]?channel|starter strip|ridge (?:cap|vent)|sill seal|rebar|plates?|furring|strapping|track|channel)\b/;
/** Goods bought by volume. */
const FILLS =
  /\b(?:concrete|gravel|mulch|top ?soil|fill dirt|dirt|sand|crushed stone|stone dust|pea stone|pea gravel|road base|base rock|river rock|compost|self[- ]?level(?:er|ler|ing)|leveler|leveller|deck mud|dry pack|mud bed|mortar bed)\b/;
/** Goods that cover, not all in the vocabulary. */
const COVERS =
  /\b(?:mosaic|subway|porcelain|ceramic|hex|penny|slate|travertine|marble|granite|quarry|floor|wall|field|ceiling|carpet|vinyl|cork|peel and stick)? ?(?:tiles?)\b|\b(?:subway|porcelain|vinyl plank|luxury vinyl|lvp|lvt|laminate|engineered(?: hardwood| oak| wood)?|hardwood|oak flooring|bamboo|plank flooring|flooring|sheet vinyl|linoleum|carpet(?:ing)?|underlay(?:ment)?|drywall|sheet ?rock|(?<!river |base |lava )rock\b(?! base)|plasterboard|moisture board|green ?board|gypsum board|blue ?board|backer(?: board)?|cement board|plywood|osb|sheathing|subfloor|shingles?|roofing felt|felt|ice and water(?: shield)?|underlayment|house ?wrap|siding|shiplap|bead ?board|wainscot(?:ing)?|panell?ing|wall ?paper|insulation|batts?|foam board|rigid foam|vapou?r barrier|landscape fabric|weed barrier|sod|turf|pavers?|brick|block|stone veneer|stucco|plaster|thin ?set|grout|mortar|membrane|waterproofing|primer|paint|stain|sealer|varnish|polyurethane|epoxy|deck(?:ing| boards?)|joint compound|mud|radiant mat|heat(?:ing)? mat|screen|lath|metal roofing|roof panels?|slates?|decking|acoustic tile|rubber flooring|texture)\b/;

/** Words before the goods that belong to its name. */
const COLOURS =
  /\b(?:white|black|gr[ae]y|light|dark|off|beige|blue|green|red|brown|clear|matt|matte|flat|gloss|semi|satin|eggshell|natural|cedar|oak|pine|maple|walnut|bamboo|porcelain|ceramic|marble|slate|glass|primed|treated|pressure treated|moisture|fiberglass|mineral wool|engineered|luxury|vinyl|architectural|exterior|interior|ceiling|trim|deck)\b/;

/** Every kind of goods that the note names, in order; one named twice stands once. */
export function goodsIn(said: Said): Goods[] {
  const found = new Map<string, Goods>();
  for (const [pattern, by] of [
    [COVERS, 'area'],
    [RUNS, 'length'],
    [FILLS, 'volume'],
  ] as const) {
    for (const match of said.words.matchAll(new RegExp(pattern.source, 'g'))) {
      const quote = match[0].trim();
      const at = match.index + match[0].indexOf(quote);
      if (isPlace(said.words, at, quote)) continue;
      const goods = nameOf(said, quote, at, by);
      const same = [...found.values()].find((g) => g.item === goods.item || overlaps(g, goods, quote));
      if (!same) found.set(goods.item, goods);
      else if (same.size === null && goods.size) found.set(same.item, { ...same, size: goods.size, face: goods.face });
    }
  }
  for (const term of said.terms) {
    if (term.term.kind !== 'material' || !COUNTERS.has(term.term.counter ?? '')) continue;
    const quote = term.quote.toLowerCase();
    const at = said.words.indexOf(quote);
    if (at < 0 || isPlace(said.words, at, quote)) continue;
    const goods = nameOf(said, quote, at, 'area');
    const same = [...found.values()].find((g) => overlaps(g, goods, quote));
    if (same && same.item.length < goods.item.length && same.by === 'area') {
      found.delete(same.item);
      found.set(goods.item, { ...goods, at: same.at, size: same.size ?? goods.size, face: same.face ?? goods.face });
    } else if (!same && [...found.values()].length === 0) found.set(goods.item, goods);
  }
  return [...found.values()].sort((a, b) => a.at - b.at);
}

/** Counters whose goods cover. */
const COUNTERS = new Set(['tile', 'paint', 'drywall', 'flooring', 'roofing']);

/** "Tile" after "subway tile" is the same goods: one name holds the other. */
function overlaps(a: Goods, b: Goods, quote: string): boolean {
  const words = (g: Goods) => g.item.split(' ');
  const [short, long] = words(a).length <= words(b).length ? [words(a), words(b)] : [words(b), words(a)];
  return short.every((w) => long.includes(w)) || (a.at <= b.at && b.at < a.at + quote.length);
}

/** "On the tile", "wall between", "over the old tile", "behind the drywall": where, not what. */
function isPlace(words: string, at: number, quote: string): boolean {
  const before = words.slice(Math.max(0, at - 26), at);
  const after = words.slice(at + quote.length, at + quote.length + 14);
  if (
    /\b(?:over|under|behind|off|from|above|below|onto|against|to) (?:the |that |this )?(?:old |existing |new |bare )?$/.test(
      before,
    )
  )
    return true;
  return /^(?: (?:saw|gun|store|shop|guy|trowel|cutter|knife|brush|roller|tray|tub|lid))\b/.test(after);
}

/** The goods' own term where the vocabulary has one, with the words said; size from the figures beside it. */
function nameOf(said: Said, quote: string, at: number, by: Measure): Goods {
  const term = said.terms.find((t) => {
    const words = t.quote.toLowerCase();
    return (t.term.kind === 'material' || t.term.kind === 'part') && (words.includes(quote) || quote.includes(words));
  })?.term.name;
  const lead = said.words.slice(0, at).split(' ').filter(Boolean);
  const specs: string[] = [];
  while (lead.length && COLOURS.test(lead.at(-1)!) && !lead.at(-1)!.includes('{')) specs.unshift(lead.pop()!);
  const spoken = [...specs, ...quote.split(' ')];
  const base = term?.split(' ').some((w) => spoken.includes(w)) ? term.split(' ') : null;
  const names = base
    ? [...spoken.filter((w) => !base.includes(w)), ...base]
    : term
      ? [...specs, ...term.split(' ')]
      : spoken;
  const whole = headLast([...new Set(names)])
    .join(' ')
    .replace(/s$/, (s) => (/(?:ss|us|glass)$/.test(names.at(-1)!) ? s : ''));
  return { item: whole, specs: [], by, at, ...sizeOf(said, at, quote) };
}

/** "White paint matt" is said "white matt paint": the thing itself comes last. */
const headLast = (names: string[]) => {
  const head = names.findIndex((w) => /^(?:paint|tile|board|plank|primer|flooring)$/.test(w));
  return head < 0 ? names : [...names.slice(0, head), ...names.slice(head + 1), names[head]!];
};

const TILE = /tile|subway|porcelain|ceramic|mosaic|slate|paver|carpet tile|travertine|marble|plank|lvp|brick|block/;

/** "3x6 subway", "24x48 porcelain", "half inch drywall", "1x6 cedar". */
function sizeOf(said: Said, at: number, quote: string): Pick<Goods, 'size' | 'face'> {
  const before = said.words.slice(Math.max(0, at - 60), at);
  const after = said.words.slice(at + quote.length, at + quote.length + 30);
  const gap = '(?: (?!is|are|by|long|wide|high)[a-z]+){0,3}';
  const pair =
    saying(`<LN> ?(?:x|by) ?<LN>(?! ?x)${gap} $`).exec(before) ??
    (TILE.test(quote) ? saying('^(?: is| are|,)?(?: the)? <LN> ?(?:x|by) ?<LN>').exec(after) : null);
  if (pair) {
    const [a, b] = [figureAt(said, pair[1]), figureAt(said, pair[2])];
    const small = a.unit !== 'ft' && b.unit !== 'ft' && a.unit !== 'm' && b.unit !== 'm';
    if (small && TILE.test(quote) && a.value.compare(60) <= 0 && b.value.compare(60) <= 0)
      return { size: `${a.value.toString()}x${b.value.toString()}`, face: a.value.mul(b.value) };
  }
  return { size: null, face: null };
}

/** The pair of figures that is a size of goods, not of a place: they are spoken for. */
export function goodsFigures(said: Said, goods: readonly Goods[]): Set<number> {
  const used = new Set<number>();
  for (const match of said.words.matchAll(saying('<LN> ?(?:x|by) ?<LN>', 'g'))) {
    const size = `${figureAt(said, match[1]).value.toString()}x${figureAt(said, match[2]).value.toString()}`;
    const named = goods.some((g) => g.size === size) || lumber(said, match);
    if (named) for (const id of [match[1], match[2]]) used.add(Number(id));
  }
  return used;
}

/** `2x4`, `1x6`: lumber by its nominal size, both bare, the first 1 or 2. */
function lumber(said: Said, match: RegExpMatchArray): boolean {
  const [a, b] = [figureAt(said, match[1]), figureAt(said, match[2])];
  const after = said.words.slice((match.index ?? 0) + match[0].length);
  if (/^ ?(?:x|by|wide|long|high|room|area|floor|patch)\b/.test(after)) return false;
  return (
    a.unit === null &&
    b.unit === null &&
    [1, 2, 4, 6].includes(a.value.valueOf()) &&
    [2, 3, 4, 6, 8, 10, 12].includes(b.value.valueOf()) &&
    (a.value.valueOf() <= 2 || b.value.valueOf() <= 6)
  );
}

export const zero = (): Fraction => new Fraction(0);
