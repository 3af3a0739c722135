import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { cover } from '../calculators/cover.ts';
import { show } from '../calculators/reckoned.ts';
import type { ComputedLine } from '../types.ts';
import { chain } from './chain.ts';
import { USUAL_PACK } from './defaults.ts';
import { type Goods, goodsFigures, goodsIn } from './goods.ts';
import { type Ratio, type Terms, termsIn } from './ratios.ts';
import { figureAt, type Said, saying } from './said.ts';
import { type Extent, extentIn, sizeText } from './shapes.ts';

/** What the notes have told so far of one kind of goods in one area. */
interface Work {
  area: string | null;
  goods: Goods;
  extent: Extent | null;
  ratios: Ratio[];
  packSize: string | null;
  waste: Fraction | null;
  coats: number | null;
  /** On hand, in its own unit. */
  stock: { value: Fraction; unit: string }[];
  /** Words that ask for a number. */
  asked: boolean;
  metric: boolean;
  /** Which parts of a room are meant. */
  parts: { walls: boolean; ceiling: boolean; around: boolean };
  noteIds: string[];
}

export interface Reckoning {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
}

const ASKS = /\bhow (?:many|much)\b|\b(?:figure|work out|add up|reckon) (?:out )?(?:the|what|how|it|me|us|up)\b/;

/**
 * Goods by extent: what covers, runs or fills, in packs. Reckoned where a note names the goods and how they are sold,
 * wasted or how many coats; a mere size is no order. Sizes said again for the same place replace the earlier ones.
 */
export function reckonGoods(notes: readonly Said[]): Reckoning {
  const works: Work[] = [];
  for (const said of notes) meet(works, said);
  const out: Reckoning = { lines: [], questions: [] };
  for (const work of works) settle(work, works, out);
  return out;
}

function meet(works: Work[], said: Said): void {
  const terms = termsIn(said);
  const goods = goodsIn(said);
  const used = new Set([...terms.used, ...goodsFigures(said, [...goods, ...works.map((w) => w.goods)])]);
  const stock = stockIn(said, used);
  const main = goods[0] ?? null;
  const lead = works.findLast((w) => w.area === said.area) ?? (said.area === null ? works.at(-1) : undefined);
  const extent = extentIn(said, main?.by ?? lead?.goods.by ?? 'area', used);
  const told = extent.shapes.length > 0 || extent.doubt !== null;
  if (stock.length > 0 && !told) {
    const owner = ownerOf(works, said, goods);
    if (owner) owner.stock.push(...stock);
    if (owner) owner.noteIds.push(said.noteId);
    return;
  }
  if (main === null) {
    if (lead && (told || terms.waste || terms.ratios.length > 0 || extent.height))
      update(lead, said, terms, extent, told, lead.goods);
    return;
  }
  const sold = terms.ratios.length > 0 || terms.waste !== null || terms.coats !== null;
  for (const [k, one] of goods.entries()) {
    const standing = works.find((w) => sameGoods(w.goods, one) && (w.area === said.area || said.area === null));
    const own = goods.length > 1 ? ownTerms(terms, goods, k) : terms;
    if (standing) update(standing, said, own, extent, told, one);
    else if (sold || (told && ASKS.test(said.words))) {
      const work = newWork(said, one);
      update(work, said, own, extent, told, one);
      works.push(work);
    }
    if (stock.length > 0 && k === 0) (standing ?? works.at(-1))?.stock.push(...stock);
  }
  if (!sold && told && lead && !goods.some((g) => sameGoods(g, lead.goods)) && restates(said.words))
    update(lead, said, terms, extent, told, lead.goods);
}

const newWork = (said: Said, goods: Goods): Work => ({
  area: said.area,
  goods,
  extent: null,
  ratios: [],
  packSize: null,
  waste: null,
  coats: null,
  stock: [],
  asked: false,
  metric: false,
  parts: { walls: false, ceiling: false, around: false },
  noteIds: [],
});

const restates = (words: string) =>
  /\b(?:not|actually|remeasured|wrong|correction|instead|really|should be|make (?:that|it|the))\b/.test(words);
const adds = (words: string) => /\b(?:also|plus|another|add|as well|too|more)\b/.test(words);

