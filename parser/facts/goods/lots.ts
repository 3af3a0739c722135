import type { Quantity } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm, isPreposition } from '../chunks.ts';
import type { Frame } from '../frames.ts';
import { isSize, nounPhraseFrom, type Talk } from '../talk.ts';
import { goodsMeant, type Told } from './meant.ts';

/** Goods named in one place, before anyone asks what became of them. */
export interface Lot {
  /** Chunks of the item's name. */
  item: Chunk[];
  sizes: Quantity[];
  amount: Quantity | null;
  /** "a new ring", "a 5 kg bag": one, said by the article. */
  article: boolean;
  /** What it comes by where no figure says so: the bag in "a 5 kg bag". */
  pack?: string;
  /** Cable by its code, `12/2`. */
  code?: string;
  upper: Quantity | null;
  more: boolean;
  from: number;
  until: number;
  /** The item was not named here but earlier ("one bag of those"). */
  carried: boolean;
}

export const isCount = (q: Quantity) => q.unit === null || q.unit === 'each' || q.unit === 'pair' || q.unit === 'dozen';
const isPack = (q: Quantity) => q.unitKind === 'pack' || (q.unitKind === 'count' && !isCount(q));
const isBulk = (q: Quantity) =>
  q.unitKind === 'volume' ||
  q.unitKind === 'weight' ||
  (q.unitKind === 'area' && q.unitFrom === 'said') ||
  (q.unitKind === 'length' && (q.unit === 'ft' || q.unit === 'm' || q.unit === 'yd'));

/** Containers that a stated measure is the size of: "a 4 litre tin", "two 50 pound bags". */
const CONTAINER =
  /^(bag|sack|tin|can|tub|bucket|pail|tube|box|carton|roll|coil|spool|bottle|jug|drum|cartridge|sausage|pack|jar)s?$/;

/** What is known of a clause before its goods are looked for. */
interface Ground {
  talk: Talk;
  chunks: readonly Chunk[];
  /** Which clause of the talk. */
  at: number;
  /** The clause says what became of goods, so that words which the vocabulary lacks can be goods. */
  known: boolean;
  /** Goods without a count are meant as well: "need caulk"; not "the fan is on". */
  bare: boolean;
  /** A list under its heading, where every line is goods. */
  listed: boolean;
  /** Goods told before in this note. */
  told: readonly Told[];
}

/** Every lot of goods that a clause names. */
export function lotsIn(
  talk: Talk,
  frame: Frame,
  at: number,
  known: boolean,
  listed: boolean,
  told: readonly Told[],
): Lot[] {
  const { chunks } = frame;
  const ground: Ground = { talk, chunks, at, known, bare: known && frame.predicate !== 'copula', listed, told };
  const lots: Lot[] = [];
  for (let k = 0; k < chunks.length; ) {
    const lot = lotAt(ground, k);
    if (lot) {
      lots.push(lot);
      k = lot.until;
    } else k++;
  }
  return lots;
}

function lotAt(ground: Ground, k: number): Lot | null {
  const { chunks } = ground;
  const chunk = chunks[k]!;
  const q = chunk.quantity;
  // "Make it 3, not 2": the figure that no longer holds.
  if (q && chunks[k - 1]?.word === 'not') return null;
  // "Holder at 650", "ties every sixteen": where, not how many.
  if (
    q &&
    isCount(q) &&
    /^(?:at|to|from|by|every|than|over|under|unit|apt|lot|room|number)$/.test(chunks[k - 1]?.word ?? '')
  )
    return null;
  // "9 kg out of the 15", "22 of 30 posts": the whole, of which the count before was part.
  if (
    q &&
    isCount(q) &&
    chunks.slice(Math.max(0, k - 2), k).some((c) => c.word === 'of') &&
    chunks.slice(Math.max(0, k - 5), k).some((c) => c.quantity)
  )
    return null;
  if (q?.group?.kind === 'eachOf') return q.group.index === 0 ? spreadLot(ground, k, q) : null;
  if (q && isBulk(q) && CONTAINER.test(chunks[k + 1]?.word ?? '')) return containerLot(ground, k, k, null);
  if (q && isCount(q) && isContained(chunks, k + 1)) return containerLot(ground, k, k + 1, q);
  if (q && (isPack(q) || isBulk(q) || isCount(q))) return countedLot(ground, k, q);
  if (q && isSize(chunk)) return namedLot(ground, k);
  if (/^(a|an|another|some|any|the|no|new)$/.test(chunk.word) && chunk.kind === 'word') {
    if (isContained(chunks, k + 1)) return containerLot(ground, k, k + 1, null);
    const end = nounPhraseFrom(chunks, k + 1);
    const inner = chunks.slice(k + 1, end);
    if (!inner.some((c) => isGoods(c) || c.term?.kind === 'tool') || (inner[0]?.quantity && !isSize(inner[0])))
      return null;
    const lot = namedLot(ground, k + 1);
    return lot && { ...lot, from: k, article: isOne(chunks, k), more: chunk.word === 'another' };
  }
  if (isGoods(chunk) || (chunk.kind === 'term' && /^(?:finish|tool)$/.test(chunk.term!.kind)))
    return namedLot(ground, k);
  return null;
}

