import type Fraction from 'fraction.js';
import { singular } from '../../trade/vocabulary.ts';
import type { Material, MaterialStatus, Quantity } from '../../types.ts';
import { type Chunk, isGoods } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { base } from '../make.ts';
import { phrase, type Talk } from '../talk.ts';
import { fateOf, goodsStatus, speaksOf } from './fate.ts';
import { type Lot, lotsIn, nameOf } from './lots.ts';
import type { Told } from './meant.ts';

/**
 * What is needed, on hand, used, bought or gone back. Also answers which quantities were goods' counts and sizes,
 * so that they are not read as measurements.
 */
export function readMaterials(talk: Talk): { facts: Material[]; used: Set<Quantity> } {
  const used = new Set<Quantity>();
  const facts: Material[] = [];
  const told: Told[] = [];
  let list: OpenList | null = null;
  talk.frames.forEach((frame, at) => {
    const own = goodsStatus(talk, frame, at);
    const status: MaterialStatus | null = own ?? (list && continues(talk, list, frame, at) ? list.status : null);
    const lots = lotsIn(talk, frame, at, status !== null, list?.heading === true, told);
    for (const lot of lots) {
      // A size in front of goods is theirs even where nobody counts them: "the half inch drywall".
      for (const q of lot.sizes) if (lot.item[0] && q.start < lot.item[0].start) used.add(q);
      const again =
        lot.carried &&
        status === null &&
        /\b(?:altogether|in all|total)\b/.test(talk.text.slice(frame.start, frame.end));
      const fate: MaterialStatus | null = again ? (facts.at(-1)?.status ?? null) : fateOf(frame, lot, status);
      if (fate === null || fate === 'mentioned' || !speaksOf(frame, lot, fate)) continue;
      for (const q of [lot.amount, lot.upper, ...lot.sizes]) if (q) used.add(q);
      const fact = materialOf(talk, frame, lot, fate);
      if (fact && isSizeAlone(fact) && addsSize(facts, fact, frame, talk)) continue;
      if (fact) {
        keep(facts, fact, lot);
        told.push({ item: lot.item, at, unit: fact.unit });
      }
    }
    list = listAfter(talk, frame, at, own, status, list);
  });
  return { facts, used };
}

/** What became of the goods being listed, and where the list was opened. */
interface OpenList {
  status: MaterialStatus;
  sentence: number;
  /** Opened by a heading alone ("need:", "paint store:"), so that it runs on over lines. */
  heading: boolean;
}

/** "Need:", "shopping list", "paint store:": what follows is to buy. */
const TO_BUY =
  /^(?:(?:still )?(?:need|needs|needed)|to (?:buy|get|order)|(?:shopping|buy|material|materials|pickup|order|store|supply) ?(?:list|run)?|supplies|materials?|order|buy|get|pick up|grab|bring)$/;
const USED_UP = /^(?:used|used up|installed|put in)$/;

/** The list that stands open after a clause. */
function listAfter(
  talk: Talk,
  frame: Frame,
  at: number,
  own: MaterialStatus | null,
  status: MaterialStatus | null,
  list: OpenList | null,
): OpenList | null {
  const said = frame.chunks.map((c) => c.word).join(' ');
  const colon = talk.text.slice(frame.end, talk.frames[at + 1]?.start).includes(':');
  const shop =
    colon &&
    frame.chunks.length <= 3 &&
    frame.chunks.at(-1)?.term?.kind === 'role' &&
    /store|yard|supply|shop|counter|merchant/.test(said);
  if ((TO_BUY.test(said) && (colon || endsLine(talk, frame, at))) || shop)
    return { status: 'need', sentence: frame.sentence, heading: true };
  if (USED_UP.test(said) && colon) return { status: 'used', sentence: frame.sentence, heading: true };
  if (own) return { status: own, sentence: frame.sentence, heading: list?.heading === true && status === list.status };
  if (list?.heading && status === list.status) return list;
  return frame.predicate !== 'none' && !/^that's$/.test(frame.chunks[0]!.word) ? null : list;
}

const endsLine = (talk: Talk, frame: Frame, at: number) =>
  at + 1 < talk.frames.length && /\n/.test(talk.text.slice(frame.end, talk.frames[at + 1]!.start));

/** Whether a clause goes on with the list: the next goods behind a comma, or the next line of a list under a heading. */
function continues(talk: Talk, list: OpenList, frame: Frame, at: number): boolean {
  if (frame.predicate !== 'none') return false;
  const sameLine = list.sentence === frame.sentence;
  if (sameLine && frame.joinedBy !== 'stop' && frame.joinedBy !== 'word') return true;
  if (!list.heading) return false;
  const between = talk.text.slice(talk.frames[at - 1]?.end ?? 0, frame.start);
  return sameLine || (/\n/.test(between) && !/\n\s*\n/.test(between) && opensWithGoods(frame));
}

/** A line of a list: "2 boxes screws", "- caulk, white". */
const opensWithGoods = (frame: Frame) => {
  const head = frame.chunks.find((c) => c.kind !== 'mark');
  return head !== undefined && (head.kind === 'quantity' || isGoods(head) || head.term?.kind === 'finish');
};

