import type Fraction from 'fraction.js';
import { singular } from '../trade/vocabulary.ts';
import type { Material, MaterialStatus, Quantity } from '../types.ts';
import { type Chunk, isDeterminer, isGoods, isNounTerm, isPreposition } from './chunks.ts';
import type { Frame } from './frames.ts';
import { goodsStatus } from './goods.ts';
import { base } from './make.ts';
import { isSize, lastGoods, nounPhraseFrom, phrase, type Talk } from './talk.ts';

/** Goods named in one place, before anyone asks what became of them. */
interface Lot {
  /** Chunks of the item's name. */
  item: Chunk[];
  sizes: Quantity[];
  amount: Quantity | null;
  /** "a new ring": one, said by the article. */
  article: boolean;
  /** Cable by its code, `12/2`. */
  code?: string;
  upper: Quantity | null;
  more: boolean;
  from: number;
  until: number;
  /** The item was not named here but earlier ("one bag of those"). */
  carried: boolean;
}

const isCount = (q: Quantity) => q.unit === null || q.unit === 'each' || q.unit === 'pair' || q.unit === 'dozen';
const isPack = (q: Quantity) => q.unitKind === 'pack' || (q.unitKind === 'count' && !isCount(q));
const isBulk = (q: Quantity) =>
  q.unitKind === 'volume' ||
  q.unitKind === 'weight' ||
  (q.unitKind === 'area' && q.unitFrom === 'said') ||
  (q.unitKind === 'length' && (q.unit === 'ft' || q.unit === 'm' || q.unit === 'yd'));

/**
 * What is needed, on hand, used, bought or gone back. Also answers which quantities were goods' counts and sizes,
 * so that they are not read as measurements.
 */
