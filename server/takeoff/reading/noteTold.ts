import type Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { pullsWires } from '../each/conductors.ts';
import { type Bedding, beddingIn } from './bedding.ts';
import { type Goods, goodsIn } from './goods.ts';
import { metricUnit } from './lengths.ts';
import { makeUpIn } from './makeUp.ts';
import type { Measure } from './measure.ts';
import { type Pair, pairsIn } from './pairs.ts';
import { figureAt, type Said, saying, sentencesOf } from './said.ts';
import type { Extent } from './shapes.ts';
import { extentIn } from './sizes.ts';
import { type Stock, stockIn } from './stock.ts';
import { type Terms, termsIn } from './terms.ts';
import { type Taken, unreadPacks, unreadSizes } from './unread.ts';
import { sentenceAt } from './wanted.ts';

/** What one note tells of goods by extent, before it is known which of the goods under way it is about. */
export interface NoteTold {
  goods: readonly Goods[];
  terms: Terms;
  bedding: Bedding;
  /** Sides of the tile, inches, where a pair of bare figures is one. */
  tile: [Fraction, Fraction] | null;
  /** Sizes of places, as goods of each measure take them. */
  extentFor: (by: Measure) => Extent;
  /** Sizes told in the goods' own sentences, where others have theirs. */
  extentOf: (of: Goods) => Extent;
  /** Figures that no reader took, in words: of sizes of places, and of packs. */
  unread: (of: Goods) => Unread;
  told: boolean;
  stock: readonly Stock[];
}

/** In words, as said. */
export interface Unread {
  sizes: readonly string[];
  packs: readonly string[];
}

/** What words alone tell, and what they tell beside goods under way, by their measure and the sizes that are theirs. */
interface Reading {
  goods: readonly Goods[];
  pairs: readonly Pair[];
  beside: Map<string, NoteTold>;
}

const known = new WeakMap<Said['figures'], Map<string, Reading>>();

/** The words alone; the same words read the same, so a job's old notes are not read again with each new one. */
function readingOf(said: Said): Reading {
  const byWords = known.get(said.figures) ?? new Map<string, Reading>();
  known.set(said.figures, byWords);
  const reading = byWords.get(said.words) ?? { goods: goodsIn(said), pairs: pairsIn(said), beside: new Map() };
  byWords.set(said.words, reading);
  return reading;
}

/** Goods that the note names. */
export const goodsNamed = (said: Said): readonly Goods[] => readingOf(said).goods;

/**
 * @param under goods under way in the job: figures that are their size are no size of a place
 * @param standing measure of the goods under way in the note's area, for a note that names none
 */
export function noteTold(said: Said, under: readonly { goods: Goods }[], standing: Measure | undefined): NoteTold {
  const { goods, pairs, beside } = readingOf(said);
  const by = goods[0]?.by ?? standing ?? 'area';
  const sizes = pairs.filter(
    ({ size, lumber, place }) =>
      lumber || (!place && (goods.some((g) => g.size === size) || under.some((w) => w.goods.size === size))),
  );
  const key = `${by} ${sizes.map(({ ids }) => ids.join()).join(' ')}`;
  const told = beside.get(key) ?? read(said, goods, by, sizes);
  beside.set(key, told);
  return told;
}

function read(said: Said, goods: readonly Goods[], by: Measure, sizes: readonly Pair[]): NoteTold {
  const used = new Set<number>();
  const makeUp = by === 'length' ? makeUpIn(said, used) : [];
  const terms = termsIn(said, used);
  const bedding = beddingIn(said, used);
  for (const { ids } of sizes) for (const id of ids) used.add(id);
  const tile = tileFloor(said, used) ?? tileInMillimetres(said, goods, used);
  const stock = stockIn(said, used);
  const extents = new Map<Measure, { extent: Extent; read: ReadonlySet<number> }>();
  const readFor = (measure: Measure) => {
    const claimed = new Set(used);
    const found = extents.get(measure) ?? {
      extent: { ...extentIn(withoutWires(said, goods), measure, claimed), makeUp },
      read: claimed,
    };
    extents.set(measure, found);
    return found;
  };
  const extentFor = (measure: Measure) => readFor(measure).extent;
  const extentOf = (of: Goods) => {
    const own = ownSentences(said, of, goods);
    if (own === said.words) return extentFor(of.by);
    const extent = extentIn({ ...withoutWires(said, goods), words: own }, of.by, new Set(used));
    return extent.shapes.length > 0 && !extent.doubt ? { ...extent, makeUp } : extentFor(of.by);
  };
  const taken = (measure: Measure): Taken => ({
    sold: used,
    all: [measure, ...goods.map((g) => g.by)].map((m) => readFor(m).read),
  });
  const unread = (of: Goods): Unread => ({
    sizes: unreadSizes(withoutWires(said, goods), taken(of.by), placesOf(extentOf(of))),
    packs: unreadPacks(said, taken(of.by), goods, of),
  });
  return { goods, terms, bedding, tile, extentFor, extentOf, unread, told: tells(extentFor(by)), stock };
}