/** An article, or "new" before one thing ("need new rod"): one of it. */
const isOne = (chunks: readonly Chunk[], k: number) =>
  /^(a|an|another)$/.test(chunks[k]!.word) ||
  (chunks[k]!.word === 'new' && !/s$/.test(chunks[nounPhraseFrom(chunks, k + 1) - 1]?.word ?? ''));

/** True where a measure and the container that holds it stand: `4 litre tin`. */
const isContained = (chunks: readonly Chunk[], k: number) =>
  chunks[k]?.quantity !== undefined &&
  isBulk(chunks[k]!.quantity!) &&
  chunks[k]!.quantity!.group === undefined &&
  CONTAINER.test(chunks[k + 1]?.word ?? '');

/** "A 4 litre tin of the merbau oil", "two 50 pound bags of sand": the measure is the size, the container the unit. */
function containerLot(ground: Ground, from: number, measure: number, amount: Quantity | null): Lot {
  const { talk, chunks, at } = ground;
  const pack = chunks[measure + 1]!.word.replace(/s$/, '');
  let k = measure + 2;
  while (/^(?:of|the|that|this|our)$/.test(chunks[k]?.word ?? '')) k++;
  const own = nameAndSizes(chunks, k);
  const named = own.item.some((c) => isNounTerm(c) || c.kind === 'word');
  const meant = named ? null : goodsMeant(talk, at, chunks[from]!.start, null, ground.told);
  return {
    item: meant ? [...own.item, ...meant.filter((c) => c.kind !== 'quantity')] : own.item,
    sizes: [chunks[measure]!.quantity!, ...own.sizes],
    amount,
    article: amount === null,
    pack,
    upper: null,
    more: /^(?:more|another)$/.test(chunks[from]!.word),
    from,
    until: Math.max(own.until, measure + 2),
    carried: false,
  };
}

