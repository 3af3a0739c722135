import type Fraction from 'fraction.js';
import { type Bedding, NO_BEDDING } from './bedding.ts';
import { type Goods, pairsIn, sameGoods } from './goods.ts';
import { metricUnit, thickness } from './lengths.ts';
import { goodsNamed, goodsWanted, type NoteTold, noteTold, tells, type Unread } from './noteTold.ts';
import { outsizeIn } from './outsize.ts';
import { ownTerms } from './ownTerms.ts';
import type { Ratio, Terms } from './ratios.ts';
import { adds, leftOut, meetExtent, restates } from './restated.ts';
import { edgeFor } from './roofEdges.ts';
import { figureAt, type Said, saying, sentencesOf } from './said.ts';
import type { Extent } from './shapes.ts';
import { type Stock, spentIn } from './stock.ts';
import { ASKS, isDone, onlyForOthers, sentenceAt, wants } from './wanted.ts';

/** What the notes have told so far of one kind of goods in one area. */
export interface Work {
  area: string | null;
  goods: Goods;
  extent: Extent | null;
  ratios: Ratio[];
  packSize: string | null;
  /** Width and length of a roll, feet. */
  roll: Terms['roll'];
  /** Sold by its own measure. */
  byMeasure: Terms['byMeasure'];
  waste: Fraction | null;
  coats: number | null;
  bedding: Bedding;
  /** Sides of the tile that joints or mortar are reckoned for, inches. */
  tile: [Fraction, Fraction] | null;
  stock: Stock[];
  /** Packs counted for a part of the work, beside what the size takes: "one bag for under the board". */
  beside: Stock | null;
  /** A size that cannot be, as the latest note says it. */
  outsize: string | null;
  /** Sizes and packs that the latest note of them tells and no reader took. */
  unread: Unread;
  /** Words that ask for a number. */
  asked: boolean;
  /** Words that ask for the goods. */
  wanted: boolean;
  metric: boolean;
  /** Which parts of a room are meant. */
  parts: { walls: boolean; ceiling: boolean; around: boolean };
  /** All that was said of it, for the layout. */
  words: string;
  noteIds: string[];
}

/** Notes in order, gathered by goods and area; a size said again for the same place replaces the earlier one. */
export function worksOf(notes: readonly Said[]): Work[] {
  const works: Work[] = [];
  for (const said of notes) meet(works, said);
  return works;
}

function meet(works: Work[], said: Said): void {
  const goods = goodsNamed(said);
  // "Also do the furnace room, same height": of what was spoken of last.
  const goesOn = said.area === null || (goods.length === 0 && adds(said.words));
  const standing = works.findLast((w) => w.area === said.area) ?? (goesOn ? works.at(-1) : undefined);
  // With nothing under way, a note that wants no goods tells nothing: its figures need not be read.
  const wanted = goodsWanted(said);
  if (works.length === 0 && wanted.length === 0) return;
  const spent = spentIn(said);
  const from =
    spent &&
    works.findLast((w) => w.stock.some((s) => s.unit === spent.unit) && goods.some((g) => sameGoods(w.goods, g)));
  if (spent && from) {
    from.stock.push(spent);
    from.noteIds.push(said.noteId);
    return;
  }
  const note = noteTold(said, works, standing?.goods.by);
  const { terms, stock } = note;
  if (!note.told && skipPlaces(works, said, goods)) return;
  if (stock.length > 0 && !note.told) {
    const owner = ownerOf(works, said, goods);
    if (!owner) return;
    owner.stock.push(...stock);
    owner.noteIds.push(said.noteId);
    return;
  }
  const wantedGoods = goods.filter((g) => wanted.includes(g) || works.some((w) => stands(w, g, said)));
  if (wantedGoods.length === 0) {
    const told =
      note.told || terms.waste || terms.ratios.length > 0 || note.extentFor('area').height || terms.coats.length > 0;
    // Goods that were laid or used tell nothing of what is still to buy.
    if (standing && told && goods.length === 0 && !isDone(said.words) && !(note.told && isOfAnother(said)))
      update(standing, said, note, terms, standing.goods);
    return;
  }
  const someOwn =
    goods.length > 1 &&
    goods.some((g, k) => !WITH_OTHERS.test(g.item) && ownTerms(said, terms, goods, k).ratios.length > 0);
  for (const one of wantedGoods) {
    const index = goods.indexOf(one);
    const own = goods.length > 1 ? ownTerms(said, terms, goods, index) : terms;
    const work = works.find((w) => stands(w, one, said));
    if (work) update(work, said, note, own, one);
    else if (starts(said, note, one, index, own, someOwn)) {
      const fresh = newWork(said, one, works, goods);
      update(fresh, said, note, own, one);
      works.push(fresh);
    }
  }
  const first = works.find((w) => stands(w, wantedGoods[0]!, said));
  if (stock.length > 0) (first ?? works.at(-1))?.stock.push(...stock);
  const apart = standing && !goods.some((g) => sameGoods(g, standing.goods));
  if (apart && note.told && terms.ratios.length === 0 && restates(said.words))
    update(standing, said, note, terms, standing.goods);
}

