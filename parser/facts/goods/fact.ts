import type Fraction from 'fraction.js';
import { singular } from '../../trade/vocabulary.ts';
import type { Material, MaterialStatus, Quantity } from '../../types.ts';
import { type Chunk, isGoods, isNominal } from '../chunks.ts';
import { isSpoiled } from '../flaws/spoiled.ts';
import type { Frame } from '../frames.ts';
import { base } from '../make.ts';
import { phrase, type Talk } from '../talk.ts';
import type { Naming, Placed } from './naming.ts';
import { nameOf } from './phrases.ts';
import { NOT_BOUGHT } from './words.ts';

/** Adds a fact; a count behind its goods ("levelling compound, two bags") completes the fact before it. */
export function keep(facts: Material[], fact: Material, naming: Naming): void {
  const before = facts.findLast((f) => f.item === fact.item || fact.item.endsWith(` ${f.item}`));
  if (!naming.own && before) {
    if (fact.unit === 'each' && before.unit && before.unit !== 'each' && before.quantity !== null)
      fact.unit = before.unit;
    if (before.quantity === null && before.status === fact.status) {
      Object.assign(before, {
        quantity: fact.quantity,
        exact: fact.exact,
        atLeast: fact.atLeast,
        unit: fact.unit,
        size: before.size ?? fact.size,
        end: Math.max(before.end, fact.end),
      });
      return;
    }
  }
  // "Lock sticks, needs graphite. ... Need a tube of graphite": the count makes the bare mention whole.
  const bare = facts.findIndex((f) => f.item === fact.item && f.status === fact.status && f.quantity === null);
  if (bare >= 0 && fact.quantity !== null && fact.status === 'need') facts.splice(bare, 1);
  facts.push(fact);
}

/** A lot as a fact; null where its name holds no word that could stand on an order. */
export function materialOf(
  talk: Talk,
  frame: Frame,
  { lot }: Placed,
  naming: Naming,
  status: MaterialStatus,
  confidence: number,
): Material | null {
  const named = nameOf(naming.chunks);
  const sound = named.slice(
    Math.max(
      named.findIndex((c) => !isSpoiled(c.word)),
      0,
    ),
  );
  // "I've got four busted tiles" tells what is amiss, and of no stock.
  const stands =
    status === 'have' ||
    (status !== 'need' && (/^(?:get|have)$/.test(frame.lemma ?? '') || frame.predicate === 'copula'));
  if (sound.length < named.length && naming.own && stands) return null;
  const { goods, nominal: section } = sizeApart(sound);
  const nominal = section ?? (naming.own ? sizeApart(lot.own).nominal : undefined);
  const item = fullName(talk, inSingular(phrase(goods.length === 1 ? goods.map(inFigures) : goods)), naming);
  if (!item || NOT_BOUGHT.test(item) || COAT.test(item)) return null;
  const unit = lot.upper?.unit ?? lot.amount?.unit ?? null;
  const value: Fraction | null = lot.upper?.value ?? lot.amount?.value ?? null;
  const first = frame.chunks[lot.from]!;
  const last = frame.chunks[Math.max(lot.until - 1, lot.from)]!;
  const from = lot.amount?.takenBackFrom ?? first.start;
  // "A pair of brackets" is two; what the counter sells by the pair is one pair.
  const two = unit === 'pair' && value!.equals(1) && !goods.at(-1)?.term?.soldBy?.includes('pair');
  const quantity = two ? 2 : value ? value.valueOf() : lot.article || null;
  return {
    ...base(
      talk,
      frame,
      `material/${status}`,
      { start: Math.min(from, first.start), end: Math.max(last.end, naming.end ?? 0, lot.amount?.end ?? 0) },
      Math.round(confidence * 100) / 100,
    ),
    kind: 'material',
    item,
    size:
      naming.code ??
      (naming.sizes.length ? sizesText(naming.sizes) : nominalOf(talk, nominal ?? goods.findLast(isGoods))),
    specs: goods.filter((c) => c.kind === 'term' && c.term!.kind === 'finish').map((c) => c.word),
    quantity,
    exact: two ? '2' : value ? value.toFraction() : lot.article ? String(lot.article) : null,
    atLeast: lot.upper && lot.amount ? lot.amount.value.valueOf() : null,
    unit: quantity === null ? null : (lot.pack ?? asSaid(two ? 'each' : unit, talk.text.slice(first.start, last.end))),
    status,
    counts: lot.more
      ? 'more'
      : (frame.lemma === 'make' && frame.predicate === 'imperative') ||
          /\b(altogether|total|in all|make (?:it|that))\b/.test(talk.text.slice(frame.start, frame.end))
        ? 'total'
        : 'plain',
  };
}

