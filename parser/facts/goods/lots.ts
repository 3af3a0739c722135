import { unitNamed } from '../../quantities/units.ts';
import type { Quantity } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm, isPreposition } from '../chunks.ts';
import { nounPhraseFrom } from '../talk.ts';
import { isSmall } from '../words.ts';
import { nameAndSizes } from './phrases.ts';

/**
 * A place in a clause that may tell of goods, before anyone asks whether it does: a count or a measure, a thing with an
 * article before it, a trade word alone, or a word that points ("one of those").
 */
export interface Lot {
  kind: 'count' | 'article' | 'bare' | 'pointer';
  /** Words said with it that name it, or only tell which ("the poly crystal ones"). */
  own: Chunk[];
  /** Its own words are a name; else what it means stands elsewhere. */
  named: boolean;
  sizes: Quantity[];
  amount: Quantity | null;
  upper: Quantity | null;
  /** How many are said without a figure: one in "a new ring", two in "both hinges", else 0. */
  article: 0 | 1 | 2;
  /** What it comes by where no figure says so: the bag in "a 5 kg bag". */
  pack?: string;
  /** Cable by its code, `12/2`. */
  code?: string;
  more: boolean;
  /** "Two of them", "fourteen of em": what is counted was told before. */
  pointing: boolean;
  from: number;
  until: number;
}

export const isCount = (q: Quantity) => q.unit === null || q.unit === 'each' || q.unit === 'pair' || q.unit === 'dozen';
const isPack = (q: Quantity) => q.unitKind === 'pack' || (q.unitKind === 'count' && !isCount(q));
const isBulk = (q: Quantity) =>
  q.unitKind === 'volume' ||
  q.unitKind === 'weight' ||
  (q.unitKind === 'area' && q.unitFrom === 'said') ||
  (q.unitKind === 'length' && /^(?:ft|m|yd|cu yd)$/.test(q.unit ?? ''));

/** Containers that a stated measure is the size of: "a 4 litre tin", "two 50 pound bags". */
const CONTAINER =
  /^(bag|sack|tin|can|tub|bucket|pail|tube|box|carton|roll|coil|spool|bottle|jug|drum|cartridge|sausage|pack|jar|kit|piece|stick|length)s?$/;
const ARTICLE =
  /^(?:a|an|another|some|any|new|more|extra|spare|no|the|my|our|his|her|their|this|that|these|those|both|all)$/;
