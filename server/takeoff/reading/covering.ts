import Fraction from 'fraction.js';
import { convert } from '../../../parser/quantities/units.ts';
import { cover } from '../calculators/cover.ts';
import { show } from '../calculators/reckoned.ts';
import { papered } from '../calculators/wallpaper.ts';
import type { ComputedLine } from '../types.ts';
import { type Chain, chain } from './chain.ts';
import { extentOf } from './extents.ts';
import { type Habit, habitOf, usualWaste } from './habits.ts';
import type { Ratio } from './ratios.ts';
import { type Said, without } from './said.ts';
import type { Extent } from './shapes.ts';
import type { Work } from './work.ts';
import { worksOf } from './works.ts';

export interface Reckoning {
  lines: ComputedLine[];
  questions: { noteId: string; ask: string }[];
}

/**
 * Goods by extent: what covers, runs or fills, in packs. Reckoned where a note names the goods and how they are sold,
 * wasted or how many coats, or asks for them by a size; a mere size is no order, nor is work that was done.
 * `claimed`: figures of each note that another take-off has read.
 */
export function reckonGoods(notes: readonly Said[], claimed: ReadonlyMap<string, ReadonlySet<number>>): Reckoning {
  const works = worksOf(notes.map((said) => without(said, claimed.get(said.noteId))));
  const out: Reckoning = { lines: [], questions: [] };
  for (const work of works) {
    const answer = settle(work, works);
    if (typeof answer === 'string') out.questions.push({ noteId: work.noteIds.at(-1)!, ask: answer });
    else if (answer) out.lines.push(answer);
  }
  return out;
}

/** One kind of goods reckoned; a string is the question that stands in the way, null where there is nothing to say. */
function settle(work: Work, all: readonly Work[]): ComputedLine | string | null {
  const extent =
    work.extent ?? all.find((w) => w.area === work.area && w.extent && w.goods.by === work.goods.by)?.extent;
  const place = work.area ? `the ${work.area}` : 'it';
  if (!extent || (extent.shapes.length === 0 && !extent.doubt && !extent.unknownUnit)) {
    const open = work.asked && work.ratios.length > 0 && work.stock.length === 0;
    return open ? `What size is ${place} for the ${work.goods.item}?` : null;
  }
  if (extent.unknownUnit)
    return `"${extent.unknownUnit}" for the ${work.goods.item}: say it in feet, inches or metres.`;
  if (extent.doubt)
    return / or /.test(extent.doubt)
      ? `Is ${place} ${extent.doubt.replace(/ ft$/, ' ft long')}? Nothing ordered until it is known.`
      : `What size is ${place} for sure? The note was not certain.`;
  if (work.outsize) return `${work.goods.item}: ${work.outsize}: is that right?`;
  const [unplaced] = work.unread.sizes;
  if (unplaced) return `Cannot reckon the ${work.goods.item}: what is ${unplaced} of?`;
  const drops = /wall ?paper/.test(work.goods.item) ? byDrops(work, extent) : null;
  if (drops) return drops.ok ? lineOf(work, drops, onHandIn(work, drops)) : `${work.goods.item}: ${drops.why}`;
  const gross = extentOf(work, extent);
  if (typeof gross === 'string') return gross;
  const sold = soldBy(work, gross.unit);
  if (typeof sold === 'string')
    return work.asked || work.wanted || work.packSize ? `${work.goods.item}: ${sold}` : null;
  const steps = chain(gross.unit, sold.ratios) ?? ownMeasure(work, gross.unit, extent);
  if (!steps)
    return work.asked
      ? `How is the ${work.goods.item} sold, and what does one cover? It comes to ${show(gross.value)} ${gross.unit}.`
      : null;
  const [pack] = work.unread.packs;
  if (pack && (sold.assumptions.length > 0 || steps.pack === null))
    return `Cannot reckon the ${work.goods.item}: is ${pack} what ${steps.pack ? `a ${steps.pack.unit}` : 'one'} holds or covers?`;
  const coats = work.coats ?? 1;
  let value = gross.value.mul(coats);
  const trail = [gross.working + (coats > 1 ? ` x ${coats} coats = ${show(value)} ${gross.unit}` : '')];
  for (const step of steps.through) {
    value = value.mul(step.factor);
    if (!step.silent) trail.push(`${step.said}: ${show(value)} ${step.to}`);
  }
  const usual = work.waste === null ? usualWaste(work.goods.item, work.words) : null;
  const answer = cover({
    extent: value,
    unit: steps.unit,
    waste: work.waste ?? usual?.share ?? new Fraction(0),
    assumptions: [
      ...(usual ? [usual.why] : work.waste === null && coats === 1 ? ['no waste added: none was said'] : []),
      ...sold.assumptions,
    ],
    pack: steps.pack,
    extentWorking: trail.join('; '),
    ...(sold.source && { source: sold.source }),
  });
  if (!answer.ok) return `${work.goods.item}: ${answer.why}`;
  return lineOf(work, withBeside(answer, work.beside), onHandIn(work, steps));
}

