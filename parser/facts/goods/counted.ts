import type { Quantity } from '../../types.ts';
import { type Chunk, isGoods, isNounTerm } from '../chunks.ts';
import { isSize, joinsPair, nounPhraseFrom } from '../talk.ts';
import { isBulk, isCount, type Lot, lotOf } from './lot.ts';
import { ownName } from './own.ts';
import { CONTAINER, FLAT, PACKED_WORD } from './words.ts';

/** Words between a count and its goods that name nothing. */
const PADDING =
  /^(?:more|extra|additional|other|of|the|a|an|new|full|good|whole|old|them|these|those|that|my|our|his|her|big|small|little|spare|partial|like|em|'em|it|number|any|some|more|loose|worth)$/;
const POINTERS = /^(?:those|them|these|that|each|em|'em|it)$/;
/** Packs whose name is an everyday word, or that dictation mishears, each with the pack. */
const SAID: ReadonlyMap<string, string> = new Map(
  Object.entries({ can: 'can', cans: 'can', role: 'roll', roles: 'roll' }),
);

/** The pack that stands behind a bare count, where goods follow it or nothing does. */
const packSaid = (chunks: readonly Chunk[], i: number) => {
  const next = chunks[i + 1];
  return !next || next.kind === 'mark' || next.word === 'of' || isNounTerm(next) || next.term?.kind === 'finish'
    ? SAID.get(chunks[i]?.word ?? '')
    : undefined;
};

/** "Them little foam rollers": a word that points leads on to a name. */
function leadsToGoods(chunks: readonly Chunk[], from: number): boolean {
  let k = from;
  while (k < from + 2 && chunks[k]?.kind === 'word' && (PADDING.test(chunks[k]!.word) || chunks[k]!.verb === undefined))
    k++;
  return [from, k].some((at) => isNounTerm(chunks[at]) || chunks[at]?.kind === 'quantity');
}

/** True where a measure and the container that holds it stand, `4 litre tin`, or the sides of what goods come in, `4x8 sheet of`. */
export const isContained = (chunks: readonly Chunk[], k: number) => {
  const end = measureEnd(chunks, k);
  if (end === k) return false;
  if (end === k + 1) return isBulk(chunks[k]!.quantity!) && CONTAINER.test(chunks[end]?.word ?? '');
  const behind = chunks[end + 1];
  return FLAT.test(chunks[end]?.word ?? '') && (behind?.word === 'of' || isSize(behind) || isGoods(behind));
};

/** Where the one figure of a container ends, or the two of its sides; where it starts if there is no such measure. */
function measureEnd(chunks: readonly Chunk[], k: number): number {
  const group = chunks[k]?.quantity?.group;
  if (chunks[k]?.quantity === undefined || (group && (group.kind !== 'pair' || group.index > 0))) return k;
  let end = k + 1;
  while (group && (joinsPair(chunks, end) || chunks[end]?.quantity?.group?.id === group.id)) end++;
  return end;
}

/** "A five gallon of the bonding glue", "two fifty pounds of mortar": a container that only its measure tells. */
export const isMeasured = (chunks: readonly Chunk[], k: number) =>
  CONTAINED_IN.has(chunks[k]?.quantity?.unit ?? '') &&
  chunks[k]!.quantity!.value.compare(1) > 0 &&
  chunks[k]!.quantity!.group === undefined &&
  chunks[k + 1]?.word === 'of';

/** A length that stands for the piece. */
const PIECES = /\bfooters?$/i;

/** What is sold by weight comes in bags, what is sold by volume in pails (common practice, no source). */
const CONTAINED_IN: ReadonlyMap<string, string> = new Map([
  ['gal', 'pail'],
  ['l', 'pail'],
  ['lb', 'bag'],
  ['kg', 'bag'],
]);

/** "A 4 litre tin of the merbau oil", "two 50 pound bags of sand": the measure is the size, the container the unit. */
export function containerLot(chunks: readonly Chunk[], from: number, measure: number, amount: Quantity | null): Lot {
  const end = measureEnd(chunks, measure);
  const pack = isMeasured(chunks, measure)
    ? CONTAINED_IN.get(chunks[measure]!.quantity!.unit!)!
    : chunks[end]!.word.replace(/(?:(?<=x)es|s)$/, '');
  let k = end + 1;
  while (/^(?:of|the|that|this|our)$/.test(chunks[k]?.word ?? '')) k++;
  const { own, named, sizes, until } = ownName(chunks, k);
  const measures = chunks.slice(measure, end).flatMap((c) => (c.quantity ? [c.quantity] : []));
  return lotOf(amount ? 'count' : 'article', from, Math.max(until, end + 1), {
    own,
    named,
    sizes: [...measures, ...sizes],
    amount,
    article: amount ? 0 : 1,
    pack,
    more: /^(?:more|another)$/.test(chunks[from]!.word),
  });
}

/** "Two and a half bags of thinset", "(1) 20A breaker", "ten more jacks", "one bag of those", "x3". */
export function countedLot(chunks: readonly Chunk[], k: number, amount: Quantity): Lot | null {
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
  // "1 can purple primer", "three role of the flashing tape": what the reading of quantities does not count by.
  const pack = isCount(amount) ? packSaid(chunks, i) : undefined;
  if (pack) i++;
  while (chunks[i] && PADDING.test(chunks[i]!.word) && !isNounTerm(chunks[i])) {
    if (/^(?:more|extra)$/.test(chunks[i]!.word)) more = true;
    if (POINTERS.test(chunks[i]!.word) && !leadsToGoods(chunks, i + 1)) break;
    i++;
  }
  // "Six sixteen footers of primed base": so many pieces, each so long.
  const long = chunks[i]?.quantity;
  if (isCount(amount) && !pack && PIECES.test(long?.quote ?? '') && chunks[i + 1]?.word === 'of') {
    const of = ownName(chunks, i + 2, true);
    if (of.named) return lotOf('count', k, of.until, { amount, upper, more, ...of, sizes: [...of.sizes, long!] });
  }
  const pointing = chunks.slice(k + 1, i + 1).some((c) => POINTERS.test(c.word));
  const count = { amount, upper, more, pointing, pack };
  // "Six of eight", "two of em": only how many of what was told.
  const among = chunks[i]?.quantity;
  if (chunks[i - 1]?.word === 'of' && isCount(amount) && among && isCount(among) && !among.group) {
    const rest = ownName(chunks, i + 1, true);
    return lotOf('count', k, Math.max(rest.until, i + 1), { ...count, ...rest, pointing: true });
  }
  if (chunks[i] && POINTERS.test(chunks[i]!.word) && !isNounTerm(chunks[i])) return lotOf('count', k, i + 1, count);
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
  const { own, named, sizes, until } = ownName(chunks, i, true);
  if (own[0]?.term?.kind === 'defect' && !own.slice(1).some(isNounTerm)) return lotOf('count', k, k + 1, count);
  // "Two bags of the ninety minute", "eleven boxes of the three by six": told by its figure alone.
  const bySize = !named && chunks.slice(k + 1, i).some((c) => c.word === 'of') ? chunks[i] : undefined;
  const figure = bySize?.quantity && sizes.length === 0 ? [bySize.quantity] : sizes;
  const end = bySize?.quantity
    ? Math.max(until, i + 1)
    : own.length || sizes.length
      ? until
      : k + 1 + (upper || pack ? i - k - 1 : 0);
  return lotOf('count', k, Math.max(end, k + 1), { ...count, own, named, sizes: figure });
}

/** "Sash locks are on, two on each of the four windows": eight of what was just named. */
export function spreadLot(chunks: readonly Chunk[], k: number, each: Quantity): Lot | null {
  const times = chunks.findIndex((c, i) => i > k && c.quantity?.group?.id === each.group!.id);
  if (times < 0) return null;
  const own = chunks[k + 1] && isGoods(chunks[k + 1]) ? chunks.slice(k + 1, nounPhraseFrom(chunks, k + 1)) : [];
  return lotOf('count', k, nounPhraseFrom(chunks, times + 1), {
    own: own.filter((c) => c.kind !== 'quantity'),
    named: own.length > 0,
    amount: { ...each, value: each.value.mul(chunks[times]!.quantity!.value), unit: each.unit ?? 'each' },
  });
}