/** Words between a count and its goods that name nothing. */
const PADDING =
  /^(more|extra|additional|other|of|the|a|an|new|full|good|whole|them|these|those|that|my|our|big|small|little|spare|partial|like|em|'em|it|number)$/;
const POINTERS = /^(those|them|these|that|each|em|'em|it)$/;
/** What may stand behind a count whose goods were named before: "1 left", "20 back", "two short". */
const STANDS_ALONE =
  /^(those|them|these|that|em|'em|it|left|gone|used|more|short|of|extra|back|spare|over|wanted|needed|installed|fitted|total|altogether|here|there|still|each|apiece)$/;

/** "Two and a half bags of thinset", "(1) 20A breaker", "ten more jacks", "one bag of those", "x3". */
function countedLot(ground: Ground, k: number, amount: Quantity): Lot | null {
  const { talk, chunks, at, known } = ground;
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
  let more = amount.more === true || upper?.more === true;
  while (chunks[i] && PADDING.test(chunks[i]!.word)) {
    if (chunks[i]!.word === 'more' || chunks[i]!.word === 'extra') more = true;
    if (POINTERS.test(chunks[i]!.word) && !isNounTerm(chunks[i + 1]) && chunks[i + 1]?.kind !== 'quantity') break;
    i++;
  }
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
  if (!isNamed(chunks, k, i, amount, upper, known)) return unnamedLot(ground, k, i, amount, upper, more);
  const { item, sizes, until } = nameAndSizes(chunks, i);
  // "Two box of the two inch stainless": a finish is no name; it tells which of what was named.
  if (!item.some((c) => isNounTerm(c) || (c.kind === 'word' && !/^(?:single|double)$/.test(c.word)))) {
    const meant = goodsMeant(talk, at, amount.start, upper ?? amount, ground.told);
    if (meant)
      return {
        item: [...item, ...meant.filter((c) => c.kind !== 'quantity')],
        sizes,
        amount,
        upper,
        article: false,
        more,
        from: k,
        until,
        carried: true,
      };
  }
  return { item, sizes, amount, upper, article: false, more, from: k, until, carried: false };
}

/** True where the words behind a count name goods, in the trade's words or in others that can only be goods there. */
function isNamed(
  chunks: readonly Chunk[],
  k: number,
  i: number,
  amount: Quantity,
  upper: Quantity | null,
  known: boolean,
): boolean {
  const name = chunks.slice(i, nounPhraseFrom(chunks, i));
  // "Two chips, the light flickers": a flaw was counted.
  if (name[0]?.term?.kind === 'defect') return false;
  if (name.some(isGoods)) return true;
  const words = name.some(
    (c) =>
      (c.kind === 'word' && /^[a-z]{3,}/.test(c.word) && !NOT_GOODS.test(c.word) && !isDone(c)) ||
      (c.kind === 'term' && !/^(?:area|role|task|defect|surface|work)$/.test(c.term!.kind)),
  );
  if (!words) return false;
  if (isPack(upper ?? amount)) return true;
  if (isBulk(amount))
    return chunks.slice(k + 1, i).some((c) => c.word === 'of') || (known && amount.unitKind !== 'length');
  // Goods that the vocabulary lacks, where the clause says what became of them: "need 5 rotors".
  return (
    known &&
    isCount(upper ?? amount) &&
    name.length <= 3 &&
    !name.some((c) => c.term?.kind === 'area' || c.term?.kind === 'role')
  );
}

/** A bare participle: "6 swapped" names no goods. */
const isDone = (c: Chunk) => c.verb !== undefined && !c.verb.forms.has('base') && /ed$/.test(c.word);

/** A count whose goods were named before: "1 roll left", "need 8", "38 sheets gone", "one bag of those". */
function unnamedLot(
  ground: Ground,
  k: number,
  i: number,
  amount: Quantity,
  upper: Quantity | null,
  more: boolean,
): Lot | null {
  const { talk, chunks, at, known } = ground;
  const following = chunks[i];
  const ends =
    following === undefined ||
    sizeBehind(chunks, i, amount) ||
    /^(?:mark|time)$/.test(following.kind) ||
    (following.kind === 'term' && following.term!.kind === 'defect' && !isCount(amount));
  const pointing =
    bySize(chunks, k, i).length > 0 ||
    STANDS_ALONE.test(following?.word ?? '') ||
    (following !== undefined && isDone(following)) ||
    // "Left one in the closet": the verb speaks of the count.
    (known && speaksOfCount(chunks, k) && isPreposition(following)) ||
    (known && ends && (isCount(amount) || isPack(amount) || amount.unitFrom === 'said'));
  // "Code wants 12": a figure that a thing must come to.
  if (isCount(amount) && !more && /^wants?$/.test(chunks[k - 1]?.word ?? '')) return null;
  if (amount.unitKind === 'weight' && amount.unit !== 'ton' && following?.word !== 'of') return null;
  const marked = /^(x|qty|\()/.test(amount.quote);
  if (!isPack(amount) && !more && !pointing && !(isCount(amount) && marked)) return null;
  if (
    isBulk(amount) &&
    !isPack(amount) &&
    !known &&
    !/^(?:left|gone|used|more|short|extra)$/.test(following?.word ?? '')
  )
    return null;
  const asked = upper ?? amount;
  const kit = asked.unit === 'kit' ? asPacked(chunks[i - 1]!, asked) : null;
  const meant = kit ?? goodsMeant(talk, at, amount.start, asked, ground.told) ?? asPacked(chunks[i - 1]!, asked);
  if (!meant) return null;
  const told = bySize(chunks, k, i);
  return {
    item: meant.filter((c) => c.kind !== 'quantity'),
    sizes: told.length
      ? told
      : sizeBehind(chunks, i, asked)
        ? [chunks[i]!.quantity!]
        : meant.flatMap((c) => (c.quantity ? [c.quantity] : [])),
    amount,
    upper,
    article: false,
    more,
    from: k,
    until:
      told.length || sizeBehind(chunks, i, asked)
        ? endOfSize(chunks, i)
        : i + (following && POINTERS.test(following.word) ? 1 : 0),
    carried: true,
  };
}

/** "Left one in the closet", "got maybe eighty on the ground": the verb stands right before the count. */
function speaksOfCount(chunks: readonly Chunk[], k: number): boolean {
  let j = k - 1;
  while (/^(?:maybe|about|only|like|just|probably|around|another|still)$/.test(chunks[j]?.word ?? '')) j--;
  return chunks[j]?.verb !== undefined;
}

/** "Fifty foot of the 160", "eleven boxes of the three by six": goods told by their size alone. */
const bySize = (chunks: readonly Chunk[], k: number, i: number): Quantity[] =>
  chunks.slice(k + 1, i).some((c) => c.word === 'of')
    ? chunks.slice(i, endOfSize(chunks, i)).flatMap((c) => (c.quantity ? [c.quantity] : []))
    : [];

/** "Get 3 rolls 1 1/2": a length right behind the packs is the goods' width. */
const sizeBehind = (chunks: readonly Chunk[], i: number, amount: Quantity): boolean =>
  amount.unitKind === 'pack' && chunks[i]?.quantity !== undefined && isSize(chunks[i]!);

/** Where a size such as `three by six` ends. */
function endOfSize(chunks: readonly Chunk[], i: number): number {
  let k = i;
  while (chunks[k]?.quantity || (chunks[k]?.word === 'by' && chunks[k + 1]?.quantity)) k++;
  return k;
}

/** Where nothing was named, the pack names the goods: "used forty bundles". */
const asPacked = (chunk: Chunk, amount: Quantity): Chunk[] | null =>
  amount.unitKind === 'pack' ? [{ ...chunk, kind: 'word', word: amount.unit!, quantity: undefined }] : null;

const NOT_GOODS =
  /^(?:guys?|people|men|women|times?|trips?|hours?|days?|weeks?|coats?|more|other|others|left|weeks|things?|kids?|rooms?|spots?|places?|way|ways|side|sides|feet|each|total|percent|years?|drops?|cycles?|passes|layers?|units?|ends?|corners?|back)$/;

/** "Sash locks are on, two on each of the four windows": eight of what was just named. */
function spreadLot(ground: Ground, k: number, each: Quantity): Lot | null {
  const { talk, chunks, at } = ground;
  const times = chunks.findIndex((c, i) => i > k && c.quantity?.group?.id === each.group!.id);
  if (times < 0) return null;
  const next = chunks[k + 1];
  const own = next && isGoods(next) ? chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)) : null;
  const item = own ?? goodsMeant(talk, at, each.start, each, ground.told);
  if (!item) return null;
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
    carried: own === null,
  };
}

/** Goods without a count before them: `9" roller covers x3`, "light gray grout", "220 grit sponges qty 6". */
function namedLot(ground: Ground, k: number): Lot | null {
  const { chunks, bare, listed } = ground;
  const { item, sizes, until } = nameAndSizes(chunks, k);
  let i = until;
  let amount: Quantity | null = null;
  while (chunks[i] && /^(,|\(|qty|:)$/.test(chunks[i]!.word)) i++;
  const trailing = chunks[i]?.quantity;
  const counts = trailing && isCount(trailing) && (/^(x|qty|\(|×)/i.test(trailing.quote) || trailing.unit === 'each');
  if (trailing && (counts || trailing.takenBackFrom !== undefined)) amount = trailing;
  else i = until;
  if (
    !item.some((c) => isGoods(c) || (bare && c.term?.kind === 'tool')) &&
    !(listed && amount && item.some((c) => c.kind === 'word' && c.word.length > 2))
  )
    return null;
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
            c.quantity.group?.kind !== 'pair' &&
            !/^(x|qty|\()/i.test(c.quantity.quote) &&
            inner.slice(0, k).some(isGoods),
        );
  const own = cut > 0 ? inner.slice(0, cut) : inner;
  const lastNoun = own.findLastIndex((c) => isGoods(c) || isNounTerm(c));
  const until = at + own.length;
  const sized = (c: Chunk) => isSize(c) || c.quantity?.group?.kind === 'pair';
  const trimmed = own.filter((c, k) => !(c.quantity && !sized(c)) || k < lastNoun);
  const countAfter = own.findIndex((c, k) => k > lastNoun && lastNoun >= 0 && c.quantity && !sized(c));
  return {
    item: trimmed.filter((c) => c.kind !== 'quantity'),
    sizes: trimmed.flatMap((c) => (c.quantity && sized(c) ? [c.quantity] : [])),
    until: countAfter >= 0 ? at + countAfter : until,
  };
}

/** The item's words without the small ones that carry no name. */
export const nameOf = (item: readonly Chunk[]) => item.filter((c) => !(c.kind === 'word' && isPreposition(c)));
