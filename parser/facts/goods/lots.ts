import { type Chunk, isGoods } from '../chunks.ts';
import { isSmall } from '../words.ts';
import { containerLot, countedLot, isContained, isMeasured, spreadLot } from './counted.ts';
import { isBulk, isCount, isPack, type Lot, lotOf } from './lot.ts';
import { ownName } from './own.ts';
import { ARTICLE, articleLot, packLot, pointerLot } from './single.ts';
import { CONTAINER, isName, MONEY, SIDE, STANDS_IN } from './words.ts';

/** Every lot that a clause may tell of, in the order of its words; none lies in another. */
export function lotsIn(chunks: readonly Chunk[]): Lot[] {
  const lots: Lot[] = [];
  for (let k = 0; k < chunks.length; ) {
    const lot = lotAt(chunks, k);
    if (lot) {
      lots.push(alsoOne(chunks, lot, lots.at(-1)));
      k = Math.max(lot.until, k + 1);
    } else k++;
  }
  return lots;
}

/** "A new nut and washer": the article is said once for both. */
function alsoOne(chunks: readonly Chunk[], lot: Lot, before: Lot | undefined): Lot {
  const joins = before?.article === 1 && lot.kind === 'bare' && before.until === lot.from - 1;
  if (!joins || lot.amount || !/^(?:and|\+|&)$/.test(chunks[before.until]!.word)) return lot;
  return /s$/.test(lot.own.at(-1)?.word ?? '') ? lot : { ...lot, article: 1 };
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
    if (chunks[k - 1]?.word === 'not' || q.value.equals(0)) return null;
    if (chunks.slice(k + 1, k + 3).some((c) => MONEY.test(c.word))) return null;
    // "Thirty six long, ten deep": how large, not how many.
    if (isCount(q) && SIDE.test(chunks[k + 1]?.word ?? '') && !namesOn(chunks[k + 2])) return null;
    if (q.group?.kind === 'eachOf') return q.group.index === 0 ? spreadLot(chunks, k, q) : null;
    if (isBulk(q) && CONTAINER.test(chunks[k + 1]?.word ?? '')) return containerLot(chunks, k, k, null);
    if (isCount(q) && (isContained(chunks, k + 1) || isMeasured(chunks, k + 1)))
      return containerLot(chunks, k, k + 1, q);
    if (isPack(q) || ((isBulk(q) || isCount(q)) && q.group?.kind !== 'pair')) return countedLot(chunks, k, q);
    const sized = bareLot(chunks, k, k);
    return sized?.named ? sized : null;
  }
  if (chunk.kind === 'word' && ARTICLE.test(chunk.word)) return articleLot(chunks, k);
  if ((chunk.kind === 'word' || chunk.notQuantity?.kind === 'label') && /^ones?$/.test(chunk.word))
    return pointerLot(chunks, k);
  if (isGoods(chunk) || (chunk.kind === 'term' && /^(?:finish|tool|surface)$/.test(chunk.term!.kind)))
    return bareLot(chunks, k, k);
  return packLot(chunks, k) ?? openLot(chunks, k);
}

/** Whether a name may go on in a piece: "two long | handles", but "thirty six long | by ten". */
const namesOn = (c: Chunk | undefined) =>
  c !== undefined && (isName(c) || STANDS_IN.test(c.word) || c.quantity !== undefined);

/** Goods without a count before them: `9" roller covers x3`, "light gray grout", "220 grit sponges qty 6". */
function bareLot(chunks: readonly Chunk[], k: number, from: number): Lot | null {
  const { own, named, sizes, until } = ownName(chunks, k);
  if (until <= k || (!own.length && !sizes.length)) return null;
  let i = until;
  while (chunks[i] && /^(,|\(|qty|:)$/.test(chunks[i]!.word)) i++;
  const trailing = chunks[i]?.quantity;
  const counts = trailing && isCount(trailing) && (/^(x|qty|\(|×)/i.test(trailing.quote) || trailing.unit === 'each');
  const amount =
    trailing && (counts || (trailing.takenBackFrom !== undefined && trailing.unitKind !== 'length')) ? trailing : null;
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