/** What was counted for a part of the work comes on top, in whole packs. */
function withBeside<T extends Pick<ComputedLine, 'amount' | 'pack' | 'working'>>(answer: T, beside: Work['beside']): T {
  const { amount, pack, working } = answer;
  if (!beside || pack?.unit !== beside.unit) return answer;
  const packs = amount.div(pack.holds).ceil().add(beside.value);
  return {
    ...answer,
    amount: packs.mul(pack.holds),
    working: `${working}; and ${show(beside.value)} ${pack.unit} beside, so ${packs.toFraction()}`,
  };
}

/** Wallpaper whose roll was told by both sides, where the walls are told: by drops. */
function byDrops(work: Work, extent: Extent) {
  const { roll, waste } = work;
  // "12 foot wide by 8 foot high": a wall of its own.
  const upright =
    extent.shapes.length === 1 && extent.shapes[0]!.kind === 'rectangle' ? extent.shapes[0]!.sides[1] : null;
  const height = extent.height ?? upright;
  if (!roll || !height) return null;
  const around = extent.shapes.reduce(
    (sum, { kind, sides: [a, b], count }) =>
      a ? sum.add((b && kind === 'room' ? a.add(b).mul(2) : a).mul(count)) : sum,
    new Fraction(0),
  );
  return around.compare(0) > 0
    ? papered({ around, height, roll, repeat: work.bedding.repeat?.div(12) ?? null, waste })
    : null;
}

const SQUARE_YARDS: Chain = {
  through: [{ to: 'sq yd', factor: new Fraction(1, 9), said: '9 sq ft a sq yd', silent: false }],
  unit: 'sq yd',
  pack: null,
  bought: true,
};

const SQUARES: Chain = {
  through: [{ to: 'square', factor: new Fraction(1, 100), said: '100 sq ft a square', silent: false }],
  unit: 'square',
  pack: null,
  bought: true,
};

/** Goods sold by what they are measured in, or reckoned with waste or with what is left over at the ends though nobody said how they are sold. */
function ownMeasure(work: Work, unit: string, { makeUp }: Extent): Chain | null {
  if ((work.byMeasure === 'sq yd' || work.byMeasure === 'cu yd') && unit === 'sq ft') return SQUARE_YARDS;
  if (work.byMeasure === 'square' && unit === 'sq ft') return SQUARES;
  const run = unit === 'ft' && makeUp.length > 0;
  const meant = run || work.byMeasure === unit || (work.waste !== null && unit !== 'cu ft');
  return meant ? { through: [], unit, pack: null, bought: true } : null;
}

/** Stock of the goods in the amount's own unit; what is in another unit cannot be taken off. */
function onHandIn(
  work: Work,
  { unit, pack }: { unit: string; pack: { unit: string; holds: Fraction } | null },
): Fraction {
  let sum = new Fraction(0);
  for (const stock of work.stock) {
    const same = convert(stock.value, stock.unit, unit) ?? (stock.unit === unit ? stock.value : null);
    // "There's 2 full ones": of what comes by the stick, sticks.
    const sticks = pack?.unit === 'stick' && stock.unit === 'each';
    const packs = pack && (sticks || stock.unit === pack.unit) ? stock.value.mul(pack.holds) : null;
    sum = sum.add(same ?? packs ?? 0);
  }
  return sum;
}

function lineOf(
  work: Work,
  answer: Pick<ComputedLine, 'amount' | 'unit' | 'pack' | 'working' | 'assumptions' | 'source'>,
  onHand: Fraction,
): ComputedLine {
  const { unit, pack } = answer;
  const net = answer.amount.sub(onHand);
  const left = net.compare(0) > 0 ? net : new Fraction(0);
  const packs = pack ? left.div(pack.holds) : left;
  const stick = pack?.unit === 'stick' ? pack : null;
  const used = onHand.compare(0) > 0;
  return {
    item: work.goods.item,
    size: work.goods.size ?? work.packSize ?? (stick ? `${show(stick.holds)} ${unit}` : null),
    specs: work.goods.specs,
    area: work.area,
    amount: left,
    unit,
    // A stick is bought as one piece of its length.
    pack: stick ? { ...stick, unit: 'each' } : pack,
    packAssumed: work.ratios.length === 0,
    stockUsed: used,
    working: used
      ? `${answer.working}; less ${show(onHand)} on hand = ${show(left)} ${unit}, so ${packs.ceil().toFraction()}`
      : answer.working,
    assumptions: answer.assumptions,
    source: answer.source,
    noteIds: [...new Set(work.noteIds)],
  };
}

