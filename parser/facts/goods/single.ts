import { unitNamed } from '../../quantities/units.ts';
import type { Quantity } from '../../types.ts';
import { type Chunk, isGoods, isPreposition } from '../chunks.ts';
import { nounPhraseFrom } from '../talk.ts';
import { containerLot, countedLot, isContained, isMeasured } from './counted.ts';
import { isBulk, isCount, isPack, type Lot, lotOf } from './lot.ts';
import { ownName } from './own.ts';
import { isName, PACKED_WORD, STANDS_IN } from './words.ts';

export const ARTICLE =
  /^(?:a|an|another|some|any|new|more|extra|spare|no|the|my|our|his|her|their|this|that|these|those|both|all)$/;
const ONE = /^(?:a|an|another)$/;

/** "A new ring", "another roll", "a twenty inch one", "no corner bead", "the splash guard". */
export function articleLot(chunks: readonly Chunk[], k: number): Lot | null {
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
  if (isContained(chunks, i) || (ONE.test(chunks[k]!.word) && !more && isMeasured(chunks, i)))
    return { ...containerLot(chunks, k, i, null), more };
  const word = chunks[i];
  // "We'd need another": more of what was told.
  if (chunks[k]!.word === 'another' && (!word || isPreposition(word) || word.time || word.kind === 'mark'))
    return lotOf('pointer', k, k + 1, { article: 1, more });
  // "Another twenty foot of corrugated", "another 3": a count, of more.
  if (more && word?.quantity && (isPack(word.quantity) || isBulk(word.quantity) || isCount(word.quantity))) {
    const lot = countedLot(chunks, i, word.quantity);
    return lot && { ...lot, from: k, more };
  }
  if (!word || (word.quantity && isPack(word.quantity))) return null;
  if (word.quantity && chunks[k]!.word === 'the' && tellsWhich(chunks, i)) return figureLot(chunks, k, i, more);
  // "More two gallon of the primer": a count, however it is said.
  if (!one && word.quantity && (isBulk(word.quantity) || isCount(word.quantity)) && !isName(chunks[i + 1] ?? word))
    return null;
  // "A sixteen by twenty five", "a 200 one": told by its figures alone.
  if (word.quantity && isCount(word.quantity))
    return one && word.quantity.unit === null ? figureLot(chunks, k, i, more) : null;
  // "Caulk for the tub", "screws in the box": a place, and no pack.
  const placed = chunks[k]!.word === 'the' && isPreposition(chunks[k - 1]) && chunks[i + 1]?.word !== 'of';
  const pack = !placed && (article || chunks[k]!.word === 'the') ? packAt(chunks, i) : null;
  if (pack) {
    const of = chunks[i + 1]?.word === 'of' ? ownName(chunks, chunks[i + 2]?.word === 'the' ? i + 3 : i + 2) : null;
    return lotOf('article', k, of ? Math.max(of.until, i + 1) : i + 1, { ...of, article: article || 1, pack, more });
  }
  const { own, named, sizes, until } = ownName(chunks, i, one);
  const last = chunks[until - 1];
  // "I need a stainless | repair ring": the clause was cut within the name.
  const unended = article === 1 && until === chunks.length && own.length > 0;
  // "Get the waxless one", "the white ones": which of what was named before.
  const which = own.length > 0 && /^ones?$/.test(last?.word ?? '');
  if (until <= i || (!named && !sizes.length && !unended && !which && !(article && STANDS_IN.test(last?.word ?? ''))))
    return null;
  if (which && !article && /^(?:the|that|this)$/.test(chunks[k]!.word) && last!.word === 'one')
    return lotOf('article', k, until, { own, named, sizes, article: 1 });
  const known = own.some((c) => isGoods(c) || /^(?:tool|surface)$/.test(c.term?.kind ?? ''));
  if (!article && !known && !sizes.length && own.length > 3) return null;
  return lotOf(article ? 'article' : 'bare', k, until, { own, named, sizes, article, more });
}

/** "Get the nine by twelve", "get the thirty six instead": a figure that nothing is counted by. */
function tellsWhich(chunks: readonly Chunk[], i: number): boolean {
  const { group, unit } = chunks[i]!.quantity!;
  if (group?.kind === 'pair') return !chunks.slice(i, i + 5).some(isGoods);
  const next = chunks[i + 1];
  return unit === null && (!next || next.kind === 'mark' || next.word === 'instead');
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

/** "Box of staples", "qt contact cement" at the head of a list's entry or behind "get": one, said without its article. */
export function packLot(chunks: readonly Chunk[], k: number): Lot | null {
  const before = chunks[k - 1];
  if (
    before &&
    before.kind !== 'mark' &&
    !/^(?:and|plus|need|needs|get|grab|bring|buy|order|want|another)$/.test(before.word)
  )
    return null;
  const unit = unitNamed(chunks[k]!.word);
  if (!unit || /s$/.test(chunks[k]!.word) || !(unit.kind === 'pack' || /^(?:qt|gal|pt)$/.test(unit.unit))) return null;
  const of = chunks[k + 1]?.word === 'of';
  if (!of && !isGoods(chunks[k + 1])) return null;
  const own = ownName(chunks, of ? k + 2 : k + 1, true);
  return own.named ? lotOf('article', k, own.until, { ...own, article: 1, pack: unit.unit }) : null;
}

/** A thing told by its figures: "a sixteen by twenty five by four", "a 200 one". */
function figureLot(chunks: readonly Chunk[], k: number, i: number, more: boolean): Lot {
  const sizes: Quantity[] = [];
  let end = i;
  for (; chunks[end]?.quantity || (chunks[end]?.word === 'by' && chunks[end + 1]?.quantity); end++)
    if (chunks[end]!.quantity) sizes.push(chunks[end]!.quantity!);
  const { own, named, until } = ownName(chunks, end);
  if (!named) own.splice(0, own.length, ...own.filter((c) => c.term));
  return lotOf('article', k, Math.max(until, end), { own, named, sizes, article: 1, more });
}

/** "One of those", "get one", "the white ones". */
export function pointerLot(chunks: readonly Chunk[], k: number): Lot {
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
