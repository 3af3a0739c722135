import type Fraction from 'fraction.js';
import { type Bedding, NO_BEDDING } from './bedding.ts';
import type { Goods } from './goods.ts';
import { metricUnit, thickness } from './lengths.ts';
import { type NoteTold, tells, type Unread } from './noteTold.ts';
import { outsizeIn } from './outsize.ts';
import type { Ratio } from './ratios.ts';
import { meetExtent } from './restated.ts';
import { edgeFor } from './roofEdges.ts';
import { figureAt, type Said, saying, sentencesOf } from './said.ts';
import type { Extent } from './shapes.ts';
import type { Stock } from './stock.ts';
import type { Terms } from './terms.ts';
import { ASKS, sentenceAt, wants } from './wanted.ts';
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

/** Goods of which nothing is known yet but their name and place. */
export const newWork = (said: Said, goods: Goods, works: readonly Work[], others: readonly Goods[]): Work => ({
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

/** Takes what a note tells of the goods into what is known of them. */
export function update(work: Work, said: Said, note: NoteTold, terms: Terms, goods: Goods): void {
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