function update(work: Work, said: Said, terms: Terms, extent: Extent, told: boolean, goods: Goods): void {
  const { words } = said;
  work.noteIds.push(said.noteId);
  if (goods.size && goods !== work.goods) work.goods = { ...work.goods, size: goods.size, face: goods.face };
  if (told) {
    const old = work.extent;
    const more = old && adds(words) && !restates(words) && extent.shapes.length > 0;
    work.extent = more
      ? {
          ...old,
          shapes: [...old.shapes, ...extent.shapes],
          openings: [...old.openings, ...extent.openings],
          doubt: extent.doubt,
        }
      : {
          ...extent,
          height: extent.height ?? old?.height ?? null,
          depth: extent.depth ?? old?.depth ?? null,
          openings: extent.openings.length ? extent.openings : (old?.openings ?? []),
        };
  } else if (work.extent && (extent.height || extent.depth || extent.openings.length))
    work.extent = {
      ...work.extent,
      height: extent.height ?? work.extent.height,
      depth: extent.depth ?? work.extent.depth,
      openings: extent.openings.length ? extent.openings : work.extent.openings,
    };
  const replaced = new Set(terms.ratios.map((r) => r.per));
  work.ratios = [...terms.ratios, ...work.ratios.filter((r) => !replaced.has(r.per))];
  work.waste = terms.waste ?? work.waste;
  work.coats = terms.coats ?? work.coats;
  work.packSize = terms.packSize ?? work.packSize;
  work.asked ||= ASKS.test(words);
  work.metric ||= said.figures.some((f) => f.sure && f.unit === 'm');
  work.parts.walls ||= /\bwalls?\b/.test(words);
  work.parts.ceiling ||= /\bceilings?\b/.test(
    words
      .replace(saying('<LN>(?: ?foot)? ceilings?', 'g'), '')
      .replace(/\b(?:not|no|skip) (?:the )?ceilings?\b|\bceilings? (?:is|are|at|height)\b/g, ''),
  );
  work.parts.around ||=
    /\b(?:all the way (?:a)?round|all (?:a)?round|around (?:the|it)|perimeter|round the (?:room|outside)|the whole room)\b/.test(
      words,
    );
}

/** Two goods are one where one name holds the other and their sizes do not differ. */
function sameGoods(a: Goods, b: Goods): boolean {
  if (a.size && b.size && a.size !== b.size) return false;
  const [x, y] = [a.item.split(' '), b.item.split(' ')];
  const [short, long] = x.length <= y.length ? [x, y] : [y, x];
  return short.every((w) => long.includes(w));
}

/** Of several goods in a note each keeps the packs said beside it; waste and coats serve them all. */
function ownTerms(terms: Terms, goods: readonly Goods[], k: number): Terms {
  const nearest = (ratio: Ratio) => {
    const fits = goods.findIndex((g) => PACK_OF[ratio.per]?.test(g.item));
    if (fits >= 0) return fits;
    return Math.max(
      0,
      goods.findLastIndex((g) => g.at <= ratio.at),
    );
  };
  return { ...terms, ratios: terms.ratios.filter((r) => nearest(r) === k) };
}

/** Packs that only some goods come in. */
const PACK_OF: Readonly<Record<string, RegExp>> = {
  sheet: /board|drywall|plywood|osb|sheath|panel|underlayment|backer/,
  gal: /paint|primer|stain|sealer|varnish/,
  tube: /caulk|silicone|sealant/,
  bag: /thinset|grout|concrete|mortar|leveler|insulation|plaster|mulch|compound/,
};

/** "Found 40 of the same", "2 litres of it left": stock for goods that are reckoned. */
function stockIn(said: Said, used: Set<number>): Work['stock'] {
  const { words } = said;
  const out: Work['stock'] = [];
  const HAVE =
    "(?:found|have|has|got|already have|we got|i got|there's|theres|there is|there are|still have|still got|still|left|leftover)";
  const patterns = [
    saying(
      `\\b${HAVE} (?:about |already |still |a |another )?<NCKVAL>(?: [a-z]+| <[LN]> x <[LN]>){0,7}? (?:left|left over|leftover|on hand|in the (?:van|truck|shop|shed|garage|basement)|already|of the same|from (?:the )?last|to use)`,
      'g',
    ),
    saying(
      '<NCKVAL>(?: of)?(?: [a-z]+){0,5} (?:left|left over|leftover|on hand|already here|in the (?:van|truck|shop|shed|garage))\\b',
      'g',
    ),
    saying('\\b(?:less|minus|take off) (?:the )?<NCK>(?: [a-z]+){0,4} (?:we have|i have|on hand|left|already)', 'g'),
  ];
  for (const pattern of patterns)
    for (const m of words.matchAll(pattern)) {
      const figure = figureAt(said, m[1]);
      if (used.has(Number(m[1])) || figure.per || /(?:x|by) $/.test(words.slice(0, m.index))) continue;
      used.add(Number(m[1]));
      for (const id of m[0].matchAll(/\{[LN](\d+)\}/g)) used.add(Number(id[1]));
      out.push({ value: figure.value, unit: figure.unit ?? 'each' });
    }
  return out;
}