/** How the goods are sold: as said, then by the trade's habit where what was said does not reach a purchase. */
function soldBy(work: Work, unit: string): Habit | string {
  const { goods } = work;
  const ratios: Ratio[] = work.ratios.map((r) => ({ ...r, unit: ratioUnit(work, r, unit), per: ratioPer(r, unit) }));
  if (goods.sides && goods.by === 'area')
    ratios.push({ value: goods.sides[0].mul(goods.sides[1]).div(144), unit: 'sq ft', per: 'each', at: 0 });
  const [one, other] = twoSayings(work.ratios);
  if (one && other)
    return `does a ${one.per} hold ${show(one.value)} or ${show(other.value)} ${one.unit === 'each' ? 'pieces' : (one.unit ?? unit)}?`;
  if (chain(unit, ratios)?.bought) return { ratios, assumptions: [], source: null };
  if (work.byMeasure === 'cu yd' && goods.by === 'volume' && !work.packSize)
    return { ratios: [...ratios, BY_THE_YARD], assumptions: [], source: null };
  const habit = habitOf({ item: goods.item, packSize: work.packSize, tile: work.tile, bedding: work.bedding });
  if (typeof habit === 'string') return habit;
  if (!habit) return { ratios, assumptions: [], source: null };
  // What was said of a pack stands; habit gives only what is missing.
  const missing = habit.ratios.filter((h) => !ratios.some((r) => r.per === h.per && r.per !== unit));
  return { ...habit, ratios: [...ratios, ...missing] };
}

/** "Ready mix sells by the yard". */
const BY_THE_YARD: Ratio = { value: new Fraction(27), unit: 'cu ft', per: 'cu yd', at: 0 };

/** Two sayings of what one pack holds; empty where none are at odds. */
function twoSayings(ratios: readonly Ratio[]): Ratio[] {
  for (const [k, one] of ratios.entries()) {
    const other = ratios
      .slice(k + 1)
      .find((r) => r.per === one.per && r.unit === one.unit && !r.value.equals(one.value));
    if (other) return [one, other];
  }
  return [];
}

/** "A pail does 1000 feet" of what covers, "30 yard rolls" of carpet, shingles "three to the square". */
function ratioUnit(work: Work, r: Ratio, unit: string): string {
  if (r.unit === 'ft' && unit === 'sq ft' && COVERED.test(r.per)) return 'sq ft';
  if (r.unit === 'yd' && unit === 'sq ft') return 'sq yd';
  if (r.unit === 'each' && r.per === 'square' && /shingle/.test(work.goods.item)) return 'bundle';
  return r.unit ?? nullUnit(work, r, unit);
}

/** "Eight to the foot" of what covers is to the square foot. */
const ratioPer = ({ unit: of, per }: Ratio, unit: string) =>
  per === 'ft' && of === 'each' && unit === 'sq ft' ? 'sq ft' : per;

/** "Cartons have 18 feet in them", "a pail does 1000 feet": of what covers, square feet. */
const COVERED = /^(?:box|case|carton|bag|bundle|pack|pail|bucket|can|tin|gal|quart|L|tub|kit)$/;

/** A bare "11.5 to the box" is in what the goods are measured by; a bare whole number of sized tile or screws is pieces. */
function nullUnit(work: Work, ratio: Ratio, unit: string): string {
  const packed = /^(?:box|case|carton|pack|bundle|pallet|bucket)$/.test(ratio.per);
  if (packed && ((work.goods.sides !== null && ratio.value.d === 1n) || /screw/.test(work.goods.item))) return 'each';
  // "Sheets are a square foot, five to a box": of sheets.
  const bySheet =
    /tile|mosaic|hex|penny/.test(work.goods.item) && work.ratios.some((r) => r.per === 'sheet' && r.unit === 'sq ft');
  if (packed && bySheet && ratio.value.d === 1n) return 'sheet';
  if (ratio.per === 'roll' && /tape/.test(work.goods.item)) return 'ft';
  // "Four and a half to the square foot, pallet's 480": of pieces.
  const pieces = work.ratios.some((r) => r.unit === 'each' && /^sq /.test(r.per));
  if (packed && pieces && ratio.value.d === 1n) return 'each';
  return unit === 'sq ft' && work.metric ? 'sq m' : unit;
}
