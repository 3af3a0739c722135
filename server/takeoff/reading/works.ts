import type Fraction from 'fraction.js';
import { type Bedding, NO_BEDDING } from './bedding.ts';
import { type Goods, pairsIn, sameGoods } from './goods.ts';
import { metricUnit } from './lengths.ts';
import { goodsNamed, type NoteTold, noteTold, tells } from './noteTold.ts';
import { outsizeIn } from './outsize.ts';
import type { Ratio, Terms } from './ratios.ts';
import { meetExtent, restates } from './restated.ts';
import { type Said, saying } from './said.ts';
import type { Extent } from './shapes.ts';
import type { Stock } from './stock.ts';
import { ASKS, isDone, onlyForOthers, sentenceAt, wants } from './wanted.ts';

/** What the notes have told so far of one kind of goods in one area. */
export interface Work {
  area: string | null;
  goods: Goods;
  extent: Extent | null;
  ratios: Ratio[];
  packSize: string | null;
  /** Sold by its own measure. */
  byMeasure: Terms['byMeasure'];
  waste: Fraction | null;
  coats: number | null;
  bedding: Bedding;
  /** Sides of the tile that joints or mortar are reckoned for, inches. */
  tile: [Fraction, Fraction] | null;
  stock: Stock[];
  /** A size that cannot be, as the latest note says it. */
  outsize: string | null;
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
  const standing = works.findLast((w) => w.area === said.area) ?? (said.area === null ? works.at(-1) : undefined);
  const goods = goodsNamed(said);
  // With nothing under way, a note that wants no goods tells nothing: its figures need not be read.
  if (works.length === 0 && !goods.some((g) => isWanted(said, g))) return;
  const note = noteTold(said, works, standing?.goods.by);
  const { terms, stock } = note;
  if (stock.length > 0 && !note.told) {
    const owner = ownerOf(works, said, goods);
    if (!owner) return;
    owner.stock.push(...stock);
    owner.noteIds.push(said.noteId);
    return;
  }
  const wantedGoods = goods.filter((g) => isWanted(said, g) || works.some((w) => stands(w, g, said)));
  if (wantedGoods.length === 0) {
    const told =
      note.told || terms.waste || terms.ratios.length > 0 || note.extentFor('area').height || terms.coats.length > 0;
    // Goods that were laid or used tell nothing of what is still to buy.
    if (standing && told && goods.length === 0 && !isDone(said.words))
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

const stands = (work: Work, goods: Goods, said: Said) =>
  sameGoods(work.goods, goods) && (work.area === said.area || said.area === null);

/** Goods of a sentence that tells of work done are not wanted; goods that are to be had are. */
const isWanted = (said: Said, goods: Goods) => goods.mentions.some((at) => !isDone(sentenceAt(said.words, at)));

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
  outsize: null,
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
  const extent = note.extentFor(goods.by);
  if (tells(extent) || work.extent) work.extent = meetExtent(work.extent, extent, tells(extent), words);
  const replaced = new Set(terms.ratios.map((r) => r.per));
  work.ratios = [...terms.ratios, ...work.ratios.filter((r) => !replaced.has(r.per))];
  work.waste = terms.waste ?? work.waste;
  work.coats = terms.coats.at(-1)?.value ?? work.coats;
  work.byMeasure = terms.byMeasure ?? work.byMeasure;
  work.packSize = terms.packSize ?? work.packSize;
  work.bedding = {
    joint: note.bedding.joint ?? work.bedding.joint,
    thickness: note.bedding.thickness ?? work.bedding.thickness,
    notch: note.bedding.notch ?? work.bedding.notch,
    buttered: note.bedding.buttered || work.bedding.buttered,
    bead: note.bedding.bead ?? work.bedding.bead,
  };
  work.outsize = outsizeIn(said, work.goods.item);
  work.asked ||= ASKS.test(words);
  work.wanted ||= wants(words);
  work.metric ||= extent.assumed !== null || metricUnit(figures) !== null;
  work.parts.walls ||= /\bwalls?\b/.test(words);
  work.parts.ceiling ||= /\b(?:ceilings?|lids?)\b/.test(
    words
      .replace(saying('<LN>(?: ?foot)? (?:ceilings?|lids?)', 'g'), '')
      .replace(
        /\b(?:not|no|skip|leave) (?:the )?(?:ceilings?|lids?)\b|\b(?:ceilings?|lids?) (?:is|are|at|height)\b/g,
        '',
      ),
  );
  work.parts.around ||=
    /\b(?:all the way (?:a)?round|all (?:a)?round|around (?:the|it)|perimeter|round the (?:room|outside)|the whole room)\b/.test(
      words,
    );
}

/** Of several goods in a note each keeps the packs and coats said beside it; waste serves them all. */
function ownTerms(said: Said, terms: Terms, goods: readonly Goods[], k: number): Terms {
  const owner = ({ at, per, unit }: { at: number; per?: string; unit?: string | null }) => {
    const fits = goods.filter(
      (g) => (per && !SMALL.test(g.item) && PACK_OF[per]?.test(g.item)) || (unit && MADE_OF[unit]?.test(g.item)),
    );
    const among = fits.length > 0 ? fits : goods;
    const before = [...among].sort((a, b) => nearest(b, at) - nearest(a, at))[0]!;
    return goods.indexOf(nearest(before, at) < 0 ? among[0]! : before);
  };
  const nearest = (g: Goods, at: number) =>
    g.mentions.findLast(
      (m) => m <= at || (m <= at + OF && /^[^.,;]* of (?:the |that )?$/.test(said.words.slice(at, m))),
    ) ?? -1;
  const ratios = terms.ratios.filter((r) => owner(r) === k);
  const size = terms.packSize;
  const filled = / (?:gal|L|qt)$/.test(size ?? '');
  const own = filled ? ratios.some((r) => `${r.value.toString()} ${r.unit}` === size) : ratios.length > 0;
  const sized = size !== null && k === packOwner(size, goods, own ? k : filled ? -1 : 0);
  return {
    ...terms,
    ratios,
    coats: terms.coats.filter((c) => owner(c) === k),
    packSize: sized ? size : null,
  };
}

/** "Two coats of white", "a bucket of mud": the goods named this close behind own the figure. */
const OF = 24;

/** Board is in their name, but they come in no sheets. */
const SMALL = /screw|compound/;

/** Packs that only some goods come in. */
const PACK_OF: Readonly<Record<string, RegExp>> = {
  sheet: /board|drywall|plywood|osb|sheath|panel|underlayment|backer/,
  gal: /paint|primer|stain|sealer|varnish/,
  tube: /caulk|silicone|sealant/,
  bag: /thinset|adhesive|bonding|grout|concrete|mortar|leveler|insulation|plaster|mulch/,
  roll: /tape|paper|felt|wrap|fabric|membrane|cable|barrier|insulation|batt|carpet|underlay/,
};
/** What only some goods are counted in. */
const MADE_OF: Readonly<Record<string, RegExp>> = { screw: /screw/ };

/** Whose pack a size is: sheets by their sides, bags by their pounds, tubes by their ounces; else `other`. */
function packOwner(size: string, goods: readonly Goods[], other: number): number {
  const pack = size.includes('x') ? 'sheet' : / lb$/.test(size) ? 'bag' : / oz$/.test(size) ? 'tube' : null;
  const owner = pack ? goods.findIndex((g) => !SMALL.test(g.item) && PACK_OF[pack]!.test(g.item)) : -1;
  return owner < 0 ? other : owner;
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