function ownerOf(works: readonly Work[], said: Said, goods: readonly Goods[]): Work | undefined {
  const named = works.findLast((w) => goods.some((g) => sameGoods(g, w.goods)));
  const sized = works.findLast((w) => w.goods.size && said.words.length && sizeSaid(said, w.goods.size));
  return (
    named ??
    sized ??
    (goods.length === 0 && /\b(?:same|that|those|it|them)\b/.test(said.words) ? works.at(-1) : undefined)
  );
}

const sizeSaid = (said: Said, size: string) =>
  [...said.words.matchAll(saying('<LN> ?(?:x|by) ?<LN>', 'g'))].some(
    (m) => `${figureAt(said, m[1]).value.toString()}x${figureAt(said, m[2]).value.toString()}` === size,
  );

/** One kind of goods reckoned, or the question that stands in the way. */
function settle(work: Work, all: readonly Work[], out: Reckoning): void {
  const noteId = work.noteIds.at(-1)!;
  const extent =
    work.extent ?? all.find((w) => w.area === work.area && w.extent && w.goods.by === work.goods.by)?.extent;
  const sold = work.ratios.length > 0 || work.waste !== null || work.coats !== null;
  if (!sold && !work.asked) return;
  const place = work.area ? `the ${work.area}` : 'it';
  if (!extent || (extent.shapes.length === 0 && !extent.doubt)) {
    if (sold && work.asked && work.ratios.length > 0 && work.stock.length === 0)
      out.questions.push({ noteId, ask: `What size is ${place} for the ${work.goods.item}?` });
    return;
  }
  if (extent.doubt) {
    const either = / or /.test(extent.doubt);
    out.questions.push({
      noteId,
      ask: either
        ? `Is ${place} ${extent.doubt.replace(/ ft$/, ' ft long')}? Nothing ordered until it is known.`
        : `What size is ${place} for sure? The note was not certain.`,
    });
    return;
  }
  const gross = extentOf(work, extent);
  if (typeof gross === 'string') {
    out.questions.push({ noteId, ask: gross });
    return;
  }
  const ratios = withHabits(work, gross.unit);
  const steps = chain(gross.unit, ratios);
  if (!steps) return;
  const assumed = work.ratios.length === 0 && work.coats === null && work.waste === null && !work.asked;
  if (assumed) return;
  const coats = work.coats ?? 1;
  let value = gross.value.mul(coats);
  const trail = [gross.working + (coats > 1 ? ` x ${coats} coats = ${show(value)} ${gross.unit}` : '')];
  for (const step of steps.through) {
    value = value.mul(step.factor);
    if (!step.silent) trail.push(`${step.said}: ${show(value)} ${step.to}`);
  }
  const stock = work.stock.map(
    (s) =>
      convert(s.value, s.unit, steps.unit) ??
      (s.unit === steps.unit ? s.value : s.unit === steps.pack?.unit ? s.value.mul(steps.pack.holds) : null),
  );
  const onHand = stock.reduce<Fraction>((sum, s) => (s ? sum.add(s) : sum), new Fraction(0));
  const answer = cover({
    extent: value,
    unit: steps.unit,
    waste: work.waste ?? new Fraction(0),
    assumptions: work.waste || coats > 1 ? [] : ['no waste added: none was said'],
    pack: steps.pack,
    extentWorking: trail.join('; '),
  });
  if (!answer.ok) {
    out.questions.push({ noteId, ask: `${work.goods.item}: ${answer.why}` });
    return;
  }
  const net = answer.amount.sub(onHand);
  const left = net.compare(0) > 0 ? net : new Fraction(0);
  const packs = steps.pack ? left.div(steps.pack.holds) : left;
  const sticks = steps.pack?.unit === 'stick' ? steps.pack : null;
  out.lines.push({
    item: work.goods.item,
    size: work.packSize ?? work.goods.size ?? (sticks ? `${show(sticks.holds)} ${steps.unit}` : null),
    specs: work.goods.specs,
    area: work.area,
    amount: left,
    unit: steps.unit,
    // A stick is bought as one piece of its length.
    pack: sticks ? { ...sticks, unit: 'each' } : steps.pack,
    stockUsed: onHand.compare(0) > 0,
    working:
      onHand.compare(0) > 0
        ? `${answer.working}; less ${show(onHand)} on hand = ${show(left)} ${steps.unit}, so ${packs.ceil().toFraction()}`
        : answer.working,
    assumptions: answer.assumptions,
    source: answer.source,
    noteIds: [...new Set(work.noteIds)],
  });
}

/** Pieces and packs that go without saying: a tile's own face, a sheet of the usual size. */
function withHabits(work: Work, unit: string): Ratio[] {
  const { goods } = work;
  const ratios: Ratio[] = work.ratios.map((r) => ({ ...r, unit: r.unit ?? nullUnit(work, r, unit) }));
  if (goods.face && goods.by === 'area') ratios.push({ value: goods.face.div(144), unit: 'sq ft', per: 'each', at: 0 });
  const usual = USUAL_PACK.find((u) => u.goods.test(goods.item) && (!u.size || u.size === work.packSize));
  const reached = chain(unit, ratios);
  if (usual && !reached?.bought) ratios.push({ ...usual.ratio, at: 0 });
  return ratios;
}