/** A place that is left out of what stands; true where there was one. */
function skipPlaces(works: readonly Work[], said: Said, goods: readonly Goods[]): boolean {
  let met = false;
  for (const work of works) {
    const fewer =
      work.extent &&
      (goods.every((g) => !works.some((w) => sameGoods(w.goods, g))) || goods.some((g) => sameGoods(work.goods, g)))
        ? leftOut(work.extent, said.words)
        : null;
    if (!fewer) continue;
    Object.assign(work, { extent: fewer, noteIds: [...work.noteIds, said.noteId] });
    met = true;
  }
  return met;
}

const stands = (work: Work, goods: Goods, said: Said) =>
  sameGoods(work.goods, goods) && (work.area === said.area || said.area === null);

/** Sizes of a thing that is no place: a door hung, a counter to be made. */
const isOfAnother = ({ words, terms }: Said): boolean =>
  !restates(words) && !adds(words) && terms.some(({ term }) => ['part', 'material', 'fixture'].includes(term.kind));

/** Small goods that go with others and are ordered where they are named. */
const WITH_OTHERS = /screw|tape|compound|grout|thinset|adhesive|mortar|primer|caulk|sealant|silicone/;

/** A note starts a take-off where it says how goods are sold, wasted or coated, or asks for them by a size. */
function starts({ words }: Said, note: NoteTold, goods: Goods, index: number, own: Terms, someOwn: boolean): boolean {
  const sentences = goods.mentions.map((at) => sentenceAt(words, at));
  const asked = sentences.some((s) => ASKS.test(s)) || (index === 0 && ASKS.test(words));
  const wanted = sentences.some(wants);
  if (own.ratios.length > 0 || own.coats.length > 0) return true;
  if (
    own.waste === null &&
    own.packSize === null &&
    !WITH_OTHERS.test(goods.item) &&
    onlyForOthers(words, goods.mentions)
  )
    return false;
  if (index === 0 && own.byMeasure !== null && note.told) return true;
  if (asked && note.told) return true;
  // What is left over at the ends is told only of what is to be bought.
  if (index === 0 && note.told && note.extentFor(goods.by).makeUp.length > 0) return true;
  if (wanted && (note.told || own.waste !== null)) return true;
  if (index > 0) return WITH_OTHERS.test(goods.item) && wanted;
  return !someOwn && (own.waste !== null || own.packSize !== null);
}

const newWork = (said: Said, goods: Goods, works: readonly Work[], others: readonly Goods[]): Work => ({
  area: said.area,
  goods,
  extent: null,
  ratios: [],
  packSize: null,
  roll: null,
  byMeasure: null,
  waste: null,
  coats: null,
  bedding: NO_BEDDING,
  tile:
    goods.sides ??
    others.find((g) => g.sides)?.sides ??
    works.findLast((w) => w.area === said.area && w.tile)?.tile ??
    null,
  stock: [],
  beside: null,
  outsize: null,
  unread: { sizes: [], packs: [] },
  asked: false,
  wanted: false,
  metric: false,
  parts: { walls: false, ceiling: false, around: false },
  words: '',
  noteIds: [],
});