export function readMaterials(talk: Talk): { facts: Material[]; used: Set<Quantity> } {
  const used = new Set<Quantity>();
  const facts: Material[] = [];
  let carried: { status: MaterialStatus; sentence: number } | null = null;
  talk.frames.forEach((frame, at) => {
    const own = goodsStatus(talk, frame, at);
    const continues: boolean =
      carried !== null &&
      frame.predicate === 'none' &&
      carried.sentence === frame.sentence &&
      frame.joinedBy !== 'stop' &&
      frame.joinedBy !== 'word';
    const status: MaterialStatus | null = own ?? (continues ? carried!.status : null);
    const lots = lotsIn(talk, frame, at, status !== null && frame.predicate !== 'copula');
    for (const lot of lots) {
      for (const q of lot.sizes) used.add(q);
      const again =
        lot.carried &&
        status === null &&
        /\b(?:altogether|in all|total)\b/.test(talk.text.slice(frame.start, frame.end));
      const fate: MaterialStatus | null = again ? (facts.at(-1)?.status ?? null) : fateOf(frame, lot, status);
      if (fate === null || fate === 'mentioned' || !speaksOf(frame, lot, fate)) continue;
      for (const q of [lot.amount, lot.upper]) if (q) used.add(q);
      const fact = materialOf(talk, frame, lot, fate);
      if (fact) keep(facts, fact, lot);
    }
    if (own) carried = { status: own, sentence: frame.sentence };
    else if (frame.predicate !== 'none' && !/^that's$/.test(frame.chunks[0]!.word)) carried = null;
  });
  return { facts, used };
}

/** Goods that the verb speaks of: behind it, counted or by article; not its subject, nor where a thing is ("under the sink"). */
function speaksOf(frame: Frame, lot: Lot, fate: MaterialStatus): boolean {
  const counted = lot.amount !== null || lot.article;
  const inSubject =
    frame.verbAt >= 0 && lot.until <= frame.verbAt && frame.predicate !== 'copula' && frame.predicate !== 'none';
  const paid = fate === 'bought' && lot.amount !== null && frame.chunks[frame.verbAt + 1]?.word === 'me';
  if (inSubject && !paid && !(lot.amount && /^(?:left|gone|short)$/.test(frame.chunks[lot.until]?.word ?? '')))
    return false;
  if (counted) return true;
  // "Thermostat wire too short", "filters changed": said of the goods, not of buying them.
  if (
    lot.item.some(
      (c) =>
        c.term?.kind === 'defect' ||
        c.word === 'too' ||
        c.word === 'all' ||
        (c.verb && !c.verb.forms.has('base') && !isNounTerm(c)),
    )
  )
    return false;
  if (fate === 'used' || fate === 'have') return false;
  const before = frame.chunks[lot.from - 1];
  return !(isPreposition(before) && before!.word !== 'of' && before!.word !== 'up');
}

/** Adds a fact; a count behind its goods ("levelling compound, two bags") completes the fact before it. */
function keep(facts: Material[], fact: Material, lot: Lot): void {
  // "Three or four bags more" are of what came by the bag, not of what was named last.
  const packed =
    lot.carried && lot.amount?.unitKind === 'pack' ? facts.findLast((f) => f.unit === fact.unit) : undefined;
  if (packed) Object.assign(fact, { item: packed.item, size: packed.size, specs: packed.specs });
  const before = facts.findLast((f) => f.item === fact.item);
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
  facts.push(fact);
}

/** "1 roll left", "2 short", "x4 missing" decide for their own lot, whatever the clause's verb says. */
function fateOf(frame: Frame, lot: Lot, status: MaterialStatus | null): MaterialStatus | null {
  const after = frame.chunks[lot.until]?.word;
  const before = frame.chunks[lot.from - 1]?.word;
  if (after === 'left' || after === 'leftover' || (after === 'on' && frame.chunks[lot.until + 1]?.word === 'hand'))
    return 'have';
  if (after === 'gone' || after === 'used') return 'used';
  if (after === 'extra') return 'have';
  if (after === 'short' && lot.amount && isCount(lot.amount)) return 'need';
  if (before === 'short' || before === 'shy') return 'need';
  return status;
}

function lotsIn(talk: Talk, frame: Frame, at: number, bare: boolean): Lot[] {
  const { chunks } = frame;
  const lots: Lot[] = [];
  for (let k = 0; k < chunks.length; ) {
    const lot = lotAt(talk, chunks, k, at, bare);
    if (lot) {
      lots.push(lot);
      k = lot.until;
    } else k++;
  }
  return lots;
}

function lotAt(talk: Talk, chunks: readonly Chunk[], k: number, at: number, bare: boolean): Lot | null {
  const chunk = chunks[k]!;
  const q = chunk.quantity;
  // "Make it 3, not 2": the figure that no longer holds.
  if (q && chunks[k - 1]?.word === 'not') return null;
  if (q?.group?.kind === 'eachOf') return q.group.index === 0 ? spreadLot(talk, chunks, k, at, q) : null;
  if (q && (isPack(q) || isBulk(q) || isCount(q))) return countedLot(talk, chunks, k, at, q, bare);
  if (q && isSize(chunk)) return namedLot(chunks, k, bare);
  if (isDeterminer(chunk) && /^(a|an|another|some|any|the|no)$/.test(chunk.word)) {
    const end = nounPhraseFrom(chunks, k + 1);
    const inner = chunks.slice(k + 1, end);
    if (!inner.some(isGoods) || (inner[0]?.quantity && !isSize(inner[0]))) return null;
    const lot = namedLot(chunks, k + 1, bare);
    return lot && { ...lot, from: k, article: /^(a|an|another)$/.test(chunk.word), more: chunk.word === 'another' };
  }
  if (isGoods(chunk) || (chunk.kind === 'term' && chunk.term!.kind === 'finish')) return namedLot(chunks, k, bare);
  return null;
}

/** "Two and a half bags of thinset", "(1) 20A breaker", "ten more jacks", "one bag of those", "x3". */
function countedLot(
  talk: Talk,
  chunks: readonly Chunk[],
  k: number,
  at: number,
  amount: Quantity,
  known: boolean,
): Lot | null {
  let i = k + 1;
  let upper: Quantity | null = null;
  // "three or four bags", "two by two": the range's second end, which carries the unit.
  if (chunks[i]?.quantity?.group && amount.group && chunks[i]!.quantity!.group!.id === amount.group.id)
    upper = chunks[i++]!.quantity!;
  else if (
    /^(or|to|-|–)$/.test(chunks[i]?.word ?? '') &&
    amount.group?.kind === 'range' &&
    chunks[i + 1]?.quantity?.group?.id === amount.group.id
  ) {
    upper = chunks[i + 1]!.quantity!;
    i += 2;
  }
  let more = false;
  while (
    chunks[i] &&
    /^(more|extra|additional|other|of|the|a|an|new|full|good|whole|them|these|those|that|my|our|big|small|little|spare|partial)$/.test(
      chunks[i]!.word,
    )
  ) {
    if (chunks[i]!.word === 'more' || chunks[i]!.word === 'extra') more = true;
    if (
      /^(those|them|these|that)$/.test(chunks[i]!.word) &&
      !isNounTerm(chunks[i + 1]) &&
      chunks[i + 1]?.kind !== 'quantity'
    )
      break;
    i++;
  }
  const end = nounPhraseFrom(chunks, i);
  const phraseChunks = chunks.slice(i, end);
  const goods = phraseChunks.some(isGoods);
  const pack = isPack(upper ?? amount);
  const words = phraseChunks.some(
    (c) =>
      (c.kind === 'word' && /^[a-z]{3,}/.test(c.word) && !NOT_GOODS.test(c.word)) ||
      (c.kind === 'term' && !/^(?:area|role|task|defect)$/.test(c.term!.kind)),
  );
  const named =
    goods ||
    (words && pack) ||
    (words && isBulk(amount) && (chunks[i - 1]?.word === 'of' || (known && amount.unitKind !== 'length'))) ||
    // Goods that the vocabulary lacks, where the clause says what became of them: "need 5 rotors".
    (words &&
      known &&
      isCount(upper ?? amount) &&
      phraseChunks.length <= 3 &&
      !phraseChunks.some((c) => c.term?.kind === 'area' || c.term?.kind === 'role'));
  const code = chunks[i]?.notQuantity?.kind === 'code' && /^\d+[-/]\d$/.test(chunks[i]!.word) ? chunks[i]! : null;
  if (code)
    return {
      item: [{ ...code, kind: 'word', word: 'cable' }],
      sizes: [],
      code: code.word,
      amount,
      upper,
      article: false,
      more,
      from: k,
      until: i + 1,
      carried: false,
    };
  if (!named) {
    const following = chunks[i];
    const pointing =
      (following && /^(those|them|these|that|left|gone|used|more|short|of|extra|back)$/.test(following.word)) ||
      (known && isCount(amount) && (following === undefined || following.kind === 'mark' || following.kind === 'time'));
    if (!pack && !more && !pointing && !(isCount(amount) && /^(x|qty|\()/.test(amount.quote))) return null;
    if (isBulk(amount) && !pack && !pointing) return null;
    const past = lastGoods(talk, at, amount.start);
    if (!past.length) return null;
    return {
      item: past.filter((c) => c.kind !== 'quantity'),
      sizes: past.flatMap((c) => (c.quantity ? [c.quantity] : [])),
      amount,
      upper,
      article: false,
      more,
      from: k,
      until: i + (following && /^(those|them|these|that)$/.test(following.word) ? 1 : 0),
      carried: true,
    };
  }
  const { item, sizes, until } = nameAndSizes(chunks, i);
  return { item, sizes, amount, upper, article: false, more, from: k, until, carried: false };
}

const NOT_GOODS =
  /^(?:guys?|people|men|women|times?|trips?|hours?|days?|weeks?|coats?|more|other|others|left|weeks|things?|kids?|rooms?|spots?|places?|way|ways|side|sides|feet|each|total|percent|years?|drops?)$/;

/** "Sash locks are on, two on each of the four windows": eight of what was just named. */
function spreadLot(talk: Talk, chunks: readonly Chunk[], k: number, at: number, each: Quantity): Lot | null {
  const times = chunks.findIndex((c, i) => i > k && c.quantity?.group?.id === each.group!.id);
  if (times < 0) return null;
  const next = chunks[k + 1];
  const own = next && isGoods(next) ? chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)) : [];
  const item = own.length ? own : lastGoods(talk, at, each.start);
  if (!item.length) return null;
  const amount: Quantity = {
    ...each,
    value: each.value.mul(chunks[times]!.quantity!.value),
    unit: each.unit ?? 'each',
  };
  return {
    item: item.filter((c) => c.kind !== 'quantity'),
    sizes: [],
    amount,
    upper: null,
    article: false,
    more: false,
    from: k,
    until: nounPhraseFrom(chunks, times + 1),
    carried: !own.length,
  };
}