/** A lot that is nothing but a size: the `2x6` of "need 40 more, 2x6". */
const isSizeAlone = (fact: Material) =>
  fact.quantity === null && fact.size !== null && fact.item.replaceAll(' by ', 'x') === fact.size;

/** Gives the goods told just before, in the same sentence, their size. */
function addsSize(facts: readonly Material[], fact: Material, frame: Frame, talk: Talk): boolean {
  const before = facts.at(-1);
  if (!before || before.size !== null || before.quantity === null || frame.joinedBy !== 'comma') return false;
  if (/[.;!?\n]/.test(talk.text.slice(before.end, fact.start))) return false;
  before.size = fact.size;
  return true;
}

/** Adds a fact; a count behind its goods ("levelling compound, two bags") completes the fact before it. */
function keep(facts: Material[], fact: Material, lot: Lot): void {
  // "Three or four bags more" are of what came by the bag, not of what was named last.
  const packed =
    lot.carried && lot.amount?.unitKind === 'pack' ? facts.findLast((f) => f.unit === fact.unit) : undefined;
  if (packed) Object.assign(fact, { item: packed.item, size: packed.size, specs: packed.specs });
  const before = facts.findLast((f) => f.item === fact.item || fact.item.endsWith(` ${f.item}`));
  if (lot.carried && before) {
    if (fact.unit === 'each' && before.unit && lot.amount?.unit !== 'each') fact.unit = before.unit;
    if (before.quantity === null && before.status === fact.status) {
      Object.assign(before, {
        quantity: fact.quantity,
        exact: fact.exact,
        atLeast: fact.atLeast,
        unit: fact.unit,
        size: before.size ?? fact.size,
      });
      return;
    }
  }
  // "Lock sticks, needs graphite. ... Need a tube of graphite": the count makes the bare mention whole.
  const bare = facts.findIndex((f) => f.item === fact.item && f.status === fact.status && f.quantity === null);
  if (bare >= 0 && fact.quantity !== null && fact.status === 'need') facts.splice(bare, 1);
  facts.push(fact);
}

function materialOf(talk: Talk, frame: Frame, lot: Lot, status: MaterialStatus): Material | null {
  const goods = nameOf(lot.item);
  const item = named(phrase(goods));
  if (!item) return null;
  const unit = lot.upper?.unit ?? lot.amount?.unit ?? null;
  const value: Fraction | null = lot.upper?.value ?? lot.amount?.value ?? null;
  const first = frame.chunks[lot.from]!;
  const last = frame.chunks[Math.max(lot.until - 1, lot.from)]!;
  const from = lot.amount?.takenBackFrom ?? first.start;
  const quantity = value ? value.valueOf() : lot.article ? 1 : null;
  const nominal = nominalOf(talk, goods.findLast(isGoods));
  return {
    ...base(
      talk,
      frame,
      `material/${status}`,
      { start: Math.min(from, first.start), end: last.end },
      lot.carried ? 0.65 : 0.8,
    ),
    kind: 'material',
    item,
    size: lot.code ?? (lot.sizes.length ? sizeText(lot.sizes) : nominal),
    specs: goods.filter((c) => c.kind === 'term' && c.term!.kind === 'finish').map((c) => c.word),
    quantity,
    exact: value ? value.toFraction() : lot.article ? '1' : null,
    atLeast: lot.upper && lot.amount ? lot.amount.value.valueOf() : null,
    unit: quantity === null ? null : (lot.pack ?? asSaid(unit, talk.text.slice(first.start, last.end))),
    status,
    counts: lot.more
      ? 'more'
      : (frame.lemma === 'make' && frame.predicate === 'imperative') ||
          /\b(altogether|total|in all|make (?:it|that))\b/.test(talk.text.slice(frame.start, frame.end))
        ? 'total'
        : 'plain',
  };
}

/** Goods whose name is their size: `2x6`, or `2x10x12` with the length. */
function nominalOf(talk: Talk, chunk: Chunk | undefined): string | null {
  if (!chunk || !/^\d/.test(chunk.term!.name)) return null;
  const figures = talk.reading.quantities.filter((q) => q.start >= chunk.start && q.end <= chunk.end);
  return figures.length === 3 ? figures.map((q) => q.value.toFraction()).join('x') : chunk.term!.name;
}

/** Yards of gravel are cubic, but stand on the order as they were said. */
const asSaid = (unit: string | null, said: string) =>
  unit === 'cu yd' && !/\bcu/i.test(said) ? 'yd' : (unit ?? 'each');

/** The item's name in the singular, as it stands on an order. */
const named = (words: string) => words.replace(/[a-z]+$/, singular);

/** Sizes as the trade writes them: `12x24`, `1-1/2 in`, `20 A`, `3-1/4 in x 12 ft`. */
function sizeText(sizes: readonly Quantity[]): string {
  const number = (q: Quantity) => {
    const mixed = q.value.toFraction(true).replace(' ', '-');
    return q.value.d <= 64n ? mixed : String(q.value.valueOf());
  };
  const [first, second] = sizes;
  if (first && second && first.group && first.group.id === second.group?.id) return sizes.map(number).join('x');
  return sizes.map((q) => (q.unit ? `${number(q)} ${q.unit}` : number(q))).join(' x ');
}