/** "Three nine inch covers" in talk of paint are for rollers. */
const fullName = ({ text }: Talk, item: string, { sizes }: Naming): string =>
  item === 'cover' && sizes.length > 0 && /\b(?:nap|rollers?|paint|primer|prime)\b/i.test(text) ? 'roller cover' : item;

/** A coat is work, whatever of: "another coat and paint". */
const COAT = /^coats?\b(?! (?:hook|rack|rod|hanger|tree|closet))/;

/** Timber told by its section alone goes by its figures, however it was said: "two by fours" are `2x4`. */
const inFigures = (c: Chunk): Chunk =>
  c.term && / by /.test(c.word) && isNominal(c.term.name) ? { ...c, word: c.term.name } : c;

/** "Post bases 6x6", "hangers 2x8": the timber that goods are for is their size. */
function sizeApart(goods: readonly Chunk[]): { goods: readonly Chunk[]; nominal: Chunk | undefined } {
  const last = goods.at(-1);
  const isSize = last?.term !== undefined && isNominal(last.term.name) && goods.slice(0, -1).some(isGoods);
  return isSize ? { goods: goods.slice(0, -1), nominal: last } : { goods, nominal: undefined };
}

/** Goods whose name is their size: `2x6`, or `2x10x12` with the length. */
function nominalOf(talk: Talk, chunk: Chunk | undefined): string | null {
  if (!chunk || !isNominal(chunk.term!.name)) return null;
  const figures = talk.reading.quantities.filter((q) => q.start >= chunk.start && q.end <= chunk.end);
  if (chunk.term!.name === 'five quarter') return ['5/4', ...figures.map((q) => q.value.toFraction())].join('x');
  return figures.length === 3 ? figures.map((q) => q.value.toFraction()).join('x') : chunk.term!.name;
}

/** Yards of gravel are cubic, but stand on the order as they were said. */
const asSaid = (unit: string | null, said: string) =>
  unit === 'cu yd' && !/\bcu/i.test(said) ? 'yd' : (unit ?? 'each');

/** The item's name in the singular, as it stands on an order. */
const inSingular = (words: string) => words.replace(/[a-z0-9]+$/, singular);

/** Sizes as the trade writes them: `12x24`, `2x3 ft`, `1-1/2 in`, `20 A`, `3-1/4 in x 12 ft`, `4x8 x 3/4 in`. */
export function sizesText(sizes: readonly Quantity[]): string {
  const number = (q: Quantity) => {
    const mixed = q.value.toFraction(true).replace(' ', '-');
    return q.value.d <= 64n ? mixed : String(q.value.valueOf());
  };
  const told: string[] = [];
  for (let k = 0; k < sizes.length; ) {
    const of = sizes[k]!.group?.id;
    const next = sizes.findIndex((q, j) => j > k && (of === undefined || q.group?.id !== of));
    const figures = sizes.slice(k, next < 0 ? sizes.length : next);
    const [{ unit }] = figures as [Quantity, ...Quantity[]];
    // Sides are inches or millimetres where nobody says otherwise.
    const shown = figures.length === 1 ? unit : figures.every((q) => q.unit === unit && /^(?:ft|m)$/.test(unit ?? ''));
    told.push(`${figures.map(number).join('x')}${shown ? ` ${unit}` : ''}`);
    k += figures.length;
  }
  return told.join(' x ');
}
