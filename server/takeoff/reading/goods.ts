import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { COLOURS, COVERS, FILLS, RUNS, SHORT_NAMES } from './goodsWords.ts';
import type { Measure } from './measure.ts';
import { rValueIn } from './rValue.ts';
import { type Figure, figureAt, type Said, saying } from './said.ts';

export interface Goods {
  item: string;
  size: string | null;
  specs: string[];
  by: Measure;
  /** Sides of one piece in inches, where the size tells them. */
  sides: [Fraction, Fraction] | null;
  /** Where in the words it is named, first and again. */
  at: number;
  mentions: number[];
}

/** Every kind of goods that the note names, in order; one named twice stands once. */
export function goodsIn(said: Said): Goods[] {
  const found: Goods[] = [];
  const taken: { from: number; until: number }[] = [];
  const meet = (goods: Goods, quote: string) => {
    const same = found.find((g) => g.item === goods.item || overlaps(g, goods, quote));
    if (!same) found.push(goods);
    else {
      same.mentions = [...same.mentions, goods.at].sort((a, b) => a - b);
      same.at = same.mentions[0]!;
      // "12/3, no, that's 6/3": the code said later.
      if (same.by === 'length' && goods.size) same.size = goods.size;
      if (same.size === null) Object.assign(same, { size: goods.size, sides: goods.sides });
    }
  };
  for (const { named, item, by } of SHORT_NAMES)
    for (const match of said.words.matchAll(new RegExp(named.source, 'g'))) {
      const [quote, at] = [match[0], match.index];
      if (isPlace(said.words, at, quote) || taken.some((t) => at < t.until && at + quote.length > t.from)) continue;
      // "A coat of white", not "one piece of pex".
      const coats = item === null ? saying('<C> of (?:[a-z]+ )?$').exec(said.words.slice(0, at)) : null;
      if (coats && figureAt(said, coats[1]).unit !== 'coat') continue;
      taken.push({ from: at, until: at + quote.length });
      meet(shortNamed(quote, at, item, by), quote);
    }
  for (const [pattern, by] of [
    [COVERS, 'area'],
    [RUNS, 'length'],
    [FILLS, 'volume'],
  ] as const)
    for (const match of said.words.matchAll(new RegExp(pattern.source, 'g'))) {
      const quote = match[0].trim();
      const at = match.index + match[0].indexOf(quote);
      if (isPlace(said.words, at, quote) || taken.some((t) => at < t.until && at + quote.length > t.from)) continue;
      meet(nameOf(said, quote, at, by), quote);
    }
  for (const term of said.terms) {
    if (term.term.kind !== 'material' || !COUNTERS.has(term.term.counter ?? '') || /skylight/.test(term.term.name))
      continue;
    const quote = term.quote.toLowerCase();
    const at = said.words.indexOf(quote);
    // A short name has it under its full one.
    const short = taken.some((t) => at < t.until && at + quote.length > t.from);
    if (at < 0 || short || isPlace(said.words, at, quote)) continue;
    const goods = nameOf(said, quote, at, 'area');
    const same = found.find((g) => overlaps(g, goods, quote));
    if (same && same.item.length < goods.item.length && same.by === 'area')
      Object.assign(same, { item: goods.item, size: same.size ?? goods.size, sides: same.sides ?? goods.sides });
    else if (!same && found.length === 0) found.push(goods);
  }
  // "Pipe out to the barn, three-quarter conduit": the conduit is the pipe.
  const pipe = found.findIndex((g) => g.item === 'pipe');
  if (pipe >= 0 && found.some((g) => /\b(?:conduit|emt|pvc|copper|pex)\b/.test(g.item))) found.splice(pipe, 1);
  const rated = rValueIn(said);
  for (const goods of found) if (/insulation|batt|foam/.test(goods.item)) goods.size ??= rated;
  for (const goods of found) {
    if (goods.size === null && TILE.test(goods.item)) Object.assign(goods, pluralSize(said, goods));
    // Tiles of a hung ceiling are told in feet.
    const hung =
      /\b(?:drop|dropped|suspended|grid|lay ?in|acoustic(?:al)?)\b/.test(said.words) && /\bceil/.test(said.words);
    if (hung && /tile/.test(goods.item) && goods.sides?.every((s) => s.compare(4) <= 0))
      goods.sides = [goods.sides[0].mul(12), goods.sides[1].mul(12)];
  }
  const coated = paintUnnamed(said, found);
  if (coated) found.push(coated);
  return found.sort((a, b) => a.at - b.at);
}