/** Runs that another of the goods has in a sentence of its own: "downspouts, two of them ten foot each". */
function ownSentences(said: Said, of: Goods, all: readonly Goods[]): string {
  const rivals = of.by === 'length' ? all.filter((g) => g !== of && g.by === 'length') : [];
  if (rivals.length === 0) return said.words;
  const within = (g: Goods, s: string) => g.mentions.some((at) => sentenceAt(said.words, at).trim() === s);
  const left = sentencesOf(said.words).filter(
    (s) => within(of, s) || !rivals.some((g) => within(g, s)) || !OWN_RUN.test(s),
  );
  return left.length === sentencesOf(said.words).length ? said.words : left.join('. ');
}

const OWN_RUN = saying('<N>(?: of (?:them|those))?,?(?: at)? <L>(?: (?:foot|feet|ft))? (?:each|apiece)\\b');

/** How many sizes were told, and how many places those are. */
const placesOf = ({ shapes }: Extent): number[] => [shapes.length, shapes.reduce((sum, s) => sum + s.count, 0)];

/** "Three number tens go down it, 64 foot apiece": lengths of the wires are none of the conduit's. */
function withoutWires(said: Said, goods: readonly Goods[]): Said {
  if (!goods.some((g) => /\b(?:conduit|emt)\b/.test(g.item))) return said;
  const left = sentencesOf(said.words).filter((s) => !pullsWires(s) || /\bconduit\b|\bemt\b/.test(s));
  return { ...said, words: left.join('. ') };
}

/** A size of a place was told, or that it is not known. */
export const tells = (extent: Extent) =>
  extent.shapes.length > 0 || extent.corrected.length > 0 || extent.doubt !== null || extent.unknownUnit !== null;

/** "Room's 1.8 by 2.1, six hundred by three hundreds": beside metres a bare pair of hundreds is the tile, in millimetres. */
function tileInMillimetres(said: Said, goods: readonly Goods[], used: Set<number>): NoteTold['tile'] {
  if (metricUnit(said.figures) !== 'm' || !goods.some((g) => /tile|porcelain|ceramic|mosaic/.test(g.item))) return null;
  const hand = (id: number) => {
    const { value, unit } = said.figures[id]!;
    return !used.has(id) && unit === null && value.compare(100) >= 0 && value.compare(1200) <= 0;
  };
  const pair = readingOf(said).pairs.find(({ ids }) => ids.every(hand));
  if (!pair) return null;
  for (const id of pair.ids) used.add(id);
  const [a, b] = pair.ids.map((id) => convert(said.figures[id]!.value, 'mm', 'in'));
  return [a!, b!];
}

/** "Grout for 60 sq ft of 12x12 floor", "190 feet of 12x24": a pair of bare figures of one hand's size is the tile. */
function tileFloor(said: Said, used: Set<number>): NoteTold['tile'] {
  const m =
    saying('<N> ?(?:x|by) ?<N>(?: [a-z]+)? (?:tiles?|floor|wall|porcelain|ceramic|field)\\b').exec(said.words) ??
    saying('(?<=\\{A\\d+\\} of (?:the )?)<N> ?(?:x|by) ?<N>').exec(said.words);
  if (!m || !/\{A\d+\}/.test(said.words)) return null;
  const sides: NoteTold['tile'] = [figureAt(said, m[1]).value, figureAt(said, m[2]).value];
  if (sides.some((side) => side.compare(48) > 0)) return null;
  for (const id of [m[1], m[2]]) used.add(Number(id));
  return sides;
}