/** A bare "11.5 to the box" is in what the goods are measured by; a bare whole number of sized tile is pieces. */
function nullUnit(work: Work, ratio: Ratio, unit: string): string {
  const pieces =
    work.goods.face !== null && ratio.value.d === 1n && /^(?:box|case|carton|pack|bundle|pallet)$/.test(ratio.per);
  if (pieces) return 'each';
  if (unit === 'sq ft' && work.metric) return 'sq m';
  return unit;
}

/** Net extent in square feet, feet or cubic feet, with its working; a string is the question that it raises. */
function extentOf(work: Work, extent: Extent): { value: Fraction; unit: string; working: string } | string {
  const { goods, parts, metric } = work;
  const text = (f: Fraction) => sizeText(f, metric);
  let value = new Fraction(0);
  const told: string[] = [];
  for (const shape of extent.shapes) {
    const silly = shape.sides.find((s) => s.compare(0) <= 0 || s.compare(300) > 0);
    if (silly) return `${text(silly)} for the ${goods.item}${work.area ? ` in the ${work.area}` : ''}: is that right?`;
    const [a, b] = shape.sides;
    if (goods.by === 'length') {
      if (!a) continue;
      const around = b && (shape.kind === 'room' || parts.around);
      value = value.add((around ? a.add(b!).mul(2) : a).mul(shape.count));
      told.push(around ? `2 x (${text(a)} + ${text(b!)})` : shape.count > 1 ? `${shape.count} x ${text(a)}` : text(a));
    } else if (a && b && shape.kind === 'room' && extent.height && goods.by === 'area' && wallsMeant(work)) {
      const walls = a.add(b).mul(2).mul(extent.height);
      value = value.add(walls);
      told.push(`2 x (${text(a)} + ${text(b)}) x ${text(extent.height)}`);
      if (parts.ceiling) {
        value = value.add(a.mul(b));
        told.push(`${text(a)} x ${text(b)} ceiling`);
      }
    } else if (a && b) {
      value = value.add(a.mul(b).mul(shape.count));
      told.push(`${shape.count > 1 ? `${shape.count} x ` : ''}${text(a)} x ${text(b)}`);
    } else if (a && extent.height && goods.by === 'area') {
      value = value.add(a.mul(extent.height).mul(shape.count));
      told.push(`${shape.count > 1 ? `${shape.count} x ` : ''}${text(a)} x ${text(extent.height)}`);
    } else if (shape.amount) {
      value = value.add(shape.amount);
      told.push(shape.working);
    }
  }
  const unit = { area: 'sq ft', length: 'ft', volume: 'cu ft' }[goods.by];
  if (goods.by === 'volume' && !extent.shapes.some((s) => s.kind === 'volume')) {
    if (!extent.depth) return `How thick is the ${goods.item}${work.area ? ` in the ${work.area}` : ''}?`;
    value = value.mul(extent.depth);
    told.push(`x ${sizeText(extent.depth, metric)} thick`);
  }
  if (value.compare(0) <= 0) return `What size is ${work.area ? `the ${work.area}` : 'it'} for the ${goods.item}?`;
  let less = goods.by === 'area' ? extent.lessArea : extent.lessLength;
  for (const o of extent.openings) {
    if (goods.by === 'length') less = less.add(o.width.mul(o.count));
    else if (o.height && goods.by === 'area') less = less.add(o.width.mul(o.height).mul(o.count));
  }
  if (less.compare(value) >= 0 && less.compare(0) > 0)
    return `The openings are larger than the ${goods.item}: are the sizes right?`;
  const shown = (f: Fraction) =>
    `${show(metric && unit === 'sq ft' ? (convert(f, 'sq ft', 'sq m') ?? f) : metric && unit === 'ft' ? (convert(f, 'ft', 'm') ?? f) : f)} ${metric && unit === 'sq ft' ? 'sq m' : metric && unit === 'ft' ? 'm' : unit}`;
  const net = value.sub(less);
  const working = `${told.join(' + ').replaceAll('+ x ', 'x ')} = ${shown(value)}${less.compare(0) > 0 ? `, less ${shown(less)} = ${shown(net)}` : ''}`;
  return { value: net, unit, working };
}

const wallsMeant = ({ goods, parts }: Work) =>
  parts.walls ||
  (!parts.ceiling &&
    /paint|primer|wall|drywall|board|panel|plaster|texture/.test(goods.item) &&
    !/floor|ceiling/.test(goods.item));