/** "We're running 12 by 24s": a size in the plural, wherever the tile was named. */
function pluralSize(said: Said, { at }: Goods): Partial<Goods> {
  const m = saying('<N> ?(?:x|by) ?<N> ?s\\b').exec(said.words);
  if (!m || m.index < at) return {};
  const sides = [m[1], m[2]].map((id) => figureAt(said, id).value);
  if (sides.some((s) => s.compare(60) > 0)) return {};
  return { size: sides.map((s) => s.toString()).join('x'), sides: [sides[0]!, sides[1]!] };
}

const COATED = /paint|primer|stain|sealer|varnish|plaster|compound|texture|poly|membrane|waterproof|skim|epoxy/;

/** "One coat to freshen it up, 400 to the gallon": what comes by the gallon and goes on in coats is paint. */
function paintUnnamed(said: Said, found: readonly Goods[]): Goods | null {
  if (found.some((g) => COATED.test(g.item)) || COATED.test(said.words)) return null;
  const m = saying('<C>', 'g');
  const coat = [...said.words.matchAll(m)].find(([, id]) => figureAt(said, id).unit === 'coat');
  const gallons = /\bgal(?:lons?)?\b/.test(said.words) || said.figures.some((f) => f.unit === 'gal' || f.per === 'gal');
  return coat && gallons
    ? { item: 'paint', size: null, specs: [], by: 'area', sides: null, at: coat.index, mentions: [coat.index] }
    : null;
}

const WIRES: Readonly<Record<string, string>> = {
  six: '6',
  eight: '8',
  ten: '10',
  twelve: '12',
  fourteen: '14',
  two: '2',
  three: '3',
};

/** Goods under their full name; cable with its code, paint by its sheen or colour. */
function shortNamed(quote: string, at: number, item: string | null, by: Measure): Goods {
  const [, gauge, wires] = /^([a-z]+|\d+) ?[-/ ] ?([a-z]+|\d)/.exec(quote) ?? [];
  const size = item === 'cable' && gauge && wires ? `${WIRES[gauge] ?? gauge}/${WIRES[wires] ?? wires}` : null;
  const coded = size && /^\d+\/\d$/.test(size) ? size : null;
  const name = item ?? (/\bpaint\b/.test(quote) ? quote : `${quote} paint`);
  return { item: name, size: coded, specs: [], by, sides: null, at, mentions: [at] };
}

/** Counters whose goods cover. */
const COUNTERS = new Set(['tile', 'paint', 'drywall', 'flooring', 'roofing']);

/** Goods of their own, whatever they are for: drywall screws are no drywall. */
const OWN = /\b(?:screw|tape|compound|adhesive|primer|sealer|sealant|mortar|grout|trim|nail|paste|pad|mesh)\b/;

/** "Tile" after "subway tile" is the same goods: one name holds the other, and neither is something for the other. */
function sameName(a: string, b: string): boolean {
  if (OWN.exec(a)?.[0] !== OWN.exec(b)?.[0]) return false;
  const [x, y] = [a.split(' '), b.split(' ')];
  const [short, long] = x.length <= y.length ? [x, y] : [y, x];
  return short.every((w) => long.includes(w));
}

/** Two goods are one where one name holds the other and their sizes do not differ. */
export const sameGoods = (a: Goods, b: Goods): boolean =>
  !(a.size && b.size && a.size !== b.size) && sameName(a.item, b.item);

const overlaps = (a: Goods, b: Goods, quote: string): boolean =>
  sameName(a.item, b.item) || (a.at <= b.at && b.at < a.at + quote.length);

/** "On the tile", "wall between", "over the old tile", "behind the drywall": where, not what. */
function isPlace(words: string, at: number, quote: string): boolean {
  const before = words.slice(Math.max(0, at - 26), at);
  const after = words.slice(at + quote.length, at + quote.length + 14);
  if (/^backer rod$/.test(quote)) return false;
  if (
    /\b(?:over|under|behind|off|from|above|below|onto|against|to|before|until|ahead of) (?:the |that |this )?(?:old |existing |new |bare )?$/.test(
      before,
    )
  )
    return true;
  // "On the concrete walls": what it goes on.
  if (/\b(?:on|at|along) (?:the |that )?$/.test(before) && /^ (?:walls?|slab|steps?)\b/.test(after)) return true;
  return /^(?: (?:saw|gun|store|shop|guy|trowel|cutter|knife|brush|roller|tray|tub|lid))\b/.test(after);
}