function update(work: Work, said: Said, note: NoteTold, terms: Terms, goods: Goods): void {
  const { words, figures, noteId } = said;
  work.noteIds.push(noteId);
  work.words = `${work.words} ${words}`;
  if (goods.size && goods !== work.goods) work.goods = { ...work.goods, size: goods.size, sides: goods.sides };
  work.tile = goods.sides ?? note.goods.find((g) => g.sides)?.sides ?? work.tile ?? note.tile;
  const told = note.extentOf(goods);
  const depth = goods.by === 'volume' && note.goods.length > 1 ? ownDepth(said, goods) : null;
  const edge = edgeFor(said, goods.item);
  const extent = edge ? { ...told, shapes: [edge] } : depth ? { ...told, depth } : told;
  if (tells(extent) || work.extent) work.extent = meetExtent(work.extent, extent, tells(extent), words);
  const replaced = new Set(terms.ratios.map((r) => r.per));
  work.ratios = [...terms.ratios, ...work.ratios.filter((r) => !replaced.has(r.per))];
  work.waste = terms.waste ?? work.waste;
  work.coats = terms.coats.at(-1)?.value ?? work.coats;
  work.roll = terms.roll ?? work.roll;
  work.byMeasure = terms.byMeasure ?? work.byMeasure;
  work.packSize = terms.packSize ?? work.packSize;
  work.bedding = {
    joint: note.bedding.joint ?? work.bedding.joint,
    thickness: note.bedding.thickness ?? work.bedding.thickness,
    notch: note.bedding.notch ?? work.bedding.notch,
    buttered: note.bedding.buttered || work.bedding.buttered,
    bead: note.bedding.bead ?? work.bedding.bead,
    repeat: note.bedding.repeat ?? work.bedding.repeat,
  };
  work.beside = besideIn(said, goods, terms) ?? work.beside;
  work.outsize = outsizeIn(said, work.goods.item);
  const unread = note.unread(goods);
  work.unread = {
    sizes: tells(extent) ? unread.sizes : work.unread.sizes,
    packs: terms.ratios.length > 0 ? [] : [...work.unread.packs, ...unread.packs],
  };
  work.asked ||= ASKS.test(words);
  work.wanted ||= wants(words);
  work.metric ||= extent.assumed !== null || metricUnit(figures) !== null;
  const own = aboutGoods(words, goods, note.goods);
  work.parts.walls ||= /\bwalls?\b/.test(own);
  work.parts.ceiling ||= /\b(?:ceilings?|lids?)\b/.test(
    own
      .replace(saying('<LN>(?: ?foot)? (?:ceilings?|lids?)', 'g'), '')
      .replace(
        /\bto the ceiling\b|\b(?:not|no|skip|leave) (?:the )?(?:ceilings?|lids?)\b|\b(?:ceilings?|lids?) (?:is|are|at|height)\b/g,
        '',
      ),
  );
  if (/\bwalls only\b|\bonly the walls\b|\bjust (?:the )?walls\b/.test(words)) work.parts.ceiling = false;
  work.parts.around ||=
    /\b(?:all the way (?:a)?round|all (?:a)?round|around (?:the|it|each|every)|round (?:each|every)|perimeter|round the (?:room|outside)|the whole room)\b/.test(
      words,
    );
}

/** The sentences that name the goods, and those that name none: "walls gray, two coats. Lids one coat of white". */
function aboutGoods(words: string, { mentions }: Goods, all: readonly Goods[]): string {
  const others = all.filter((g) => !g.mentions.some((at) => mentions.includes(at)));
  if (others.length === 0) return words;
  const own = new Set(mentions.map((at) => sentenceAt(words, at).trim()));
  const theirs = new Set(others.flatMap((g) => g.mentions.map((at) => sentenceAt(words, at).trim())));
  return sentencesOf(words)
    .filter((s) => own.has(s) || !theirs.has(s))
    .join('. ');
}

function besideIn(said: Said, { item }: Goods, { ratios, sold }: Terms): Stock | null {
  const head = item.split(' ').at(-1)!;
  const m = saying(`<K> of (?:[a-z]+ ){0,2}${head} for (?:under|behind|on|the)\\b`).exec(said.words);
  const { value, unit } = m ? figureAt(said, m[1]) : { value: null, unit: null };
  return value && unit && !sold.has(Number(m![1])) && ratios.some((r) => r.per === unit) ? { value, unit } : null;
}

/** "Four inches of gravel and one inch of sand": each as thick as was said of it; null where nothing was. */
function ownDepth(said: Said, { item, mentions }: Goods): Fraction | null {
  const head = item.split(' ').at(-1)!;
  for (const pattern of [
    `<LN>(?: (?:inches|inch|in))?(?: deep| thick)? of (?:[a-z]+ ){0,2}${head}`,
    `\\b${head}s?(?: (?:is|at|goes in|going|goes))*,? <LN>(?: (?:inches|inch|in))? (?:deep|thick)`,
  ])
    for (const m of said.words.matchAll(saying(pattern, 'g')))
      if (mentions.some((at) => at >= m.index && at <= m.index + m[0].length))
        return thickness(said, figureAt(said, m[1]));
  return null;
}

/** Goods that a note of stock speaks of: by name, by size, or "the same". */
function ownerOf(works: readonly Work[], said: Said, goods: readonly Goods[]): Work | undefined {
  const named = works.findLast((w) => goods.some((g) => sameGoods(w.goods, g)));
  const sized = works.findLast(
    (w) => w.goods.size !== null && pairsIn(said).some((pair) => pair.lumber || pair.size === w.goods.size),
  );
  const meant = goods.length === 0 && /\b(?:same|that|those|it|them)\b/.test(said.words);
  return named ?? sized ?? (meant ? works.at(-1) : undefined);
}