const ONE = /^(?:a|an|another)$/;
/** Packs that the reading of quantities does not count by. */
const PACKED_WORD = /^(?:set|kit|batch|load|sausage|strip|sleeve|flat)s?$/;
/** Words between a count and its goods that name nothing. */
const PADDING =
  /^(?:more|extra|additional|other|of|the|a|an|new|full|good|whole|old|them|these|those|that|my|our|his|her|big|small|little|spare|partial|like|em|'em|it|number|any|some|more|loose|worth)$/;
const POINTERS = /^(?:those|them|these|that|each|em|'em|it)$/;
/** Heads that stand for a name told elsewhere: "a twenty inch one", "the ninety minute stuff". */
const STANDS_IN = /^(?:ones?|kind|type|stuff|model|size|version|style|footers?|foot|inch|each|variety)$/;
export const NOT_GOODS =
  /^(?:guys?|people|men|women|times?|trips?|hours?|days?|weeks?|coats?|more|others?|left|things?|kids?|rooms?|spots?|places?|ways?|sides?|feet|total|percent|years?|drops?|cycles?|passes|layers?|units?|ends?|corners?|back|please|thanks|thank|gone|good|bad|bit|lot|few|couple|minute|hour|day|week|while|call|look|hand|job|little|number|rest|half|most|deal|chance|problem|mess|way|quick|real|pain|ta|cheers|later|today|same|shy|last|next|short|say|remain|remaining|altogether|apiece|bigger|smaller|thing|ok|okay)$/;

/** Every lot that a clause may tell of, in the order of its words; none lies in another. */
export function lotsIn(chunks: readonly Chunk[]): Lot[] {
  const lots: Lot[] = [];
  for (let k = 0; k < chunks.length; ) {
    const lot = lotAt(chunks, k);
    if (lot) {
      lots.push(lot);
      k = Math.max(lot.until, k + 1);
    } else k++;
  }
  return lots;
}

function lotAt(chunks: readonly Chunk[], k: number): Lot | null {
  const chunk = chunks[k]!;
  const q = chunk.quantity;
  if (chunk.notQuantity?.kind === 'idiom' && /^one of (?:those|these|them|'?em|each|the)\b/.test(chunk.word))
    return pointerLot(chunks, k);
  if (q) {
    // "10 sq ft per box": how it comes, not how many.
    if (q.per) return null;
    // "Make it 3, not 2": the figure that no longer holds.
    if (chunks[k - 1]?.word === 'not') return null;
    if (q.group?.kind === 'eachOf') return q.group.index === 0 ? spreadLot(chunks, k, q) : null;
    if (isBulk(q) && CONTAINER.test(chunks[k + 1]?.word ?? '')) return containerLot(chunks, k, k, null);
    if (isCount(q) && isContained(chunks, k + 1)) return containerLot(chunks, k, k + 1, q);
    if (isPack(q) || ((isBulk(q) || isCount(q)) && q.group?.kind !== 'pair')) return countedLot(chunks, k, q);
    const sized = bareLot(chunks, k, k);
    return sized?.named ? sized : null;
  }
  if (chunk.kind === 'word' && ARTICLE.test(chunk.word)) return articleLot(chunks, k);
  if ((chunk.kind === 'word' || chunk.notQuantity?.kind === 'label') && /^ones?$/.test(chunk.word))
    return pointerLot(chunks, k);
  if (isGoods(chunk) || (chunk.kind === 'term' && /^(?:finish|tool|surface)$/.test(chunk.term!.kind)))
    return bareLot(chunks, k, k);
  return openLot(chunks, k);
}

/** True where a measure and the container that holds it stand: `4 litre tin`. */
const isContained = (chunks: readonly Chunk[], k: number) =>
  chunks[k]?.quantity !== undefined &&
  isBulk(chunks[k]!.quantity!) &&
  chunks[k]!.quantity!.group === undefined &&
  CONTAINER.test(chunks[k + 1]?.word ?? '');

const lotOf = (kind: Lot['kind'], from: number, until: number, rest: Partial<Omit<Lot, 'kind'>>): Lot => ({
  kind,
  own: [],
  named: false,
  sizes: [],
  amount: null,
  upper: null,
  article: 0,
  more: false,
  pointing: false,
  ...rest,
  from,
  until,
});

/** Splits words behind a count into name and sizes, and says whether they name goods or only tell which. */
function ownName(chunks: readonly Chunk[], at: number): Pick<Lot, 'own' | 'named' | 'sizes' | 'until'> {
  const { item, sizes, until: end } = nameAndSizes(chunks, at);
  // "All thirteen treads glued": what was done to them is no part of the name.
  let until = end;
  while (item.length > 1 && isDone(item.at(-1)!) && !isNounTerm(item.at(-1)) && chunks[until - 1] === item.at(-1)) {
    item.pop();
    until--;
  }
  const standsIn = STANDS_IN.test(item.at(-1)?.word ?? '');
  const own = standsIn ? item.slice(0, -1) : item;
  const named = !standsIn && own.some(isName);
  return { own, named, sizes, until };
}

/** A word that can name goods: a trade noun, or one that the vocabulary lacks. */
export const isName = (c: Chunk) =>
  (isNounTerm(c) && !/^(?:role|area)$/.test(c.term!.kind)) ||
  (c.kind === 'word' &&
    /^[a-zñáéíóú][a-zñáéíóú0-9'-]+$/.test(c.word) &&
    !isSmall(c.word) &&
    !NOT_GOODS.test(c.word) &&
    !isDone(c)) ||
  (c.kind === 'term' && c.term!.kind === 'work');

/** A bare participle: "6 swapped" names no goods. */
const isDone = (c: Chunk) => c.verb !== undefined && !c.verb.forms.has('base') && !isNounTerm(c);

/** "A 4 litre tin of the merbau oil", "two 50 pound bags of sand": the measure is the size, the container the unit. */
function containerLot(chunks: readonly Chunk[], from: number, measure: number, amount: Quantity | null): Lot {
  const pack = chunks[measure + 1]!.word.replace(/(?:(?<=x)es|s)$/, '');
  let k = measure + 2;
  while (/^(?:of|the|that|this|our)$/.test(chunks[k]?.word ?? '')) k++;
  const { own, named, sizes, until } = ownName(chunks, k);
  return lotOf(amount ? 'count' : 'article', from, Math.max(until, measure + 2), {
    own,
    named,
    sizes: [chunks[measure]!.quantity!, ...sizes],
    amount,
    article: amount ? 0 : 1,
    pack,
    more: /^(?:more|another)$/.test(chunks[from]!.word),
  });
}

/** "Two and a half bags of thinset", "(1) 20A breaker", "ten more jacks", "one bag of those", "x3". */
function countedLot(chunks: readonly Chunk[], k: number, amount: Quantity): Lot | null {
  let i = k + 1;
  let upper: Quantity | null = null;
  const inGroup = (c: Chunk | undefined) => amount.group && c?.quantity?.group?.id === amount.group.id;
  // "three or four bags", "two by two": the range's second end, which carries the unit.
  if (inGroup(chunks[i])) upper = chunks[i++]!.quantity!;
  else if (/^(?:or|to|-|–)$/.test(chunks[i]?.word ?? '') && inGroup(chunks[i + 1])) {
    upper = chunks[i + 1]!.quantity!;
    i += 2;
  }
  let more = amount.more === true || upper?.more === true;
  while (chunks[i] && PADDING.test(chunks[i]!.word) && !isNounTerm(chunks[i])) {
    if (/^(?:more|extra)$/.test(chunks[i]!.word)) more = true;
    if (POINTERS.test(chunks[i]!.word) && !isNounTerm(chunks[i + 1]) && chunks[i + 1]?.kind !== 'quantity') break;
    i++;
  }
  const pointing = chunks.slice(k + 1, i + 1).some((c) => POINTERS.test(c.word));
  const count = { amount, upper, more, pointing };
  const code = chunks[i]?.notQuantity?.kind === 'code' ? chunks[i]! : null;
  if (code && !isGoods(chunks[i + 1])) {
    const cable: Chunk = { ...code, kind: 'word', word: 'cable' };
    return lotOf('count', k, i + 1, { ...count, own: [cable], named: true, code: code.word });
  }
  if (isCount(amount) && PACKED_WORD.test(chunks[i]?.word ?? '') && chunks[i + 1]?.word === 'of') {
    const of = ownName(chunks, chunks[i + 2]?.word === 'the' ? i + 3 : i + 2);
    return lotOf('count', k, Math.max(of.until, i + 1), { ...count, ...of, pack: chunks[i]!.word.replace(/s$/, '') });
  }
  // "One wants a new lid", "two chips": what follows is told of the count, or a flaw was counted.
  const { own, named, sizes, until } = ownName(chunks, i);
  if (own[0]?.term?.kind === 'defect' && !own.slice(1).some(isNounTerm)) return lotOf('count', k, k + 1, count);
  // "Two bags of the ninety minute", "eleven boxes of the three by six": told by its figure alone.
  const bySize = !named && chunks.slice(k + 1, i).some((c) => c.word === 'of') ? chunks[i] : undefined;
  const figure = bySize?.quantity && sizes.length === 0 ? [bySize.quantity] : sizes;
  const end = bySize?.quantity
    ? Math.max(until, i + 1)
    : own.length || sizes.length
      ? until
      : k + 1 + (upper ? i - k - 1 : 0);
  return lotOf('count', k, Math.max(end, k + 1), { ...count, own, named, sizes: figure });
}

/** "Sash locks are on, two on each of the four windows": eight of what was just named. */
function spreadLot(chunks: readonly Chunk[], k: number, each: Quantity): Lot | null {
  const times = chunks.findIndex((c, i) => i > k && c.quantity?.group?.id === each.group!.id);
  if (times < 0) return null;
  const own = chunks[k + 1] && isGoods(chunks[k + 1]) ? chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)) : [];
  return lotOf('count', k, nounPhraseFrom(chunks, times + 1), {
    own: own.filter((c) => c.kind !== 'quantity'),
    named: own.length > 0,
    amount: { ...each, value: each.value.mul(chunks[times]!.quantity!.value), unit: each.unit ?? 'each' },
  });
}

/** "A new ring", "another roll", "a twenty inch one", "no corner bead", "the splash guard". */
function articleLot(chunks: readonly Chunk[], k: number): Lot | null {
  let i = k + 1;
  while (
    /^(?:new|more|extra|spare|other|proper|good|whole|of|single|the|decent|small|big|little|fresh|real|couple|few|'em|em|them|those)$/.test(
      chunks[i]?.word ?? '',
    ) &&
    !isGoods(chunks[i])
  )
    i++;
  const both = chunks[k]!.word === 'both' ? 2 : 0;
  const one =
    ONE.test(chunks[k]!.word) ||
    (chunks[k]!.word === 'new' && !/s$/.test(chunks[nounPhraseFrom(chunks, i) - 1]?.word ?? ''));
  const article = one ? 1 : both;
  const more = chunks[k]!.word === 'another' || chunks[k]!.word === 'more';
  if (isContained(chunks, i)) return { ...containerLot(chunks, k, i, null), more };
  const word = chunks[i];
  // "We'd need another": more of what was told.
  if (chunks[k]!.word === 'another' && (!word || isPreposition(word) || word.time || word.kind === 'mark'))
    return lotOf('pointer', k, k + 1, { article: 1, more });
  if (!word || (word.quantity && isPack(word.quantity))) return null;
  // "More two gallon of the primer": a count, however it is said.
  if (!one && word.quantity && (isBulk(word.quantity) || isCount(word.quantity)) && !isName(chunks[i + 1] ?? word))
    return null;
  // "A sixteen by twenty five", "a 200 one": told by its figures alone.
  if (word.quantity && isCount(word.quantity))
    return one && word.quantity.unit === null ? figureLot(chunks, k, i, more) : null;
  const pack = article || chunks[k]!.word === 'the' ? packAt(chunks, i) : null;
  if (pack) {
    const of = chunks[i + 1]?.word === 'of' ? ownName(chunks, chunks[i + 2]?.word === 'the' ? i + 3 : i + 2) : null;
    return lotOf('article', k, of ? Math.max(of.until, i + 1) : i + 1, { ...of, article: article || 1, pack, more });
  }
  const { own, named, sizes, until } = ownName(chunks, i);
  if (until <= i || (!named && !sizes.length && !(article && STANDS_IN.test(chunks[until - 1]?.word ?? ''))))
    return null;
  const known = own.some((c) => isGoods(c) || /^(?:tool|surface)$/.test(c.term?.kind ?? ''));
  if (!article && !known && !sizes.length && own.length > 3) return null;
  return lotOf(article ? 'article' : 'bare', k, until, { own, named, sizes, article, more });
}

/** "Another tube of", "grab a tin": what goods come by; null where the word names the thing itself ("a roll roofing"). */
function packAt(chunks: readonly Chunk[], i: number): string | null {
  const { word } = chunks[i]!;
  const next = chunks[i + 1];
  if (next && next.word !== 'of' && isName(next)) return null;
  if (PACKED_WORD.test(word)) return word;
  const unit = unitNamed(word);
  const packs =
    unit && (unit.kind === 'pack' || unit.unit === 'pair' || (unit.kind === 'volume' && next?.word === 'of'));
  return packs ? unit.unit : null;
}

/** A thing told by its figures: "a sixteen by twenty five by four", "a 200 one". */
function figureLot(chunks: readonly Chunk[], k: number, i: number, more: boolean): Lot {
  const sizes: Quantity[] = [];
  let end = i;
  for (; chunks[end]?.quantity || (chunks[end]?.word === 'by' && chunks[end + 1]?.quantity); end++)
    if (chunks[end]!.quantity) sizes.push(chunks[end]!.quantity!);
  const { own, named, until } = ownName(chunks, end);
  return lotOf('article', k, Math.max(until, end), { own, named, sizes, article: 1, more });
}

/** "One of those", "get one", "the white ones". */
function pointerLot(chunks: readonly Chunk[], k: number): Lot {
  const single = !/s$/.test(chunks[k]!.word) || /^one of/.test(chunks[k]!.word);
  let i = k + 1;
  while (/^(?:the|of|a|in)$/.test(chunks[i]?.word ?? '') && chunks[i + 1]?.quantity) i++;
  const { own, named, sizes, until } = ownName(chunks, i);
  const takes = sizes.length > 0 || (named && /^one of/.test(chunks[k]!.word));
  return lotOf('pointer', k, takes ? until : k + 1, {
    article: single ? 1 : 0,
    ...(takes ? { own, sizes, named } : {}),
  });
}

/** Goods without a count before them: `9" roller covers x3`, "light gray grout", "220 grit sponges qty 6". */
function bareLot(chunks: readonly Chunk[], k: number, from: number): Lot | null {
  const { own, named, sizes, until } = ownName(chunks, k);
  if (until <= k || (!own.length && !sizes.length)) return null;
  let i = until;
  while (chunks[i] && /^(,|\(|qty|:)$/.test(chunks[i]!.word)) i++;
  const trailing = chunks[i]?.quantity;
  const counts = trailing && isCount(trailing) && (/^(x|qty|\(|×)/i.test(trailing.quote) || trailing.unit === 'each');
  const amount = trailing && (counts || trailing.takenBackFrom !== undefined) ? trailing : null;
  // "An inch and a half slip nut": the figure has taken the article.
  const one = !amount && /^an? /.test(chunks[k]!.quantity?.quote ?? '');
  return lotOf(one ? 'article' : 'bare', from, amount ? i + 1 : until, {
    own,
    named,
    sizes,
    amount,
    article: one ? 1 : 0,
  });
}

/** A word that the vocabulary lacks, where a list or a need may stand: at the clause's head, or right behind its verb. */
function openLot(chunks: readonly Chunk[], k: number): Lot | null {
  const c = chunks[k]!;
  if (c.kind !== 'word' || c.verb || !/^[a-z]{3,}$/.test(c.word) || isSmall(c.word) || !isName(c)) return null;
  const before = chunks[k - 1];
  if (before && !/^(?:need|needs|want|wants|bring|order|buy|get|grab|of|some|used|got|me)$/.test(before.word))
    return null;
  const lot = bareLot(chunks, k, k);
  return lot && (lot.named || lot.own.length > 0) ? lot : null;
}