/** Goods without a count before them: `9" roller covers x3`, "light gray grout", "220 grit sponges qty 6". */
function namedLot(chunks: readonly Chunk[], k: number, bare: boolean): Lot | null {
  const { item, sizes, until } = nameAndSizes(chunks, k);
  if (!item.some(isGoods)) return null;
  let i = until;
  let amount: Quantity | null = null;
  while (chunks[i] && /^(,|\(|qty|:)$/.test(chunks[i]!.word)) i++;
  const trailing = chunks[i]?.quantity;
  const counts = trailing && isCount(trailing) && (/^(x|qty|\(|×)/i.test(trailing.quote) || trailing.unit === 'each');
  if (trailing && (counts || trailing.takenBackFrom !== undefined)) amount = trailing;
  else i = until;
  if (!amount && !bare) return null;
  return {
    item,
    sizes,
    amount,
    upper: null,

    article: false,
    more: false,
    from: k,
    until: amount ? i + 1 : until,
    carried: false,
  };
}

/** Splits a noun phrase into the item's name and its sizes, before or after it ("slip joint washer inch and a half"). */
function nameAndSizes(chunks: readonly Chunk[], at: number): { item: Chunk[]; sizes: Quantity[]; until: number } {
  let end = nounPhraseFrom(chunks, at);
  // "box of screws, two inch", "washers for the sink": a preposition ends the name; "roll of tape" was counted.
  if (chunks[end]?.word === 'of' && end > at && isGoods(chunks[end + 1])) end = nounPhraseFrom(chunks, end + 1);
  const inner = chunks.slice(at, end);
  // A count inside ("two flappers three washers") begins the next lot.
  // "A gallon of primer, no wait, two gallons": the figure that now holds is its count.
  const restated = inner.findIndex((c, k) => k > 0 && c.quantity?.takenBackFrom !== undefined);
  const cut =
    restated > 0
      ? restated
      : inner.findIndex(
          (c, k) =>
            k > 0 &&
            c.quantity &&
            !isSize(c) &&
            !/^(x|qty|\()/i.test(c.quantity.quote) &&
            inner.slice(0, k).some(isGoods),
        );
  const own = cut > 0 ? inner.slice(0, cut) : inner;
  const lastNoun = own.findLastIndex((c) => isGoods(c) || isNounTerm(c));
  const until = at + own.length;
  const trimmed = own.filter((c, k) => !(c.quantity && !isSize(c)) || k < lastNoun);
  const countAfter = own.findIndex((c, k) => k > lastNoun && lastNoun >= 0 && c.quantity && !isSize(c));
  return {
    item: trimmed.filter((c) => c.kind !== 'quantity'),
    sizes: trimmed.flatMap((c) => (c.quantity && isSize(c) ? [c.quantity] : [])),
    until: countAfter >= 0 ? at + countAfter : until,
  };
}

function materialOf(talk: Talk, frame: Frame, lot: Lot, status: MaterialStatus): Material | null {
  const goods = lot.item.filter((c) => !(c.kind === 'word' && isPreposition(c)));
  const item = named(phrase(goods));
  if (!item) return null;
  const unit = lot.upper?.unit ?? lot.amount?.unit ?? null;
  const value: Fraction | null = lot.upper?.value ?? lot.amount?.value ?? null;
  const first = frame.chunks[lot.from]!;
  const last = frame.chunks[Math.max(lot.until - 1, lot.from)]!;
  const from = lot.amount?.takenBackFrom ?? first.start;
  const quantity = value ? value.valueOf() : lot.article ? 1 : null;
  const term = goods.findLast(isGoods)?.term;
  const nominal = term && /^\d/.test(term.name) ? term.name : null;
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
    unit: quantity === null ? null : asSaid(unit, talk.text.slice(first.start, last.end)),
    status,
    counts: lot.more
      ? 'more'
      : (frame.lemma === 'make' && frame.predicate === 'imperative') ||
          /\b(altogether|total|in all|make (?:it|that))\b/.test(talk.text.slice(frame.start, frame.end))
        ? 'total'
        : 'plain',
  };
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