/** The goods' own term where the vocabulary has one, with the words said; size from the figures beside it. */
function nameOf(said: Said, quote: string, at: number, by: Measure): Goods {
  const term = said.terms.find((t) => {
    const words = t.quote.toLowerCase();
    // "Engineered" alone may be another's name than "engineered oak".
    const own = t.term.name.split(' ').some((w) => quote.split(' ').includes(w));
    return (
      (t.term.kind === 'material' || t.term.kind === 'part') &&
      (words.includes(quote) || (quote.includes(words) && (own || !quote.includes(' '))))
    );
  })?.term.name;
  const lead = said.words.slice(0, at).split(' ').filter(Boolean);
  const specs: string[] = [];
  while (lead.length && COLOURS.test(lead.at(-1)!) && !/[{',]/.test(lead.at(-1)!)) specs.unshift(lead.pop()!);
  const spoken = [...specs, ...quote.split(' ')];
  const base = term?.split(' ').some((w) => spoken.includes(w)) ? term.split(' ') : null;
  const names = base
    ? [...spoken.filter((w) => !base.includes(w) && !base.includes(w.replace(/s$/, ''))), ...base]
    : term
      ? [...specs, ...term.split(' ')]
      : spoken;
  const whole = headLast([...new Set(names)])
    .join(' ')
    .replace(/s$/, (s) => (/(?:ss|us|glass)$/.test(names.at(-1)!) ? s : ''));
  return { item: whole, specs: [], by, at, mentions: [at], ...sizeOf(said, at, quote) };
}

/** "White paint matt" is said "white matt paint": the thing itself comes last. */
const headLast = (names: string[]) => {
  const head = names.findIndex((w) => /^(?:paint|tile|board|plank|primer|flooring)$/.test(w));
  return head < 0 ? names : [...names.slice(0, head), ...names.slice(head + 1), names[head]!];
};

const TILE =
  /tile|\bhex\b|penny|subway|porcelain|ceramic|mosaic|slate|paver|carpet tile|travertine|marble|plank|lvp|brick|block/;

/** "3x6 subway", "24x48 porcelain", "half inch drywall", "1x6 cedar". */
function sizeOf(said: Said, at: number, quote: string): Pick<Goods, 'size' | 'sides'> {
  const before = said.words.slice(Math.max(0, at - 60), at);
  const after = said.words.slice(at + quote.length, at + quote.length + 30);
  const gap = '(?: (?!is|are|by|long|wide|high|and\\b|with\\b|for\\b|in\\b|but\\b|so\\b)[a-z]+){0,3}';
  const pair =
    saying(`<LN> ?(?:x|by) ?<LN>(?: ?x ?<LN>)?${gap} $`).exec(before) ??
    (TILE.test(quote)
      ? saying(
          '^(?:,? (?:each|one|every) (?:sheet|tile|piece)(?: is)?| is| are|,| comes? in)?(?: the)? <LN> ?(?:x|by) ?<LN>',
        ).exec(after)
      : null);
  if (pair) {
    const [a, b] = [figureAt(said, pair[1]), figureAt(said, pair[2])];
    // Bare sides of a hundred and more are millimetres: no tile is that many inches.
    const unitOf = (f: Figure) => f.unit ?? (f.value.compare(100) >= 0 ? 'mm' : null);
    const metric = [a, b].every((f) => unitOf(f) === 'mm' || unitOf(f) === 'cm');
    const [wide, high] = metric
      ? [convert(a.value, unitOf(a)!, 'in'), convert(b.value, unitOf(b)!, 'in')]
      : [null, null];
    if (wide && high && TILE.test(quote) && wide.compare(60) <= 0 && high.compare(60) <= 0)
      return { size: `${a.value.toString()}x${b.value.toString()}`, sides: [wide, high] };
    const small = a.unit !== 'ft' && b.unit !== 'ft' && a.unit !== 'm' && b.unit !== 'm';
    const whole = [a, b].every((f) => f.value.compare(new Fraction(3, 4)) >= 0);
    if (small && whole && TILE.test(quote) && a.value.compare(60) <= 0 && b.value.compare(60) <= 0)
      return { size: `${a.value.toString()}x${b.value.toString()}`, sides: [a.value, b.value] };
  }
  return { size: null, sides: null };
}
